import type { MessageRef } from '../quantity/message.ts';
import type { MeterSpec } from '../quantity/meter.ts';
import { cautiousMeter, meterSpecOf } from '../site/meter.ts';
import type { SiteSheet } from '../site/sheet.ts';
import { idleDraw } from '../worksheets/battery-dc/idle-draw.ts';
import { restingCellVolts } from './battery.ts';
import type { ExpectContext, ScaleDef, WorkDef } from './context.ts';
import { earlierReading } from './earlier.ts';
import { zeroAmps } from './pv/amps.ts';
import { scaleOf } from './pv/build.ts';

/** A battery circuit may be opened up to this current, which standby electronics draw [A]. This project's choice; safety rule I2 and I20. */
export const batteryZeroAmps = 2;
/** Sheet silent on idle draw: more than this share of rated power is out of the ordinary. Common practice. */
const idleShareOfRated = 0.03;
/** An idle reading this far from the sheet's figure is worth a note, and never less than the clamp's own error. Common practice. */
const idleWithin = { share: 0.3, watts: 25 };
/** What a clamp is off after the jaw was flipped and the difference halved [A]. Common practice. */
const flippedClampAmps = 0.2;

/** Last digits that clamps have [A]. */
const clampDigits = { tenths: 0.1, hundredths: 0.01 } as const;

/** The most that a clamp may show while its own error leaves the current within `most` [A]; below zero: it never can. */
function mostShown(spec: MeterSpec, most: number, digitAmps: number): number {
  const shown = (most - spec.counts * digitAmps) / (1 + spec.percentOfReading / 100);
  // A whole number of last digits; the little extra keeps binary fractions from losing one.
  return Math.floor(shown / digitAmps + 1e-6) * digitAmps;
}

/** What this site's clamp must show to show no current, or that it cannot. */
function whatClampShows(sheet: SiteSheet, most: number): MessageRef[] {
  const known = meterSpecOf(sheet, 'dcClamp');
  const spec = known ?? cautiousMeter.dcClamp;
  const tenths = mostShown(spec, most, clampDigits.tenths);
  const hundredths = mostShown(spec, most, clampDigits.hundredths);
  const params = { percent: spec.percentOfReading, counts: spec.counts, tenths, hundredths };
  const kind = tenths >= 0 ? 'shows' : hundredths >= 0 ? 'needsHundredths' : 'cannot';
  return [...(known ? [] : [{ id: 'expected.clamp.assumed' }]), { id: `expected.clamp.${kind}`, params }];
}

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
        {
          expected: 'zero',
          nominal: 0,
          why: [{ id: why, params: { most } }, ...whatClampShows(sheet, most)],
          uses: { most },
          overRange: 'flows',
          error: 'halfWidth',
        },
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
  noCurrent('pv-zero', zeroAmps, 'expected.pvZero'),
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
      return { ok: true, outcome: 'noted', worksheet: 'idle-draw', inputs, says: [result.reason] };
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
      worksheet: 'idle-draw',
      inputs,
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
