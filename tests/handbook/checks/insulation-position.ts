import {
  insulationFrom,
  minimumInsulationFor,
  type PoleToGround,
} from '../../../src/worksheets/pv/insulation.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'insulation-position';
const ratio =
  'Published trade article on PV ground faults: a quarter of Voc to ground means between modules 1 and 2 of 4';
const divider =
  'Voltage divider of leak and meter (Kuphaldt, Lessons in Electric Circuits vol. I ch. 6 and 8), worked with a 10 MΩ meter';
const table =
  'IEC 62446-1:2016 least insulation resistance, as the general low-voltage table of IEC 60364-6 gives it';

const bare: PoleToGround = {
  vocVolts: 400,
  positiveVolts: 400,
  negativeVolts: 0,
  meterOhms: 10e6,
  modules: 10,
  poleErrorVolts: 0,
  vocErrorVolts: 0,
};

function found(reading: Partial<PoleToGround>) {
  const result = insulationFrom({ ...bare, ...reading });
  return result.ok ? result.out : undefined;
}

export const insulationChecks: OutsideCheck[] = [
  {
    id: 'quarter-of-voc',
    worksheet,
    source: ratio,
    origin: 'published',
    what: 'modules from the positive end',
    published: 1,
    worked: () =>
      found({ modules: 4, vocVolts: 160, positiveVolts: 40, negativeVolts: -120 })?.modulesFromPositive
        ?.value,
    tolerance: 'fullPrecision',
  },
  ...(
    [
      [1e6, 0.909],
      [1e5, 0.99],
      [1e4, 0.999],
    ] as const
  ).map(
    ([ohms, share]): OutsideCheck => ({
      id: `divider-${ohms}`,
      worksheet,
      source: divider,
      origin: 'worked apart',
      what: `share of Voc that a leak of ${ohms} Ω leaves on the meter, turned back into ohms`,
      published: Math.round((10e6 / share - 10e6) / ohms),
      worked: () => {
        const iso = found({ positiveVolts: share * 400 })?.isoOhms.value;
        return iso === undefined ? undefined : Math.round(iso / ohms);
      },
      tolerance: 'exact',
    }),
  ),
  ...(
    [
      [95, 250, 0.5e6],
      [97, 500, 1e6],
      [400, 500, 1e6],
      [401, 1000, 1e6],
    ] as const
  ).flatMap(([vocRated, testVolts, leastOhms]): OutsideCheck[] => [
    {
      id: `62446-test-${vocRated}`,
      worksheet,
      source: table,
      origin: 'from memory',
      what: `test volts for ${vocRated} V rated (× 1.25)`,
      published: testVolts,
      worked: () => minimumInsulationFor(vocRated).testVolts,
      tolerance: 'exact',
    },
    {
      id: `62446-least-${vocRated}`,
      worksheet,
      source: table,
      origin: 'from memory',
      what: `least resistance for ${vocRated} V rated (× 1.25)`,
      published: leastOhms,
      worked: () => minimumInsulationFor(vocRated).leastOhms,
      tolerance: 'exact',
    },
  ]),
];
