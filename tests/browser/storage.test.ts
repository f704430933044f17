import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import { beginning, preCharged, started, upTo } from './support/pre-charge.ts';
import { test } from './support/visitor.ts';

/** From now on every write meets a full phone, until `globalThis.roomAgain` is set. */
const fillUp = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const { add, put } = IDBObjectStore.prototype;
    const guard = <Write extends typeof add>(write: Write): Write =>
      function (this: IDBObjectStore, ...given: Parameters<Write>) {
        if (!('roomAgain' in globalThis)) throw new DOMException('No room.', 'QuotaExceededError');
        return write.apply(this, given as Parameters<typeof add>);
      } as Write;
    IDBObjectStore.prototype.add = guard(add);
    IDBObjectStore.prototype.put = guard(put);
  });

/** The file that a press saves, read as JSON text. */
async function savedBy(page: Page, press: () => Promise<void>): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return readFile(await download.path(), 'utf8');
}

describe('a phone with no room left', () => {
  test('is said at once with an export offered; the run goes on, and is written when there is room', async ({
    visitor,
  }) => {
    const driver = await started(visitor);
    const { page } = driver;
    await driver.drive(upTo(preCharged, 's1'));
    const before = (await driver.log()).length;
    await fillUp(page);
    expect(await driver.give({ s1: '52.4' })).toBe(true);
    expect(await driver.block()).toBe('sides');
    await page.getByRole('alert').getByText('The phone has no room').waitFor();
    expect((await driver.log()).length).toBe(before);
    const file = await savedBy(page, () =>
      page.getByRole('button', { name: 'Export this visit' }).first().click(),
    );
    expect(file).toContain('"52.4"');

    await page.evaluate(() => Object.assign(globalThis, { roomAgain: true }));
    expect(await driver.give({ s1: '52.4', s2: '0.3' })).toBe(true);
    expect(await page.getByText('The phone has no room').count()).toBe(0);
    const log = await driver.log();
    expect(log.filter(({ kind }) => kind === 'answer').slice(-2)).toMatchObject([
      { block: 's1' },
      { block: 'sides' },
    ]);
    await page.reload();
    await driver.plate.waitFor();
    expect(await driver.block()).toBe('unlock');
  });
});

describe('a browser that keeps nothing', () => {
  test('is said before the start, and the run goes on in the page alone', async ({ visitor }) => {
    await visitor.context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('Storage is blocked.', 'SecurityError');
      };
    });
    const driver = await started(visitor);
    const { page } = driver;
    await page.getByRole('alert').getByText('keeps nothing').first().waitFor();
    await driver.drive(upTo(preCharged, 'sides'));
    expect(await driver.block()).toBe('sides');
    const file = await savedBy(page, () =>
      page.getByRole('button', { name: 'Export this visit' }).first().click(),
    );
    expect(file).toContain('"52.4"');
  });
});

describe('records that make no sense', () => {
  test('spoil no page and no other record', async ({ visitor }) => {
    const driver = await started(visitor);
    await driver.drive(upTo(preCharged, 's1'));
    const before = await driver.log();
    const { page } = driver;
    await page.evaluate(
      () =>
        new Promise<void>((done, fail) => {
          const opening = indexedDB.open('faultwright');
          opening.onerror = () => fail(opening.error);
          opening.onsuccess = () => {
            const tx = opening.result.transaction(['sites', 'visits', 'entries', 'settings'], 'readwrite');
            tx.objectStore('sites').put({ id: 'broken-site', name: 7, strings: 'none' });
            tx.objectStore('visits').put({ id: 'broken-visit', changedAt: '2020-01-01T00:00:00.000Z' });
            tx.objectStore('entries').put({ visit: 'broken-visit', seq: 0, kind: 'no-such-kind' });
            tx.objectStore('settings').put({ not: 'an id' }, 'current-site');
            tx.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
    );
    await page.evaluate(() => localStorage.setItem('faultwright-typed', '{"at":7'));
    for (const path of [
      '',
      'site/',
      'visits/',
      'offline/',
      'worksheets/string-window/',
      `${beginning.page}/`,
    ]) {
      await page.goto(visitor.site.url + path);
      await page.locator('h1').waitFor();
      await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
    }
    await page.goto(visitor.site.url);
    await page.locator(`fw-open-visit a[href*="${before[0]!.visit}"]`).click();
    const again = new Driver(page);
    await again.plate.waitFor();
    expect(await again.block()).toBe('s1');
    expect(await again.log()).toEqual(before);
  });
});
