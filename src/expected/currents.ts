import { idleDraw } from '../worksheets/battery-dc/idle-draw.ts';
import { restingCellVolts } from './battery.ts';
import type { ExpectContext, ScaleDef, WorkDef } from './context.ts';
import { earlierReading } from './earlier.ts';
import { batteryZeroAmps, noCurrentRule, pvZeroAmps } from './no-current.ts';
import { scaleOf } from './pv/build.ts';

/** Sheet silent on idle draw: more than this share of rated power is out of the ordinary. Common practice. */
const idleShareOfRated = 0.03;
/** An idle reading this far from the sheet's figure is worth a note, and never less than the clamp's own error. Common practice. */
const idleWithin = { share: 0.3, watts: 25 };
/** What a clamp is off after the jaw was flipped and the difference halved [A]. Common practice. */
const flippedClampAmps = 0.2;

function noCurrent(id: string, most: number, why: string): ScaleDef {
  return {
    id,
    kind: 'current',
    zones: ['zero', 'flows'],
    build: ({ sheet }) => ({
      ok: true,
      scale: scaleOf(
        id,
        'current',
        [
          ['zero', most],
          ['flows', null],
        ],
        { ...noCurrentRule(sheet, most, { id: why, params: { most } }), uses: { most } },
      ),
    }),
  };
}

/** Idle current this unit should draw [A], and how far from it is unremarkable. */
function expectedIdle({ sheet }: ExpectContext) {
  const { idleW, ratedW } = sheet.inverter;
  const volts = sheet.battery.cellsInSeries * restingCellVolts;
  const watts = idleW ?? (idleShareOfRated * ratedW) / 2;
  const within = idleW === null ? watts : Math.max(idleWithin.share * idleW, idleWithin.watts);
  const clampAmps = 1;
  return {
    watts,
    amps: watts / volts,
    low: Math.max(0, watts - within) / volts - clampAmps,
    high: (watts + within) / volts + clampAmps,
    volts,
  };
}

const idleAmps: ScaleDef = {
  id: 'idle-amps',
  kind: 'current',
  zones: ['low', 'ok', 'high'],
  build(context) {
    const params = expectedIdle(context);
    return {
      ok: true,
      scale: scaleOf(
        'idle-amps',
        'current',
        [
          ['low', params.low],
          ['ok', params.high],
          ['high', null],
        ],
        { expected: 'ok', nominal: params.amps, why: [{ id: 'expected.idleAmps', params }], uses: params },
      ),
    };
  },
};

/** The jaw turned round: the same current with the other sign. More draw is further below zero. */
const idleAmpsFlipped: ScaleDef = {
  id: 'idle-amps-flipped',
  kind: 'current',
  zones: ['high', 'ok', 'low'],
  build(context) {
    const params = expectedIdle(context);
    return {
      ok: true,
      scale: scaleOf(
        'idle-amps-flipped',
        'current',
        [
          ['high', -params.high],
          ['ok', -params.low],
          ['low', null],
        ],
        {
          expected: 'ok',
          nominal: -params.amps,
          why: [{ id: 'expected.idleAmpsFlipped', params }],
          uses: params,
        },
      ),
    };
  },
};

/** No current, and the little that an idle inverter draws. */
export const currentScales: readonly ScaleDef[] = [
  noCurrent('pv-zero', pvZeroAmps, 'expected.pvZero'),
  noCurrent('battery-zero', batteryZeroAmps, 'expected.batteryZero'),
  idleAmps,
  idleAmpsFlipped,
];

/** What the inverter burns by itself, in watts, per day, and in array. */
const idleWork: WorkDef = {
  id: 'idle-draw',
  answers: ['as-sheet', 'high', 'low', 'noted'],
  work(context) {
    const { sheet } = context;
    const read = (id: string) => earlierReading(context, 'ac-output-check', 'idle', id) ?? 0;
    const amps = Math.max(0, (read('amps') - read('flipped')) / 2);
    const inputs = {
      busVolts: Math.abs(read('volts')),
      amps,
      ampsError: flippedClampAmps,
      windowS: idleDraw.inputs.windowS.default,
      chargePath: idleDraw.inputs.chargePath.default,
      nightS: idleDraw.inputs.nightS.default,
      bankJoules: bankJoules(context),
    };
    const given = { ...inputs, loadWatts: undefined, loadedAmps: undefined, loadedVolts: undefined };
    const result = idleDraw.compute(given);
    if (!result.ok)
      return { ok: true, outcome: 'noted', use: { worksheet: 'idle-draw', inputs }, says: [result.reason] };
    const watts = result.out.idleWatts ?? 0;
    const { idleW } = sheet.inverter;
    const figures = {
      watts,
      amps,
      volts: inputs.busVolts,
      dayJoules: result.out.dayJoules ?? 0,
      arrayLosslessWatts: result.out.arrayLosslessWatts ?? 0,
      arrayWatts: result.out.arrayWatts ?? 0,
    };
    return {
      ok: true,
      outcome: idleW === null ? 'noted' : againstSheet(watts, idleW),
      use: { worksheet: 'idle-draw', inputs },
      says: [
        { id: 'expected.idle.draw', params: figures },
        ...(idleW === null ? [] : [{ id: 'expected.idle.sheet', params: { idleW } }]),
        ...(idleDraw.remarks?.(given, result.out) ?? []),
      ],
    };
  },
};

function againstSheet(watts: number, sheetWatts: number): 'as-sheet' | 'high' | 'low' {
  const within = Math.max(idleWithin.share * sheetWatts, idleWithin.watts);
  if (watts > sheetWatts + within) return 'high';
  return watts < sheetWatts - within ? 'low' : 'as-sheet';
}

/** Energy of the bank [J]: rated ampere-hours at a resting cell's volts. */
const bankJoules = ({ sheet: { battery } }: ExpectContext): number =>
  battery.packs * battery.packCapacityAh * 3600 * battery.cellsInSeries * restingCellVolts;

export const currentWorks: readonly WorkDef[] = [idleWork];
