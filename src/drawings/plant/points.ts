/**
 * The test points of the whole product, named once: where they are, and which conductors the two leads go to.
 * A guide names a pair; the drawing puts the leads there; the words say it in a sentence.
 */

/** Test points, by the letters printed on the drawing. */
export const pointIds = ['P1', 'P2', 'PG', 'I', 'S2', 'S1', 'B', 'C', 'A', 'O', 'D', 'R', 'E'] as const;
export type PointId = (typeof pointIds)[number];

/** Single places where a lead tip or a clamp goes. `G` and `GA` are the grounding conductor, below and at the AC input. */
export const anchorIds = [
  'PS+',
  'P1+',
  'P1-',
  'P2+',
  'P2-',
  'PG',
  'I+',
  'I-',
  'S2+',
  'S2-',
  'S1+',
  'S1-',
  'B+',
  'B-',
  'C-H',
  'C-L',
  'A-L1',
  'A-N',
  'A-L2',
  'O-L1',
  'O-N',
  'O-L2',
  'D-L1',
  'D-N',
  'D-L2',
  'R-L',
  'R-N',
  'GA',
  'G',
] as const;
export type AnchorId = (typeof anchorIds)[number];

/** Where conductors are, in the words of the safety rules. */
export type DrawnZone =
  | 'packPost'
  | 'battBus'
  | 'invDC'
  | 'pvString'
  | 'pvBus'
  | 'acOut'
  | 'loadPanel'
  | 'acIn'
  | 'inlet'
  | 'control';

/** Two leads on two places, or a clamp round one conductor. */
export type LeadPair =
  | { id: string; red: AnchorId; black: AnchorId }
  /** A clamp: its arrow points the way that counts as positive. */
  | { id: string; clamp: AnchorId };

export interface TestPoint {
  id: PointId;
  /** Undefined: the grounding conductor, which belongs to no zone. */
  zone: DrawnZone | undefined;
  anchors: readonly AnchorId[];
  /** The first is meant where a reading names only the point. */
  pairs: readonly [LeadPair, ...LeadPair[]];
}

/** A split-phase place: leg to leg, and each leg to neutral. */
function legs(id: 'A' | 'O' | 'D', zone: DrawnZone): TestPoint {
  const ground = id === 'A' ? 'GA' : 'G';
  return {
    id,
    zone,
    anchors: [`${id}-L1`, `${id}-N`, `${id}-L2`],
    pairs: [
      { id: `${id}-V12`, red: `${id}-L1`, black: `${id}-L2` },
      { id: `${id}-V1`, red: `${id}-L1`, black: `${id}-N` },
      { id: `${id}-V2`, red: `${id}-L2`, black: `${id}-N` },
      { id: `${id}-NG`, red: `${id}-N`, black: ground },
      { id: `${id}-L1G`, red: `${id}-L1`, black: ground },
      { id: `${id}-L2G`, red: `${id}-L2`, black: ground },
      { id: `${id}-I1`, clamp: `${id}-L1` },
      { id: `${id}-I2`, clamp: `${id}-L2` },
      { id: `${id}-IN`, clamp: `${id}-N` },
    ],
  };
}

