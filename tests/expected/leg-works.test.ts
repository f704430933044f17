import { describe, expect, it } from 'vitest';
import { works } from '../../src/expected/index.ts';
import { sallowCreek } from '../../src/site/demo.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';

const line: SiteSheet = {
  ...sallowCreek,
  inverter: { ...sallowCreek.inverter, topology: 'single-230', frequencyHz: 50, legLimitW: 6000 },
};

function answerOf(id: string, sheet: SiteSheet, readings: Record<string, number>): string {
  const result = works[id]!.work({ sheet, readings, series: {}, outcomes: {} });
  if (!result.ok) throw new Error(`${id} lacks ${result.missing.join(', ')}`);
  return result.outcome;
}

describe('a start', () => {
  const start = (panel: readonly [number, number], output: readonly [number, number]) =>
    answerOf('legs-start-sag', sallowCreek, {
      'panel-legs.v1': 120,
      'panel-legs.v2': 120,
      'dip-watch.min-1': panel[0],
      'dip-watch.min-2': panel[1],
      'start-sag.min-1': output[0],
      'start-sag.min-2': output[1],
    });

  it.each([
    ['the feeder where it loses 17 of 24 V', [96, 119.5], [113, 119.6], 'feeder'],
    ['the source where half of it is its own', [96, 119.5], [108, 119.6], 'source'],
    ['by the leg that dips deepest at the panel', [112, 92], [112.5, 113], 'feeder'],
  ] as const)('is laid to %s', (_, panel, output, outcome) => {
    expect(start(panel, output)).toBe(outcome);
  });

  it('is told the same way on one line', () => {
    const read = { 'panel-line.v1': 230, 'line-dip.min': 190 };
    expect(answerOf('legs-start-sag', line, { ...read, 'line-start.min': 215 })).toBe('feeder');
    expect(answerOf('legs-start-sag', line, { ...read, 'line-start.min': 200 })).toBe('source');
  });
});

describe('the heater on leg 2', () => {
  const onLeg2 = (d1: number, d2: number, more: Record<string, number> = {}, sheet = sallowCreek) =>
    answerOf('legs-step-2', sheet, {
      'panel-still.v1': 120,
      'panel-still.v2': 120,
      'out-legs.v1': 120,
      'out-legs.v2': 120,
      'ng-loaded.ng': 0.75,
      'ng-loaded.neutral': 8.3,
      'leg-2-loaded.d1': d1,
      'leg-2-loaded.d2': d2,
      'leg-2-loaded.o1': 120,
      'leg-2-loaded.o2': 120,
      'leg-2-loaded.amps': 8.3,
      ...more,
    });

  it.each([
    ['a sound run', 120.7, 118.5, 'sound'],
    ['a poor joint in hot 2', 120.7, 115.5, 'hot-joint'],
    ['a neutral gone bad since: 6 V over, 6.7 V under', 126, 113.3, 'see-saw'],
    ['one that lifts the empty leg out of its band', 128, 111.3, 'see-saw'],
  ] as const)('shows %s', (_, d1, d2, outcome) => {
    expect(onLeg2(d1, d2)).toBe(outcome);
  });

  it('holds the neutral against what it had on leg 1 where the feeder is not known', () => {
    const unknown: SiteSheet = { ...sallowCreek, outputFeeder: { lengthM: null, areaMm2: null } };
    expect(onLeg2(124.5, 114.8, {}, unknown)).toBe('see-saw');
    expect(onLeg2(120.7, 118.5, {}, unknown)).toBe('sound');
  });
});

describe('a mended hot conductor', () => {
  const again = (read: { ng: number; neutral: number; panel: number; output: number; amps: number }) =>
    answerOf('legs-retest-hot', sallowCreek, {
      'retest.ng': read.ng,
      'retest.neutral': read.neutral,
      'retest-ends.panel': read.panel,
      'retest-ends.output': read.output,
      'retest-ends.amps': read.amps,
    });

  it('is not passed while the house draws 20 A on the other leg', () => {
    // 0.35 Ω in the hot loses 2.91 V of 8.3 A; the neutral, 0.09 Ω under 11.7 A the other way, gives 1.05 V back.
    expect(again({ ng: 1.05, neutral: 11.7, panel: 118.14, output: 120, amps: 8.3 })).toBe('cannot-tell');
  });

  it('is seen for what it is with everything else off', () => {
    expect(again({ ng: 0.75, neutral: 8.3, panel: 116.34, output: 120, amps: 8.3 })).toBe('not-held');
    expect(again({ ng: 0.75, neutral: 8.3, panel: 118.5, output: 120, amps: 8.3 })).toBe('held');
  });
});

describe('one line under the heater', () => {
  const moved = (read: Record<'d1' | 'ng' | 'amps', number>, block = 'line-loaded-out', ground = 0.02) =>
    answerOf(block === 'line-loaded' ? 'legs-line-step' : 'legs-line-moved', line, {
      'line-still.v1': 230,
      'out-line.v1': 230,
      [`${block}.d1`]: read.d1,
      [`${block}.o1`]: 229.7,
      [`${block}.ng`]: read.ng,
      [`${block}.amps`]: read.amps,
      [`${block}.ground`]: ground,
    });

  it.each([
    ['a neutral that floats at 115 V and carries 4.3 A', { d1: 228, ng: 115, amps: 4.3 }, 'no-reference'],
    ['one that floats at 20 V, the run losing 1.5 V', { d1: 228.2, ng: 20, amps: 4.3 }, 'no-reference'],
    ['one that floats with the heater off', { d1: 230, ng: 115, amps: 0 }, 'no-load'],
    ['an open neutral', { d1: 0.4, ng: 229, amps: 0 }, 'neutral-open'],
    ['a neutral as good as open, under few amps', { d1: 60, ng: 169, amps: 1.1 }, 'neutral-open'],
    ['a burnt joint that still carries', { d1: 147, ng: 81, amps: 2.8 }, 'neutral-joint'],
    ['an open line', { d1: 0.3, ng: 0.1, amps: 0 }, 'line-open'],
  ])('names %s', (_, read, outcome) => {
    expect(moved(read)).toBe(outcome);
  });

  it('blames no joint for volts to ground that the run did not lose', () => {
    expect(moved({ d1: 228.9, ng: 2.8, amps: 4.3 }, 'line-loaded')).toBe('no-reference');
    expect(moved({ d1: 226.2, ng: 2.8, amps: 4.3 }, 'line-loaded')).toBe('neutral-joint');
  });
});
