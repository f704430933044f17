import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';

/** A leg under this share of the other one has no angle worth the name. Common practice. */
const deadShare = 0.1;

/** Less on both legs is an output that is off [V]. */
const leastVolts = 1;

/** Three magnitudes, each with how far off it may be [V]. */
export interface Magnitudes {
  v1: number;
  v2: number;
  v12: number;
  /** Half-width of the meter's interval for a reading [V]. */
  error: (volts: number) => number;
}

export type LegAngle =
  | { kind: 'legDead' | 'doNotClose' }
  | {
      kind: 'opposed' | 'third' | 'inPhase' | 'between' | 'cannotTell';
      low: number;
      best: number;
      high: number;
    };

const known = [
  ['inPhase', 0],
  ['third', 120],
  ['opposed', 180],
] as const;

const degrees = (cosine: number) => (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI;

/**
 * The angle between two legs from three magnitudes: V12² = V1² + V2² − 2·V1·V2·cos θ. Near 180° and near 0° a small error
 * of a volt is many degrees, and the three may seem not to close at all: what the meter allows decides.
 */
export function legAngleOf({ v1, v2, v12, error }: Magnitudes): LegAngle {
  if (Math.min(v1, v2) <= deadShare * Math.max(v1, v2)) return { kind: 'legDead' };
  const ends = (volts: number) => [Math.max(0.01, volts - error(volts)), volts + error(volts)] as const;
  const [a, b, c] = [ends(v1), ends(v2), ends(v12)];
  // No triangle, even at the meter's worst.
  if (c[0] > a[1] + b[1] || c[1] < Math.max(a[0] - b[1], b[0] - a[1])) return { kind: 'doNotClose' };
  const cosine = (x: number, y: number, z: number) => (x ** 2 + y ** 2 - z ** 2) / (2 * x * y);
  const corners = a.flatMap((x) => b.flatMap((y) => c.map((z) => cosine(x, y, z))));
  const low = degrees(Math.max(...corners));
  const high = degrees(Math.min(...corners));
  const best = degrees(cosine(v1, v2, v12));
  const inside = known.filter(([, angle]) => angle >= low && angle <= high);
  const kind = inside.length === 1 ? inside[0]![0] : inside.length === 0 ? 'between' : 'cannotTell';
  return { kind, low, best, high };
}

export const legAngle = defineWorksheet({
  id: 'leg-angle',
  group: 'ac',
  hazards: ['ac-shock', 'live-metering'],
  inputs: {
    v12: { kind: 'voltage', min: 0, max: 600 },
    v1: { kind: 'voltage', min: 0, max: 400 },
    v2: { kind: 'voltage', min: 0, max: 400 },
    ofReading: { kind: 'ratio', min: 0, max: 0.1, default: 0.01, from: ['meter.acVolts.ofReading'] },
    countsVolts: { kind: 'voltage', min: 0, max: 10, default: 0.3 },
  },
  outputs: {
    verdict: {
      verdicts: ['opposed', 'third', 'inPhase', 'between', 'cannotTell', 'legDead', 'doNotClose'],
      headline: true,
    },
    angle: { kind: 'count', decimals: 0, headline: true },
    angleLow: { kind: 'count', decimals: 0 },
    angleHigh: { kind: 'count', decimals: 0 },
    opposedVolts: { kind: 'voltage' },
    thirdVolts: { kind: 'voltage' },
    gapVolts: { kind: 'voltage' },
    errorVolts: { kind: 'voltage' },
  },
  compute(given) {
    const { v1, v2, v12, ofReading, countsVolts } = given;
    if (Math.max(v1, v2) < leastVolts) return refuse('worksheet.leg-angle.nothing');
    const error = (volts: number) => ofReading * volts + countsVolts;
    const found = legAngleOf({ v1, v2, v12, error });
    const angles = 'best' in found ? found : undefined;
    return give({
      verdict: found.kind,
      angle: angles?.best,
      angleLow: angles?.low,
      angleHigh: angles?.high,
      opposedVolts: v1 + v2,
      thirdVolts: Math.sqrt(v1 ** 2 + v2 ** 2 + v1 * v2),
      gapVolts: Math.abs(v1 - v2),
      errorVolts: error(v1) + error(v2) + error(v12),
    });
  },
  working(given, out) {
    return [
      say('opposed', given, out),
      say('third', given, out),
      say('inPhase', given, out),
      ...(out.angle === undefined ? [] : [say('angle', given, out)]),
      say('error', given, out),
    ];
  },
  remarks(given, out) {
    const past = out.verdict === 'opposed' && given.v12 > given.v1 + given.v2;
    return [out.verdict, ...(past ? ['pastClosing'] : [])].map((id) =>
      say(`worksheet.leg-angle.${id}`, given, out),
    );
  },
  sources: [{ id: 'kuphaldt-ac', clause: 'complex numbers, phasor sums' }, { id: 'common-practice' }],
});
