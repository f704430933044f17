/** The slow phone of every figure the bench takes. */
import type { CDPSession, Page } from 'playwright-core';

/** How many times slower than this machine's its processor is. */
const slowDown = 4;

/** Slows a page's own thread down. Resolves to the session that holds it so. */
export async function slowPage(page: Page): Promise<CDPSession> {
  const devTools = await page.context().newCDPSession(page);
  await devTools.send('Emulation.setCPUThrottlingRate', { rate: slowDown });
  return devTools;
}
