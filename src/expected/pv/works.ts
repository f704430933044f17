import { vocAt } from '../../worksheets/pv/string-volts.ts';
import { stringWindow } from '../../worksheets/pv/string-window.ts';
import type { ExpectContext, WorkDef } from '../context.ts';
import { refusalOf } from './refusal.ts';
import { cellRange, hotCells, lightIsWeak, type RunString, runString, stringVoc, voltsU } from './site.ts';

/** Margin on hot working volts for a borrowed coefficient, tolerance and age. Common practice, 2 to 3 %. */
const hotMargin = 0.03;
/** A reading under this share of the expected string is no whole string, whatever it is. */
const noStringShare = 0.5;

/** The string-window worksheet's inputs, for any number of modules. */
function windowInputs(
  { sheet }: ExpectContext,
  { string, tracker }: RunString,
  modules = string.modulesInSeries,
) {
  return {
    vocVolts: string.vocV,
    vmpVolts: string.vmpV,
    vocPerC: string.vocPerC,
    vmpPerC: string.vmpPerC ?? string.pmaxPerC,
    modules,
    recordLowC: sheet.climate.recordLowC,
    hotCellC: hotCells(sheet, string),
    hotMargin,
    startVolts: tracker.startV,
    trackLowVolts: tracker.trackMinV,
    trackHighVolts: tracker.trackMaxV,
    maxVolts: tracker.maxV,
  };
}

type WindowVerdict = 'noAnswer' | NonNullable<ReturnType<typeof windowOf>['verdict']>;

function windowOf(inputs: ReturnType<typeof windowInputs>) {
  const result = stringWindow.compute(inputs);
  if (!result.ok) return { verdict: undefined, says: [refusalOf('string-window', result.reason)] };
  const remarks = stringWindow.remarks?.(inputs, result.out) ?? [];
  return { verdict: result.out.verdict, says: remarks };
}

const windowAnswers: Record<WindowVerdict, string> = {
  ok: 'fits',
  startsMarginal: 'too-short',
  aboveTracking: 'fits',
  nearMaximum: 'near-maximum',
  overMaximum: 'over-maximum',
  startsNever: 'too-short',
  belowTracking: 'too-short',
  noAnswer: 'no-answer',
};

/** Too few modules to start or to track in the heat, or just enough with nothing to spare. */
const tooShort = (verdict: string | undefined) =>
  verdict !== undefined && windowAnswers[verdict as WindowVerdict] === 'too-short';

const window: WorkDef = {
  id: 'pv-string-window',
  answers: ['over-maximum', 'too-short', 'near-maximum', 'fits', 'no-answer'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const inputs = windowInputs(context, run);
    const { verdict, says } = windowOf(inputs);
    return {
      ok: true,
      outcome: windowAnswers[verdict ?? 'noAnswer'],
      use: { worksheet: 'string-window', inputs },
      says,
    };
  },
};

/** Modules that a low reading lacks, and whether what is left can start. */
const missingModules: WorkDef = {
  id: 'pv-missing-modules',
  answers: ['below-start', 'above-start', 'no-string', 'light-too-weak'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const { string, tracker } = run;
    const measured = context.readings['volts-still.p1'];
    if (measured === undefined) return { ok: false, missing: [] };
    const cells = cellRange(context, string);
    const missingAt = (tempC: number) =>
      string.modulesInSeries - measured / vocAt(string.vocV, string.vocPerC, tempC);
    const missing = Math.max(0, Math.round(missingAt(cells.likelyC)));
    const left = Math.max(1, string.modulesInSeries - missing);
    const inputs = windowInputs(context, run, left);
    const short =
      measured + voltsU(context.sheet, measured) < tracker.startV || tooShort(windowOf(inputs).verdict);
    const params = {
      modules: string.modulesInSeries,
      measured,
      missing,
      left,
      missingLow: Math.max(0, missingAt(cells.highC)),
      missingHigh: Math.max(0, missingAt(cells.lowC)),
      startVolts: tracker.startV,
      nominal: stringVoc(string, cells.likelyC),
    };
    // On low impedance a ghost would have fallen away: volts that stood there are a string's, however few.
    const real = context.outcomes['p1-low-z'] === 'low' || context.outcomes['p1-low-z'] === 'undetermined';
    // A tracker that makes power has had enough to start: these volts stand under its load, and are not the string's open ones.
    const runs = (context.readings['running-now.watts'] ?? 0) > 0;
    const outcome =
      !real && measured < noStringShare * params.nominal
        ? 'no-string'
        : lightIsWeak(context)
          ? 'light-too-weak'
          : short && !runs
            ? 'below-start'
            : 'above-start';
    return {
      ok: true,
      outcome,
      use: { worksheet: 'string-window', inputs },
      says: [
        { id: 'expected.pv.missingModules', params },
        ...(cells.read ? [] : [{ id: 'expected.pv.missingCoarse', params }]),
      ],
    };
  },
};

/** The coldest morning's volts from what was read today, taken at the hottest the cells may be: the safe side. */
const coldFromMeasured: WorkDef = {
  id: 'pv-cold-from-measured',
  answers: ['over-maximum', 'fits'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const { string, tracker } = run;
    const typed = context.readings['over-p1.p1'] ?? context.readings['volts-still.p1'];
    // Over range gives no number: it is over whatever the meter could show.
    const measured = typed ?? tracker.maxV;
    const cells = cellRange(context, string);
    const { recordLowC } = context.sheet.climate;
    const each = (tempC: number) => vocAt(string.vocV, string.vocPerC, tempC);
    const cold = (measured * each(recordLowC)) / each(cells.highC);
    const modules = Math.max(1, Math.round(measured / each(cells.likelyC)));
    const params = {
      measured,
      cold,
      modules,
      recordLowC,
      maxVolts: tracker.maxV,
      sheetModules: string.modulesInSeries,
    };
    return {
      ok: true,
      outcome:
        typed === undefined || cold > tracker.maxV || measured > tracker.maxV ? 'over-maximum' : 'fits',
      use: { worksheet: 'string-window', inputs: windowInputs(context, run, modules) },
      says: [{ id: 'expected.pv.coldFromMeasured', params }],
    };
  },
};

