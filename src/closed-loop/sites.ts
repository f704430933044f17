import { sallowCreek, ternLedge } from '../site/demo.ts';
import type { SiteSheet } from '../site/sheet.ts';

const string = sallowCreek.strings[0]!;

/** Invented sites for the loop: one string or two, parallel strings, shutdown devices, one leg or two, with and without a second source. */
export const loopSites: readonly SiteSheet[] = [
  sallowCreek,
  // The demo's meter is refused on a string of this cold; a visit there ends before it begins.
  { ...ternLedge, meter: { ...ternLedge.meter, categoryV: 1000, lowImpedance: true } },
  {
    ...sallowCreek,
    id: 'loop-parallel',
    strings: [
      { ...string, parallel: 2, shutdownDevices: true },
      { ...sallowCreek.strings[1]!, modulesInSeries: 7 },
    ],
    trackers: sallowCreek.trackers.map((each) => ({ ...each, usableA: 26, shortCircuitMaxA: 32 })),
  },
  {
    ...sallowCreek,
    id: 'loop-one-leg',
    inverter: { ...sallowCreek.inverter, topology: 'single-230', frequencyHz: 50 },
    secondSource: { kind: 'utility', ratedW: 5000, neutralBonded: true },
  },
];

/** Sites that only some faults can be on: a run that is long by its sheet is no healthy plant's. */
export const rareSites: readonly SiteSheet[] = [
  { ...sallowCreek, id: 'loop-long-run', outputFeeder: { lengthM: 90, areaMm2: 10 } },
  { ...sallowCreek, id: 'loop-longer-run', outputFeeder: { lengthM: 110, areaMm2: 8.37 } },
];
