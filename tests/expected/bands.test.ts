import { describe, expect, it } from 'vitest';
import type { ExpectContext } from '../../src/expected/context.ts';
import { scales } from '../../src/expected/index.ts';
import type { Scale } from '../../src/expected/scale.ts';
import { judge } from '../../src/guide/judge.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';
import { expectedWords } from '../../src/words/en/expected.ts';

const contextOf = (sheet: SiteSheet, readings: ExpectContext['readings'] = {}): ExpectContext => ({
  sheet,
  stringId: sheet.strings[0]!.name,
  readings,
  outcomes: {},
});

function build(id: string, context: ExpectContext): Scale {
  const built = scales[id]!.build(context);
  if (!built.ok) throw new Error(`${id} lacks ${built.missing.join(', ')}`);
  return built.scale;
}

const edges = (scale: Scale) => scale.zones.map(({ max }) => max).slice(0, -1);
const on = (topology: SiteSheet['inverter']['topology']): SiteSheet => ({
  ...sallowCreek,
  inverter: { ...sallowCreek.inverter, topology },
});

describe('every expected band', () => {
  for (const sheet of [sallowCreek, ternLedge])
    it.each(Object.keys(scales))(`%s is whole at ${sheet.name}, and says why`, (id) => {
      const scale = build(id, contextOf(sheet));
      expect(scale.zones.map((zone) => zone.id)).toEqual(scales[id]!.zones);
      expect(scale.zones[0]!.min).toBeNull();
      expect(scale.zones.at(-1)!.max).toBeNull();
      scale.zones.slice(1).forEach((zone, at) => {
        expect(zone.min).toBe(scale.zones[at]!.max);
        if (zone.max !== null) expect(zone.max).toBeGreaterThanOrEqual(zone.min!);
      });
      expect(scales[id]!.zones).toContain(scale.expected);
      if (scale.overRange) expect(scales[id]!.zones).toContain(scale.overRange);
      expect(scale.why.length).toBeGreaterThan(0);
      for (const { id: message } of scale.why) expect(expectedWords[message], message).toBeDefined();
    });
});