/** What was read today against the start volts, and the same string on a hot afternoon. */
const startMargin: WorkDef = {
  id: 'pv-start-margin',
  answers: ['below-start', 'short-when-hot', 'enough', 'light-too-weak', 'no-string'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const { string, tracker } = run;
    const measured = context.readings['volts-still.p1'];
    if (measured === undefined) return { ok: false, missing: [] };
    const nominal = stringVoc(string, cellRange(context, string).likelyC);
    const inputs = windowInputs(context, run);
    const { verdict, says } = windowOf(inputs);
    const below = measured + voltsU(context.sheet, measured) < tracker.startV;
    const outcome =
      measured < noStringShare * nominal
        ? 'no-string'
        : below && lightIsWeak(context) && nominal >= tracker.startV
          ? 'light-too-weak'
          : below
            ? 'below-start'
            : tooShort(verdict)
              ? 'short-when-hot'
              : 'enough';
    return {
      ok: true,
      outcome,
      use: { worksheet: 'string-window', inputs },
      says: [
        { id: 'expected.pv.startMargin', params: { measured, startVolts: tracker.startV, nominal } },
        ...says,
      ],
    };
  },
};

/** Whether this string and one of another tracker may change places. */
const swapFits: WorkDef = {
  id: 'pv-swap-fits',
  answers: ['fits', 'too-much', 'too-little', 'no-other'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const { sheet } = context;
    const { recordLowC } = sheet.climate;
    const others = sheet.trackers.flatMap((tracker) => {
      const string = sheet.strings.find((each) => each.tracker === tracker.name);
      return tracker.name !== run.tracker.name && string ? [{ tracker, string }] : [];
    });
    const goesOn = (string: RunString['string'], tracker: RunString['tracker']) =>
      stringVoc(string, recordLowC) <= tracker.maxV &&
      string.iscA * string.parallel <= (tracker.shortCircuitMaxA ?? tracker.usableA);
    const starts = (string: RunString['string'], tracker: RunString['tracker']) =>
      !tooShort(windowOf(windowInputs(context, { string, tracker })).verdict);
    const bearable = others.filter(
      (each) => goesOn(run.string, each.tracker) && goesOn(each.string, run.tracker),
    );
    const other = bearable.find(
      (each) => starts(run.string, each.tracker) && starts(each.string, run.tracker),
    );
    const shown = other ?? bearable[0] ?? others[0];
    const inputs = windowInputs(context, shown ? { string: run.string, tracker: shown.tracker } : run);
    return {
      ok: true,
      outcome: other
        ? 'fits'
        : bearable.length > 0
          ? 'too-little'
          : others.length > 0
            ? 'too-much'
            : 'no-other',
      use: { worksheet: 'string-window', inputs },
      says: [
        {
          id: other
            ? 'expected.pv.swapFits'
            : bearable.length > 0
              ? 'expected.pv.swapTooLittle'
              : others.length > 0
                ? 'expected.pv.swapTooMuch'
                : 'expected.pv.swapNoOther',
          params: {
            cold: stringVoc(run.string, recordLowC),
            maxVolts: shown?.tracker.maxV ?? 0,
            iscAmps: run.string.iscA * run.string.parallel,
          },
        },
      ],
    };
  },
};

/** How the run came to call the tracker running: held back, following a load, high for no reason found, or at work. */
function howItRuns({ outcomes }: ExpectContext): 'follows' | 'limited' | 'not-explained' | 'nothing' {
  if (outcomes['load-after'] === 'rises') return 'follows';
  const at = ['full-sun', 'start-watch', 'flowing'].find((block) => outcomes[block] !== undefined);
  const between = { 'full-sun': 'sun-between', 'start-watch': 'start-between', flowing: 'flow-between' };
  const said =
    at && outcomes[at] === 'between' ? outcomes[between[at as keyof typeof between]] : at && outcomes[at];
  if (said !== 'limited') return 'nothing';
  // Held up by nobody: the battery permits charge and a load moves nothing. More modules than the sheet stand as high.
  return outcomes['charge-permit'] === 'some' && outcomes['load-after'] === 'same'
    ? 'not-explained'
    : 'limited';
}

/** What was found on the way and still stands although the tracker runs now. */
const whatStands: WorkDef = {
  id: 'pv-what-stands',
  answers: ['fewer', 'short-when-hot', 'limited', 'not-explained', 'follows', 'nothing'],
  work(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const inputs = windowInputs(context, run);
    const { verdict, says } = windowOf(inputs);
    const outcome =
      context.outcomes['count-missing'] === 'above-start'
        ? 'fewer'
        : tooShort(verdict)
          ? 'short-when-hot'
          : howItRuns(context);
    return { ok: true, outcome, use: { worksheet: 'string-window', inputs }, says };
  },
};

/** Arithmetic on the string, its tracker and its light. */
export const stringWorks: readonly WorkDef[] = [
  window,
  missingModules,
  coldFromMeasured,
  startMargin,
  swapFits,
  whatStands,
];
