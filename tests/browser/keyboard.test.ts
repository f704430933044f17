import type { Locator, Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import { sallowCreek } from '../../src/site/demo.ts';
import { states } from '../../src/words/en/states.ts';
import { rise } from './support/pre-charge.ts';
import { test } from './support/visitor.ts';

/** Press Tab until the control has the focus; fails when it cannot be come to. */
async function tabTo(page: Page, control: Locator): Promise<void> {
  await control.first().waitFor();
  for (let presses = 0; presses < 150; presses += 1) {
    if (await control.first().evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not come to ${control}`);
}

const pressing = async (page: Page, control: Locator, key = 'Enter'): Promise<void> => {
  await tabTo(page, control);
  await page.keyboard.press(key);
};

describe('by keyboard alone', () => {
  test('from the front page through a pre-charge to its end, with the focus on each new step', async ({
    visitor,
  }) => {
    const page = await visitor.context.newPage();
    await page.clock.install();
    await page.goto(visitor.site.url);
    await pressing(page, page.locator('main a[href$="procedures/pre-charge/"]'));
    await page.waitForURL(/procedures\/pre-charge/);

    const panel = page.locator('.run-start');
    const radio = (label: string) => panel.locator('label', { hasText: label }).locator('input');
    await tabTo(page, panel.locator('fieldset').first().locator('input'));
    await page.keyboard.press('Space');
    await radio(sallowCreek.name).and(page.locator(':checked')).waitFor();
    await tabTo(page, panel.locator('fieldset').last().locator('input:checked'));
    for (let tries = 0; !(await radio(states.lockedOut!.label).isChecked()); tries += 1) {
      expect(tries).toBeLessThan(10);
      await page.keyboard.press('ArrowDown');
    }
    await pressing(page, panel.getByRole('button', { name: 'Start' }));

    const driver = new Driver(page);
    const { plate } = driver;
    const come = async (block: string): Promise<void> => {
      await plate.and(page.locator(`[data-block="${block}"]`)).waitFor();
      await expect
        .poll(() => plate.evaluate((section) => section.contains(document.activeElement)))
        .toBe(true);
    };
    const go = plate.locator('.run-go button');
    const hand = plate.locator('.run-readings button[type="submit"]');
    const type = async (reading: string, text: string): Promise<void> => {
      await tabTo(page, plate.locator(`[data-reading="${reading}"] .meter-window input`));
      await page.keyboard.type(text);
    };
    const tickAll = async (): Promise<void> => {
      for (const box of await plate.getByRole('checkbox').all()) {
        await pressing(page, box, 'Space');
        await expect.poll(() => box.isChecked()).toBe(true);
      }
    };

    await come('resistor');
    await pressing(page, go);
    await come('ready');
    await tickAll();
    await pressing(page, go);
    await come('packs');
    const allOn = await driver.label('all-on');
    await pressing(page, plate.locator('button').filter({ hasText: allOn }));
    await come('s1');
    await type('s1', '52.4');
    await page.keyboard.press('Enter');
    await come('sides');
    await type('s1', '52.4');
    await type('s2', '0.3');
    await pressing(page, hand);
    for (const block of ['unlock', 'clip-on', 'resistor-on']) {
      await come(block);
      await pressing(page, go, 'Space');
    }
    await come('rise');
    await tabTo(page, plate.locator('.series-field tbody input'));
    for (const [seconds, volts] of rise([0.5, 1, 1.5, 3])) {
      await page.keyboard.type(String(seconds));
      await page.keyboard.press('Tab');
      await page.keyboard.type(volts);
      await page.keyboard.press('Tab');
    }
    await pressing(page, hand);
    await come('fit-charged');
    await pressing(page, go);
    await come('across');
    await type('across', '0.1');
    await pressing(page, hand);
    await come('close-ready');
    await tickAll();
    await pressing(page, go);
    for (const block of ['close-main', 'resistor-off']) {
      await come(block);
      await pressing(page, go);
    }
    await come('after');
    await type('s2', '52.3');
    await pressing(page, hand);
    await come('closed');
    await tickAll();
    await pressing(page, go);
    await page.getByText('The visit is closed').waitFor();
  });

  test('Stop is reached from any step, and leads away from the plant', async ({ visitor }) => {
    const page = await visitor.context.newPage();
    const driver = new Driver(page);
    await driver.begin(visitor.site.url, {
      page: 'procedures/pre-charge',
      site: sallowCreek.name,
      begins: states.lockedOut!.label,
    });
    await pressing(page, page.locator('.stop-bar a, .stop-bar button'));
    await expect.poll(() => driver.plate.getAttribute('data-kind')).toBe('end');
    expect(await driver.plate.locator('.run-ways').count()).toBe(0);
  });
});
