import { describe, expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import { sallowCreek } from '../../src/site/demo.ts';
import { answersSchema } from '../../src/visit/walk.ts';
import { pvCases } from '../support/pv-cases/cases.ts';
import { keepSite } from './support/site-on-phone.ts';
import { test } from './support/visitor.ts';
import { runAsWalked, walkOf } from './support/walked.ts';

describe('the record of a visit that was not resolved', () => {
  test('says at the end, on the record and on the list what was tried, that it did not cure, and what was ruled out', {
    timeout: 180_000,
  }, async ({ visitor }) => {
    const { answers } = pvCases.find(({ id }) => id === 'arc-lockout-comes-back')!;
    const page = await visitor.context.newPage();
    await page.clock.install();
    await keepSite(page, visitor.site.url, sallowCreek);
    await page.goto(visitor.site.url);
    await page.locator('main a[href$="/guides/pv-no-start/"]').first().click();
    const driver = new Driver(page, { swift: true });
    const subject = sallowCreek.strings[0]!.name;
    await driver.start({ site: sallowCreek.name, subject });
    const walked = await runAsWalked(
      driver,
      'pv-no-start',
      sallowCreek,
      answersSchema.parse({ subject, answers }),
    );
    expect(walked.tried).toMatchObject([{ causes: ['lockout-latched'], retest: 'failed' }]);
    await driver.plate.getByText('The re-test failed: it did not cure.').waitFor();
    expect(await driver.give('done')).toBe(true);
    await driver.plate.getByText('The visit is closed').waitFor();
    const closed = (await driver.log()).findLast(({ kind }) => kind === 'closed');
    expect((closed?.kind === 'closed' ? (closed.ruledOut ?? []) : []).length).toBe(walked.ruledOut.length);

    await page.goto(`${visitor.site.url}visits/`);
    await page.getByText('The re-test failed: it did not cure.').waitFor();
    await page.getByRole('link', { name: 'Read the record' }).click();
    const facts = page.locator('fw-visit-record dl');
    await facts.getByText('Tried: ').waitFor();
    expect(await facts.textContent()).toContain('it did not cure');
    expect(await page.locator('.log-list').textContent()).toContain(
      'Re-test failed: what was tried did not cure.',
    );
  });

  test('lists the causes that the readings speak against, each with its steps, unfolded and on the record', {
    timeout: 180_000,
  }, async ({ visitor }) => {
    const { answers } = pvCases.find(({ id }) => id === 'a-probe-that-touched-no-ground')!;
    const page = await visitor.context.newPage();
    await page.clock.install();
    await keepSite(page, visitor.site.url, sallowCreek);
    await page.goto(visitor.site.url);
    await page.locator('main a[href$="/guides/pv-no-start/"]').first().click();
    const driver = new Driver(page, { swift: true });
    const subject = sallowCreek.strings[0]!.name;
    await driver.start({ site: sallowCreek.name, subject });
    const file = answersSchema.parse({ subject, answers });
    await driver.drive(file);
    const walked = walkOf('pv-no-start', sallowCreek, file);
    await driver.plate.getByText(`Ruled out: ${walked.ruledOut.length}`).click();
    expect(await driver.plate.locator('.run-summary details li').count()).toBe(walked.ruledOut.length);
    expect(await driver.give('done')).toBe(true);
    await driver.plate.getByText('The visit is closed').waitFor();
    await page.goto(`${visitor.site.url}visits/`);
    await page.getByRole('link', { name: 'Read the record' }).click();
    await page.locator('.log-list').waitFor();
    const record = (await page.locator('.log-list').textContent()) ?? '';
    expect(record.match(/Ruled out: /g)).toHaveLength(walked.ruledOut.length);
  });
});
