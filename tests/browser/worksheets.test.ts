import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { sallowCreek } from '../../src/site/demo.ts';
import { worksheets } from '../../src/worksheets/index.ts';
import { axeFindings } from './support/axe.ts';
import { preCharged, rise, started, upTo } from './support/pre-charge.ts';
import { test, type Visitor } from './support/visitor.ts';
import { exampleQuery } from './support/worksheet-example.ts';

/** Opens a worksheet and waits until its script has taken over. */
async function open(visitor: Visitor, address: string, tab?: Page): Promise<Page> {
  const page = tab ?? (await visitor.context.newPage());
  await page.goto(`${visitor.site.url}worksheets/${address}`);
  await page.locator('[data-worksheet][data-ready]').waitFor();
  return page;
}

/** Keeps the demo site in this browser and makes it the site in use. */
async function useDemoSite(page: Page): Promise<void> {
  await page.evaluate(async (sheet) => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('faultwright');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const write = db.transaction(['sites', 'settings'], 'readwrite');
    write.objectStore('sites').put(sheet);
    write.objectStore('settings').put(sheet.id, 'current-site');
    await new Promise((resolve) => write.addEventListener('complete', resolve));
    db.close();
  }, sallowCreek);
}

/** Numbers of the trade for some worksheets; the others get drawn ones. */
const examples: Record<string, string> = {
  'string-window':
    'vocVolts=41&vmpVolts=34&vocPerC=-0.28&vmpPerC=-0.35&modules=8&recordLowC=-30&hotCellC=65&hotMargin=3&startVolts=150&trackLowVolts=120&trackHighVolts=425&maxVolts=500',
  'insulation-position': 'vocVolts=320&positiveVolts=118&negativeVolts=-198&modules=8&vocRatedVolts=328',
  'pre-charge': 'sourceVolts=51.2&resistorOhms=33&capacitanceF=20&readings=1~29.9;2~32.7;5~33',
  'idle-draw': 'busVolts=52.5&amps=2&bankJoules=18.4',
  'dc-path': 'batteryVolts=52.4&inverterVolts=51.4&amps=120&lengthM=1.8&areaMm2=4/0 AWG',
  'string-length':
    'vocVolts=41&vmpVolts=34&vocPerC=-0.28&vmpPerC=-0.35&iscAmps=11&impAmps=10.4&recordLowC=-30&hotCellC=65&hotMargin=3&startVolts=150&trackLowVolts=120&trackHighVolts=425&maxVolts=500',
  'pack-sharing': 'packAmps=40;42;38&clampError=1&labelAmps=100&packOhms=15&linkOhms=0.3',
  'joint-millivolts': 'part=joint&volts=12&amps=80&voltsError=0.2&twinVolts=4&fullAmps=150',
  'neutral-current': 'topology=opposed-120-240&amps1=30&factor1=100&amps2=12&factor2=100&ratedAmps=50',
  'cell-temperature': 'irradiance=900&airC=32&windMs=1&mounting=roof-gap&noctC=45&efficiency=20',
  'common-neutral': 'breaker1Amps=50&breaker2Amps=50&sourceAmps=50&areaMm2=8 AWG',
  'leg-limit': 'ratedWatts=6000&legLimitWatts=3000&breakerAmps=20&watts1=1500&watts2=400',
  'spread-legs': 'circuits=Freezer~4~~1;Lights~3~~1;Pump~10~2~;Warmer~12.5~~',
  'motor-start': 'motorVolts=240&lockedAmps=48&sourceVolts=240&lengthM=60&areaMm2=6 AWG&surgeVa=12000',
  'bond-currents': 'loadAmps=10&groundAmps=2.8&lengthM=60&neutralMm2=6 AWG&groundMm2=10 AWG',
  'join-outputs': 'volts1=120&volts2=120.4&highVolts=2&lowVolts=1&otherLegVolts=2&heldS=60&locked=yes',
};

