import { type AnchorId, anchorIds, type PointId, testPoints } from '../../drawings/plant/points.ts';
import type { Reading } from '../../guide/vocabulary.ts';

/** Where the two leads or the clamp go, by the drawing's own anchors. */
export interface Leads {
  red?: AnchorId;
  black?: AnchorId;
  clamp?: AnchorId;
}

const clampModes: readonly Reading['mode'][] = ['dcClamp', 'acClamp'];
/** Read with the eyes or a sensor: no lead goes anywhere. */
const leadless: readonly Reading['mode'][] = ['display', 'watch', 'temperature'];

/**
 * The leads of a reading: as the reading says, else as its test point or pair of leads says.
 * @returns `undefined` where no lead is put anywhere, and for a point that is not on the plant drawing (a proving source,
 * a fuse): there the author's words alone say where
 * @throws Error for a lead's place that the drawing has not
 */
export function leadsOf(reading: Reading): Leads | undefined {
  if (leadless.includes(reading.mode)) return undefined;
  const clamped = clampModes.includes(reading.mode);
  if (clamped && reading.red) return { clamp: anchor(reading.red) };
  if (reading.red && reading.black) return { red: anchor(reading.red), black: anchor(reading.black) };
  const point = testPoints[reading.point as PointId];
  const pairs = Object.values(testPoints).flatMap((each) => each.pairs);
  const fits = (pair: (typeof pairs)[number]) => 'clamp' in pair === clamped;
  const pair = pairs.find((each) => each.id === reading.point) ?? point?.pairs.find(fits);
  if (!pair) return undefined;
  return 'clamp' in pair ? { clamp: pair.clamp } : { red: pair.red, black: pair.black };
}

function anchor(id: string): AnchorId {
  const found = anchorIds.find((each) => each === id);
  if (!found) throw new Error(`the plant drawing has no place "${id}" for a lead`);
  return found;
}
