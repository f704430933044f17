import {
  arrayWatts,
  idleWatts,
  impliedEfficiency,
  inverterAmps,
  joulesPerDay,
} from '../../../src/worksheets/battery-dc/idle.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'idle-draw';
const practice = 'Common practice: a split-phase inverter idling on a 48 V bank';
const energy = 'Energy is power times time (SI Brochure, 9th edition, table 4), worked: 60 W';
const balance = 'Battery current of an inverter with idle on the DC side, worked example';
const kWh = 3.6e6;

export const idleChecks: OutsideCheck[] = [
  {
    id: 'idle-watts',
    worksheet,
    source: practice,
    commonPractice: true,
    what: '2 A at 52.5 V',
    published: 105,
    worked: () => idleWatts(52.5, 2),
    tolerance: 'exact',
  },
  {
    id: 'idle-day',
    worksheet,
    source: practice,
    commonPractice: true,
    what: 'kWh in a day',
    published: 2.52,
    worked: () => joulesPerDay(105) / kWh,
    tolerance: 'exact',
  },
  {
    id: 'idle-array-4h',
    worksheet,
    source: practice,
    commonPractice: true,
    what: 'array for a 4 h window, no losses',
    published: 630,
    worked: () => arrayWatts(joulesPerDay(105), 4 * 3600, 1),
    tolerance: 'exact',
  },
  {
    id: 'idle-array-5h',
    worksheet,
    source: practice,
    commonPractice: true,
    what: 'array for a 5 h window, no losses: "about 500 W"',
    published: 500,
    worked: () => arrayWatts(joulesPerDay(105), 5 * 3600, 1),
    tolerance: 'about',
  },
  {
    id: 'loaded-low',
    worksheet,
    source: practice,
    commonPractice: true,
    what: 'amps at 52 V for 1.0 kW at 98 % with that idle: the low end of 21.6 to 22 A',
    published: 21.6,
    worked: () => inverterAmps(1000, 0.98, 105, 52),
    tolerance: 'about',
  },
  {
    id: 'loaded-high',
    worksheet,
    source: practice,
    commonPractice: true,
    what: 'amps at 52 V for 1.0 kW at 96 % with that idle: the high end',
    published: 22,
    worked: () => inverterAmps(1000, 0.96, 105, 52),
    tolerance: 'about',
  },
  {
    id: 'loaded-efficiency',
    worksheet,
    source: practice,
    commonPractice: true,
    what: 'efficiency that 1.0 kW at 21.8 A and 52 V implies: about 97 %',
    published: 0.97,
    worked: () => impliedEfficiency(1000, 52, 21.8, 105),
    tolerance: 'about',
  },
  {
    id: '6a-day',
    worksheet,
    source: energy,
    what: 'kWh in a day',
    published: 1.44,
    worked: () => joulesPerDay(60) / kWh,
    tolerance: 'exact',
  },
  {
    id: '6a-month',
    worksheet,
    source: energy,
    what: 'kWh in 30 days',
    published: 43.2,
    worked: () => (30 * joulesPerDay(60)) / kWh,
    tolerance: 'exact',
  },
  {
    id: '6b',
    worksheet,
    source: energy,
    what: 'array at 4 sun hours and 75 %',
    published: 480,
    worked: () => arrayWatts(joulesPerDay(60), 4 * 3600, 0.75),
    tolerance: 'exact',
  },
  ...(
    [
      ['8a-51', 5000, 0.93, 0, 51.2, 105.01],
      ['8a-48', 5000, 0.93, 0, 48, 112.01],
      ['8a-45', 5000, 0.93, 0, 44.8, 120.01],
      ['8b', 5000, 0.93, 50, 51.2, 105.98],
      ['8c', 6000, 0.92, 60, 50, 131.63],
      ['8d', 8000, 0.9, 0, 44, 202.02],
    ] as const
  ).map(
    ([id, watts, efficiency, idle, volts, amps]): OutsideCheck => ({
      id,
      worksheet,
      source: balance,
      what: `amps for ${watts} W at ${volts} V`,
      published: amps,
      worked: () => inverterAmps(watts, efficiency, idle, volts),
      tolerance: 'rounded',
    }),
  ),
];
