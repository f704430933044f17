import { stringLength } from '../../../src/worksheets/pv/string-length.ts';
import { bestSplit } from '../../../src/worksheets/pv/string-limits.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'string-length';
const course =
  'Published course on PV voltage and current under NEC 2023: string of 49.5 V modules at −10 °C';
const diodeModel = 'De Soto et al. 2006 single-diode model, example module of pvlib-python tests/conftest.py';

type In = Parameters<typeof stringLength.compute>[0];

/** A tracker so wide that only the case's own limit counts. */
const wide: In = {
  vocVolts: 49.5,
  vmpVolts: 41,
  vocPerC: -0.0027,
  vmpPerC: -0.0034,
  iscAmps: 11.2,
  impAmps: 10.5,
  recordLowC: -10,
  hotCellC: 65,
  hotMargin: 0,
  startVolts: 20,
  trackLowVolts: 20,
  trackHighVolts: 900,
  maxVolts: 1000,
  place: 'dwelling',
  usableAmps: undefined,
  shortCircuitAmps: undefined,
  modules: undefined,
};

function outOf(change: Partial<In>) {
  const result = stringLength.compute({ ...wide, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

/** The example module of the reference model: Voc, Vmp at three cell temperatures, worked by pvlib. */
const reference: Partial<In> = {
  vocVolts: 10.40112,
  vmpVolts: 8.39952,
  vocPerC: (8.62206 / 10.40112 - 1) / 40,
  vmpPerC: (6.63285 / 8.39952 - 1) / 40,
};

export const stringLengthChecks: OutsideCheck[] = [
  {
    id: 'length-4a',
    worksheet,
    source: course,
    origin: 'published',
    what: 'most modules under 600 V by coefficient',
    published: 11,
    worked: () => outOf({}).most,
    tolerance: 'exact',
  },
  {
    id: 'length-4a-table',
    worksheet,
    source: course,
    origin: 'published',
    what: 'most modules under 600 V by the table',
    published: 10,
    worked: () => outOf({}).mostTable,
    tolerance: 'exact',
  },
  {
    id: 'length-4a-each',
    worksheet,
    source: course,
    origin: 'published',
    what: 'Voc of one module at −10 °C',
    published: 54.178,
    worked: () => outOf({}).vocColdEach,
    tolerance: 'rounded',
  },
  {
    id: 'length-4d',
    worksheet,
    source: 'NEC 2020 690.7(A)(1), worked: 14 modules of 41.1 V, −0.14 V/°C, at −15 °C stand at 653.8 V',
    origin: 'worked apart',
    what: 'so that 12 is the most under 600 V (560.4 V; 13 would be 607.1 V)',
    published: 12,
    worked: () => outOf({ vocVolts: 41.1, vmpVolts: 34, vocPerC: -0.14 / 41.1, recordLowC: -15 }).most,
    tolerance: 'exact',
  },
  {
    id: 'length-diode-start',
    worksheet,
    source: diodeModel,
    origin: 'worked apart',
    what: 'fewest modules that start 110 V (with a tenth: 121 V) at 65 °C, where the model gives 8.62206 V each',
    published: Math.ceil(121 / 8.62206),
    worked: () => outOf({ ...reference, startVolts: 110, trackLowVolts: 20 }).leastToStart,
    tolerance: 'exact',
  },
  {
    id: 'length-diode-track',
    worksheet,
    source: diodeModel,
    origin: 'worked apart',
    what: 'fewest modules that work at 100 V at 65 °C, where the model gives 6.63285 V each',
    published: Math.ceil(100 / 6.63285),
    worked: () => outOf({ ...reference, trackLowVolts: 100 }).leastToTrack,
    tolerance: 'exact',
  },
  {
    id: 'length-diode-cold',
    worksheet,
    source: diodeModel,
    origin: 'published',
    what: 'volts of one module at −10 °C, where the model gives 11.94005 V',
    published: 11.94005,
    worked: () => outOf(reference).vocColdEach,
    tolerance: 'linearModel',
  },
  {
    id: 'length-4l',
    worksheet,
    source: 'Ross 1976 (NOCT method) cell at 71.25 °C, worked: 34.2 V, −0.34 %/°C',
    origin: 'worked apart',
    what: 'working volts of one module on a 40 °C afternoon',
    published: 28.822,
    worked: () => outOf({ vmpVolts: 34.2, vmpPerC: -0.0034, hotCellC: 71.25 }).vmpHotEach,
    tolerance: 'rounded',
  },
  {
    id: 'length-split',
    worksheet,
    source: 'Counting: 26 modules in equal strings of 7 to 9, three strings at most',
    origin: 'worked apart',
    what: 'left over of the best split (2 × 9 leaves 8, 3 × 8 leaves 2, 3 × 7 leaves 5)',
    published: 2,
    worked: () => bestSplit(26, 7, 9, 3)?.leftOver,
    tolerance: 'exact',
  },
];
