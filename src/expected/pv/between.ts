import type { ExpectContext, WorkDef } from '../context.ts';
import { pvZeroAmps } from '../no-current.ts';
import { tryAmps } from './amps.ts';
import { cellRange, runString, stringVoc, voltsU } from './site.ts';
import { loadedShares, nothingTop, offsetVolts, openVolts, shutdownVoltsEach } from './volts.ts';

/** A reading under this share of the string's volts is not the same string seen through a closed contact. Common practice. */
const sameShare = 0.75;
/** Over this share of its expected volts a plus reading is a string the right way round. */
const stringShare = 0.5;

/**
 * Volts of a tracker at work that lie too close to a limit: the two stretches beside that limit, taken together. A limit
 * between joint and bypass keeps both; the one between dragged and tracking stays open.
 */
function besideLimit(volts: number, context: ExpectContext): string | undefined {
  const run = runString(context);
  if (!run.ok) return undefined;
  const cells = cellRange(context, run.string);
  const open = openVolts({ ...run, cells, context });
  const hot = open.read ? open.volts : stringVoc(run.string, cells.highC);
  const cold = open.read ? open.volts : stringVoc(run.string, cells.lowC);
  const limits: readonly (readonly [at: number, answer: string])[] = [
    [shutdownVoltsEach.high * run.string.modulesInSeries, 'no-volts'],
    [loadedShares.collapsed * hot, 'drags'],
    [loadedShares.dragged * hot, 'edge'],
    [loadedShares.tracking * cold, 'runs'],
    [loadedShares.open * cold, 'limited'],
  ];
  if (volts <= 0) return 'no-volts';
  return limits.reduce((best, each) =>
    Math.abs(each[0] - volts) < Math.abs(best[0] - volts) ? each : best,
  )[1];
}

/** Where the volts stand when it is the amps, not the volts, that were too close to call. */
function standing(volts: number, context: ExpectContext): string | undefined {
  const run = runString(context);
  if (!run.ok) return undefined;
  const { volts: open } = openVolts({ ...run, cells: cellRange(context, run.string), context });
  const u = voltsU(context.sheet, volts);
  const clear = [loadedShares.collapsed, loadedShares.dragged, loadedShares.tracking].every(
    (share) => Math.abs(volts - share * open) > u,
  );
  if (!clear || volts <= shutdownVoltsEach.high * run.string.modulesInSeries)
    return besideLimit(volts, context);
  if (volts < loadedShares.collapsed * open) return 'collapses';
  if (volts < loadedShares.dragged * open) return 'drags';
  return volts < loadedShares.tracking * open ? 'runs' : 'limited';
}

/** A step that read volts and amps together. Amps up to `least` are none, and volts alone then show no tracker at work. */
function withAmps(id: string, block: string, least: number): WorkDef {
  return {
    id,
    answers: ['no-volts', 'collapses', 'drags', 'edge', 'runs', 'limited', 'no-amps'],
    work(context) {
      const volts = context.readings[`${block}.volts`];
      const amps = context.readings[`${block}.amps`];
      if (volts === undefined || amps === undefined) return { ok: false, missing: [] };
      const answer = standing(volts, context);
      if (answer === undefined) return { ok: false, missing: ['strings'] };
      const flows = amps > least;
      const loaded = answer === 'runs' || answer === 'limited' || answer === 'edge';
      return {
        ok: true,
        outcome: loaded && !flows ? 'no-amps' : answer,
        says: [{ id: 'expected.pv.between', params: { volts, amps } }],
      };
    },
  };
}

/** A step that read volts on the screen while power came in. */
function onScreen(id: string, block: string): WorkDef {
  return {
    id,
    answers: ['no-volts', 'collapses', 'drags', 'edge', 'runs', 'limited'],
    work(context) {
      const volts = context.readings[`${block}.volts`];
      if (volts === undefined) return { ok: false, missing: [] };
      const answer = besideLimit(volts, context);
      if (answer === undefined) return { ok: false, missing: ['strings'] };
      return {
        ok: true,
        outcome: answer,
        says: [{ id: 'expected.pv.betweenScreen', params: { volts } }],
      };
    },
  };
}

/** Signed volts on both sides of the isolator, one of them too close to a limit. */
const voltsBetween: WorkDef = {
  id: 'pv-volts-between',
  answers: ['negative', 'nothing', 'held-off', 'p2-less', 'p2-more', 'whole', 'over'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const p1 = context.readings['volts-still.p1'];
    const p2 = context.readings['volts-still.p2'];
    if (p1 === undefined || p2 === undefined) return { ok: false, missing: [] };
    const { string, tracker } = run;
    const low = p1 - voltsU(context.sheet, p1);
    const outcome =
      low <= -offsetVolts
        ? 'negative'
        : low <= nothingTop(string.modulesInSeries)
          ? 'nothing'
          : low <= shutdownVoltsEach.high * string.modulesInSeries
            ? 'held-off'
            : p1 + voltsU(context.sheet, p1) > tracker.maxV
              ? 'over'
              : p2 < sameShare * p1
                ? 'p2-less'
                : p1 < sameShare * p2
                  ? 'p2-more'
                  : 'whole';
    return {
      ok: true,
      outcome,
      says: [{ id: 'expected.pv.voltsBetween', params: { p1, p2 } }],
    };
  },
};

/** The array side behind an open isolator, too close to a limit: is it a string the right way round? */
const p1Between: WorkDef = {
  id: 'pv-p1-between',
  answers: ['plus', 'not-shown'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const p1 = context.readings['p1-open.p1'];
    if (p1 === undefined) return { ok: false, missing: [] };
    const nominal = stringVoc(run.string, cellRange(context, run.string).likelyC);
    return {
      ok: true,
      outcome: p1 > stringShare * nominal ? 'plus' : 'not-shown',
      says: [{ id: 'expected.pv.p1Between', params: { p1, nominal } }],
    };
  },
};

/** Fewer amps than this share of the label's working amps, in full sun, is a resistance in the way. Common practice. */
const fewAmpsShare = 0.5;

/** Bypassed modules cost volts and leave the amps of the light; a bad joint lets few through. */
const ampsForLight: WorkDef = {
  id: 'pv-amps-for-light',
  answers: ['few', 'full'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const amps = context.readings['full-sun.amps'];
    if (amps === undefined) return { ok: false, missing: [] };
    const labelAmps = run.string.impA * run.string.parallel;
    return {
      ok: true,
      outcome: amps < fewAmpsShare * labelAmps ? 'few' : 'full',
      says: [{ id: 'expected.pv.ampsForLight', params: { amps, labelAmps } }],
    };
  },
};

/** What a reading too close to call comes to: its neighbours weighed, the careful one taken. */
export const betweenWorks: readonly WorkDef[] = [
  withAmps('pv-flow-between', 'flowing', pvZeroAmps),
  withAmps('pv-start-between', 'start-watch', tryAmps),
  withAmps('pv-sun-between', 'full-sun', tryAmps),
  onScreen('pv-running-between', 'running-now'),
  onScreen('pv-retest-between', 'retest-start'),
  voltsBetween,
  p1Between,
  ampsForLight,
];
