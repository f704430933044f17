import { type PointId, testPoints } from '../../drawings/plant/points.ts';
import type { Reading } from '../../guide/vocabulary.ts';

/** Where the two leads or the clamp go, by the drawing's own anchors. */
export interface Leads {
  red?: string;
  black?: string;
  clamp?: string;
}

const clampModes: readonly Reading['mode'][] = ['dcClamp', 'acClamp'];
/** Read with the eyes or a sensor: no lead goes anywhere. */
const leadless: readonly Reading['mode'][] = ['display', 'watch', 'temperature'];

/**
 * The leads of a reading: as the reading says, else as its test point or pair of leads says.
 * `undefined` where no lead is put anywhere or the point is not on the drawing.
 */
export function leadsOf(reading: Reading): Leads | undefined {
  if (leadless.includes(reading.mode)) return undefined;
  if (reading.red && reading.black) return { red: reading.red, black: reading.black };
  const clamped = clampModes.includes(reading.mode);
  if (clamped && reading.red) return { clamp: reading.red };
  const point = testPoints[reading.point as PointId];
  const pairs = Object.values(testPoints).flatMap((each) => each.pairs);
  const fits = (pair: (typeof pairs)[number]) => 'clamp' in pair === clamped;
  const pair = pairs.find((each) => each.id === reading.point) ?? point?.pairs.find(fits);
  if (!pair) return undefined;
  return 'clamp' in pair ? { clamp: pair.clamp } : { red: pair.red, black: pair.black };
}
