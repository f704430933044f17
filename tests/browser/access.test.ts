import { describe, expect } from 'vitest';
import { axeFindings } from './support/axe.ts';
import { overflow, pageKinds, settled } from './support/pages.ts';
import { plateau, started } from './support/pre-charge.ts';
import { lightings, test } from './support/visitor.ts';

describe('axe', () => {
  // The whole of a guide holds the plates of its chapters again, and each worksheet is looked at with its numbers in.
  test.for(['the first half', 'the second half'])(
    'finds nothing on pages of each kind in any lighting: %s',
    { timeout: 300_000 },
    async (half, { newVisitor }) => {
      const visitor = await newVisitor({ lighting: 'shade', phone: { bypassCSP: true } });
      const page = await visitor.context.newPage();
      const all = (await pageKinds()).filter((path) => !path.endsWith('/whole/'));
      const middle = Math.ceil(all.length / 2);
      const found: string[] = [];
      for (const path of half === 'the first half' ? all.slice(0, middle) : all.slice(middle)) {
        await settled(visitor, page, path);
        for (const lighting of lightings) {
          await page.locator(`[data-set-lighting="${lighting}"]`).dispatchEvent('click');
          expect(await page.locator('html').getAttribute('data-lighting')).toBe(lighting);
          // What is not a colour is the same in every light.
          const findings = await axeFindings(page, lighting === 'shade' ? 'all' : 'colours');
          found.push(...findings.map((finding) => `${path} (${lighting}) ${finding}`));
        }
      }
      expect(found).toEqual([]);
    },
  );
});

describe('a run', () => {
  test('step by step, with an error shown and to its end: axe finds nothing, and nothing reaches past 320 pixels', async ({
    newVisitor,
  }) => {
    const visitor = await newVisitor({ phone: { bypassCSP: true, viewport: { width: 320, height: 640 } } });
    const driver = await started(visitor);
    const { page } = driver;
    const found: string[] = [];
    const look = async (what: string): Promise<void> => {
      found.push(...(await axeFindings(page)).map((finding) => `${what} ${finding}`));
      found.push(...(await overflow(page)).map((wide) => `${what} reaches too far: ${wide}`));
    };
    // One step of each kind is looked at, and the field of timed values.
    const seen = new Set<string>();
    await driver.drive(plateau(25), async (block) => {
      const kind = block === 'rise' ? 'series' : ((await driver.plate.getAttribute('data-kind')) ?? '');
      if (seen.has(kind)) return;
      seen.add(kind);
      await look(`${block} (${kind})`);
      if (kind !== 'measure') return;
      await driver.give({ s1: 'fifty' });
      await page.locator('.error-summary').waitFor();
      await look(`${block} with an error`);
    });
    await look('after the end');
    expect([...seen].sort()).toEqual(['end', 'hold', 'look', 'measure', 'operate', 'series', 'workOut']);
    expect(found).toEqual([]);
  }, 120_000);
});
