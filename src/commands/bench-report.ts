/** What the bench found, and how it is printed. */
import type { PageWeight, Weight } from './bench-bytes.ts';
import type { Keystroke, SearchBench } from './bench-search.ts';
import type { Spread } from './bench-speed.ts';

/** Sizes in kB and MB of 1000; times in ms on a processor four times slower, medians, their spread beside. */
export interface BenchReport {
  /** All bytes to network idle and through the first judged reading. */
  guidePages: readonly PageWeight[];
  /** The same for procedures begun by themselves. Each stands whole on its page, and has no budget. */
  procedurePages: readonly PageWeight[];
  readingToScreenMs4x: number;
  firstStepFromCacheMs4x: number;
  startFormFromCacheMs4x: number;
  /** Work of the search page for one more letter, until the results are painted. */
  searchKeystrokeMs4x: Keystroke;
  search: SearchBench;
  /** Each worksheet's page, to network idle. */
  worksheetPages: readonly ({ page: string } & Weight)[];
  /** From a key to the page that says what comes of it, without layout and paint. */
  worksheetKeystrokeMs4x: number;
  /** From the choice of a site to all its findings, without layout and paint. */
  sheetCheckMs4x: number;
  precacheMb: number;
  precacheFiles: number;
  /** Null where the site that stood was taken. */
  buildSeconds: number | null;
  /** Entries in the log that a reading was added to. */
  logEntries: number;
  /** The same words as the guide's, with no script, style or drawing. */
  bare: { htmlKb: number; loadMs4x: number; frameMs4x: number };
  /** Ours over the bare page's. */
  ratios: { bytes: number; html: number; readingToScreen: number; firstStepFromCache: number };
  spread: Readonly<
    Record<
      | 'readingToScreen'
      | 'firstStepFromCache'
      | 'startFormFromCache'
      | 'bareLoad'
      | 'bareFrame'
      | 'keystroke'
      | 'sheetCheck',
      Spread
    >
  >;
  machine: {
    cores: number;
    /** Over one minute, at the start and at the end. Above `cores`, the times are too long. */
    loadAverage: readonly [number, number];
    browser: string;
  };
}

const budgets = {
  pageKb: 90,
  fontKb: 60,
  readingMs: 100,
  firstStepMs: 1000,
  keystrokeMs: { median: 16, worst: 50 },
  worksheetKb: 60,
  sheetCheckMs: 100,
};

const columns = ['htmlKb', 'cssKb', 'jsKb', 'jsonKb', 'otherKb', 'totalKb', 'fontKb'] as const;
const against = (value: number, budget: number): string => (value <= budget ? 'within' : 'OVER');

const cells = (page: PageWeight): string[] => columns.map((name) => page[name].toFixed(1));
const budgetOf = ({ totalKb, fontKb }: PageWeight): string =>
  totalKb <= budgets.pageKb && fontKb <= budgets.fontKb ? 'within' : 'OVER';

const pageLine = (page: string, cells: readonly string[]): string =>
  page.padEnd(30) + cells.map((cell) => cell.padStart(9)).join('');

const timeLine = (
  what: string,
  unit: string,
  { median, min, max, samples }: Spread,
  budget?: number,
): string =>
  `${what.padEnd(46)}${`${median} ${unit}`.padStart(11)}  (${min} to ${max}, ${samples} samples)` +
  (budget === undefined ? '' : `  budget ${budget} ${unit}: ${against(median, budget)}`);

