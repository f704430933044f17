import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/sheet-check/check.ts';
import { checks } from '../../src/sheet-check/checks.ts';
import { liftsOf } from '../../src/sheet-check/lift.ts';
import { partsOf } from '../../src/sheet-check/parts.ts';
import { powerCeilings } from '../../src/sheet-check/power.ts';
import { checkSite, rowsOf } from '../../src/sheet-check/run.ts';
import { checkSheet } from '../../src/site/check.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { factOf, setFact } from '../../src/site/facts.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';
import { checkWords, sheetCheckWords } from '../../src/words/en/sheet-check.ts';

const made = (sheet: SiteSheet, id: string, row = 0): Finding =>
  Object.values(checkSite(sheet))
    .flat()
    .filter((each): each is Finding => 'holds' in each)
    .find(({ check, row: at }) => check === id && at === row)!;
const brokenIn = (sheet: SiteSheet): string[] => checkSite(sheet).broken.map(({ check }) => check);
const openIn = (sheet: SiteSheet): string[] => checkSite(sheet).notChecked.map(({ check }) => check);

describe('figures worked by hand for Sallow Creek', () => {
  // (6000 W / 0.93 + 100 W) / 42 V = 155.99 A; NEC 706.30: 125 % of it.
  const amps = (6000 / 0.93 + 100) / 42;
  it.each([
    // 8 × 41 V × (1 + 0.0028 × 55).
    ['string-over-maximum', 378.512, 500],
    // 30 + 30 °C cells: 8 × 41 V × (1 − 0.0028 × 35).
    ['string-starts', 295.856, 150],
    ['packs-continuous', amps, 2 * 120 * 0.8],
    ['one-pack-out', amps, 120],
    ['packs-surge', (12_000 / 0.93 + 100) / 42, 400],
    ['main-device-small', 1.25 * amps, 200],
    ['main-switch-amps', amps, 300],
    ['main-switch-volts', 16 * 3.65, 80],
    // Two packs of 12 mΩ at 58.4 V, a quarter on top.
    ['main-breaking', (1.25 * 2 * 58.4) / 0.012, 20_000],
    ['isolator-amps', 1.25 * 11.5, 32],
    // 6000 W on one line of 120 V; 6 AWG at 60 °C lugs is 55 A (NEC Table 310.16).
    ['made-common', 50, 55],
    ['leg-limit', 6000, 6000],
    // Half of 20 mF at 52.8 V.
    ['precharge-pulse', 0.5 * 0.02 * 52.8 ** 2, 200],
  ])('%s', (id, amount, limit) => {
    const finding = made(sallowCreek, id);
    expect(finding.amount / amount).toBeCloseTo(1, 3);
    expect(finding.limit).toBeCloseTo(limit, 6);
  });

  it('has one thing to put right, and nothing unchecked', () => {
    expect(brokenIn(sallowCreek)).toEqual(['one-pack-out']);
    expect(openIn(sallowCreek)).toEqual([]);
    expect(liftsOf(made(sallowCreek, 'one-pack-out'), sallowCreek)).toEqual([
      { fact: 'battery.packs', from: 2, to: 3 },
      { fact: 'battery.packContinuousA', from: 120, to: 156 },
    ]);
  });

  it('a main breaker of 125 A, and not the inverter, limits it: 125 A / 1.25 × 42 V less idle, × 0.93', () => {
    const small = setFact(sallowCreek, 'fuse.ratedA', 125);
    expect(brokenIn(small)).toContain('main-device-small');
    expect(powerCeilings(small)[0]).toMatchObject({ by: 'mainDevice' });
    expect(powerCeilings(small)[0]!.watts).toBeCloseTo((100 * 42 - 100) * 0.93, 6);
    expect(liftsOf(made(small, 'main-device-small'), small)).toContainEqual({
      fact: 'fuse.ratedA',
      from: 125,
      to: 200,
    });
  });

  it('a short string cannot start on a hot afternoon, and more modules lift it', () => {
    // 4 × 41 V × 0.902 = 147.9 V < 150 V; five give 184.9 V.
    const short = setFact(sallowCreek, 'strings[1].modulesInSeries', 4);
    const finding = made(short, 'string-starts', 1);
    expect(finding).toMatchObject({ holds: false, name: 'West', severity: 'fails' });
    expect(finding.amount).toBeCloseTo(147.928, 3);
    expect(liftsOf(finding, short)[0]).toEqual({ fact: 'strings[1].modulesInSeries', from: 4, to: 5 });
    expect(brokenIn(short)).not.toContain('string-starts-late');
  });

  it('legs made common put 50 A on a neutral good for 40 A, and the next size lifts it', () => {
    // 8 AWG copper at 60 °C lugs: 40 A (NEC Table 310.16).
    const common = setFact(
      setFact(sallowCreek, 'inverter.topology', 'common-120'),
      'outputFeeder.areaMm2',
      8.37,
    );
    const finding = made(common, 'common-neutral');
    expect(finding).toMatchObject({ holds: false, severity: 'danger', amount: 50, limit: 40 });
    const [lift] = liftsOf(finding, common);
    expect(lift!.fact).toBe('outputFeeder.areaMm2');
    expect(Number(lift!.to)).toBeCloseTo(13.3, 1);
  });
});

