import { mostInSeries } from '../../../src/worksheets/pv/fitting-count.ts';
import { coefficientFromVolts, vmpAt, vocAt } from '../../../src/worksheets/pv/string-volts.ts';
import { necColdFactor } from '../../../src/worksheets/tables/nec-690-7.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'string-window';
const course =
  'Published course on PV voltage and current under NEC 2023: string of 49.5 V modules at −10 °C';
const tableRows = 'NEC 2020 Table 690.7(A), °F rows (California Electrical Code 2022)';
const diodeModel = 'De Soto et al. 2006 single-diode model, example module of pvlib-python tests/conftest.py';

const fahrenheit = (degrees: number): number => (degrees - 32) / 1.8;

/** The module of the reference model at 1000 W/m²: Voc and Vmp at four cell temperatures. */
const reference = {
  atMinus10: { voc: 11.94005, vmp: 9.97874 },
  at25: { voc: 10.40112, vmp: 8.39952, pmp: 55.43684 },
  at65: { voc: 8.62206, vmp: 6.63285, pmp: 44.07014 },
};
const referencePerC = {
  voc: (reference.at65.voc / reference.at25.voc - 1) / 40,
  vmp: (reference.at65.vmp / reference.at25.vmp - 1) / 40,
  pmp: (reference.at65.pmp / reference.at25.pmp - 1) / 40,
};

export const stringWindowChecks: OutsideCheck[] = [
  {
    id: '4a-module',
    worksheet,
    source: course,
    origin: 'published',
    what: 'Voc of one module at −10 °C by its coefficient',
    published: 54.178,
    worked: () => vocAt(49.5, -0.0027, -10),
    tolerance: 'rounded',
  },
  {
    id: '4a-string',
    worksheet,
    source: course,
    origin: 'published',
    what: 'Voc of eleven modules at −10 °C',
    published: 595.96,
    worked: () => 11 * vocAt(49.5, -0.0027, -10),
    tolerance: 'rounded',
  },
  {
    id: '4a-count',
    worksheet,
    source: course,
    origin: 'published',
    what: 'modules under 600 V by coefficient',
    published: 11,
    worked: () => mostInSeries(600, vocAt(49.5, -0.0027, -10)),
    tolerance: 'exact',
  },
  {
    id: '4a-table',
    worksheet,
    source: course,
    origin: 'published',
    what: 'Voc of one module at −10 °C by the table',
    published: 56.43,
    worked: () => 49.5 * necColdFactor(-10)!,
    tolerance: 'rounded',
  },
  {
    id: '4a-table-count',
    worksheet,
    source: course,
    origin: 'published',
    what: 'modules under 600 V by the table',
    published: 10,
    worked: () => mostInSeries(600, 49.5 * necColdFactor(-10)!),
    tolerance: 'exact',
  },
  {
    id: '4b',
    worksheet,
    source: 'NEC 2020 690.7(A)(1), worked: 45 V, −0.27 %/°C, −26 °C',
    origin: 'worked apart',
    what: 'Voc of one module at −26 °C',
    published: 51.197,
    worked: () => vocAt(45, -0.0027, -26),
    tolerance: 'rounded',
  },
  {
    id: '4c-module',
    worksheet,
    source: 'NEC 2020 690.7(A)(1), worked: 37.5 V, −0.30 %/°C, −25 °C',
    origin: 'worked apart',
    what: 'Voc of one module at −25 °C',
    published: 43.125,
    worked: () => vocAt(37.5, -0.003, -25),
    tolerance: 'rounded',
  },
  {
    id: '4c-table',
    worksheet,
    source: 'NEC 2020 Table 690.7(A), worked: 12 modules of 37.5 V',
    origin: 'worked apart',
    what: 'string by the table at −25 °C',
    published: 540,
    worked: () => 12 * 37.5 * necColdFactor(-25)!,
    tolerance: 'rounded',
  },
  {
    id: '4c-table-next-row',
    worksheet,
    source: 'NEC 2020 Table 690.7(A), worked: 12 modules of 37.5 V',
    origin: 'worked apart',
    what: 'string by the table one degree colder: the next row',
    published: 544.5,
    worked: () => 12 * 37.5 * necColdFactor(-26)!,
    tolerance: 'rounded',
  },
  {
    id: '4d',
    worksheet,
    source:
      'NEC 2020 690.7(A)(1) with a coefficient in V/°C, worked: 41.1 V, −0.14 V/°C, 14 modules at −15 °C',
    origin: 'worked apart',
    what: 'string whose coefficient is printed in volts',
    published: 653.8,
    worked: () => 14 * vocAt(41.1, coefficientFromVolts(-0.14, 41.1), -15),
    tolerance: 'decivolt',
  },
  {
    id: '4e',
    worksheet,
    source: 'Published course exercise, corrected: two modules of 38.9 V at −20 °C take the 1.18 row',
    origin: 'published',
    what: 'two modules by the table at −20 °C',
    published: 91.8,
    worked: () => 2 * 38.9 * necColdFactor(-20)!,
    tolerance: 'decivolt',
  },
  // The table's other column, written in °F, must land in the same rows.
  ...(
    [
      [76, 1.02],
      [68, 1.02],
      [67, 1.04],
      [58, 1.06],
      [50, 1.06],
      [49, 1.08],
      [40, 1.1],
      [32, 1.1],
      [31, 1.12],
      [22, 1.14],
      [14, 1.14],
      [13, 1.16],
      [4, 1.18],
      [-4, 1.18],
      [-5, 1.2],
      [-13, 1.2],
      [-22, 1.21],
      [-31, 1.23],
      [-40, 1.25],
    ] as const
  ).map(
    ([degreesF, factor]): OutsideCheck => ({
      id: `690.7-${degreesF}F`,
      worksheet,
      source: tableRows,
      origin: 'published',
      what: `factor at ${degreesF} °F`,
      published: factor,
      // A whole °F lies up to half a degree from the whole °C of the row it stands in.
      worked: () => necColdFactor(Math.round(fahrenheit(degreesF))),
      tolerance: 'exact',
    }),
  ),
  {
    id: 'diode-voc-cold',
    worksheet,
    source: diodeModel,
    origin: 'published',
    what: 'Voc at −10 °C from the coefficient between 25 and 65 °C',
    published: reference.atMinus10.voc,
    worked: () => vocAt(reference.at25.voc, referencePerC.voc, -10),
    tolerance: 'linearModel',
  },
  {
    id: 'diode-vmp-cold',
    worksheet,
    source: diodeModel,
    origin: 'published',
    what: 'Vmp at −10 °C from the coefficient between 25 and 65 °C',
    published: reference.atMinus10.vmp,
    worked: () => vmpAt(reference.at25.vmp, referencePerC.vmp, -10),
    tolerance: 'linearModel',
  },
  {
    id: 'diode-vmp-coefficient',
    worksheet,
    source: diodeModel,
    origin: 'published',
    what: 'Vmp falls by 0.526 % per °C where power falls by 0.513 %',
    published: 0.526 / 0.513,
    worked: () => referencePerC.vmp / referencePerC.pmp,
    tolerance: 'threeFigures',
  },
  {
    id: '4l',
    worksheet,
    source: 'Ross 1976 (NOCT method) cell at 71.25 °C, worked: 34.2 V, −0.34 %/°C, 12 modules',
    origin: 'worked apart',
    what: 'Vmp of the string on a 40 °C afternoon',
    published: 345.86,
    worked: () => 12 * vmpAt(34.2, -0.0034, 71.25),
    tolerance: 'centivolt',
  },
];
