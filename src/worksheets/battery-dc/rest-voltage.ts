import { defineWorksheet, type Plot, type ResultsOf } from '../define.ts';
import { give } from '../result.ts';
import { say } from '../say.ts';
import { chargeAt, restVoltsAt } from '../tables/lfp-ocv.ts';

/** How far a cell's rest volts may lie from the curve here: half its hysteresis, other makes, temperature [V]. Common practice. */
export const usualCurveError = 0.03;

/** What a cell's volts may still move after that long a rest [V], by the least rest [s]. Common practice. */
const settling = [
  { fromS: 0, volts: 0.06 },
  { fromS: 600, volts: 0.03 },
  { fromS: 3600, volts: 0.015 },
  { fromS: 14_400, volts: 0.005 },
] as const;

/** No cell rests above the one or below the other; under the second its pack is out of service [V]. Common practice. */
const restLimits = { high: 3.45, low: 2.5 };
/** Charges at which the verdicts part. */
const marks = { empty: 0.1, low: 0.3, full: 0.9 };
/** What is drawn of the curve: a rested bank shows nothing outside it [V a cell]. */
const drawn = { low: 2.9, high: 3.45, points: 120 };

const inputs = {
  cells: { kind: 'count', min: 4, max: 20, from: ['battery.cellsInSeries'] },
  volts: { kind: 'voltage', min: 5, max: 80 },
  voltsError: { kind: 'voltage', min: 0, max: 2, default: 0.1 },
  restS: { kind: 'time', min: 0, max: 864_000, default: 7200, unit: 'h' },
  before: { options: ['unknown', 'charged', 'discharged'], default: 'unknown' },
  curveError: { kind: 'voltage', min: 0.005, max: 0.1, default: usualCurveError, unit: 'mV' },
} as const;
const outputs = {
  verdict: {
    verdicts: ['underService', 'nearlyEmpty', 'low', 'middle', 'nearlyFull', 'notAtRest'],
    headline: true,
  },
  leastCharge: { kind: 'ratio', headline: true },
  mostCharge: { kind: 'ratio', headline: true },
  width: { kind: 'ratio' },
  cellVolts: { kind: 'voltage' },
  leastCellVolts: { kind: 'voltage' },
  mostCellVolts: { kind: 'voltage' },
  settlingVolts: { kind: 'voltage' },
  tenthVolts: { kind: 'voltage' },
} as const;
type Out = ResultsOf<typeof outputs>;

/** Charges, 0 to 1, that a cell's rest volts leave possible [V]. */
export function chargeBand(leastCellVolts: number, mostCellVolts: number): { least: number; most: number } {
  return { least: chargeAt(leastCellVolts), most: chargeAt(mostCellVolts) };
}

/** What a rest voltage can and cannot say about charge. */
export const restVoltage = defineWorksheet({
  id: 'rest-voltage',
  group: 'battery-dc',
  hazards: ['parallel-packs', 'live-metering'],
  inputs,
  outputs,
  compute(given) {
    const { cells, volts, voltsError, before, curveError } = given;
    const cellVolts = volts / cells;
    const settlingVolts = settling.findLast((step) => given.restS >= step.fromS)!.volts;
    const error = voltsError / cells + curveError;
    // After a charge the volts still fall, after a discharge they still rise.
    const leastCellVolts = cellVolts - error - (before === 'discharged' ? 0 : settlingVolts);
    const mostCellVolts = cellVolts + error + (before === 'charged' ? 0 : settlingVolts);
    const band = chargeBand(leastCellVolts, mostCellVolts);
    // Outwards to whole per cents: a decimal would claim what the volts do not hold.
    const leastCharge = Math.floor(100 * band.least) / 100;
    const mostCharge = Math.ceil(100 * band.most) / 100;
    const atRest = cellVolts <= restLimits.high;
    return give({
      verdict: atRest ? verdictOf(cellVolts, band) : ('notAtRest' as const),
      leastCharge: atRest ? leastCharge : undefined,
      mostCharge: atRest ? mostCharge : undefined,
      width: atRest ? mostCharge - leastCharge : undefined,
      cellVolts,
      leastCellVolts,
      mostCellVolts,
      settlingVolts,
      tenthVolts: cells * (restVoltsAt(0.6) - restVoltsAt(0.5)),
    });
  },
  working(given, out) {
    return [
      say('cell', given, out),
      say('least', given, out, { fallVolts: given.before === 'discharged' ? 0 : (out.settlingVolts ?? 0) }),
      say('most', given, out, { riseVolts: given.before === 'charged' ? 0 : (out.settlingVolts ?? 0) }),
      ...(out.width === undefined ? [] : [say('charge', given, out)]),
      say('tenth', given, out),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...(out.width === undefined || out.width < 0.1 ? [] : ['twoPacks']),
      ...(given.restS < settling[2].fromS ? ['shortRest'] : []),
      'counting',
    ];
    return ids.map((id) => say(`worksheet.rest-voltage.${id}`, given, out));
  },
  plot(given, out): Plot {
    const { cells } = given;
    const charges = Array.from({ length: drawn.points + 1 }, (_, at) => at / drawn.points).filter(
      (charge) => restVoltsAt(charge) >= drawn.low && restVoltsAt(charge) <= drawn.high,
    );
    const shown = (volts: number): boolean => volts >= drawn.low && volts <= drawn.high;
    return {
      x: { kind: 'ratio', low: 0, high: 1 },
      y: { kind: 'voltage', low: drawn.low * cells, high: drawn.high * cells },
      curves: [
        { id: 'rest', points: charges.map((charge) => [charge, cells * restVoltsAt(charge)] as const) },
      ],
      levels: [
        { id: 'least', axis: 'y' as const, at: out.leastCellVolts ?? 0 },
        { id: 'read', axis: 'y' as const, at: out.cellVolts ?? 0 },
        { id: 'most', axis: 'y' as const, at: out.mostCellVolts ?? 0 },
      ]
        .filter((level) => shown(level.at))
        .map((level) => ({ ...level, at: level.at * cells })),
      marks: [],
    };
  },
  sources: [
    { id: 'lfp-ocv-2025', clause: 'open data, C/32' },
    { id: 'lfp-hysteresis' },
    { id: 'common-practice' },
  ],
});

function verdictOf(cellVolts: number, { least, most }: { least: number; most: number }): Out['verdict'] {
  if (cellVolts < restLimits.low) return 'underService';
  if (most <= marks.empty) return 'nearlyEmpty';
  if (most <= marks.low) return 'low';
  return least >= marks.full ? 'nearlyFull' : 'middle';
}
