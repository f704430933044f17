import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parallelStrings } from '../../src/worksheets/pv/parallel-strings.ts';
import { joined, moduleCurve } from '../../src/worksheets/pv/unequal.ts';

type In = Parameters<typeof parallelStrings.compute>[0];

const usual: In = {
  vocVolts: 41,
  vmpVolts: 34,
  iscAmps: 11.5,
  impAmps: 10.8,
  modules: 8,
  strings: 2,
  otherModules: undefined,
  otherStrings: 0,
  basis: 'nec-2023',
  seriesFuseAmps: 20,
  conductorAmps: 34,
  backfeedAmps: 0,
};

function outOf(change: Partial<In>) {
  const result = parallelStrings.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

const said = (change: Partial<In>): string[] =>
  parallelStrings.remarks!({ ...usual, ...change }, outOf(change)).map(
    (remark) => remark.id.split('.').at(-1)!,
  );

describe('fuses', () => {
  it.each<[string, Partial<In>, string]>([
    ['one string', { strings: 1 }, 'notNeeded'],
    ['two strings', {}, 'notNeeded'],
    ['three strings', { strings: 3 }, 'needed'],
    ['two and one other', { otherStrings: 1 }, 'needed'],
    [
      'three, and a label that allows more',
      { strings: 3, seriesFuseAmps: 30, conductorAmps: undefined },
      'notNeeded',
    ],
    ['three, and wires that bear less', { strings: 3, seriesFuseAmps: 30, conductorAmps: 25 }, 'needed'],
    ['three, and a label under the smallest fuse', { strings: 3, seriesFuseAmps: 15 }, 'noFuseFits'],
    ['two, and an inverter that feeds back', { backfeedAmps: 10 }, 'needed'],
    ['label unknown', { seriesFuseAmps: undefined }, 'notChecked'],
    ['IEC, two', { basis: 'iec', seriesFuseAmps: 5 }, 'notNeeded'],
    ['IEC, three', { basis: 'iec', strings: 3, seriesFuseAmps: 15 }, 'needed'],
    ['another code', { basis: 'other' }, 'notChecked'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).fuses).toBe(verdict);
  });

  it('never become unneeded with one more string', () => {
    const rank = { notNeeded: 0, needed: 1, noFuseFits: 1, notChecked: 2 };
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 11 }),
        fc.double({ min: 5, max: 40, noNaN: true }),
        fc.constantFrom('nec-2023' as const, 'iec' as const),
        (strings, seriesFuseAmps, basis) => {
          const here = outOf({ strings, seriesFuseAmps, basis });
          const more = outOf({ strings: strings + 1, seriesFuseAmps, basis });
          expect(rank[more.fuses]).toBeGreaterThanOrEqual(rank[here.fuses]);
        },
      ),
    );
  });

  it('say what was not checked', () => {
    expect(said({ basis: 'other' })[0]).toBe('codeNotCarried');
    expect(said({ seriesFuseAmps: undefined })[0]).toBe('seriesFuseUnknown');
    expect(said({ conductorAmps: undefined })).toContain('conductorUnknown');
    expect(said({ basis: 'iec', strings: 4 })).toContain('iecSize');
  });
});

describe('unequal strings', () => {
  it('lose nothing when equal, more the more they differ', () => {
    expect(outOf({}).match).toBe('equal');
    expect(outOf({}).lossShare).toBeCloseTo(0, 6);
    expect(outOf({}).backAmps).toBeLessThan(0.001);
    const losses = [8, 7, 6, 5].map(
      (otherModules) => outOf({ strings: 1, otherModules, otherStrings: 1 }).lossShare!,
    );
    for (const [at, loss] of losses.entries()) if (at > 0) expect(loss).toBeGreaterThan(losses[at - 1]!);
    expect(outOf({ strings: 1, otherModules: 5, otherStrings: 1 }).match).toBe('loss');
  });

  it('push amps backwards through the short one when nothing is drawn', () => {
    const short = { otherModules: 6, otherStrings: 1 };
    expect(outOf(short).backAmps!).toBeGreaterThan(1);
    expect(said(short)).toContain('backwards');
    expect(said({})).not.toContain('backwards');
  });

  it('never push more than the others can give', () => {
    const count = fc.integer({ min: 1, max: 20 });
    fc.assert(
      fc.property(
        count,
        count,
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 6 }),
        (a, b, n, m) => {
          const groups = [
            { modules: a, strings: n },
            { modules: b, strings: m },
          ];
          const { openVolts, bestWatts, apartWatts } = joined(usual, groups);
          expect(openVolts).toBeLessThanOrEqual(Math.max(a, b) * usual.vocVolts * 1.001);
          expect(openVolts).toBeGreaterThanOrEqual(Math.min(a, b) * usual.vocVolts * 0.999);
          const back = -moduleCurve(usual)(openVolts / Math.min(a, b));
          expect(back).toBeLessThanOrEqual(usual.iscAmps * Math.max(n, m) * 1.001);
          expect(bestWatts).toBeLessThanOrEqual(apartWatts * (1 + 1e-6));
          // Switching the short strings off would still give the long ones' power.
          expect(bestWatts).toBeGreaterThan(0);
        },
      ),
    );
  });

  it.each<[string, Partial<In>]>([
    ['noVoltsRatio', { vmpVolts: 42 }],
    ['noAmpsRatio', { impAmps: 11.5 }],
    ['noCurve', { vmpVolts: 15, impAmps: 6 }],
  ])('refuses with %s', (reason, change) => {
    const result = parallelStrings.compute({ ...usual, ...change });
    expect(!result.ok && result.reason.id).toBe(`worksheet.parallel-strings.${reason}`);
  });
});
