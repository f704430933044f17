import { describe, expect } from 'vitest';
import { preCharged, started, upTo } from './support/pre-charge.ts';
import { test } from './support/visitor.ts';

/** What people type by mistake where 52.4 V are asked for. */
const mistakes = [
  '',
  '   ',
  'fifty',
  '1,234.5.6',
  '1.2,3',
  '52.4 A',
  '52.4 Ω',
  '--52',
  '5 2 . 4 . 1',
  '1e999',
  'NaN',
  '9'.repeat(500),
  '<b>52</b>',
  '52;DROP',
];

describe('a reading typed wrong', () => {
  test('gets a sentence, keeps what was typed, and changes nothing', async ({ visitor }) => {
    const driver = await started(visitor);
    const { page } = driver;
    await driver.drive(upTo(preCharged, 's1'));
    const before = (await driver.log()).length;
    for (const text of mistakes) {
      const input = driver.plate.locator('.meter-window input');
      await driver.type({ s1: text });
      await page.getByRole('button', { name: 'Hand in the reading' }).click();
      const said = driver.plate.locator('.field-error').filter({ hasText: /\w{3,}.*\.$/ });
      await said.first().waitFor();
      const sentence = (await said.first().textContent()) ?? '';
      expect([text.slice(0, 20), sentence.split(' ').length > 3]).toEqual([text.slice(0, 20), true]);
      expect([text.slice(0, 20), await input.inputValue()]).toEqual([text.slice(0, 20), text]);
      expect(await input.getAttribute('aria-invalid')).toBe('true');
      expect(await page.title()).toMatch(/^Error/);
      await page.locator('.error-summary').waitFor();
      expect(await driver.block()).toBe('s1');
    }
    expect((await driver.log()).length).toBe(before);
    expect(await driver.give({ s1: '52,4 v' })).toBe(true);
    expect(await driver.block()).toBe('sides');
    expect(await page.title()).not.toMatch(/^Error/);
  });

  test('in a row of timed values: says which, and keeps the rows', async ({ visitor }) => {
    const driver = await started(visitor);
    const { page } = driver;
    await driver.drive(upTo(preCharged, 'rise'));
    for (const rows of [
      [[0.5, '30']],
      [
        [0.5, '30'],
        [0.5, 'soon'],
        [2, '50'],
        [3, '52'],
      ],
      [
        [3, '30'],
        [2, '40'],
        [1, '50'],
        [0, '52'],
      ],
    ] as [number, string][][]) {
      for (const input of await driver.plate.locator('.series-field tbody input').all()) await input.fill('');
      expect(await driver.give({ s2: rows })).toBe(false);
      const said = driver.plate.locator('.series-field .field-error');
      expect((await said.textContent())?.split(' ').length).toBeGreaterThan(3);
      const shown = await driver.plate
        .locator('.series-field tbody tr')
        .evaluateAll((lines) =>
          lines.map((line) => [...line.querySelectorAll('input')].map(({ value }) => value)),
        );
      expect(shown.slice(0, rows.length)).toEqual(rows.map((row) => row.map(String)));
    }
    expect(await driver.block()).toBe('rise');
    await page.reload();
    await driver.plate.waitFor();
    expect(await driver.plate.locator('.series-field tbody input').first().inputValue()).toBe('3');
  });

  test('with a script in it, is shown as text wherever it comes again', async ({ visitor }) => {
    const driver = await started(visitor);
    const { page } = driver;
    await page.locator('summary', { hasText: 'This visit' }).click();
    const note = page.getByRole('textbox', { name: 'Note' });
    await note.fill('<img src=x onerror="document.title=\'taken\'">');
    await page.getByRole('button', { name: 'Keep the note' }).click();
    await page.getByText('Note kept').waitFor();
    const visit = (await driver.log())[0]?.visit ?? '';
    await page.goto(`${visitor.site.url}visits/record/?visit=${visit}`);
    await page.getByText('<img src=x').first().waitFor();
    expect(await page.title()).not.toBe('taken');
    expect(await page.locator('img[src="x"]').count()).toBe(0);
  });
});