/** Limits worked out by hand from the two demo sheets. */
describe('limits by hand', () => {
  const s1 = { 's1.s1': 53.2, 'sides.s1': 53.2 };
  const cases: [what: string, id: string, context: ExpectContext, limits: number[]][] = [
    ['16 cells of 2.5 to 3.65 V', 'battery-volts', contextOf(sallowCreek), [-3, 10, 40, 58.4]],
    ['15 cells of 2.5 to 3.65 V', 'battery-volts', contextOf(ternLedge), [-3, 10, 37.5, 54.75]],
    ['dead is 3 V', 'dead-dc', contextOf(sallowCreek), [3]],
    ['no PV current is 0.5 A', 'pv-zero', contextOf(sallowCreek), [0.5]],
    ['no battery current is 2 A', 'battery-zero', contextOf(sallowCreek), [2]],
    ['packs join at 0.1 V', 'pack-difference', contextOf(sallowCreek), [0.1]],
    ['5 % of 53.2 V either way', 's2-before', contextOf(sallowCreek, s1), [-1, 3, 50.54, 55.86]],
    ['5 % of 53.2 V across', 'across-main', contextOf(sallowCreek, s1), [2.66]],
    ['95 % of 53.2 V', 's2-rise', contextOf(sallowCreek, s1), [-1, 50.54, 55.86]],
    ['a tenth off 51 V', 's2-fell', contextOf(sallowCreek, { 'sides.s2': 51 }), [45.9]],
    ['120 V ± 5 %', 'leg-volts', contextOf(sallowCreek), [114, 126]],
    ['230 V ± 5 %', 'leg-volts', contextOf(on('single-230')), [218.5, 241.5]],
    ['240 V ± 5 % between opposed legs', 'v12', contextOf(sallowCreek), [228, 252]],
    ['208 V ± 5 % a third apart', 'v12', contextOf(on('wye-120-208')), [197.6, 218.4]],
    ['nothing between legs in step', 'v12', contextOf(ternLedge), [-1, 5]],
    [
      'the other leg gains 3 V at most',
      'leg-rise',
      contextOf(sallowCreek, { 'unloaded.v2': 121 }),
      [114, 124],
    ],
    ['and never leaves its band', 'leg-rise', contextOf(sallowCreek, { 'unloaded.v2': 125 }), [114, 126]],
    ['60 Hz ± 0.3', 'output-hz', contextOf(sallowCreek), [59.7, 60.3]],
    ['a tenth of 1000 W / 120 V', 'egc-amps', contextOf(sallowCreek), [0.8333]],
    ['a tenth of 1000 W / 230 V', 'egc-amps', contextOf(on('single-230')), [0.4348]],
    ['the label, 5 to 45 °C', 'charge-cell-temp', contextOf(sallowCreek), [5, 45]],
    ['2.0 to 3.65 V a cell', 'lowest-cell-volts', contextOf(sallowCreek), [2, 3.65]],
    // 0.5 % of 53.2 V and 2 counts of 0.1 V: a = 0.466 V, U = 2a/√3 = 0.538 V, and 0.3 V for the screen.
    [
      'meter 53.2 V, screen within 0.838 V',
      'display-volts',
      contextOf(sallowCreek, { 'at-i.volts': 53.2 }),
      [52.362, 54.038],
    ],
    // 8 × 41 V; 328 V × 10 MΩ / 11 MΩ / 2.
    ['half of what 1 MΩ leaves', 'pole-to-ground', contextOf(sallowCreek), [149.09]],
    ['2 % of 330 V', 'sister-volts', contextOf(sallowCreek, { 'p1.p1': 330 }), [323.4, 336.6]],
    ['a fifth of 328 V up to 500 V', 'string-polarity', contextOf(sallowCreek), [-5, 65.6, 500]],
    // 100 W at 52.8 V is 1.894 A; 30 W or a third either way, and 1 A of clamp.
    ['idle of 100 W at 52.8 V', 'idle-amps', contextOf(sallowCreek), [0.326, 3.462]],
    ['the same, jaw turned', 'idle-amps-flipped', contextOf(sallowCreek), [-3.462, -0.326]],
  ];
  it.each(cases)('%s (%s)', (_what, id, context, limits) => {
    const got = edges(build(id, context));
    expect(got).toHaveLength(limits.length);
    got.forEach((edge, at) => {
      expect(edge).toBeCloseTo(limits[at]!, 2);
    });
  });

  it('never lets a label allow charging below freezing', () => {
    const cold = { ...sallowCreek, battery: { ...sallowCreek.battery, chargeMinC: -10 } };
    expect(edges(build('charge-cell-temp', contextOf(cold)))[0]).toBe(0);
  });

  it('lets a dead pair creep by a volt, never past dead', () => {
    const mostAfter = (first: number) =>
      edges(build('not-rising-dc', contextOf(sallowCreek, { 'prove-dead--dc-dead.plus-minus-dc': first })));
    expect(mostAfter(0.2)).toEqual([1.2]);
    expect(mostAfter(2.5)).toEqual([3]);
  });

  it('prefers what was read inside the guide to a step of the same name', () => {
    const context = contextOf(sallowCreek, { 'pre-charge--sides.s1': 50, 'sides.s1': 53.2 });
    expect(edges(build('across-main', context))[0]).toBeCloseTo(2.5, 6);
  });
});

describe('a doubt counts on the safe side of a limit', () => {
  const dead = build('dead-dc', contextOf(sallowCreek));
  it.each([
    [0.1, 0.23, 'dead'],
    [2.7, 0.23, 'dead'],
    [2.9, 0.23, 'undetermined'],
    [3.4, 0.23, 'live'],
  ])('%s V ± %s V is %s', (volts, u, outcome) => {
    expect(judge(volts, u, dead).outcome).toBe(outcome);
  });

  it('takes over range for live', () => {
    expect(judge('overRange', 0, dead).outcome).toBe('live');
  });
});
