import type { ScaleDef } from '../context.ts';
import { scaleOf } from './build.ts';

/** Below this nothing of a 48 V battery stands at the place [V]. Common practice. */
const noBatteryVolts = 10;
/** A resting or charging cell from this far under its charge target on wants no more power [V]. Common practice. */
const fullUnderTargetVolts = 0.05;
/** A cell this far above the charge target is one that stops the charging [V]. Common practice. */
const highCellVolts = 0.05;
/** No label known: never charge below freezing, nor above this [°C]. Common practice for lithium iron phosphate. */
const silentLabel = { minC: 0, maxC: 45 };
/** A permitted charge current up to this is none [A]: a screen in whole amperes must still be able to say so. Common practice. */
const noPermitAmps = 2;

const screenVolts: ScaleDef = {
  id: 'battery-screen-volts',
  kind: 'voltage',
  zones: ['none', 'low', 'working', 'full', 'high'],
  build({ sheet: { battery, inverter } }) {
    const fullVolts = battery.cellsInSeries * (battery.cellChargeV - fullUnderTargetVolts);
    const params = { low: inverter.dcMinV, high: inverter.dcMaxV, fullVolts, cells: battery.cellsInSeries };
    return {
      ok: true,
      scale: scaleOf(
        'battery-screen-volts',
        'voltage',
        [
          ['none', noBatteryVolts],
          ['low', params.low],
          ['working', fullVolts],
          ['full', params.high],
          ['high', null],
        ],
        { expected: 'working', why: [{ id: 'expected.pv.batteryScreen', params }], uses: params },
      ),
    };
  },
};

const atInverter: ScaleDef = {
  id: 'battery-at-inverter',
  kind: 'voltage',
  zones: ['reversed', 'dead', 'low', 'ok', 'high'],
  build({ sheet: { battery, inverter } }) {
    const params = {
      low: inverter.dcMinV,
      high: inverter.dcMaxV,
      packLow: battery.cellsInSeries * battery.cellMinV,
      packHigh: battery.cellsInSeries * battery.cellMaxV,
    };
    return {
      ok: true,
      scale: scaleOf(
        'battery-at-inverter',
        'voltage',
        [
          ['reversed', -noBatteryVolts],
          ['dead', noBatteryVolts],
          ['low', params.low],
          ['ok', params.high],
          ['high', null],
        ],
        {
          expected: 'ok',
          why: [{ id: 'expected.pv.batteryAtInverter', params }],
          uses: params,
          overRange: 'high',
        },
      ),
    };
  },
};

const chargePermit: ScaleDef = {
  id: 'charge-permit',
  kind: 'current',
  zones: ['zero', 'some'],
  build({ sheet: { battery } }) {
    const params = { packs: battery.packs, eachAmps: battery.packContinuousA };
    return {
      ok: true,
      scale: scaleOf(
        'charge-permit',
        'current',
        [
          ['zero', noPermitAmps],
          ['some', null],
        ],
        { expected: 'some', why: [{ id: 'expected.pv.chargePermit', params }], uses: params },
      ),
    };
  },
};

const coldest: ScaleDef = {
  id: 'cell-coldest',
  kind: 'temperature',
  zones: ['cold', 'ok'],
  build({ sheet: { battery } }) {
    const minC = Math.max(0, battery.chargeMinC ?? silentLabel.minC);
    return {
      ok: true,
      scale: scaleOf(
        'cell-coldest',
        'temperature',
        [
          ['cold', minC],
          ['ok', null],
        ],
        { expected: 'ok', why: [{ id: 'expected.pv.cellColdest', params: { minC } }], uses: { minC } },
      ),
    };
  },
};

const hottest: ScaleDef = {
  id: 'cell-hottest',
  kind: 'temperature',
  zones: ['ok', 'hot'],
  build({ sheet: { battery } }) {
    const maxC = battery.chargeMaxC ?? silentLabel.maxC;
    return {
      ok: true,
      scale: scaleOf(
        'cell-hottest',
        'temperature',
        [
          ['ok', maxC],
          ['hot', null],
        ],
        { expected: 'ok', why: [{ id: 'expected.pv.cellHottest', params: { maxC } }], uses: { maxC } },
      ),
    };
  },
};

const highest: ScaleDef = {
  id: 'cell-highest',
  kind: 'voltage',
  zones: ['ok', 'high'],
  build({ sheet: { battery } }) {
    const high = Math.min(battery.cellMaxV, battery.cellChargeV + highCellVolts);
    const params = { high, target: battery.cellChargeV, trip: battery.cellMaxV };
    return {
      ok: true,
      scale: scaleOf(
        'cell-highest',
        'voltage',
        [
          ['ok', high],
          ['high', null],
        ],
        { expected: 'ok', why: [{ id: 'expected.pv.cellHighest', params }], uses: params },
      ),
    };
  },
};

/** What the battery shows to a tracker that waits for it. */
export const batteryScales: readonly ScaleDef[] = [
  screenVolts,
  atInverter,
  chargePermit,
  coldest,
  hottest,
  highest,
];
