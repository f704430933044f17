/**
 * Every check there is, each under its heading; the ones that use one core run two at a time. A stage that fails does not
 * hide the ones after it; only what cannot run without it is counted as failed with it. The last line is always
 * `N passed, N failed`.
 */
import { mkdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { browserPath, NoBrowser } from './browser.ts';
import { root, runNode, tools } from './project.ts';
import { countTests, type Tally } from './test-tally.ts';

const results: { stage: string; tally: Tally; seconds: number }[] = [];

const heading = (name: string): void =>
  console.log(`\n──── ${name} ${'─'.repeat(Math.max(4, 72 - name.length))}`);

async function stage(name: string, run: () => Promise<Tally>): Promise<boolean> {
  const begun = performance.now();
  const tally = await run();
  results.push({ stage: name, tally, seconds: (performance.now() - begun) / 1000 });
  return tally.failed === 0;
}

const one = (good: boolean): Tally => ({ passed: good ? 1 : 0, failed: good ? 0 : 1 });

/** A stage that is one script, good when it ends with 0. */
const script = (name: string, path: string, ...args: string[]): Promise<boolean> =>
  stage(name, async () => {
    heading(name);
    return one((await runNode(path, args)).code === 0);
  });

/** The same beside another stage: what it says comes when it has ended. */
const beside = (name: string, path: string, ...args: string[]): Promise<boolean> =>
  stage(name, async () => {
    const { code, output } = await runNode(path, args, {}, 'kept');
    heading(name);
    process.stdout.write(output);
    return one(code === 0);
  });

/** A stage of Vitest; counts its tests. */
const vitest = (name: string, config: string): Promise<boolean> =>
  stage(name, async () => {
    heading(name);
    const report = join(root, '.cache', `${name.replaceAll(' ', '-')}.json`);
    await rm(report, { force: true });
    const { code } = await runNode(tools.vitest, [
      'run',
      `--config=${config}`,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ]);
    return countTests(await readFile(report, 'utf8').catch(() => ''), code);
  });

await mkdir(join(root, '.cache'), { recursive: true });
console.log('Types, lint and safety proof, each shown when it has ended.');
const [proved] = await Promise.all([
  beside('safety proof', 'src/commands/prove.ts', '--guides-every', '7'),
  beside('types of pages', tools.astro, 'check', '--minimumSeverity', 'warning')
    .then(() => beside('types of code', tools.tsc, '--noEmit', '-p', 'tsconfig.json'))
    .then(() => beside('lint', tools.biome, 'check', '--error-on-warnings', '.')),
]);
await vitest('unit tests', 'tests/vitest.config.ts');
const built = await script('build', 'src/commands/build.ts', ...(proved ? ['--proved'] : []));
const browserFound = await stage('browser', async () => {
  heading('browser');
  try {
    console.log(browserPath());
    return one(true);
  } catch (error) {
    if (!(error instanceof NoBrowser)) throw error;
    console.error(error.message);
    return one(false);
  }
});
if (built && browserFound) await vitest('browser tests', 'tests/browser/vitest.config.ts');
else
  await stage('browser tests', async () => {
    heading('browser tests');
    console.error(`Not run: ${built ? 'there is no browser' : 'the site could not be built'}.`);
    return one(false);
  });

console.log(`\n${'─'.repeat(78)}`);
for (const { stage: name, tally, seconds } of results) {
  const { passed, failed } = tally;
  console.log(
    `${name.padEnd(20)}${String(passed).padStart(6)} good${String(failed).padStart(6)} bad${seconds.toFixed(0).padStart(8)} s`,
  );
}
const passed = results.reduce((sum, { tally }) => sum + tally.passed, 0);
const failed = results.reduce((sum, { tally }) => sum + tally.failed, 0);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
