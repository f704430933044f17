import { describe, expect, test } from 'vitest';
import type { ExpectContext } from '../../src/expected/context.ts';
import { pvWorks } from '../../src/expected/pv/index.ts';
import { sallowCreek } from '../../src/site/demo.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';
import { expectedWords } from '../../src/words/en/expected.ts';
import { worksheetWords } from '../../src/words/en/worksheets.ts';
import { noon, polesToGround, vocV } from '../support/pv-cases/module.ts';

function work(id: string, more: Partial<ExpectContext> = {}) {
  const def = pvWorks.find((each) => each.id === id);
  if (!def) throw new Error(`no work ${id}`);
  const done = def.work({ sheet: sallowCreek, stringId: 'East', readings: {}, outcomes: {}, ...more });
  if (!done.ok) throw new Error(`missing ${done.missing.join(', ')}`);
  expect(def.answers).toContain(done.outcome);
  for (const { id: said } of done.says) {
    const [, worksheet = '', remark = ''] = /^worksheet\.([^.]+)\.(.+)$/.exec(said) ?? [];
    expect(expectedWords[said] ?? worksheetWords[worksheet]?.says[remark], said).toBeDefined();
  }
  return done;
}

type Change = {
  string?: Partial<SiteSheet['strings'][number]>;
  tracker?: Partial<SiteSheet['trackers'][number]>;
};
const site = ({ string = {}, tracker = {} }: Change): SiteSheet => ({
  ...sallowCreek,
  strings: sallowCreek.strings.map((each) => ({ ...each, ...string })),
  trackers: sallowCreek.trackers.map((each) => ({ ...each, ...tracker })),
});

describe('the string window', () => {
  test.each([
    ['fits', {}],
    // 11 × 41 × (1 + 0.0028 × 55) = 520.5 V over 500 V.
    ['over-maximum', { string: { modulesInSeries: 11 } }],
    // 8 × 41 × (1 − 0.0028 × 35) = 295.9 V under 330 V.
    ['too-short', { tracker: { startV: 330 } }],
    // 8 × 34 × (1 − 0.0035 × 35) × 0.97 = 231.5 V under 240 V.
    ['too-short', { tracker: { trackMinV: 240 } }],
    // 10 modules: 473.1 V by coefficient, 496.1 V by the code's table (1.21 at −30 °C), which is over 480 V.
    ['near-maximum', { string: { modulesInSeries: 10 }, tracker: { maxV: 480, trackMaxV: 425 } }],
    ['no-answer', { string: { vmpV: 42 } }],
  ] as const)('%s', (outcome, change) => {
    expect(work('pv-string-window', { sheet: site(change) }).outcome).toBe(outcome);
  });
});

describe('missing modules', () => {
  const readings = (modules: number) => ({ 'cell-temp.cell': 45, 'volts-still.p1': modules * vocV(noon) });

  test.each([1, 2, 3, 4])('counts %i of eight', (missing) => {
    const { says } = work('pv-missing-modules', { readings: readings(8 - missing) });
    expect(says[0]?.params).toMatchObject({ missing, left: 8 - missing });
  });

  test('says whether what is left can start', () => {
    expect(work('pv-missing-modules', { readings: readings(7) }).outcome).toBe('above-start');
    const sheet = site({ tracker: { startV: 280 } });
    expect(work('pv-missing-modules', { sheet, readings: readings(7) }).outcome).toBe('below-start');
  });

  test('says nothing in weak light', () => {
    const dim = { readings: readings(6), outcomes: { light: 'weak' } };
    expect(work('pv-missing-modules', dim).outcome).toBe('light-too-weak');
  });
});