describe('the shelf of worksheets', () => {
  test('lists every worksheet', async ({ visitor }) => {
    const page = await visitor.open('worksheets/');
    for (const { id } of worksheets) {
      expect(await page.locator(`main a[href$="/worksheets/${id}/"]`).count(), id).toBe(1);
    }
  });

  /** One tab for all of them: a link brings all that a worksheet shows. */
  let tab: Promise<[Visitor, Page]> | undefined;
  for (const worksheet of worksheets) {
    test(`${worksheet.id}: result from a link, working, plot, no fault that axe finds, no sideways scroll at 320 px`, async ({
      newInFile,
    }) => {
      tab ??= newInFile({ phone: { viewport: { width: 320, height: 640 }, bypassCSP: true } }).then(
        async (visitor) => [visitor, await visitor.context.newPage()],
      );
      const example = examples[worksheet.id];
      const query = example === undefined ? exampleQuery(worksheet) : `units=metric&${example}`;
      const [visitor, onlyTab] = await tab;
      const page = await open(visitor, `${worksheet.id}/?${query.replace(/^\?/, '')}`, onlyTab);
      await page.locator('.headline dd').first().waitFor();
      // The neutral's current is one formula, and has one line.
      const moreThan = worksheet.id === 'neutral-current' ? 0 : 2;
      expect(await page.locator('.working-lines li').count()).toBeGreaterThan(moreThan);
      expect(await page.locator('figure.plot svg[role=img]').count()).toBe(worksheet.plot ? 1 : 0);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
      expect(await axeFindings(page)).toEqual([]);
    });
  }

  test('fills from the site in use, follows what is typed, and keeps it over a reload', async ({
    visitor,
  }) => {
    const page = await open(visitor, 'string-window/');
    expect(await page.locator('.headline').count()).toBe(0);
    await useDemoSite(page);
    await page.reload();
    await page.locator('.headline dd').first().waitFor();
    expect(await page.locator('.worksheet-from').textContent()).toContain(sallowCreek.name);
    expect(await page.locator('.headline dd').first().textContent()).toBe('Fits the window');

    await page.fill('#w-modules', '3');
    await page.getByText('Does not start when hot').waitFor();
    await page.waitForURL(/modules=3/);
    await page.reload();
    await page.getByText('Does not start when hot').waitFor();
  });

  test('says what is wrong with each number, gives no result, and loses nothing', async ({ visitor }) => {
    const page = await open(visitor, `idle-draw/?units=metric&${examples['idle-draw']}`);
    await page.fill('#w-amps', 'banana');
    await page.fill('#w-chargePath', '120');
    expect(await page.locator('#w-amps-error').textContent()).toContain('banana');
    expect(await page.locator('#w-chargePath-error').textContent()).toContain('30');
    expect(await page.locator('.headline').count()).toBe(0);
    expect(await page.inputValue('#w-busVolts')).toBe('52.5');
    await page.fill('#w-amps', '2');
    await page.fill('#w-chargePath', '100');
    await page.getByText('630 W').first().waitFor();
  });

  test('names a bus held back, with its size, from typed readings', async ({ visitor }) => {
    const page = await open(
      visitor,
      'pre-charge/?units=metric&sourceVolts=51.2&resistorOhms=33&capacitanceF=20',
    );
    for (const [at, [time, volts]] of [
      ['1', '29.9'],
      ['2', '32.7'],
      ['5', '33'],
    ].entries()) {
      await page.getByRole('button', { name: 'Add a reading' }).click();
      const boxes = page.locator('.timed-row').nth(at).locator('input');
      await boxes.nth(0).fill(time!);
      await boxes.nth(1).fill(volts!);
    }
    await page.locator('[data-remark="worksheet.pre-charge.load"]').waitFor();
    expect(await page.locator('.headline dd').first().textContent()).toBe('Held back by a load');
  });

  test('takes a list: a row a circuit, added, filled, restored by the link, removed', async ({ visitor }) => {
    const page = await open(visitor, 'spread-legs/?units=metric&legAmps=30');
    const rows = page.locator('.list-row');
    const before = await rows.count();
    await page.getByRole('button', { name: 'Add a row' }).click();
    expect(await rows.count()).toBe(before + 1);
    for (const [at, [name, amps]] of [
      ['Freezer', '4'],
      ['Lights', '3,5'],
    ].entries()) {
      const boxes = rows.nth(at).locator('input');
      await boxes.nth(0).fill(name!);
      await boxes.nth(1).fill(amps!);
      await boxes.nth(3).fill('1');
    }
    await page.locator('[data-remark="worksheet.spread-legs.pairs"]').waitFor();
    await rows.nth(1).locator('input').nth(1).fill('many');
    expect(await page.locator('#w-circuits-error').textContent()).toContain('Row 2');
    await rows.nth(1).locator('input').nth(1).fill('3.5');
    await page.waitForURL(/circuits=Freezer/);
    await page.reload();
    await page.locator('.headline').getByText('Freezer').waitFor();
    await page.getByRole('button', { name: 'Remove: Row 2' }).click();
    await page.locator('[data-remark="worksheet.spread-legs.lonePair"]').waitFor();
  });

  test('shows where every number comes from', async ({ visitor }) => {
    const page = await visitor.open('worksheets/');
    await page.locator('main a[href$="/worksheets/trace/"]').click();
    expect(await page.locator('.trace tbody tr').count()).toBe(worksheets.length);
    await page.setViewportSize({ width: 320, height: 640 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });

  test('opens from a step on the numbers that decided there, the timed readings too', async ({ visitor }) => {
    const driver = await started(visitor);
    await driver.drive(upTo(preCharged, 'rise'));
    expect(await driver.give({ s2: rise([0.5, 1, 2, 4, 6], 50) })).toBe(true);
    expect(await driver.give('done')).toBe(true);
    expect(await driver.block()).toBe('fit-stalled');
    const link = driver.plate.getByRole('link', { name: 'Open the worksheet' });
    await link.hover();
    await expect.poll(() => link.getAttribute('href')).toContain('readings=');
    await link.click();
    const page = driver.page;
    await page.locator('[data-worksheet][data-ready]').waitFor();
    await page.locator('[data-remark="worksheet.pre-charge.load"]').waitFor();
    expect(await page.inputValue('#w-resistorOhms')).toBe(String(sallowCreek.precharge.resistorOhm));
    await page.goBack();
    await driver.plate.waitFor();
    expect(await driver.block()).toBe('fit-stalled');
  });

  test('works by keyboard alone: type, turn the sign, read the result', async ({ visitor }) => {
    const page = await open(visitor, `insulation-position/?units=metric&${examples['insulation-position']}`);
    await page.focus('#w-negativeVolts');
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Enter');
    expect(await page.inputValue('#w-negativeVolts')).toBe('198');
    await page.getByText('One must be positive and the other negative').waitFor();
  });

  test('is a whole page without a script', async ({ newVisitor }) => {
    const visitor = await newVisitor({ phone: { javaScriptEnabled: false } });
    const page = await visitor.open('worksheets/pre-charge/');
    expect(await page.locator('noscript').count()).toBe(1);
    await page.locator('.worksheet-book summary').click();
    expect(await page.getByText('τ = R × C').first().isVisible()).toBe(true);
  });
});
