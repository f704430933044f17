/**
 * Draw the app's PNG icons from src/public/icon.svg with a system Chromium.
 * Run by hand after the mark changes; the results are committed.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';

const folder = new URL('../public/', import.meta.url);
const svg = await readFile(new URL('icon.svg', folder), 'utf8');
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
try {
  for (const size of [192, 512]) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(`<style>body{margin:0}svg{display:block}</style>${svg}`);
    await writeFile(new URL(`icon-${size}.png`, folder), await page.screenshot());
    await page.close();
  }
} finally {
  await browser.close();
}