/** Every test point. */
export const testPoints: Readonly<Record<PointId, TestPoint>> = {
  P1: {
    id: 'P1',
    zone: 'pvString',
    anchors: ['P1+', 'P1-', 'PS+'],
    pairs: [
      { id: 'P1', red: 'P1+', black: 'P1-' },
      { id: 'P1-I', clamp: 'P1+' },
      // One of several strings in its combiner, before they join: P1+ carries all of them together.
      { id: 'PS-I', clamp: 'PS+' },
    ],
  },
  P2: {
    id: 'P2',
    zone: 'pvBus',
    anchors: ['P2+', 'P2-'],
    pairs: [
      { id: 'P2', red: 'P2+', black: 'P2-' },
      { id: 'P-across-plus', red: 'P1+', black: 'P2+' },
      { id: 'P-across-minus', red: 'P1-', black: 'P2-' },
      { id: 'P2-plus-G', red: 'P2+', black: 'PG' },
      { id: 'P2-minus-G', red: 'P2-', black: 'PG' },
      { id: 'P2-I', clamp: 'P2+' },
    ],
  },
  PG: {
    id: 'PG',
    zone: 'pvString',
    anchors: ['PG'],
    pairs: [
      { id: 'PG-plus', red: 'P1+', black: 'PG' },
      { id: 'PG-minus', red: 'P1-', black: 'PG' },
    ],
  },
  I: {
    id: 'I',
    zone: 'invDC',
    anchors: ['I+', 'I-'],
    pairs: [
      { id: 'I', red: 'I+', black: 'I-' },
      { id: 'I-plus-G', red: 'I+', black: 'G' },
      { id: 'I-minus-G', red: 'I-', black: 'G' },
      { id: 'I-I', clamp: 'I+' },
    ],
  },
  S2: {
    id: 'S2',
    zone: 'invDC',
    anchors: ['S2+', 'S2-'],
    pairs: [
      { id: 'S2', red: 'S2+', black: 'S2-' },
      { id: 'S-across-plus', red: 'S1+', black: 'S2+' },
      { id: 'S-across-minus', red: 'S1-', black: 'S2-' },
      { id: 'S2-I', clamp: 'S2+' },
    ],
  },
  S1: {
    id: 'S1',
    zone: 'battBus',
    anchors: ['S1+', 'S1-'],
    pairs: [
      { id: 'S1', red: 'S1+', black: 'S1-' },
      { id: 'S1-plus-G', red: 'S1+', black: 'G' },
      { id: 'S1-minus-G', red: 'S1-', black: 'G' },
      { id: 'S1-I', clamp: 'S1+' },
    ],
  },
  B: {
    id: 'B',
    zone: 'packPost',
    anchors: ['B+', 'B-'],
    pairs: [
      { id: 'B', red: 'B+', black: 'B-' },
      { id: 'B-I', clamp: 'B+' },
    ],
  },
  C: { id: 'C', zone: 'control', anchors: ['C-H', 'C-L'], pairs: [{ id: 'C', red: 'C-H', black: 'C-L' }] },
  A: legs('A', 'acIn'),
  O: legs('O', 'acOut'),
  D: {
    ...legs('D', 'loadPanel'),
    pairs: [
      ...legs('D', 'loadPanel').pairs,
      // Along one conductor of the feeder, end to end.
      { id: 'OD-L1', red: 'O-L1', black: 'D-L1' },
      { id: 'OD-L2', red: 'O-L2', black: 'D-L2' },
    ],
  },
  R: {
    id: 'R',
    zone: 'loadPanel',
    anchors: ['R-L', 'R-N'],
    pairs: [
      { id: 'R', red: 'R-L', black: 'R-N' },
      { id: 'R-NG', red: 'R-N', black: 'G' },
    ],
  },
  E: { id: 'E', zone: undefined, anchors: ['G'], pairs: [{ id: 'E', clamp: 'G' }] },
};

const pairsById: ReadonlyMap<string, LeadPair> = new Map(
  pointIds.flatMap((id) => testPoints[id].pairs.map((pair) => [pair.id, pair] as const)),
);

/** Where the leads go for a pair or a point; `undefined` when there is no such id (a screen, a watch). */
export function leadsOf(pairOrPoint: string): LeadPair | undefined {
  const pair = pairsById.get(pairOrPoint);
  if (pair) return pair;
  return Object.hasOwn(testPoints, pairOrPoint) ? testPoints[pairOrPoint as PointId].pairs[0] : undefined;
}

/** True when the text names a place on the drawing. */
export function isAnchor(id: string): id is AnchorId {
  return (anchorIds as readonly string[]).includes(id);
}
