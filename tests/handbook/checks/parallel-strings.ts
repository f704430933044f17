import { faultAmps, leastStringFuse, needsFuse } from '../../../src/worksheets/pv/fuse-need.ts';
import { joined, moduleCurve } from '../../../src/worksheets/pv/unequal.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'parallel-strings';
const forum =
  'Published discussion of series fuses under NEC 690.9: Isc 5 A, maximum series fuse 15 A, three strings in parallel';
const nen = 'NEN 1010:2020 712.431.4 (IEC 60364-7-712): fuses when 1.35 × I_mod_max < (Ns − 1) × Isc';
const course = 'Published course on PV circuits under NEC 2023: strings of 11.2 A';
const curves = 'pvlib-python precise I-V curves, set 1 index 17 (72 cells, computed with 40 digits)';
const magazine = 'Home Power magazine, Why series fusing?: two strings, no fuse needed';

const yes = (answer: boolean): number => (answer ? 1 : 0);
/** Label of the reference module: Voc, Vmp, Isc, Imp. */
const label = {
  vocVolts: 43.864353459,
  vmpVolts: 37.434406016,
  iscAmps: 7.9973342217,
  impAmps: 7.4971167053,
};

const check = (
  id: string,
  source: string,
  what: string,
  published: number,
  worked: () => number | undefined,
  tolerance: OutsideCheck['tolerance'] = 'exact',
): OutsideCheck => ({ id, worksheet, source, origin: 'published', what, published, worked, tolerance });

/** The rule or the label is published; these numbers put into it are ours. */
const apart = (...given: Parameters<typeof check>): OutsideCheck => ({
  ...check(...given),
  origin: 'worked apart',
});

export const parallelStringsChecks: OutsideCheck[] = [
  check('forum-fault', forum, 'amps that two strings push into the third', 12.5, () =>
    faultAmps('nec', 5, 3, 0),
  ),
  check('forum-none', forum, 'fuses needed (0: no)', 0, () =>
    yes(needsFuse('nec', faultAmps('nec', 5, 3, 0), 3, { seriesFuseAmps: 15 })),
  ),
  apart('magazine-two', magazine, 'two strings of 8.8 A, label 15 A: fuses needed (0: no)', 0, () =>
    yes(needsFuse('nec', faultAmps('nec', 8.8, 2, 0), 2, { seriesFuseAmps: 15 })),
  ),
  apart('nen-two', nen, 'two strings never need one (0: no)', 0, () =>
    yes(needsFuse('iec', faultAmps('iec', 40, 2, 0), 2, { seriesFuseAmps: 15 })),
  ),
  apart('nen-three', nen, 'three strings of 11 A, label 15 A: 20.25 < 22 (1: yes)', 1, () =>
    yes(needsFuse('iec', faultAmps('iec', 11, 3, 0), 3, { seriesFuseAmps: 15 })),
  ),
  apart('nen-three-not', nen, 'three strings of 10 A, label 15 A: 20.25 > 20 (0: no)', 0, () =>
    yes(needsFuse('iec', faultAmps('iec', 10, 3, 0), 3, { seriesFuseAmps: 15 })),
  ),
  check('course-fuse', course, 'smallest standard fuse of one string', 20, () =>
    leastStringFuse(11.2, '2023'),
  ),
  apart(
    'curve-mpp',
    curves,
    'amps at Vmp',
    7.4971167053,
    () => moduleCurve(label)(label.vmpVolts),
    'rounded',
  ),
  apart(
    'curve-voc',
    curves,
    'volts of one string at no current',
    43.864353459,
    () => joined(label, [{ modules: 1, strings: 1 }]).openVolts,
    'rounded',
  ),
  check(
    'curve-power',
    curves,
    'best power of one module',
    280.6501106944,
    () => joined(label, [{ modules: 1, strings: 1 }]).bestWatts,
    'linearModel',
  ),
];