function searchLines({
  work,
  toFrame,
  bare,
  keystrokes,
  entries,
  words,
  indexKb,
  engines,
}: SearchBench): string[] {
  const { median, worst } = budgets.keystrokeMs;
  const parts = (of: number): string => `${(of * 100).toFixed(1)} %`;
  const engine = (name: string, each: SearchBench['engines']['shipped']['ours']): string =>
    `${name.padEnd(46)}${`${each.medianMs} ms`.padStart(11)}  (worst ${each.worstMs}, loaded in ${each.loadMs}) ` +
    `wanted in the first three ${parts(each.recall)}, nothing fits ${parts(each.nothingRight)}`;
  return [
    `Search over ${entries} entries, ${words} words, ${indexKb} kB`,
    `${'one more letter, work until painted'.padEnd(46)}${`${work.median} ms`.padStart(11)}  (worst ${work.worst}, ${keystrokes} letters)` +
      `  budget ${median} and ${worst} ms: ${against(work.median, median)}, ${against(work.worst, worst)}`,
    `${'the same, with the wait for the screen'.padEnd(46)}${`${toFrame.median} ms`.padStart(11)}  (worst ${toFrame.worst})`,
    `${'a letter in a bare box, the same work'.padEnd(46)}${`${bare.median} ms`.padStart(11)}  (worst ${bare.worst})`,
    engine('search alone, a letter', engines.shipped.ours),
    engine('MiniSearch, the same', engines.shipped.miniSearch),
    engine('search alone, ten times the index', engines.tenfold.ours),
    engine('MiniSearch, the same', engines.tenfold.miniSearch),
  ];
}

function worksheetLines({ worksheetPages, spread }: BenchReport): string[] {
  const heaviest = worksheetPages.reduce((most, page) => (page.totalKb > most.totalKb ? page : most));
  const over = worksheetPages.filter(({ totalKb }) => totalKb > budgets.worksheetKb);
  return [
    `Worksheets: ${worksheetPages.length} pages, the heaviest ${heaviest.page} with ${heaviest.totalKb} kB` +
      `  budget ${budgets.worksheetKb} kB: ${over.length === 0 ? 'within' : `OVER in ${over.length}`}`,
    timeLine('one more key, to the page changed', 'ms', spread.keystroke, budgets.keystrokeMs.median),
    timeLine('sheet check of a site, to the page changed', 'ms', spread.sheetCheck, budgets.sheetCheckMs),
  ];
}

export function benchTable(report: BenchReport): string {
  const { guidePages, procedurePages, bare, ratios, spread, machine } = report;
  const line = (what: string, value: string): string => what.padEnd(46) + value.padStart(11);
  return [
    'All bytes to network idle and through the first judged reading, kB at gzip -9',
    pageLine('page', [...columns.map((name) => name.replace('Kb', '')), 'budget']),
    ...guidePages.map((each) => pageLine(each.page, [...cells(each), budgetOf(each)])),
    ...procedurePages.map((each) => pageLine(each.page, cells(each))),
    pageLine('bare page of the guide’s words', [bare.htmlKb.toFixed(1)]),
    `budget: total, without fonts, ${budgets.pageKb} kB; fonts ${budgets.fontKb} kB. The guide is ${ratios.bytes} times the bare page, its HTML ${ratios.html} times`,
    '',
    `Times at 4× CPU slow-down, median; log of ${report.logEntries} entries`,
    timeLine('reading handed in, to the next step painted', 'ms', spread.readingToScreen, budgets.readingMs),
    timeLine(
      'visit gone on with from cache, to its form',
      'ms',
      spread.firstStepFromCache,
      budgets.firstStepMs,
    ),
    timeLine('guide opened from cache, to its start form', 'ms', spread.startFormFromCache),
    timeLine('bare page, press to next painted frame', 'ms', spread.bareFrame),
    timeLine('bare page, to its first frame after load', 'ms', spread.bareLoad),
    `ratios: reading ${ratios.readingToScreen}, first step ${ratios.firstStepFromCache}`,
    '',
    ...searchLines(report.search),
    '',
    ...worksheetLines(report),
    '',
    line('saved for offline use', `${report.precacheMb} MB in ${report.precacheFiles} files`),
    line('fresh build', report.buildSeconds === null ? 'not made' : `${report.buildSeconds} s`),
    `machine: ${machine.cores} cores, load ${machine.loadAverage.join(' to ')}, Chromium ${machine.browser}`,
  ].join('\n');
}
