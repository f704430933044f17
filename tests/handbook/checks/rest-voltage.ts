import { chargeBand, usualCurveError } from '../../../src/worksheets/battery-dc/rest-voltage.ts';
import { restVoltsAt } from '../../../src/worksheets/tables/lfp-ocv.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'rest-voltage';
const calculator = 'Published state-of-charge calculator for four cells in series, at rest: its middle rows';
const guide = 'Published voltage guide, rested two hours or more: 50 % at 3.27 V a cell';
const article = 'Published article on resting volts: 50 % from 3.25 to 3.30 V a cell';
const lines = 'Straight lines between the open data’s breakpoints, sixteen cells, worked apart';

/** The charge that our band leaves possible nearest to what somebody else says of the same volts. */
const nearest = (cellVolts: number, said: number): number => {
  const { least, most } = chargeBand(cellVolts - usualCurveError, cellVolts + usualCurveError);
  return Math.min(Math.max(said, least), most);
};
const holds = (id: string, source: string, cellVolts: number, said: number): OutsideCheck => ({
  id: `rest-${id}`,
  worksheet,
  source,
  origin: 'published',
  what: `the band at ${cellVolts} V a cell holds ${100 * said} %`,
  published: said,
  worked: () => nearest(cellVolts, said),
  tolerance: 'exact',
});
const apart = (id: string, charge: number, published: number): OutsideCheck => ({
  id: `rest-${id}`,
  worksheet,
  source: lines,
  origin: 'worked apart',
  what: `volts of sixteen cells at ${100 * charge} %`,
  published,
  worked: () => 16 * restVoltsAt(charge),
  tolerance: 'centivolt',
});

export const restVoltageChecks: OutsideCheck[] = [
  holds('13.0', calculator, 13.0 / 4, 0.3),
  holds('13.2', calculator, 13.2 / 4, 0.4),
  holds('13.3', calculator, 13.3 / 4, 0.7),
  holds('13.4', calculator, 13.4 / 4, 0.9),
  holds('13.6', calculator, 13.6 / 4, 0.99),
  holds('guide', guide, 3.27, 0.5),
  holds('article', article, 3.275, 0.5),
  apart('6g-30', 0.3, 52.44),
  apart('6g-90', 0.9, 53.474),
];
