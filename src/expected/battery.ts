import type { ExpectContext, ScaleDef } from './context.ts';
import { earlierReading } from './earlier.ts';
import { scaleOf } from './pv/build.ts';
import { voltsU } from './pv/site.ts';

/** Beyond this the other way round, a battery is reversed and not merely asleep [V]. Common practice. */
const reversedVolts = -3;
/** A sleeping pack may show a few volts through its own electronics [V]. Common practice. */
const asleepVolts = 10;
/** Packs are joined only when no further apart than this, rested [V]. This project's choice; safety rule I23. */
export const packsAlikeVolts = 0.1;
/** A screen may differ from a good meter by this much [V], and by what the meter itself may be off. Common practice. */
const screenVolts = 0.3;
/** Where the label is silent, the lowest cell that may still be charged [V]. From memory; safety rule I15. */
const lowestRecoverableVolts = 2;
/** No label known: never charge below freezing, nor above this [°C]. Common practice for lithium iron phosphate. */
const silentLabel = { minC: 0, maxC: 45 };

const batteryVolts: ScaleDef = {
  id: 'battery-volts',
  kind: 'voltage',
  zones: ['reversed', 'absent', 'low', 'ok', 'high'],
  build({ sheet: { battery } }) {
    const params = {
      cells: battery.cellsInSeries,
      cellLow: battery.cellMinV,
      cellHigh: battery.cellMaxV,
      low: battery.cellsInSeries * battery.cellMinV,
      high: battery.cellsInSeries * battery.cellMaxV,
    };
    return {
      ok: true,
      scale: scaleOf(
        'battery-volts',
        'voltage',
        [
          ['reversed', reversedVolts],
          ['absent', asleepVolts],
          ['low', params.low],
          ['ok', params.high],
          ['high', null],
        ],
        { expected: 'ok', why: [{ id: 'expected.batteryVolts', params }], uses: params, overRange: 'high' },
      ),
    };
  },
};

/** Packs at rest, read across the open breaker between them: the difference itself, so a small range serves. */
const packDifference: ScaleDef = {
  id: 'pack-difference',
  kind: 'voltage',
  zones: ['ok', 'apart'],
  build: ({ sheet: { battery } }) => {
    const perPackOhms = battery.packResistanceOhm ?? 0.0125;
    const params = { most: packsAlikeVolts, ampsPerVolt: 1 / (2 * perPackOhms) };
    return {
      ok: true,
      scale: scaleOf(
        'pack-difference',
        'voltage',
        [
          ['ok', packsAlikeVolts],
          ['apart', null],
        ],
        {
          expected: 'ok',
          nominal: 0,
          why: [{ id: 'expected.packDifference', params }],
          uses: params,
          overRange: 'apart',
        },
      ),
    };
  },
};

/** The inverter's own screen beside the meter at its posts. */
const displayVolts: ScaleDef = {
  id: 'display-volts',
  kind: 'voltage',
  zones: ['below', 'ok', 'above'],
  build(context: ExpectContext) {
    const { battery } = context.sheet;
    const metered =
      earlierReading(context, 'first-power-up', 'at-i-again', 'volts') ??
      earlierReading(context, 'first-power-up', 'at-i', 'volts') ??
      battery.cellsInSeries * restingCellVolts;
    const within = screenVolts + voltsU(context.sheet, metered);
    const params = { metered, within, low: metered - within, high: metered + within };
    return {
      ok: true,
      scale: scaleOf(
        'display-volts',
        'voltage',
        [
          ['below', params.low],
          ['ok', params.high],
          ['above', null],
        ],
        { expected: 'ok', nominal: metered, why: [{ id: 'expected.displayVolts', params }], uses: params },
      ),
    };
  },
};

/** A cell at rest in the flat middle of its curve [V]. Common practice. */
export const restingCellVolts = 3.3;

const chargeCellTemp: ScaleDef = {
  id: 'charge-cell-temp',
  kind: 'temperature',
  zones: ['cold', 'ok', 'hot'],
  build({ sheet: { battery } }) {
    // The label may say less than freezing; the rule never does.
    const minC = Math.max(0, battery.chargeMinC ?? silentLabel.minC);
    const maxC = battery.chargeMaxC ?? silentLabel.maxC;
    const params = { minC, maxC };
    return {
      ok: true,
      scale: scaleOf(
        'charge-cell-temp',
        'temperature',
        [
          ['cold', minC],
          ['ok', maxC],
          ['hot', null],
        ],
        { expected: 'ok', why: [{ id: 'expected.chargeCellTemp', params }], uses: params },
      ),
    };
  },
};

const lowestCell: ScaleDef = {
  id: 'lowest-cell-volts',
  kind: 'voltage',
  zones: ['deep', 'ok', 'high'],
  build({ sheet: { battery } }) {
    const params = {
      least: battery.cellRecoverMinV ?? lowestRecoverableVolts,
      most: battery.cellMaxV,
    };
    return {
      ok: true,
      scale: scaleOf(
        'lowest-cell-volts',
        'voltage',
        [
          ['deep', params.least],
          ['ok', params.most],
          ['high', null],
        ],
        { expected: 'ok', why: [{ id: 'expected.lowestCell', params }], uses: params },
      ),
    };
  },
};

/** The bank, its packs and its cells. */
export const batteryScales: readonly ScaleDef[] = [
  batteryVolts,
  packDifference,
  displayVolts,
  chargeCellTemp,
  lowestCell,
];
