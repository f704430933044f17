import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** Contrast from the colour tokens themselves, by WCAG 2.2's definition of relative luminance. */

const css = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8');

function block(selector: string, after = 0): Record<string, string> {
  const at = css.indexOf(`${selector} {`, after);
  if (at < 0) throw new Error(`no block ${selector}`);
  const body = css.slice(at, css.indexOf('}', at));
  return Object.fromEntries([...body.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})/g)].map((m) => [m[1]!, m[2]!]));
}

const media = (query: string) => css.indexOf(query);
const lightings = {
  shade: block(':root'),
  sun: block(':root[data-lighting="sun"]'),
  dark: block(':root[data-lighting="dark"]'),
};
const bySystem = {
  dark: block(':root:not([data-lighting])', media('prefers-color-scheme: dark')),
  sun: block(':root:not([data-lighting])', media('prefers-contrast: more')),
};

function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const share = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((p, q) => p - q);
  return (high! + 0.05) / (low! + 0.05);
}

/** Every pair of tokens that stands as words on a ground. */
const words = [
  ['ink', 'paper'],
  ['ink', 'sheet'],
  ['ink', 'tap-tint'],
  ['ink-soft', 'paper'],
  ['ink-soft', 'sheet'],
  ['paper', 'ink'],
  ['sheet', 'ink'],
  ['tap', 'paper'],
  ['tap', 'sheet'],
  ['tap', 'tap-tint'],
  ['tap-on', 'tap-fill'],
  ['meter-ink', 'meter'],
  ['hazard-ink', 'hazard-sheet'],
  ['danger-on', 'danger'],
  ['warning-on', 'warning'],
  ['caution-on', 'caution'],
  ['notice-on', 'notice'],
] as const;

/** Lines and marks that carry meaning: 3 : 1 (WCAG 1.4.11). */
const marks = [
  ['rule', 'paper'],
  ['rule', 'sheet'],
  ['copper', 'sheet'],
  ['copper', 'paper'],
  ['tap-fill', 'sheet'],
  ['tap-fill', 'meter'],
] as const;

describe.each(Object.entries(lightings))('%s', (_, tokens) => {
  it.each(words)('words %s on %s reach 7 : 1', (ink, ground) => {
    expect(contrast(tokens[ink]!, tokens[ground]!)).toBeGreaterThanOrEqual(7);
  });
  it.each(marks)('mark %s on %s reaches 3 : 1', (ink, ground) => {
    expect(contrast(tokens[ink]!, tokens[ground]!)).toBeGreaterThanOrEqual(3);
  });
});

describe('tokens', () => {
  it('say the same for the reader’s choice as for the system’s wish', () => {
    expect(bySystem.dark).toEqual(lightings.dark);
    expect(bySystem.sun).toEqual(lightings.sun);
  });
  it('name every colour in every lighting', () => {
    const names = Object.keys(lightings.shade).sort();
    expect(names.length).toBeGreaterThan(20);
    expect(Object.keys(lightings.sun).sort()).toEqual(names);
    expect(Object.keys(lightings.dark).sort()).toEqual(names);
  });
  it('keep the measure of contrast honest: black on white is 21, and a grey known to fail fails', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  });
  it('leave the dark room with little blue: paper and sheet have less blue than red', () => {
    for (const name of ['paper', 'sheet', 'ink', 'ink-soft', 'meter', 'meter-ink', 'tap']) {
      const hex = lightings.dark[name]!;
      expect(Number.parseInt(hex.slice(5, 7), 16)).toBeLessThan(Number.parseInt(hex.slice(1, 3), 16));
    }
  });
});
