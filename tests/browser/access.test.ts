import { describe, expect } from 'vitest';
import { axeFindings } from './support/axe.ts';
import { overflow, pageKinds, settled } from './support/pages.ts';
import { plateau, started } from './support/pre-charge.ts';
import { lightings, test } from './support/visitor.ts';

describe('axe', () => {
  for (const lighting of lightings)
    test(`finds nothing on pages of each kind, lit for ${lighting}`, async ({ newVisitor }) => {
      const visitor = await newVisitor({ lighting, phone: { bypassCSP: true } });
      const page = await visitor.context.newPage();
      const found: string[] = [];
      // The whole of a guide holds the plates of its chapters again.
      const several = (await pageKinds(2)).filter((path) => !path.endsWith('/whole/'));
      // A guide's plates are those of a procedure; of the two, the shorter page is looked at in every light.
      const kinds = (await pageKinds()).filter((path) => !/^guides\/[^/]+\/(?!map)/.test(path));
      for (const path of lighting === 'shade' ? several : kinds) {
        await settled(visitor, page, path);
        found.push(
          ...(await axeFindings(page, lighting === 'shade' ? 'all' : 'colours')).map(
            (finding) => `${path} ${finding}`,
          ),
        );
      }
      expect(found).toEqual([]);
    }, 300_000);
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
