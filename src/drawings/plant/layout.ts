import type { Spot } from '../svg.ts';
import type { AnchorId, DrawnZone, PointId } from './points.ts';

/** Where everything stands on the sheet. One unit is about 0.8 px on a phone, when the whole plant is shown. */
export const sheet = { width: 460, height: 668 } as const;

/** Columns of conductors. */
export const x = {
  plus: 80,
  minus: 164,
  link: 194,
  ground: 230,
  l1: 276,
  neutral: 322,
  l2: 368,
  code: 424,
} as const;

/** Rows, from the modules down to the battery and the loads. */
export const y = {
  modules: 40,
  p1: 116,
  p2: 186,
  inverterTop: 238,
  inverterBottom: 330,
  s2: 374,
  s1: 440,
  plusBus: 504,
  minusBus: 520,
  posts: 574,
  packBottom: 632,
  panelTop: 412,
  panelBottom: 508,
  receptacle: 566,
} as const;

/** A device that can be drawn open, closed or locked. */
export type DrawnDevice = 'packs' | 'main' | 'pv' | 'acIn' | 'acOut';

/** Parts that a person points at: the front page's way in, and what a step can put the eye on. */
export const partIds = [
  'strings',
  'pvIsolator',
  'generator',
  'inverter',
  'mainSwitch',
  'outputBreaker',
  'loadPanel',
  'dataLink',
  'packs',
  'loads',
  'ground',
] as const;
export type PartId = (typeof partIds)[number];

/** The area of each part: x, y, width, height. On a phone 360 px wide each is at least 48 px both ways. */
export const partAreas: Readonly<Record<PartId, readonly [number, number, number, number]>> = {
  strings: [4, 4, 206, 94],
  pvIsolator: [4, 104, 190, 98],
  generator: [262, 4, 194, 202],
  inverter: [36, 240, 364, 88],
  mainSwitch: [4, 340, 174, 120],
  outputBreaker: [262, 334, 194, 70],
  loadPanel: [258, 412, 198, 96],
  dataLink: [182, 342, 66, 130],
  packs: [4, 492, 202, 170],
  loads: [272, 520, 184, 142],
  ground: [206, 510, 66, 152],
};

interface Anchor extends Spot {
  /** The side from which a lead comes. */
  side: 'left' | 'right';
  /** The way that counts as positive for a clamp: from the array to the inverter, out of the battery, to the loads. */
  flow?: 'up' | 'down';
}

/** Where lead tips and clamps go. */
export const anchors: Readonly<Record<AnchorId, Anchor>> = {
  'PS+': { x: x.plus, y: 84, side: 'left', flow: 'down' },
  'P1+': { x: x.plus, y: y.p1, side: 'left', flow: 'down' },
  'P1-': { x: x.minus, y: y.p1, side: 'left', flow: 'down' },
  'P2+': { x: x.plus, y: y.p2, side: 'left', flow: 'down' },
  'P2-': { x: x.minus, y: y.p2, side: 'left', flow: 'down' },
  PG: { x: x.ground, y: y.p1, side: 'right' },
  'I+': { x: x.plus, y: y.inverterBottom, side: 'left', flow: 'up' },
  'I-': { x: x.minus, y: y.inverterBottom, side: 'left', flow: 'up' },
  'S2+': { x: x.plus, y: y.s2, side: 'left', flow: 'up' },
  'S2-': { x: x.minus, y: y.s2, side: 'left', flow: 'up' },
  'S1+': { x: x.plus, y: y.s1, side: 'left', flow: 'up' },
  'S1-': { x: x.minus, y: y.s1, side: 'left', flow: 'up' },
  'B+': { x: 44, y: y.posts, side: 'left', flow: 'up' },
  'B-': { x: 92, y: y.posts, side: 'right', flow: 'up' },
  'C-H': { x: x.link - 5, y: 352, side: 'left' },
  'C-L': { x: x.link + 5, y: 352, side: 'right' },
  'A-L1': { x: x.l1, y: y.inverterTop, side: 'left', flow: 'down' },
  'A-N': { x: x.neutral, y: y.inverterTop, side: 'left', flow: 'down' },
  'A-L2': { x: x.l2, y: y.inverterTop, side: 'right', flow: 'down' },
  'O-L1': { x: x.l1, y: y.inverterBottom, side: 'left', flow: 'down' },
  'O-N': { x: x.neutral, y: y.inverterBottom, side: 'left', flow: 'down' },
  'O-L2': { x: x.l2, y: y.inverterBottom, side: 'right', flow: 'down' },
  'D-L1': { x: x.l1, y: y.panelTop, side: 'left', flow: 'down' },
  'D-N': { x: x.neutral, y: y.panelTop, side: 'left', flow: 'down' },
  'D-L2': { x: x.l2, y: y.panelTop, side: 'right', flow: 'down' },
  'R-L': { x: x.l1 + 8, y: y.receptacle + 14, side: 'left', flow: 'down' },
  'R-N': { x: x.neutral - 8, y: y.receptacle + 14, side: 'right', flow: 'down' },
  GA: { x: x.ground, y: 214, side: 'right' },
  G: { x: x.ground, y: 546, side: 'right' },
};

