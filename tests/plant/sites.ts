import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';

const string = sallowCreek.strings[0]!;

/** Invented sites that between them have every shape a plant can take. */
export const sampleSites: readonly SiteSheet[] = [
  sallowCreek,
  ternLedge,
  {
    ...sallowCreek,
    id: 'two-units',
    parallelUnits: 2,
    dataLink: { kind: 'serial-485', lengthM: 8 },
    strings: [
      { ...string, parallel: 2, shutdownDevices: true },
      { ...sallowCreek.strings[1]!, modulesInSeries: 7 },
    ],
  },
  {
    ...sallowCreek,
    id: 'one-leg',
    inverter: { ...sallowCreek.inverter, topology: 'single-230', frequencyHz: 50 },
    secondSource: { kind: 'utility', ratedW: 5000, neutralBonded: true },
  },
  {
    ...sallowCreek,
    id: 'wye',
    inverter: { ...sallowCreek.inverter, topology: 'wye-120-208' },
    battery: { ...sallowCreek.battery, packs: 4 },
  },
  // A run that is long by its sheet.
  { ...sallowCreek, id: 'long-run', outputFeeder: { lengthM: 90, areaMm2: 10 } },
];
