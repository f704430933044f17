import { describe, expect } from 'vitest';
import { sallowCreek } from '../../src/site/demo.ts';
import { plateau, preCharged, started, upTo } from './support/pre-charge.ts';
import { test } from './support/visitor.ts';
import { runAsWalked } from './support/walked.ts';

describe('pre-charge on the page', () => {
  test('from lock-out to a closed main switch, as walked', async ({ visitor }) => {
    const driver = await started(visitor);
    const walked = await runAsWalked(driver, 'pre-charge', sallowCreek, preCharged);
    expect(walked.end?.result).toBe('done');
    await driver.plate.getByText('The visit is closed').waitFor();
  });

  test('a bus held at half the volts is named as a load of its size, not as a charge to try again', async ({
    visitor,
  }) => {
    const driver = await started(visitor);
    const loadOhm = sallowCreek.precharge!.resistorOhm!;
    const walked = await runAsWalked(driver, 'pre-charge', sallowCreek, plateau(loadOhm));
    expect(walked.outcomes.find(({ block }) => block === 'fit-stalled')?.outcome).toBe('load');
    expect(walked.outcomes.map(({ block }) => block)).not.toContain('close-main');
  });
});

describe('a hold point', () => {
  const held = 'close-ready';

  test('is not passed by its button while an item is open, and says which', async ({ visitor }) => {
    const driver = await started(visitor);
    await driver.drive(upTo(preCharged, held));
    expect(await driver.block()).toBe(held);
    expect(await driver.give({ 'resistor-still-on': true })).toBe(false);
    await driver.page.getByRole('alert').getByText('This is not met yet').first().waitFor();
    expect(await driver.block()).toBe(held);
  });

  test('is not passed by Forward, Back, an address, a reload or Enter', async ({ visitor }) => {
    const driver = await started(visitor);
    const { page } = driver;
    await driver.drive(upTo(preCharged, held));
    const address = page.url();
    const stays = async (): Promise<void> => {
      await page.locator('section.plate[data-now]').waitFor();
      const log = await driver.log();
      expect(log.at(-1)).toMatchObject({ kind: 'answer', block: 'across' });
    };
    await page.goForward();
    await stays();
    await page.goBack();
    await stays();
    await page.evaluate(() => {
      location.hash = 'close-main';
    });
    await page.locator('section.plate[data-block="close-main"][data-now="reading"]').waitFor();
    expect(await page.locator('[data-now="reading"] .run-go').count()).toBe(0);
    await stays();
    await page.goto(address.replace(/#.*/, '#resistor-off'));
    await page.reload();
    await page.locator('fw-run[data-running]').waitFor();
    await stays();
    await page.goto(address);
    await page.reload();
    await driver.plate.waitFor();
    await driver.plate.locator('.plate-title').press('Enter');
    await driver.plate.locator('.run-go button').press('Enter');
    await page.locator('.error-summary').waitFor();
    await stays();
    expect(await driver.block()).toBe(held);
  });
});

describe('after the battery is closed', () => {
  test('three times Back leads to no step that touches its conductors', async ({ visitor }) => {
    const driver = await started(visitor);
    const { page } = driver;
    await driver.drive(upTo(preCharged, 'after'));
    const closedAt = (await driver.log()).length;
    for (let back = 0; back < 3; back += 1) {
      await page.goBack();
      const shown = page.locator('section.plate[data-now="reading"]');
      await shown.waitFor();
      // An earlier step is there to be read. Nothing on it can be answered, and the act is not undone by looking.
      expect(await shown.locator('.run-go, .run-readings, .choice button').count()).toBe(0);
    }
    const reading = page.locator('section.plate[data-now="reading"]');
    for (const button of await reading.locator('[data-run-ui] button').allTextContents())
      expect(button).not.toMatch(/correct/i);
    expect((await driver.log()).length).toBe(closedAt);
    await page.getByRole('button', { name: 'Return to where I am' }).click();
    expect(await driver.block()).toBe('after');
  });

  test('the step that clips the resistor on stays barred by its address and after a reload', async ({
    visitor,
  }) => {
    const driver = await started(visitor);
    const { page } = driver;
    await driver.drive(upTo(preCharged, 'after'));
    await page.goto(page.url().replace(/#.*/, '#clip-on'));
    await page.reload();
    const shown = page.locator('section.plate[data-block="clip-on"][data-now="reading"]');
    await shown.waitFor();
    expect(await shown.locator('.run-go, .choice button, form').count()).toBe(0);
  });
});
