/**
 * Weighs and times the site as a slow phone has it, beside a bare page of the same words in the same run. It reports and
 * fails nothing: a loaded machine makes slow times, and says so in `loadAverage`.
 *   --json   one object instead of the table
 *   --built  the site that stands in dist/, instead of building afresh; the time of a build is then not known
 */
import { spawn } from 'node:child_process';
import { rm } from 'node:fs/promises';
import { availableParallelism, loadavg } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { writeBare } from './bench-bare.ts';
import { weigh, weighPages } from './bench-bytes.ts';
import { type BenchReport, benchTable } from './bench-report.ts';
import { measureSearch } from './bench-search.ts';
import { measureSpeeds } from './bench-speed.ts';
import { measureWorksheets } from './bench-worksheets.ts';
import { launchBrowser } from './browser.ts';
import { wantedBuild } from './build-options.ts';
import { root } from './project.ts';

const { values } = parseArgs({
  options: { json: { type: 'boolean', default: false }, built: { type: 'boolean', default: false } },
});

/** Standard output is the report's; everything else is said on the other stream. */
const say = (text: string): void => console.error(`bench: ${text}`);

/** A whole build into an empty folder, as `npm run build` makes it: proof, pages and worker. Resolves to its seconds. */
async function buildAfresh(folder: string): Promise<number> {
  await rm(folder, { recursive: true, force: true });
  const startedMs = performance.now();
  const code = await new Promise<number | null>((done, fail) => {
    const child = spawn(process.execPath, ['src/commands/build.ts'], {
      cwd: root,
      env: { ...process.env, FAULTWRIGHT_OUT: folder, FAULTWRIGHT_BASE: '/', ASTRO_TELEMETRY_DISABLED: '1' },
      stdio: ['ignore', process.stderr, process.stderr],
    });
    child.on('error', fail);
    child.on('close', done);
  });
  if (code !== 0) throw new Error('The site could not be built; the reason is above.');
  return Math.round((performance.now() - startedMs) / 100) / 10;
}

const ratio = (ours: number, bare: number): number => Math.round((ours / bare) * 10) / 10;
const load = (): number => Math.round((loadavg()[0] ?? 0) * 10) / 10;

async function bench(): Promise<BenchReport> {
  const atStart = load();
  const folder = values.built ? wantedBuild().folder : join(root, '.cache/bench-site');
  const bareFolder = join(root, '.cache/bench-bare');
  if (!values.built) say('building afresh');
  const buildSeconds = values.built ? null : await buildAfresh(folder);
  const browser = await launchBrowser();
  try {
    say('weighing every guide and procedure through its first judged reading');
    const { pages, guideHtml } = await weighPages(browser, folder);
    await writeBare(browser, folder, guideHtml, bareFolder);
    const { htmlKb } = await weigh(bareFolder, ['index.html']);
    say('timing on a processor four times slower, with no network');
    const speeds = await measureSpeeds(browser, folder, bareFolder);
    const { readingToScreen, firstStepFromCache, startFormFromCache, bareLoad, bareFrame } = speeds;
    say('typing into the search, and running it beside another engine');
    const search = await measureSearch(browser, folder);
    say('weighing every worksheet, and typing into some');
    const { pages: worksheetPages, keystroke, sheetCheck } = await measureWorksheets(browser, folder);
    const [guide] = pages;
    return {
      guidePages: pages.filter(({ page }) => page.startsWith('guides/')),
      procedurePages: pages.filter(({ page }) => page.startsWith('procedures/')),
      readingToScreenMs4x: readingToScreen.median,
      firstStepFromCacheMs4x: firstStepFromCache.median,
      startFormFromCacheMs4x: startFormFromCache.median,
      searchKeystrokeMs4x: search.work,
      search,
      worksheetPages,
      worksheetKeystrokeMs4x: keystroke.median,
      sheetCheckMs4x: sheetCheck.median,
      precacheMb: speeds.precacheMb,
      precacheFiles: speeds.precacheFiles,
      buildSeconds,
      logEntries: speeds.logEntries,
      bare: { htmlKb, loadMs4x: bareLoad.median, frameMs4x: bareFrame.median },
      ratios: {
        bytes: ratio(guide!.totalKb, htmlKb),
        html: ratio(guide!.htmlKb, htmlKb),
        readingToScreen: ratio(readingToScreen.median, bareFrame.median),
        firstStepFromCache: ratio(firstStepFromCache.median, bareLoad.median),
      },
      spread: {
        readingToScreen,
        firstStepFromCache,
        startFormFromCache,
        bareLoad,
        bareFrame,
        keystroke,
        sheetCheck,
      },
      machine: { cores: availableParallelism(), loadAverage: [atStart, load()], browser: browser.version() },
    };
  } finally {
    await browser.close();
  }
}

const report = await bench();
console.log(values.json ? JSON.stringify(report, null, 2) : benchTable(report));