describe('the coldest morning from today’s reading', () => {
  test('is taken at the hottest that the cells may be', () => {
    // 450 V at 45 °C: 450 × 1.154 / (1 − 0.0028 × 25) = 558.4 V.
    const { outcome, says } = work('pv-cold-from-measured', {
      readings: { 'cell-temp.cell': 45, 'volts-still.p1': 450 },
    });
    expect(outcome).toBe('over-maximum');
    expect(says[0]?.params?.['cold']).toBeCloseTo((450 * 1.154) / 0.93, 3);
  });

  test('leaves a string that stays under the maximum', () => {
    const readings = { 'cell-temp.cell': 45, 'volts-still.p1': 348 };
    expect(work('pv-cold-from-measured', { readings }).outcome).toBe('fits');
  });
});

describe('the start volts', () => {
  const read = (volts: number, cellC = 45) => ({ 'cell-temp.cell': cellC, 'volts-still.p1': volts });

  test.each([
    ['enough', 309, 45, {}],
    ['below-start', 309, 45, { tracker: { startV: 330 } }],
    ['short-when-hot', 340, 10, { tracker: { startV: 310 } }],
    ['no-string', 20, 45, {}],
  ] as const)('%s', (outcome, volts, cellC, change) => {
    expect(work('pv-start-margin', { sheet: site(change), readings: read(volts, cellC) }).outcome).toBe(
      outcome,
    );
  });

  test('a reading within the meter’s error of the start volts is not called too low', () => {
    const sheet = site({ tracker: { startV: 309.5, trackMinV: 100 } });
    expect(work('pv-start-margin', { sheet, readings: read(309) }).outcome).not.toBe('below-start');
  });

  test('in weak light a string that would reach them in sun is not condemned', () => {
    const sheet = site({ tracker: { startV: 300 } });
    const dim = { sheet, readings: read(290), outcomes: { light: 'weak' } };
    expect(work('pv-start-margin', dim).outcome).toBe('light-too-weak');
  });
});

describe('insulation', () => {
  const readings = (k: number, leakOhm: number) => {
    const { plus, minus } = polesToGround(8, k, leakOhm, 1e7, noon);
    return { 'pole-ground.voc': 8 * vocV(noon), 'pole-ground.plus': plus, 'pole-ground.minus': minus };
  };

  test.each([
    ['sound', 4, 4e7],
    ['leak-between', 3, 20_000],
    ['leak-at-positive', 0, 5000],
    ['leak-at-negative', 8, 5000],
    // The least allowed is 1 MΩ (IEC 62446-1, from memory): on the limit a meter cannot say.
    ['cannot-tell', 4, 980_000],
  ] as const)('%s', (outcome, k, leakOhm) => {
    expect(work('pv-insulation', { readings: readings(k, leakOhm) }).outcome).toBe(outcome);
  });

  test('readings that contradict each other give no answer', () => {
    const wrong = { ...readings(4, 20_000), 'pole-ground.plus': 400 };
    expect(work('pv-insulation', { readings: wrong }).outcome).toBe('refused');
  });

  test('after a repair only sound is sound', () => {
    const mended = (leakOhm: number) =>
      Object.fromEntries(
        Object.entries(readings(4, leakOhm)).map(([key, value]) => [
          key.replace('pole-ground', 'retest-ground'),
          value,
        ]),
      );
    expect(work('pv-insulation-after', { readings: mended(4e7) }).outcome).toBe('sound');
    expect(work('pv-insulation-after', { readings: mended(980_000) }).outcome).toBe('not-sound');
  });
});

describe('a swap', () => {
  test('is offered between like trackers', () => {
    expect(work('pv-swap-fits').outcome).toBe('fits');
  });

  test('is refused where a string would be over the other maximum', () => {
    const [first, second] = sallowCreek.trackers;
    const sheet = { ...sallowCreek, trackers: [first!, { ...second!, maxV: 300, trackMaxV: 290 }] };
    expect(work('pv-swap-fits', { sheet }).outcome).toBe('too-much');
  });

  test('needs another tracker with a string', () => {
    const sheet = { ...sallowCreek, strings: sallowCreek.strings.slice(0, 1) };
    expect(work('pv-swap-fits', { sheet }).outcome).toBe('no-other');
  });
});
