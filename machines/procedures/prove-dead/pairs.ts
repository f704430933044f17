import type { Reading } from '../../../src/guide/vocabulary.ts';

/** What is measured of each place: every pair and each pole to earth, on DC and on AC. */

const dcPairs = (point: string): Record<string, Reading> => ({
  'plus-minus-dc': { point, scale: 'dead-dc', mode: 'dcVolts' },
  'plus-earth-dc': { point: `${point}-plus-G`, scale: 'dead-dc', mode: 'dcVolts' },
  'minus-earth-dc': { point: `${point}-minus-G`, scale: 'dead-dc', mode: 'dcVolts' },
  'plus-minus-ac': { point, scale: 'dead-ac', mode: 'acVolts' },
  'plus-earth-ac': { point: `${point}-plus-G`, scale: 'dead-ac', mode: 'acVolts' },
  'minus-earth-ac': { point: `${point}-minus-G`, scale: 'dead-ac', mode: 'acVolts' },
});

/** Each reading is the largest of its kind, so that one table serves one hot conductor and two. */
const acPairs = (point: string): Record<string, Reading> => ({
  'hots-ac': { point: `${point}-V1`, scale: 'dead-ac', mode: 'acVolts' },
  'hots-earth-ac': { point: `${point}-L1G`, scale: 'dead-ac', mode: 'acVolts' },
  'neutral-earth-ac': { point: `${point}-NG`, scale: 'dead-ac', mode: 'acVolts' },
  'hots-dc': { point: `${point}-V1`, scale: 'dead-dc', mode: 'dcVolts' },
  'hots-earth-dc': { point: `${point}-L1G`, scale: 'dead-dc', mode: 'dcVolts' },
  'neutral-earth-dc': { point: `${point}-NG`, scale: 'dead-dc', mode: 'dcVolts' },
});

/** A row's pattern: every reading of the table in one of these zones. */
export const every = (readings: Record<string, Reading>, zones: string | string[]) =>
  Object.fromEntries(Object.keys(readings).map((id) => [id, zones]));

export const invDcPairs = dcPairs('I');
export const pvPairs = dcPairs('P2');
export const outPairs = acPairs('O');
export const inPairs = acPairs('A');