/** Where the letters of each test point are printed. */
export const codes: Readonly<Record<PointId, Spot>> = {
  P1: { x: 106, y: y.p1 },
  P2: { x: 106, y: y.p2 },
  PG: { x: 250, y: 90 },
  I: { x: 106, y: y.inverterBottom + 15 },
  S2: { x: 106, y: y.s2 },
  S1: { x: 106, y: y.s1 },
  B: { x: 68, y: y.posts - 4 },
  C: { x: x.link, y: 378 },
  A: { x: x.code, y: y.inverterTop - 16 },
  O: { x: x.code, y: y.inverterBottom + 16 },
  D: { x: x.code, y: y.panelTop - 4 },
  R: { x: 299, y: y.receptacle + 48 },
  E: { x: 246, y: 518 },
};

/** Where the mark of a zone's state is drawn. */
export const zoneMarks: Readonly<Record<DrawnZone, Spot>> = {
  pvString: { x: 124, y: 94 },
  pvBus: { x: 124, y: 212 },
  invDC: { x: 141, y: 353 },
  battBus: { x: 124, y: 474 },
  packPost: { x: 68, y: 546 },
  acIn: { x: 345, y: 212 },
  acOut: { x: 345, y: 346 },
  loadPanel: { x: 299, y: 486 },
  inlet: { x: 345, y: 128 },
  control: { x: x.link, y: 420 },
};

/** Where a device's padlock is drawn. */
export const deviceMarks: Readonly<Record<DrawnDevice, Spot>> = {
  pv: { x: 124, y: 150 },
  main: { x: 124, y: 406 },
  packs: { x: 116, y: 546 },
  acIn: { x: 299, y: 174 },
  acOut: { x: 299, y: 374 },
};

/** What part of the sheet to show. */
export const crops = {
  all: [0, 0, sheet.width, sheet.height],
  pv: [0, 0, 284, 300],
  battery: [0, 262, 284, 406],
  acIn: [192, 0, 268, 300],
  acOut: [192, 262, 268, 406],
  ac: [192, 0, 268, 668],
} as const satisfies Record<string, readonly [number, number, number, number]>;
export type Crop = keyof typeof crops;

/** The crop that shows a test point and both ends of what it serves. */
export const cropOfPoint: Readonly<Record<PointId, Crop>> = {
  P1: 'pv',
  P2: 'pv',
  PG: 'pv',
  I: 'battery',
  S2: 'battery',
  S1: 'battery',
  B: 'battery',
  C: 'battery',
  A: 'acIn',
  O: 'acOut',
  D: 'acOut',
  R: 'acOut',
  E: 'acOut',
};
