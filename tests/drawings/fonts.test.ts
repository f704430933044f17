import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../src/styles/fonts/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.woff2'));
const css = readFileSync(new URL('../../src/styles/fonts.css', import.meta.url), 'utf8');

describe('the typefaces', () => {
  it('weigh 60 kB at most together', () => {
    const bytes = files.reduce((sum, name) => sum + readFileSync(new URL(name, folder)).length, 0);
    expect(bytes).toBeGreaterThan(10_000);
    expect(bytes).toBeLessThanOrEqual(60 * 1024);
  });
  it('are each loaded by the styles, from beside them, and shown before they have come', () => {
    const loaded = [...css.matchAll(/url\(['"]?\.\/fonts\/([^'")]+)/g)].map((match) => match[1]);
    expect(loaded.sort()).toEqual([...files].sort());
    expect(css.match(/font-display: swap/g)).toHaveLength(files.length);
  });
  it('bring their licence along', () => {
    expect(readFileSync(new URL('LICENSE.txt', folder), 'utf8')).toContain('SIL OPEN FONT LICENSE');
  });
});
