import { preCharge } from '../worksheets/battery-dc/pre-charge.ts';
import type { ExpectContext, Missing, WorkDef } from './context.ts';
import { earlierReading, earlierSeries } from './earlier.ts';
import { bankF, sourceVolts } from './pre-charge-site.ts';

/** A bus that only fills never falls. One that falls by this share of the source is drawn down; less is the meter. Common practice. */
const fellShare = 0.02;
/** A bank that needs this much longer than its own figures say is held back by something. This project's choice. */
const slowShare = 5 / 3;

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
      return { ok: true, outcome: 'unfit', use: { worksheet: 'pre-charge', inputs }, says: [result.reason] };
    const { leastOhms, mostOhms, tries, peakAmps, fiveTauS, joules } = result.out;
    const ohms = inputs.resistorOhms;
    const inRange =
      leastOhms !== undefined && mostOhms !== undefined && ohms >= leastOhms && ohms <= mostOhms;
    const figures = { ohms, peakAmps: peakAmps ?? 0, fiveTauS: fiveTauS ?? 0, joules: joules ?? 0 };
    return {
      ok: true,
      outcome: inRange && (tries ?? 0) >= 1 ? 'fits' : 'unfit',
      use: { worksheet: 'pre-charge', inputs },
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

/** The last reading and the highest before it [V]. */
function fallOf(volts: readonly number[]): { high: number; low: number } | undefined {
  const low = volts.at(-1);
  return low === undefined ? undefined : { high: Math.max(...volts), low };
}

/** What the rise says: charged, charged but late, held by a load or a short, or read too early. */
const fit: WorkDef = {
  id: 'pre-charge-fit',
  answers: ['complete', 'slow', 'fell', 'load', 'short', 'rising', 'unclear'],
  work(context) {
    const source = sourceVolts(context);
    const found = worksheetInputs(context, source);
    if (!found.ok) return found;
    const inputs = {
      ...found.inputs,
      startVolts: Math.max(0, earlierReading(context, 'pre-charge', 'sides', 's2') ?? 0),
    };
    const rise = earlierSeries(context, 'pre-charge', 'rise', 's2') ?? [];
    const drop = fallOf(rise.map(([, value]) => value));
    const use = { worksheet: 'pre-charge', inputs, rows: { readings: rise } };
    // A bus that is the wrong way round has not fallen: nothing is said of it here.
    if (drop !== undefined && drop.low >= 0 && drop.high - drop.low > fellShare * source)
      return {
        ok: true,
        outcome: 'fell',
        use,
        says: [{ id: 'expected.preCharge.fell', params: drop }],
      };
    const given = {
      ...inputs,
      pulseJoules: inputs.pulseJoules,
      readings: rise.map(([tS, value]) => ({ tS, value })),
    };
    const result = preCharge.compute(given);
    if (!result.ok) return { ok: true, outcome: 'unclear', use, says: [result.reason] };
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
      use,
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
