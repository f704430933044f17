import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** WCAG 2.2 A and AA, and what axe counts as good practice; beside them the enhanced contrast and the size of targets. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What axe finds on the page as it stands, each with the elements it means; colours alone where nothing else can differ
 * from a page looked at before. The visitor's browser must not hold the page
 * to its security policy (`bypassCSP`): axe is put in from outside.
 */
export async function axeFindings(page: Page, what: 'all' | 'colours' = 'all'): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(source);
  return page.evaluate(
    async ([runOnly, only]) => {
      const runner = (globalThis as unknown as { axe: typeof axe }).axe;
      const { violations } = await runner.run(document, {
        runOnly: only === 'colours' ? ['color-contrast', 'color-contrast-enhanced'] : runOnly,
        resultTypes: ['violations'],
        rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } },
      });
      return violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
      );
    },
    [tags, what] as const,
  );
}
