import type { WorkDef } from '../context.ts';
import { ampsU, changeU, endsOhms, feederOhms, fewVoltsU, ohmsOf, poorTimes, testAmps } from './site.ts';

/** Amps that tell ohms: half of the test load. */
const leastShare = 0.5;
/** Of the loaded leg's amps, how far the neutral's may differ with nothing else on. Common practice. */
const othersShare = 0.1;
/** Where the feeder is not known, a mended conductor has less than this [Ω]. Common practice. */
const unknownLimitOhms = 0.1;

/** The mended neutral, by its volts to ground under the same load. */
const retest: WorkDef = {
  id: 'legs-retest',
  answers: ['held', 'not-held', 'cannot-tell'],
  work({ sheet, readings }) {
    const block = readings['retest.ng'] === undefined ? 'retest-one' : 'retest';
    const [ng, amps] = [readings[`${block}.ng`], readings[`${block}.neutral`]];
    if (ng === undefined || amps === undefined) return { ok: false, missing: [] };
    const feeder = feederOhms(sheet);
    const limit = feeder === undefined ? unknownLimitOhms : poorTimes * (feeder + endsOhms);
    const flowing = amps >= leastShare * testAmps(sheet);
    const found = ohmsOf(ng, fewVoltsU(sheet, ng), Math.max(amps, 0.1), ampsU(sheet, amps));
    const outcome = !flowing ? 'cannot-tell' : found.best <= limit ? 'held' : 'not-held';
    return {
      ok: true,
      outcome,
      use: { worksheet: 'leg-volts', inputs: {} },
      says: [{ id: 'expected.legs.retest', params: { ng, amps, neutralOhms: found.best, limit } }],
    };
  },
};

/** The mended hot conductor: both ends of the loaded leg at one moment, less what the neutral loses. */
const retestHot: WorkDef = {
  id: 'legs-retest-hot',
  answers: ['held', 'not-held', 'cannot-tell'],
  work({ sheet, readings }) {
    const [panel, output, amps] = [
      readings['retest-ends.panel'],
      readings['retest-ends.output'],
      readings['retest-ends.amps'],
    ];
    const ng = readings['retest.ng'] ?? readings['retest-one.ng'] ?? 0;
    if (panel === undefined || output === undefined || amps === undefined) return { ok: false, missing: [] };
    const feeder = feederOhms(sheet);
    const limit = feeder === undefined ? unknownLimitOhms : poorTimes * (feeder + endsOhms);
    const drop = output - panel - ng;
    const found = ohmsOf(drop, changeU(sheet, drop, 2), Math.max(amps, 0.1), ampsU(sheet, amps));
    const flowing = amps >= leastShare * testAmps(sheet);
    // Other loads on: what the neutral loses is then no part of this leg's fall, and may even hide it.
    const back = readings['retest.neutral'] ?? readings['retest-one.neutral'] ?? amps;
    const alone = Math.abs(back - amps) <= othersShare * amps + ampsU(sheet, amps) + ampsU(sheet, back);
    const outcome =
      !flowing || !alone
        ? 'cannot-tell'
        : found.low > limit
          ? 'not-held'
          : found.best <= limit
            ? 'held'
            : 'cannot-tell';
    return {
      ok: true,
      outcome,
      use: { worksheet: 'leg-volts', inputs: {} },
      says: [
        { id: 'expected.legs.retestHot', params: { drop, amps, hotOhms: Math.max(0, found.best), limit } },
      ],
    };
  },
};

export const retestWorks: readonly WorkDef[] = [retest, retestHot];
