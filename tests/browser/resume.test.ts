import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import { sallowCreek } from '../../src/site/demo.ts';
import { preCharged, started, upTo } from './support/pre-charge.ts';
import { test } from './support/visitor.ts';
import { runAsWalked } from './support/walked.ts';

describe('a run that is broken off', () => {
  test('at every step of it: a reload loses nothing, neither the step nor what was ticked or typed', async ({
    visitor,
  }) => {
    const driver = await started(visitor);
    const { page } = driver;
    const reloading = async (block: string): Promise<void> => {
      const before = await driver.log();
      await page.reload();
      await driver.plate.waitFor();
      expect(await driver.block()).toBe(block);
      expect(await driver.log()).toEqual(before);
    };
    const { drive } = driver;
    driver.drive = (file, each) =>
      drive.call(driver, file, async (block) => {
        await reloading(block);
        await each?.(block);
      });
    const walked = await runAsWalked(driver, 'pre-charge', sallowCreek, preCharged);
    expect(walked.outcomes.length).toBeGreaterThan(12);
  });

  test('half-way through a step: what is typed and ticked is there after a reload', async ({ visitor }) => {
    const driver = await started(visitor);
    const { page } = driver;
    await driver.drive(upTo(preCharged, 'ready'));
    const box = driver.plate.getByRole('checkbox').first();
    await box.check();
    await expect.poll(async () => (await driver.log()).at(-1)?.kind).toBe('confirm');
    await page.reload();
    await driver.plate.waitFor();
    expect(await box.isChecked()).toBe(true);

    await driver.drive({ ...preCharged, answers: { ready: 'done', packs: 'all-on' } });
    expect(await driver.block()).toBe('s1');
    await driver.type({ s1: '-52,4 v' });
    await page.reload();
    await driver.plate.waitFor();
    expect(await driver.plate.locator('.meter-window input').inputValue()).toBe('-52,4 v');
  });

  test('by a killed tab: the front page leads back to the step', async ({ visitor }) => {
    const driver = await started(visitor);
    await driver.drive(upTo(preCharged, 'sides'));
    const before = await driver.log();
    await driver.page.close({ runBeforeUnload: false });
    const later = await visitor.open();
    await later.locator('fw-open-visit a').first().click();
    const again = new Driver(later);
    await again.plate.waitFor();
    expect(await again.block()).toBe('sides');
    expect(await again.log()).toEqual(before);
  });
});

describe('two tabs on one visit', () => {
  test('follow each other, and neither writes over the other', async ({ visitor }) => {
    const one = await started(visitor);
    await one.drive(upTo(preCharged, 's1'));
    const page = await visitor.context.newPage();
    await page.clock.install();
    await page.goto(one.page.url());
    const two = new Driver(page);
    await two.plate.waitFor();
    expect(await two.block()).toBe('s1');

    expect(await one.give({ s1: '52.4' })).toBe(true);
    await two.plate.and(page.locator('[data-block="sides"]')).waitFor();
    await page.getByText('Another tab has gone on with this visit').waitFor();

    // Both hand the same step in at once: one is taken, and the other follows.
    await one.type({ s1: '52.4', s2: '0.3' });
    await two.type({ s1: '52.3', s2: '0.2' });
    const submit = (tab: Page, at: number): Promise<void> =>
      tab.evaluate((when) => {
        // A tab that has followed the other by then has nothing left to hand in.
        const press = () => document.querySelector<HTMLFormElement>('form.run-readings')?.requestSubmit();
        setTimeout(press, Math.max(0, when - Date.now()));
      }, at);
    const together = Date.now() + 500;
    await Promise.all([submit(one.page, together), submit(page, together)]);
    for (const each of [one, two]) await each.plate.and(each.page.locator('[data-block="unlock"]')).waitFor();
    const log = await one.log();
    expect(log.map(({ seq }) => seq)).toEqual(log.map((_, at) => at + log[0]!.seq));
    expect(log.filter((entry) => entry.kind === 'answer' && entry.block === 'sides').length).toBe(1);
  });
});
