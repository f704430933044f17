import { describe, expect, test } from 'vitest';
import type { ExpectContext } from '../../src/expected/context.ts';
import { pvScales } from '../../src/expected/pv/index.ts';
import type { Scale } from '../../src/expected/scale.ts';
import { judge } from '../../src/guide/judge.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { expectedWords } from '../../src/words/en/expected.ts';
import { iscA, noon, vocV, workingPoint } from '../support/pv-cases/module.ts';

const scaleDef = (id: string) => {
  const def = pvScales.find((each) => each.id === id);
  if (!def) throw new Error(`no scale ${id}`);
  return def;
};
const context = (more: Partial<ExpectContext> = {}): ExpectContext => ({
  sheet: sallowCreek,
  stringId: 'East',
  readings: {},
  outcomes: {},
  ...more,
});
function scaleOf(id: string, more: Partial<ExpectContext> = {}): Scale {
  const built = scaleDef(id).build(context(more));
  if (!built.ok) throw new Error(`missing ${built.missing.join(', ')}`);
  return built.scale;
}
const topOf = (scale: Scale, zone: string) => scale.zones.find(({ id }) => id === zone)?.max;
const zoneAt = (scale: Scale, value: number) => judge(value, 0, scale).outcome;
const at45 = { readings: { 'cell-temp.cell': 45 } };

