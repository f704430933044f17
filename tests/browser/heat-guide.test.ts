import { describe, expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import { answersSchema } from '../../src/visit/walk.ts';
import { type HeatCase, heatCases } from '../support/heat-cases/cases.ts';
import { asKept, visitorWith } from './support/site-on-phone.ts';
import { test } from './support/visitor.ts';
import { runAsWalked } from './support/walked.ts';

const caseOf = (id: string): HeatCase => {
  const found = heatCases.find((each) => each.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
};

describe('loud fans and hot units, from the guide’s page to the end', () => {
  test.for([
    ['sallow: normal, the load asks', 'the commonest answer'],
    ['tern: nothing wrong at this load and heat', 'a healthy plant'],
    [
      'sallow: an inlet too close to call, and the strip shows air coming round',
      'a reading too close to call',
    ],
    [
      'tern: an upper inlet hotter than any exhaust is heated by something else',
      'a reading that contradicts the rest',
    ],
    ['sallow: two units that drive current into each other', 'current that circulates'],
    ['tern: a sensor that reads low keeps the fans off', 'a sensor that hides the heat'],
    ['sallow: a hot joint, made new and shown alike', 'a repair: made safe, restored and tested again'],
  ])('%s: %s', { timeout: 180_000 }, async ([id], { newVisitor }) => {
    const { sheet, answers, causes, end } = caseOf(id!);
    const site = asKept(sheet);
    const visitor = await visitorWith(newVisitor, site);
    const page = await visitor.context.newPage();
    await page.clock.install();
    await page.goto(`${visitor.site.url}guides/fans-heat/`);
    // One visit by a finger's taps and a keyboard; the others by the page's own controls, which is the same way sooner.
    const driver = new Driver(page, { swift: id !== 'sallow: normal, the load asks' });
    await driver.start({ site: site.name });
    const walked = await runAsWalked(driver, 'fans-heat', site, answersSchema.parse({ answers }));
    expect(walked.verdict?.causes ?? null).toEqual(causes);
    expect(walked.end?.result).toBe(end);
    if (id!.includes('too close to call'))
      expect(walked.outcomes.flatMap(({ readings }) => readings.map(({ outcome }) => outcome))).toContain(
        'undetermined',
      );
    // The cases stop where the end is shown: what it asks is met, and the visit is closed.
    expect(await driver.give('done')).toBe(true);
    await driver.plate.getByText('The visit is closed').waitFor();
  });
});
