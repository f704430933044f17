import { preCharge } from '../worksheets/battery-dc/pre-charge.ts';
import { restingCellVolts } from './battery.ts';
import type { ExpectContext, Missing, ScaleDef, WorkDef } from './context.ts';
import { earlierReading, earlierSeries } from './earlier.ts';
import { scaleOf } from './pv/build.ts';

/** The two sides of an open switch count as alike within this share of the source. This project's choice; safety rule I5. */
export const alikeShare = 0.05;
/** A bus pushed this far below zero is fed the wrong way round [V]. Common practice. */
const reversedVolts = -1;
/** Less than this on the bus is no charge worth speaking of [V]: the dead threshold. */
const unchargedVolts = 3;
/** A bus that only holds charge loses at least this share of its volts in a minute of waiting. Common practice. */
const fallShare = 0.1;
/** Sheet silent on capacitance: the high end for one unit of this class [F]. Common practice. */
export const largestUnitF = 0.03;
/** A bank that needs this much longer than its own figures say is held back by something. This project's choice. */
const slowShare = 5 / 3;

/** Battery volts at the switch: as last read in the procedure, else a bank at rest. */
const sourceVolts = (context: ExpectContext): number =>
  earlierReading(context, 'pre-charge', 'sides', 's1') ??
  earlierReading(context, 'pre-charge', 's1', 's1') ??
  context.sheet.battery.cellsInSeries * restingCellVolts;

const s2Before: ScaleDef = {
  id: 's2-before',
  kind: 'voltage',
  zones: ['reversed', 'absent', 'apart', 'alike', 'above'],
  build(context) {
    const source = sourceVolts(context);
    const params = { source, low: (1 - alikeShare) * source, high: (1 + alikeShare) * source };
    return {
      ok: true,
      scale: scaleOf(
        's2-before',
        'voltage',
        [
          ['reversed', reversedVolts],
          ['absent', unchargedVolts],
          ['apart', params.low],
          ['alike', params.high],
          ['above', null],
        ],
        {
          expected: 'absent',
          nominal: 0,
          why: [{ id: 'expected.s2Before', params }],
          uses: params,
          overRange: 'above',
        },
      ),
    };
  },
};

const s2Fell: ScaleDef = {
  id: 's2-fell',
  kind: 'voltage',
  zones: ['fell', 'held'],
  build(context) {
    const before = earlierReading(context, 'pre-charge', 'sides', 's2') ?? sourceVolts(context);
    const params = { before, most: (1 - fallShare) * before };
    return {
      ok: true,
      scale: scaleOf(
        's2-fell',
        'voltage',
        [
          ['fell', params.most],
          ['held', null],
        ],
        { expected: 'fell', why: [{ id: 'expected.s2Fell', params }], uses: params, overRange: 'held' },
      ),
    };
  },
};

const s2Rise: ScaleDef = {
  id: 's2-rise',
  kind: 'voltage',
  zones: ['reversed', 'under', 'charged', 'above'],
  build(context) {
    const source = sourceVolts(context);
    const params = {
      source,
      low: (1 - alikeShare) * source,
      high: (1 + alikeShare) * source,
      fiveTauS: 5 * expectedTauS(context),
    };
    return {
      ok: true,
      scale: scaleOf(
        's2-rise',
        'voltage',
        [
          ['reversed', reversedVolts],
          ['under', params.low],
          ['charged', params.high],
          ['above', null],
        ],
        {
          expected: 'charged',
          nominal: source,
          why: [{ id: 'expected.s2Rise', params }],
          uses: params,
          overRange: 'above',
        },
      ),
    };
  },
};

const acrossMain: ScaleDef = {
  id: 'across-main',
  kind: 'voltage',
  zones: ['ok', 'apart'],
  build(context) {
    const source = sourceVolts(context);
    const params = { source, most: alikeShare * source };
    return {
      ok: true,
      scale: scaleOf(
        'across-main',
        'voltage',
        [
          ['ok', params.most],
          ['apart', null],
        ],
        { expected: 'ok', why: [{ id: 'expected.acrossMain', params }], uses: params, overRange: 'apart' },
      ),
    };
  },
};

/** Both sides of the open main switch, before, during and after. */
export const preChargeScales: readonly ScaleDef[] = [s2Before, s2Fell, s2Rise, acrossMain];

/** Capacitance on the bus [F]: all units of the install, the high end where the sheet is silent. */
const bankF = ({ sheet }: ExpectContext): number =>
  (sheet.inverter.busCapacitanceF ?? largestUnitF) * sheet.parallelUnits;

const expectedTauS = (context: ExpectContext): number =>
  (context.sheet.precharge.resistorOhm ?? 0) * bankF(context);

