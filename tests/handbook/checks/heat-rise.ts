import {
  airDensity,
  airflowForM3s,
  airRiseC,
  pressurePa,
  standardDensity,
} from '../../../src/worksheets/heat/air.ts';
import { lossWatts } from '../../../src/worksheets/heat/loss.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'heat-rise';
const ashrae = 'ASHRAE Handbook – Fundamentals 2017, chapter 1, table 1: standard atmosphere';
const moist = 'Moist-air properties worked with the psychrolib library: dry air';
const sensible = 'Sensible heat of air, HVAC engineering formula: BTU/h = 1.08 × cfm × °F';
const balance = 'Energy balance of a converter, worked by hand';

/** One cubic foot a minute [m³/s], one degree of °F as a difference [°C], one BTU an hour [W]. */
const cfm = 0.3048 ** 3 / 60;
const degF = 5 / 9;
const btuPerHour = 0.29307107;
/** The air behind the factor 1.08: 0.075 lb/ft³ [kg/m³]. */
const formulaDensity = (0.075 * 0.45359237) / 0.3048 ** 3;

const pressures = [
  [500, 95_461],
  [1000, 89_875],
  [4000, 61_640],
] as const;
const densities = [
  [0, 25, 1.1844],
  [0, 20, 1.2042],
  [1500, 30, 0.9717],
] as const;

export const heatChecks: OutsideCheck[] = [
  ...pressures.map(
    ([altitudeM, published]): OutsideCheck => ({
      id: `pressure-${altitudeM}`,
      worksheet,
      source: ashrae,
      origin: 'published',
      what: `pressure at ${altitudeM} m [Pa]`,
      published,
      worked: () => pressurePa(altitudeM),
      tolerance: 'rounded',
    }),
  ),
  ...densities.map(
    ([altitudeM, tempC, published]): OutsideCheck => ({
      id: `density-${altitudeM}-${tempC}`,
      worksheet,
      source: moist,
      origin: 'published',
      what: `density at ${altitudeM} m and ${tempC} °C [kg/m³]`,
      published,
      worked: () => airDensity(altitudeM, tempC),
      tolerance: 'threeFigures',
    }),
  ),
  {
    id: '10a',
    worksheet,
    source: sensible,
    origin: 'published',
    what: 'rise of 500 cfm that carries 10 800 BTU/h: 20 °F',
    published: 20 * degF,
    worked: () => airRiseC(10_800 * btuPerHour, 500 * cfm, formulaDensity),
    tolerance: 'workedExample',
  },
  {
    id: '10b',
    worksheet,
    source: sensible,
    origin: 'published',
    what: 'rise of 1 cfm that carries 21.6 BTU/h: 32 to 52 °F',
    published: 20 * degF,
    worked: () => airRiseC(21.6 * btuPerHour, cfm, formulaDensity),
    tolerance: 'workedExample',
  },
  {
    id: '10c',
    worksheet,
    source: sensible,
    origin: 'worked apart',
    what: 'rise of 100 cfm that carries 300 W [°C]',
    published: 5.27,
    worked: () => airRiseC(300, 100 * cfm, formulaDensity),
    tolerance: 'workedExample',
  },
  {
    id: '10d',
    worksheet,
    source: sensible,
    origin: 'worked apart',
    what: 'cfm for 400 W and 10 °C',
    published: 70.2,
    worked: () => airflowForM3s(400, 10, formulaDensity) / cfm,
    tolerance: 'workedExample',
  },
  {
    id: 'twenty-q',
    worksheet,
    source: 'Common practice: rise = W ÷ (20 × m³/min), sea level',
    origin: 'common practice',
    what: 'rise of 5 m³/min that carries 300 W [°C]',
    published: 3,
    worked: () => airRiseC(300, 5 / 60, standardDensity),
    tolerance: 'about',
  },
  {
    id: 'loss-3kw',
    worksheet,
    source: balance,
    origin: 'worked apart',
    what: 'loss at 3 kW, 93 % and 100 W idle: 3000 ÷ 0.93 − 3000 + 100 [W]',
    published: 325.806,
    worked: () =>
      lossWatts({
        acWatts: 3000,
        efficiency: 0.93,
        chargeWatts: 0,
        chargeEfficiency: 0.95,
        idleWatts: 100,
      }),
    tolerance: 'rounded',
  },
  {
    id: 'loss-charging',
    worksheet,
    source: balance,
    origin: 'worked apart',
    what: 'loss of charging with 1900 W at 95 %, no load, no idle: 2000 − 1900 [W]',
    published: 100,
    worked: () =>
      lossWatts({
        acWatts: 0,
        efficiency: 0.93,
        chargeWatts: 1900,
        chargeEfficiency: 0.95,
        idleWatts: 0,
      }),
    tolerance: 'fullPrecision',
  },
];