describe('every band of the PV guide', () => {
  test.each(pvScales.map((def) => [def.id, def] as const))('%s has ascending zones and words', (_, def) => {
    for (const sheet of [sallowCreek, ternLedge]) {
      const built = def.build(context({ sheet, stringId: sheet.strings[0]!.name }));
      if (!built.ok) throw new Error('a demo site knows enough');
      const { scale } = built;
      expect(scale.zones.map(({ id }) => id)).toEqual(def.zones);
      expect(scale.zones[0]!.min).toBeNull();
      expect(scale.zones.at(-1)!.max).toBeNull();
      for (const [i, zone] of scale.zones.slice(1).entries()) {
        expect(zone.min).toBe(scale.zones[i]!.max);
        if (zone.max !== null) expect(zone.max).toBeGreaterThanOrEqual(zone.min!);
      }
      expect(def.zones).toContain(scale.expected);
      for (const { id, params = {} } of scale.why) {
        const gaps = [...(expectedWords[id] ?? '').matchAll(/\{(\w+):/g)].map((match) => match[1]!);
        expect(expectedWords[id], id).toBeDefined();
        for (const gap of gaps) expect(typeof params[gap], `${id} ${gap}`).toBe('number');
      }
    }
  });

  test('a string that is on no list asks for the list', () => {
    const lost = scaleDef('pv-string-volts').build(context({ stringId: 'North' }));
    expect(lost).toEqual({ ok: false, missing: ['strings'] });
  });
});

describe('the module that the cases are read from', () => {
  test('keeps the four ratings of the demo site’s label', () => {
    const rating = { light: 1000, cellC: 25 };
    const { vocV: voc, iscA: isc, vmpV, impA } = sallowCreek.strings[0]!;
    expect(vocV(rating)).toBeCloseTo(voc, 9);
    expect(iscA(rating)).toBeCloseTo(isc, 9);
    expect(workingPoint(1, rating).volts / vmpV).toBeCloseTo(1, 1);
    expect(workingPoint(1, rating).amps / impA).toBeCloseTo(1, 1);
    expect(workingPoint(1, rating).watts / (vmpV * impA)).toBeCloseTo(1, 2);
  });
});

describe('string volts', () => {
  const scale = scaleOf('pv-string-volts', at45);

  // 8 × 41 V × (1 − 0.0028 × (T − 25)), cells 40 to 50 °C, 5 % either way (IEC 62446-1 practice, from memory).
  test('stand within 5 % of the label at the cell temperature read, 5 °C either way', () => {
    expect(topOf(scale, 'low')).toBeCloseTo(328 * 0.93 * 0.95, 6);
    expect(topOf(scale, 'ok')).toBeCloseTo(328 * 0.958 * 1.05, 6);
    expect(scale.nominal).toBeCloseTo(309.632, 6);
  });

  test('of a diode-model string fall in band, and of one module less do not', () => {
    expect(zoneAt(scale, 8 * vocV(noon))).toBe('ok');
    expect(zoneAt(scale, 7 * vocV(noon))).toBe('low');
    expect(zoneAt(scale, 9 * vocV(noon))).toBe('high');
  });

  test('tell reversed, held down, nothing and held off', () => {
    expect(zoneAt(scale, -309)).toBe('reversed');
    expect(zoneAt(scale, -1.2)).toBe('slightly-negative');
    expect(zoneAt(scale, 0)).toBe('near-zero');
    expect(zoneAt(scale, 8)).toBe('held-off');
    expect(zoneAt(scale, 501)).toBe('over');
    expect(scale.overRange).toBe('over');
  });

  test('nothing on the meter is nothing, its last digits counted', () => {
    // 0.5 % + 2 counts of 0.1 V: U = 0.23 V. 1 % + 3 counts: U = 0.35 V.
    for (const u of [0.231, 0.3465]) expect(judge(0, u, scale).outcome).toBe('near-zero');
  });

  test('without a cell temperature reach from a cold morning to a hot afternoon', () => {
    const wide = scaleOf('pv-string-volts');
    expect(topOf(wide, 'low')).toBeCloseTo(328 * (1 - 0.0028 * 35) * 0.95, 6);
    expect(topOf(wide, 'ok')).toBeCloseTo(328 * (1 + 0.0028 * 35) * 1.05, 6);
  });

  test('of a dawn string are in band once the light is called weak', () => {
    const dawn = { light: 60, cellC: -5 };
    const more = { readings: { 'cell-temp.cell': -5 }, outcomes: { light: 'weak' } };
    expect(zoneAt(scaleOf('pv-string-volts', more), 8 * vocV(dawn))).toBe('ok');
  });

  test('never cross, even where the whole string is over the maximum', () => {
    const sheet = { ...sallowCreek, trackers: sallowCreek.trackers.map((each) => ({ ...each, maxV: 200 })) };
    const low = scaleOf('pv-string-volts', { ...at45, sheet });
    expect(topOf(low, 'low')).toBe(200);
    expect(topOf(low, 'high')).toBe(200);
    expect(zoneAt(low, 309)).toBe('over');
  });
});

describe('volts at work', () => {
  const scale = scaleOf('pv-loaded-volts', { readings: { 'cell-temp.cell': 45, 'volts-still.p1': 300 } });

  test('are shares of the open volts that were read', () => {
    expect(topOf(scale, 'collapsed')).toBe(180);
    expect(topOf(scale, 'dragged')).toBe(225);
    expect(topOf(scale, 'tracking')).toBe(270);
  });

  test('are shares of the label’s volts where nothing of a string was read', () => {
    const none = scaleOf('pv-loaded-volts', { readings: { 'cell-temp.cell': 45, 'volts-still.p1': 3 } });
    expect(topOf(none, 'tracking')).toBeCloseTo(0.9 * 309.632, 6);
  });

  test('of a reversed or shorted string are near nothing whichever sign its last digit has', () => {
    for (const volts of [-2, -0.5, 0, 0.5, 2]) expect(zoneAt(scale, volts)).toBe('near-zero');
  });
});

describe('string amps', () => {
  const scale = scaleOf('pv-string-clamp');

  test('count as none up to 0.5 A either way, the same limit as for moving a handle', () => {
    expect(zoneAt(scale, -0.5)).toBe('zero');
    expect(zoneAt(scale, -0.51)).toBe('backward');
    expect(topOf(scale, 'zero')).toBe(0.5);
  });

  test('of a shorted string in sun are current, either way round', () => {
    expect(zoneAt(scale, iscA(noon))).toBe('flows');
    expect(zoneAt(scale, -iscA(noon))).toBe('backward');
  });

  test('are judged by what the clamp may be off at the most', () => {
    // 2 % + 5 counts of 0.1 A: 0.500 A at 0.0 A is still none; 0.502 A at 0.1 A is not.
    expect(scale.error).toBe('halfWidth');
    expect(judge(0, 0.5, scale).outcome).toBe('zero');
    expect(judge(0.1, 0.502, scale).outcome).toBe('undetermined');
  });
});

describe('cell temperature', () => {
  const cellUsed = (readings: Record<string, number>) => scaleOf('pv-string-volts', { readings }).uses;

  test('is the one read last, not the one read first', () => {
    expect(cellUsed({ 'cell-temp.cell': 62, 'string-check--cell-temp.cell': 20 })).toMatchObject({
      cellLowC: 15,
      cellHighC: 25,
    });
  });

  test('that no module can have is taken as none', () => {
    const none = cellUsed({});
    for (const cell of [537, 101, -41]) expect(cellUsed({ 'cell-temp.cell': cell })).toEqual(none);
    expect(zoneAt(scaleOf('pv-cell-temp'), 537)).toBe('too-hot');
    expect(zoneAt(scaleOf('pv-cell-temp'), -60)).toBe('too-cold');
  });
});

describe('battery limits', () => {
  test('charging begins at the label’s minimum and never below freezing', () => {
    expect(topOf(scaleOf('cell-coldest'), 'cold')).toBe(5);
    const battery = { ...sallowCreek.battery, chargeMinC: -10 };
    expect(topOf(scaleOf('cell-coldest', { sheet: { ...sallowCreek, battery } }), 'cold')).toBe(0);
    const silent = { ...sallowCreek.battery, chargeMinC: null };
    expect(topOf(scaleOf('cell-coldest', { sheet: { ...sallowCreek, battery: silent } }), 'cold')).toBe(0);
  });

  test('full is judged by the cells of this bank', () => {
    expect(topOf(scaleOf('battery-screen-volts'), 'working')).toBeCloseTo(16 * 3.4, 6);
    expect(topOf(scaleOf('battery-screen-volts', { sheet: ternLedge }), 'working')).toBeCloseTo(15 * 3.4, 6);
  });
});
