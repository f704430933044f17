import { describe, expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import { answersSchema } from '../../src/visit/walk.ts';
import { type PvCase, pvCases } from '../support/pv-cases/cases.ts';
import { asKept, visitorWith } from './support/site-on-phone.ts';
import { test } from './support/visitor.ts';
import { runAsWalked } from './support/walked.ts';

const caseOf = (id: string): PvCase => {
  const found = pvCases.find((each) => each.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
};

describe('a PV tracker that will not start, from the front page to the verdict', () => {
  test.for([
    ['healthy-working', 'a healthy plant'],
    ['starts-at-the-edge-of-the-working-band', 'a reading too close to call'],
    ['string-reversed-flowing', 'a reversed string that carries current'],
    ['string-too-long', 'a string over the input’s maximum on a cold morning'],
    ['over-the-maximum-now', 'a string over the maximum now'],
    ['string-too-short', 'a string too short to start'],
    ['held-back-full', 'a full bank'],
    ['open-or-shorted-not-told-apart', 'causes that read the same, kept together'],
    ['insulation-fault-in-the-plus-lead', 'an insulation fault'],
    ['string-reversed-opened-in-the-dark', 'a repair: made safe, proved dead, restored and tested again'],
  ])('%s: %s', { timeout: 180_000 }, async ([id], { newVisitor }) => {
    const { sheet, answers, causes, end } = caseOf(id!);
    const site = asKept(sheet);
    const visitor = await visitorWith(newVisitor, site);
    const page = await visitor.context.newPage();
    await page.clock.install();
    await page.goto(visitor.site.url);
    await page.locator('main a[href$="/guides/pv-no-start/"]').first().click();
    // One visit by a finger's taps and a keyboard; the others by the page's own controls, which is the same way sooner.
    const driver = new Driver(page, { swift: id !== 'healthy-working' });
    const subject = site.strings[0]!.name;
    await driver.start({ site: site.name, ...(site.strings.length > 1 ? { subject } : {}) });
    const walked = await runAsWalked(driver, 'pv-no-start', site, answersSchema.parse({ subject, answers }));
    expect(walked.verdict?.causes ?? null).toEqual(causes);
    expect(walked.end?.result).toBe(end);
    if (id === 'starts-at-the-edge-of-the-working-band')
      expect(walked.outcomes.flatMap(({ readings }) => readings.map(({ outcome }) => outcome))).toContain(
        'undetermined',
      );
    // The cases stop where the end is shown: what it asks is met, and the visit is closed.
    expect(await driver.give('done')).toBe(true);
    await driver.plate.getByText('The visit is closed').waitFor();
  });
});