describe('figures worked by hand for Tern Ledge', () => {
  const amps = (3000 / 0.93 + 45) / 40;
  it.each([
    ['packs-continuous', amps, 80],
    ['packs-surge', (6000 / 0.93 + 45) / 40, 150],
    // 5 × 37.5 V × (1 + 0.003 × 40).
    ['string-over-maximum', 210, 250],
    ['main-breaking', (1.25 * 54.75) / 0.02, 10_000],
  ])('%s', (id, amount, limit) => {
    expect(made(ternLedge, id).amount).toBeCloseTo(amount, 6);
    expect(made(ternLedge, id).limit).toBeCloseTo(limit, 6);
  });

  it('leaves every code rule unchecked, and says which fact is owed', () => {
    const open = checkSite(ternLedge).notChecked;
    const byCode = open.filter(({ why }) => why.kind === 'codeBasis').map(({ check }) => check);
    expect(byCode).toEqual([
      'string-conductor',
      'isolator-amps',
      'main-cable',
      'main-device-small',
      'main-device-large',
      'common-neutral',
    ]);
    expect(open.find(({ check }) => check === 'precharge-pulse')?.why).toEqual({
      kind: 'missing',
      facts: ['precharge.ratedEnergyJ'],
    });
  });

  it('is limited by its packs: 80 A at 40 V less idle, × 0.93', () => {
    expect(powerCeilings(ternLedge)[0]).toMatchObject({ by: 'packs' });
    expect(powerCeilings(ternLedge)[0]!.watts).toBeCloseTo((80 * 40 - 45) * 0.93, 6);
  });
});

describe('a missing fact', () => {
  const needed = checks.flatMap((check) => (check.needs ?? []).map((id) => [check, id] as const));
  it.each(needed)('$0.id without it is not checked, never passed', (check, id) => {
    const fact = id.replace('string.', 'strings[0].').replace('tracker.', 'trackers[0].');
    if (!factOf(fact).unknownAllowed) return expect(factOf(fact).unknownAllowed).toBe(false);
    const sheet = setFact(sallowCreek, fact, null);
    if (!rowsOf(check, sheet).includes(0)) return expect(brokenIn(sheet)).not.toContain(check.id);
    expect(made(sheet, check.id)).toBeUndefined();
    const open = checkSite(sheet).notChecked.find((each) => each.check === check.id && each.row === 0);
    expect(open?.why).toMatchObject({ kind: 'missing' });
    expect(open?.why.kind === 'missing' && open.why.facts).toContain(fact);
  });
});

/** Sites near the first demonstration site, most of them with something wrong. */
const anySite = fc
  .record({
    'strings[0].modulesInSeries': fc.integer({ min: 2, max: 14 }),
    'trackers[0].startV': fc.integer({ min: 100, max: 400 }),
    'inverter.ratedW': fc.integer({ min: 3000, max: 12_000 }),
    'battery.packs': fc.integer({ min: 1, max: 4 }),
    'fuse.ratedA': fc.constantFrom(100, 125, 200, 300, 400),
    'fuse.interruptingA': fc.constantFrom(2500, 10_000, 20_000),
    'batteryCable.areaMm2': fc.constantFrom(33.6, 53.5, 107),
    'outputFeeder.areaMm2': fc.constantFrom(3.31, 8.37, 13.3),
    'precharge.resistorOhm': fc.integer({ min: 5, max: 300 }),
    'climate.usualHighC': fc.integer({ min: 20, max: 50 }),
  })
  .map((facts) =>
    Object.entries(facts).reduce((sheet, [id, value]) => setFact(sheet, id, value), sallowCreek),
  )
  .filter((sheet) => checkSheet(sheet).ok);

