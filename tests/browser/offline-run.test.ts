import { expect } from 'vitest';
import { Driver } from '../../src/commands/drive-run.ts';
import { sallowCreek } from '../../src/site/demo.ts';
import { beginning, preCharged } from './support/pre-charge.ts';
import { test } from './support/visitor.ts';
import { runAsWalked } from './support/walked.ts';

test('a whole run with the network off after one visit: nothing is asked of the server', async ({
  saver,
}) => {
  const page = await saver.open();
  await page.locator('fw-offline').getByText('Saved for offline use').waitFor();
  await saver.context.setOffline(true);
  saver.expected.push(/ERR_INTERNET_DISCONNECTED/);
  saver.site.requests.length = 0;
  const elsewhere: string[] = [];
  page.on('response', (response) => {
    const own = response.url().startsWith(saver.site.url);
    if (own && !response.fromServiceWorker()) elsewhere.push(response.url());
  });
  await page.clock.install();
  await page.locator('main a[href$="procedures/pre-charge/"]').first().click();
  const driver = new Driver(page);
  await driver.start(beginning);
  const walked = await runAsWalked(driver, 'pre-charge', sallowCreek, preCharged);
  expect(walked.end?.result).toBe('done');
  await page.getByRole('link', { name: 'Print the record' }).click();
  await page.getByText('52.4').first().waitFor();
  expect(elsewhere).toEqual([]);
  // The browser itself looks for a newer worker; the network that a test takes away is not the one it asks.
  expect(saver.site.requests.filter((path) => path !== '/sw.js')).toEqual([]);
});
