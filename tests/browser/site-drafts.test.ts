import { readFile } from 'node:fs/promises';
import { describe, expect } from 'vitest';
import { test } from './support/visitor.ts';

describe('a site that is not finished', () => {
  test('is exported where nothing is kept, imported as it was typed, and saved from there when it is right', async ({
    newVisitor,
  }) => {
    const blocked = await newVisitor();
    await blocked.context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('Storage is blocked.', 'SecurityError');
      };
    });
    const form = await blocked.open('site/edit/');
    await form.locator('#f-name').fill('Fern Hollow');
    await form.locator('#f-inverter-dcMinV').fill('fifty-nine');
    const [download] = await Promise.all([
      form.waitForEvent('download'),
      form.getByRole('button', { name: 'Export what is typed' }).click(),
    ]);
    const text = await readFile(await download.path(), 'utf8');

    const visitor = await newVisitor();
    const list = await visitor.open('site/');
    const file = {
      name: download.suggestedFilename(),
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    };
    await list.locator('#import-file').setInputFiles(file);
    await list.getByText('“Fern Hollow” was not finished when it was exported.').waitFor();
    await list.getByRole('heading', { name: 'Not finished yet' }).waitFor();
    await list.reload();
    await list.getByRole('link', { name: 'Go on typing: Fern Hollow' }).click();
    await list.locator('#f-name').waitFor();
    expect(await list.locator('#f-name').inputValue()).toBe('Fern Hollow');
    expect(await list.locator('#f-inverter-dcMinV').inputValue()).toBe('fifty-nine');

    await list.locator('#f-climate-recordLowC').fill('50');
    await list.locator('#f-climate-usualHighC').fill('45');
    await list.getByRole('button', { name: 'Save the site' }).click();
    const errors = list.locator('.error-summary');
    // What contradicts each other stands beside what is wrong alone.
    await errors.getByText('must be below').waitFor();
    expect(await errors.getByText('is not a number', { exact: false }).count()).toBeGreaterThan(0);
    expect(await list.locator('#f-name').inputValue()).toBe('Fern Hollow');
  });
});
