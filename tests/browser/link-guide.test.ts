import { describe, expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import { answersSchema } from '../../src/visit/walk.ts';
import { linkCases } from '../support/link-cases/cases.ts';
import { test } from './support/visitor.ts';
import { runAsWalked } from './support/walked.ts';

describe('a battery link that is lost, from the start form to the verdict', () => {
  test.for([
    'healthy plant, Sallow Creek Apiary',
    'a pair at the inverter, Sallow Creek Apiary',
    'every pair tried, both ports work, Tern Ledge Cabin',
    'no end resistor at the pack, Tern Ledge Cabin',
    'charging within what the clamp can tell of the limit, Sallow Creek Apiary',
    'a mended plug, and a second fault behind it, Sallow Creek Apiary',
  ])('%s', { timeout: 240_000 }, async (id, { visitor }) => {
    const found = linkCases.find((each) => each.id === id);
    if (!found) throw new Error(`no case ${id}`);
    const { sheet, answers, causes, end } = found;
    const page = await visitor.context.newPage();
    await page.clock.install();
    // One visit by a finger's taps and a keyboard; the others by the page's own controls, which is the same way sooner.
    const driver = new Driver(page, { swift: !id.startsWith('healthy') });
    await driver.begin(visitor.site.url, { page: 'guides/battery-link', site: sheet.name });
    const walked = await runAsWalked(driver, 'battery-link', sheet, answersSchema.parse({ answers }));
    expect(walked.verdict?.causes ?? null).toEqual(causes);
    expect(walked.end?.result).toBe(end);
    expect(await driver.give('done')).toBe(true);
    await driver.plate.getByText('The visit is closed').waitFor();
  });
});
