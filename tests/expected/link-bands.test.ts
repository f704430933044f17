import { describe, expect, test } from 'vitest';
import type { ExpectContext } from '../../src/expected/context.ts';
import { byVoltageScales, linkWorks } from '../../src/expected/link/by-voltage.ts';
import { pairScales } from '../../src/expected/link/pair.ts';
import { linkWaits, proofScales } from '../../src/expected/link/proof.ts';
import type { Scale } from '../../src/expected/scale.ts';
import { judge } from '../../src/guide/judge.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { expectedWords } from '../../src/words/en/expected.ts';

const scales = [...pairScales, ...proofScales, ...byVoltageScales];
const context = (more: Partial<ExpectContext> = {}): ExpectContext => ({
  sheet: sallowCreek,
  readings: {},
  outcomes: {},
  ...more,
});
function scaleOf(id: string, more: Partial<ExpectContext> = {}): Scale {
  const built = scales.find((each) => each.id === id)!.build(context(more));
  if (!built.ok) throw new Error(`missing ${built.missing.join(', ')}`);
  return built.scale;
}
const zoneAt = (id: string, value: number, more?: Partial<ExpectContext>) =>
  judge(value, 0, scaleOf(id, more)).outcome;

const hasWords = (id: string, params: Readonly<Record<string, number | string>> = {}) => {
  expect(expectedWords[id], id).toBeDefined();
  for (const [, gap] of expectedWords[id]!.matchAll(/\{(\w+):/g))
    expect(typeof params[gap!], `${id} ${gap}`).toBe('number');
};

describe('every band of the battery-link guide', () => {
  test.each(scales.map((def) => [def.id, def] as const))('%s has ascending zones and words', (_, def) => {
    for (const sheet of [sallowCreek, ternLedge]) {
      const scale = scaleOf(def.id, { sheet });
      expect(scale.zones.map(({ id }) => id)).toEqual(def.zones);
      for (const [i, zone] of scale.zones.slice(1).entries()) expect(zone.min).toBe(scale.zones[i]!.max);
      expect(def.zones).toContain(scale.expected);
      for (const { id, params } of scale.why) hasWords(id, params);
    }
  });
});

describe('what stands between the data wires', () => {
  test.each([
    [0.8, 'shorted'],
    [40, 'many'],
    [56.9, 'good'],
    [60, 'good'],
    [80, 'between'],
    [120, 'one'],
    [12_000, 'none'],
  ])('%f Ω, both plugs in: %s', (ohms, zone) => expect(zoneAt('link-ends', ohms)).toBe(zone));

  test('with a plug out one resistor is right, and two are one too many', () => {
    expect(scaleOf('link-one-end').expected).toBe('one');
    expect(zoneAt('link-one-end', 120)).toBe('one');
    expect(zoneAt('link-one-end', 60)).toBe('two');
  });

  test('a long lead may read more and still be whole', () => {
    const long = { ...sallowCreek, dataLink: { ...sallowCreek.dataLink, lengthM: 60 } };
    expect(zoneAt('link-wire-joined', 8)).toBe('poor');
    expect(zoneAt('link-wire-joined', 8, { sheet: long })).toBe('joined');
  });

  test('idle volts of a serial pair: under 0.2 V either way is no answer', () => {
    expect(
      ['-0.25', '-0.1', '0.1', '0.25'].map((volts) => zoneAt('link-serial-idle', Number(volts))),
    ).toEqual(['negative', 'weak', 'weak', 'positive']);
  });
});

describe('the proof of a link', () => {
  test('the alarm is held against the unit’s own time-out, the longest in use where none is known', () => {
    const stated = { readings: { 'time-out.seconds': 30 } };
    expect(zoneAt('link-alarm-after', 34, stated)).toBe('in-time');
    expect(zoneAt('link-alarm-after', 40, stated)).toBe('late');
    expect(zoneAt('link-alarm-after', 290)).toBe('in-time');
    expect(zoneAt('link-clears-after', 89, stated)).toBe('in-time');
  });

  test('amps are held against what is permitted, never above the label, and little tells nothing', () => {
    const of = (permitted: number) => ({ readings: { 'permitted.amps': permitted } });
    expect(zoneAt('link-charge-amps', 20, of(100))).toBe('little');
    expect(zoneAt('link-charge-amps', 98, of(100))).toBe('kept');
    expect(zoneAt('link-charge-amps', 110, of(100))).toBe('over');
    expect(zoneAt('link-charge-amps', 5, of(0))).toBe('over');
    // None permitted and none flowing is a limit kept, whatever a clamp is off by round 0 A.
    const none = scaleOf('link-charge-amps', of(0));
    for (const amps of [-0.4, 0, 0.4]) expect(judge(amps, 0.5, none).outcome).toBe('kept');
    for (const { id, params } of none.why) hasWords(id, params);
    // Two packs of 120 A: a permitted 400 A is no permission.
    expect(zoneAt('link-charge-amps', 300, of(400))).toBe('over');
  });

  test('a link that comes and goes is watched for half an hour', () => {
    const watch = linkWaits.find(({ id }) => id === 'link-watch')!;
    expect(watch.seconds(context({ outcomes: { symptom: 'comes-goes' } }))).toBe(1800);
    expect(watch.seconds(context({ outcomes: { symptom: 'no-link' } }))).toBe(60);
  });
});

describe('limits by voltage', () => {
  test('follow the cells in series: fifteen are not sixteen', () => {
    expect(scaleOf('link-set-charge').nominal).toBeCloseTo(55.2, 9);
    expect(scaleOf('link-set-charge', { sheet: ternLedge }).nominal).toBeCloseTo(51.75, 9);
    expect(zoneAt('link-set-charge', 55.2, { sheet: ternLedge })).toBe('high');
    expect(zoneAt('link-set-cut', 40)).toBe('low');
  });

  test('no charge target comes nearer to the cells’ cut-off than a tenth of a volt', () => {
    const keen = { ...sallowCreek, battery: { ...sallowCreek.battery, cellChargeV: 3.65 } };
    expect(scaleOf('link-set-charge', { sheet: keen }).nominal).toBeCloseTo(16 * 3.55, 9);
  });

  test('say so when the inverter cannot hold them, or the sheet contradicts itself', () => {
    const work = linkWorks.find(({ id }) => id === 'link-run-by-voltage')!;
    const outcome = (change: object) => {
      const result = work.work(context({ sheet: { ...sallowCreek, ...change } }));
      if (!result.ok) throw new Error('facts missing');
      for (const { id, params } of result.says) if (id.startsWith('expected.')) hasWords(id, params);
      return result.outcome;
    };
    const { inverter, battery } = sallowCreek;
    expect(outcome({})).toBe('fits');
    expect(outcome({ inverter: { ...inverter, dcMinV: 50 } })).toBe('unit-cuts-first');
    expect(outcome({ inverter: { ...inverter, dcMaxV: 54 } })).toBe('unit-too-low');
    expect(outcome({ battery: { ...battery, cellChargeV: 3.7 } })).toBe('no-answer');
  });
});

describe('idle volts at both devices', () => {
  const work = linkWorks.find(({ id }) => id === 'link-bias-compare')!;
  test.each([
    ['positive', 'positive', 'same'],
    ['negative', 'negative', 'same'],
    ['positive', 'negative', 'opposite'],
    ['weak', 'negative', 'one-biases'],
    ['undetermined', 'positive', 'one-biases'],
    ['weak', 'undetermined', 'none-biases'],
  ])('%s at the pack, %s at the inverter: %s', (pack, unit, outcome) => {
    const readings = { 'pack-bias.volts': 0.3, 'unit-bias.volts': 0.3 };
    const result = work.work(context({ outcomes: { 'pack-bias': pack, 'unit-bias': unit }, readings }));
    if (!result.ok) throw new Error('facts missing');
    expect(result.outcome).toBe(outcome);
    for (const { id, params } of result.says) hasWords(id, params);
  });
});
