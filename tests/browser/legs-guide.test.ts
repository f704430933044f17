import { describe, expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';
import { answersSchema } from '../../src/visit/walk.ts';
import { legCases, plantCase } from '../support/leg-cases/cases.ts';
import { asKept, visitorWith } from './support/site-on-phone.ts';
import { type NewVisitor, test } from './support/visitor.ts';
import { runAsWalked } from './support/walked.ts';

/** A case typed in by hand from the guide's page on, held against its walk. */
async function run(newVisitor: NewVisitor, sheet: SiteSheet, answers: object, swift = true) {
  const site = asKept(sheet);
  const visitor = await visitorWith(newVisitor, site);
  const page = await visitor.context.newPage();
  await page.clock.install();
  await page.goto(`${visitor.site.url}guides/uneven-legs/`);
  const driver = new Driver(page, { swift });
  await driver.start({ site: site.name });
  return runAsWalked(driver, 'uneven-legs', site, answersSchema.parse({ answers }));
}

describe('uneven legs, from the guide’s page to the end', () => {
  test.for([
    ['opposed: healthy', 'a healthy plant'],
    ['opposed: neutral open in the feeder', 'an open neutral, the light leg high'],
    ['opposed: a poor joint of 0.25 Ω in the neutral', 'a resistive neutral'],
    ['a leg lost at the unit and fed backward', 'a dead leg that is live'],
    ['common: a poor joint in hot 1', 'legs in step'],
    ['line: the source sags', 'one line and a neutral'],
    ['an open neutral, mended and shown', 'a repair: made safe, restored and tested again'],
  ])('%s: %s', { timeout: 240_000 }, async ([id], { newVisitor }) => {
    const { sheet, answers, causes, end } = legCases.find((each) => each.id === id)!;
    // One visit by a finger's taps and a keyboard; the others by the page's own controls, which is the same way sooner.
    const walked = await run(newVisitor, sheet, answers, id !== 'opposed: healthy');
    expect(walked.verdict?.causes ?? null).toEqual(causes);
    expect(walked.end?.result).toBe(end);
  });

  test('a reading that contradicts the rest names nothing', { timeout: 240_000 }, async ({ newVisitor }) => {
    const { sheet, answers } = plantCase('opposed', {}, [900, 700]);
    const odd = { v12: '310.0', v1: '120.1', v2: '120.0' };
    const walked = await run(newVisitor, sheet, { ...answers, 'out-legs': odd });
    expect(walked.verdict ?? null).toBeNull();
    expect(walked.end?.result ?? 'unfinished').not.toBe('healthy');
  });
});
