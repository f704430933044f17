import { post } from './battery/build.ts';
import { place, terminal } from './pv/build.ts';

/** Which string, pack, unit, tracker and branch a visit is about: names of test points are the same for each of them. */
export interface Subject {
  run: number;
  pack: number;
  unit: number;
  branch: number;
}

export const firstSubject: Subject = { run: 0, pack: 0, unit: 0, branch: 0 };

/** A node of one of the plant's circuits. */
export interface Spot {
  circuit: 'pv' | 'dc' | 'ac' | 'link';
  node: string;
}

const pvAnchors = ['P1+', 'P1-', 'P2+', 'P2-', 'C+', 'C-'];
const dcAnchors = ['I+', 'I-', 'S2+', 'S2-', 'S1+', 'S1-', 'bus+', 'bus-'];
const acAnchor = /^[AOD]-(L1|L2|N)$|^R-[LN]$|^pair-N$/;
const linkAnchor = /^(unit|lead|far|pack)\.(C-[HLS]|ref)$/;
const trackerAnchor = /^T(\d*)([+-])$/;
const otherString = /^P1@(\d+)([+-])$/;
const fuseAnchor = /^fuse-(in|out)$/;

/**
 * Where a lead tip goes. Beside the drawing's anchors: `T+`, `T1-` (terminals of the string's own tracker, of the
 * tracker of that index), `fuse-in`, `fuse-out` (string fuse), `frame`, and `unit.C-H`, `lead.C-H`, `far.C-H`,
 * `pack.C-L`, `unit.ref` of the data link (device pins; the lead's two plugs), `P1@1+` (P1 of the string of that index,
 * for a reading from one string to another). Ground is `{ node: 'ground' }` in whatever
 * circuit the other lead is in. Undefined: no such place.
 */
export function spotOf(anchor: string, subject: Subject, ownTracker: number): Spot | 'ground' | undefined {
  if (anchor === 'G' || anchor === 'GA' || anchor === 'PG' || anchor === 'frame') return 'ground';
  if (pvAnchors.includes(anchor)) return { circuit: 'pv', node: place(subject.run, anchor) };
  if (anchor === 'PS+') return { circuit: 'pv', node: place(subject.run, 'C+') };
  const string = otherString.exec(anchor);
  if (string) return { circuit: 'pv', node: place(Number(string[1]), `P1${string[2]}`) };
  const fuse = fuseAnchor.exec(anchor);
  if (fuse)
    return {
      circuit: 'pv',
      node: fuse[1] === 'in' ? place(subject.run, `b${subject.branch}.fuse`) : place(subject.run, 'C+'),
    };
  const tracker = trackerAnchor.exec(anchor);
  if (tracker)
    return {
      circuit: 'pv',
      node: terminal(tracker[1] ? Number(tracker[1]) : ownTracker, tracker[2] as '+' | '-'),
    };
  if (anchor === 'B+' || anchor === 'B-')
    return { circuit: 'dc', node: post(subject.pack, anchor === 'B+' ? '+' : '-') };
  if (dcAnchors.includes(anchor)) return { circuit: 'dc', node: anchor };
  if (acAnchor.test(anchor)) return { circuit: 'ac', node: anchor };
  if (anchor === 'C-H' || anchor === 'C-L') return { circuit: 'link', node: `unit.${anchor}` };
  return linkAnchor.test(anchor) ? { circuit: 'link', node: anchor } : undefined;
}

/** The conductor that a clamp goes round, by the name of its part, and which way its arrow counts against the part's. */
export function conductorOf(
  anchor: string,
  subject: Subject,
): { circuit: 'pv' | 'dc' | 'ac'; part: string; sign: 1 | -1 } | undefined {
  const pv = (part: string) => ({ circuit: 'pv', part: place(subject.run, part), sign: 1 }) as const;
  if (anchor === 'P1+' || anchor === 'P2+' || anchor === 'array') return pv(anchor);
  if (anchor === 'PS+') return pv(`PS${subject.branch}+`);
  if (anchor === 'B+') return { circuit: 'dc', part: `pack${subject.pack}`, sign: 1 };
  if (anchor === 'S1+') return { circuit: 'dc', part: 'S1+', sign: 1 };
  if (anchor === 'S2+' || anchor === 'I+') return { circuit: 'dc', part: 'I+', sign: 1 };
  const output = /^O-(L1|L2|N)$/.exec(anchor);
  if (output) return { circuit: 'ac', part: `unit${subject.unit}.${output[1]}`, sign: 1 };
  if (/^[AD]-(L1|L2|N)$/.test(anchor)) return { circuit: 'ac', part: anchor, sign: 1 };
  if (anchor === 'G' || anchor === 'GA') return { circuit: 'ac', part: anchor, sign: 1 };
  return undefined;
}