describe('the change that lifts a finding', () => {
  it('clears it, keeps the sheet possible and breaks nothing that held', () => {
    let lifted = 0;
    fc.assert(
      fc.property(anySite, (sheet) => {
        const before = checkSite(sheet);
        const standing = new Set(
          [...before.broken, ...before.quiet, ...before.notChecked].map(
            ({ check, row }) => `${check}:${row}`,
          ),
        );
        for (const finding of before.broken) {
          for (const { fact, from, to } of liftsOf(finding, sheet)) {
            lifted++;
            expect(to).not.toEqual(from);
            const { answer } = factOf(fact);
            if (answer.type === 'number') {
              expect(to).toBeGreaterThanOrEqual(answer.min);
              expect(to).toBeLessThanOrEqual(answer.max);
            }
            const changed = setFact(sheet, fact, to);
            expect(checkSheet(changed).ok).toBe(true);
            expect(made(changed, finding.check, finding.row).holds, `${finding.check} by ${fact}`).toBe(true);
            const after = checkSite(changed);
            for (const { check, row } of [...after.broken, ...after.quiet, ...after.notChecked])
              expect(standing.has(`${check}:${row}`), `${check} after ${fact}`).toBe(true);
          }
        }
      }),
      { numRuns: 5 },
    );
    expect(lifted).toBeGreaterThan(4);
  }, 120_000);

  it('is the smallest: one module fewer than proposed still fails', () => {
    fc.assert(
      fc.property(fc.integer({ min: 160, max: 420 }), (startV) => {
        const sheet = setFact(sallowCreek, 'trackers[0].startV', startV);
        const finding = made(sheet, 'string-starts');
        if (finding.holds) return;
        const lift = liftsOf(finding, sheet).find(({ fact }) => fact.endsWith('modulesInSeries'));
        if (!lift) return;
        const less = setFact(sheet, lift.fact, Number(lift.to) - 1);
        expect(made(less, 'string-starts').holds).toBe(false);
      }),
      { numRuns: 8 },
    );
  }, 60_000);
});

describe('parts', () => {
  it('counts and rates them for Sallow Creek', () => {
    const parts = partsOf(sallowCreek);
    const part = (id: string) => parts.find((each) => each.id === id)!;
    const rated = (id: string, rating: string) => part(id).ratings.find((each) => each.id === rating)?.value;
    expect(rated('main-fuse', 'standardAmps')).toBe(200);
    expect(part('pack-device').quantity).toBe(2);
    // 78 A each × 1.25 = 97.5 A.
    expect(rated('pack-device', 'standardAmps')).toBe(100);
    expect(part('battery-lug').quantity).toBe(16);
    // 25 A a leg × 1.25 = 31.25 A.
    expect(rated('output-breaker', 'standardAmps')).toBe(35);
    expect(part('battery-cable').quantity).toBeCloseTo(2 * 1.8288, 9);
    expect(part('battery-conduit').trade).toBe('2');
    expect(parts.filter(({ id }) => id === 'pv-isolator')).toHaveLength(2);
  });

  it('gives no code size where the code is not carried, and says so', () => {
    for (const { id, trade, codeOpen, ratings } of partsOf(ternLedge)) {
      expect(trade, id).toBeUndefined();
      expect(ratings.some((each) => each.id === 'standardAmps')).toBe(false);
      if (/conduit|fuse|breaker/.test(id)) expect(codeOpen, id).toBe(true);
    }
  });
});

it('every check and part has words, and every word a check or part', () => {
  expect(Object.keys(checkWords).toSorted()).toEqual(checks.map(({ id }) => id).toSorted());
  const ids = [sallowCreek, setFact(sallowCreek, 'inverter.topology', 'common-120')].flatMap((sheet) =>
    partsOf(sheet).map(({ id }) => id),
  );
  expect(Object.keys(sheetCheckWords.parts.names).toSorted()).toEqual([...new Set(ids)].toSorted());
});