/** The worksheet's inputs from the sheet; what the resistor is, is asked for. */
function worksheetInputs(context: ExpectContext, source: number) {
  const { resistorOhm, ratedW, ratedEnergyJ } = context.sheet.precharge;
  const missing = [
    ...(resistorOhm === null ? ['precharge.resistorOhm'] : []),
    ...(ratedW === null ? ['precharge.ratedW'] : []),
  ];
  if (resistorOhm === null || ratedW === null) return { ok: false, missing } satisfies Missing;
  return {
    ok: true as const,
    inputs: {
      sourceVolts: source,
      resistorOhms: resistorOhm,
      capacitanceF: bankF(context),
      startVolts: 0,
      standbyWatts: 0,
      pathOhms: 0.01,
      ratedWatts: ratedW,
      ...(ratedEnergyJ === null ? {} : { pulseJoules: ratedEnergyJ }),
    },
  };
}

/** Does the resistor in the van suit this bus: gentle enough, soon enough, and not overheated by one try? */
const resistor: WorkDef = {
  id: 'pre-charge-resistor',
  answers: ['fits', 'unfit'],
  work(context) {
    const { battery } = context.sheet;
    const found = worksheetInputs(context, battery.cellsInSeries * battery.cellMaxV);
    if (!found.ok) return found;
    const { inputs } = found;
    const given = { ...inputs, pulseJoules: inputs.pulseJoules, readings: [] };
    const result = preCharge.compute(given);
    if (!result.ok)
      return { ok: true, outcome: 'unfit', worksheet: 'pre-charge', inputs, says: [result.reason] };
    const { leastOhms, mostOhms, tries, peakAmps, fiveTauS, joules } = result.out;
    const ohms = inputs.resistorOhms;
    const inRange =
      leastOhms !== undefined && mostOhms !== undefined && ohms >= leastOhms && ohms <= mostOhms;
    const figures = { ohms, peakAmps: peakAmps ?? 0, fiveTauS: fiveTauS ?? 0, joules: joules ?? 0 };
    return {
      ok: true,
      outcome: inRange && (tries ?? 0) >= 1 ? 'fits' : 'unfit',
      worksheet: 'pre-charge',
      inputs,
      says: [
        { id: 'expected.preCharge.resistor', params: figures },
        ...(context.sheet.inverter.busCapacitanceF === null
          ? [{ id: 'expected.preCharge.bankAssumed', params: { capacitanceF: inputs.capacitanceF } }]
          : []),
        ...(preCharge.remarks?.(given, result.out) ?? []),
      ],
    };
  },
};

/** What the rise says: charged, charged but late, held by a load or a short, or read too early. */
const fit: WorkDef = {
  id: 'pre-charge-fit',
  answers: ['complete', 'slow', 'load', 'short', 'rising', 'unclear'],
  work(context) {
    const source = sourceVolts(context);
    const found = worksheetInputs(context, source);
    if (!found.ok) return found;
    const inputs = {
      ...found.inputs,
      startVolts: Math.max(0, earlierReading(context, 'pre-charge', 'sides', 's2') ?? 0),
    };
    const rise = earlierSeries(context, 'pre-charge', 'rise', 's2') ?? [];
    const given = {
      ...inputs,
      pulseJoules: inputs.pulseJoules,
      readings: rise.map(([tS, value]) => ({ tS, value })),
    };
    const result = preCharge.compute(given);
    if (!result.ok)
      return { ok: true, outcome: 'unclear', worksheet: 'pre-charge', inputs, says: [result.reason] };
    const { verdict, seenTauS, tauS } = result.out;
    // Without a figure for the bank there is nothing to be late against.
    const knownBank = context.sheet.inverter.busCapacitanceF !== null;
    const late = knownBank && seenTauS !== undefined && tauS !== undefined && seenTauS > slowShare * tauS;
    const outcomes = {
      noReadings: 'unclear',
      charged: late ? 'slow' : 'complete',
      rising: 'rising',
      load: 'load',
      short: 'short',
    } as const;
    return {
      ok: true,
      outcome: outcomes[verdict ?? 'noReadings'],
      worksheet: 'pre-charge',
      inputs,
      says: [
        ...(seenTauS !== undefined && tauS !== undefined
          ? [{ id: 'expected.preCharge.tauSeen', params: { seenTauS, tauS } }]
          : []),
        ...(preCharge.remarks?.(given, result.out) ?? []),
      ],
    };
  },
};

export const preChargeWorks: readonly WorkDef[] = [resistor, fit];

/** Seconds a try must rest for the resistor to have cooled; the worksheet's own figure, at least half a minute. */
export function coolSeconds(context: ExpectContext): number {
  const { battery } = context.sheet;
  const found = worksheetInputs(context, battery.cellsInSeries * battery.cellMaxV);
  const silent = 180;
  if (!found.ok) return silent;
  const result = preCharge.compute({
    ...found.inputs,
    pulseJoules: found.inputs.pulseJoules,
    readings: [],
  });
  return result.ok ? Math.max(30, Math.ceil(result.out.coolPerTryS ?? silent)) : silent;
}
