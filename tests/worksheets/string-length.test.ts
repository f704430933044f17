import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringLength } from '../../src/worksheets/pv/string-length.ts';
import { bestSplit } from '../../src/worksheets/pv/string-limits.ts';
import { stringWindow } from '../../src/worksheets/pv/string-window.ts';

type In = Parameters<typeof stringLength.compute>[0];

const usual: In = {
  vocVolts: 41,
  vmpVolts: 34,
  vocPerC: -0.0028,
  vmpPerC: -0.0035,
  iscAmps: 11.5,
  impAmps: 10.8,
  recordLowC: -30,
  hotCellC: 65,
  hotMargin: 0.03,
  startVolts: 150,
  trackLowVolts: 120,
  trackHighVolts: 425,
  maxVolts: 500,
  place: 'dwelling',
  usableAmps: 18,
  shortCircuitAmps: 25,
  modules: 16,
};

function outOf(change: Partial<In>) {
  const result = stringLength.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

const said = (change: Partial<In>): string[] =>
  stringLength.remarks!({ ...usual, ...change }, outOf(change)).map((remark) => remark.id.split('.').at(-1)!);

describe('modules per string', () => {
  it('agrees with the string window: the fewest and the most fit, one beyond does not', () => {
    const out = outOf({});
    const verdictOf = (modules: number): string => {
      const result = stringWindow.compute({ ...usual, modules });
      if (!result.ok) throw new Error(result.reason.id);
      return result.out.verdict;
    };
    expect(verdictOf(out.least!)).toBe('ok');
    expect(verdictOf(out.least! - 1)).not.toBe('ok');
    expect(verdictOf(out.most!)).not.toBe('overMaximum');
    expect(verdictOf(out.most! + 1)).toBe('overMaximum');
  });

  it('holds a dwelling to 600 V whatever the tracker takes', () => {
    const wide = { maxVolts: 1000, trackHighVolts: 800 };
    expect(outOf(wide).capVolts).toBe(600);
    expect(said(wide)).toContain('capped');
    expect(outOf({ ...wide, place: 'elsewhere' }).capVolts).toBe(1000);
  });

  it('says when the table allows fewer, and when it leaves none', () => {
    expect(outOf({ maxVolts: 490 }).verdict).toBe('tableSaysFewer');
    expect(outOf({ maxVolts: 490, place: 'otherCode' }).verdict).toBe('fits');
    expect(outOf({ place: 'otherCode' }).mostTable).toBeUndefined();
    expect(said({ place: 'otherCode' })).toContain('notChecked');
    const tight = { maxVolts: 192, startVolts: 100, trackLowVolts: 112, trackHighVolts: 190 };
    expect(outOf({ ...tight }).most).toBe(4);
    expect(outOf({ ...tight }).mostTable).toBe(3);
    expect(said({ ...tight })).toContain('tableLeavesNone');
  });

  it('finds no length where heat and cold leave no room', () => {
    expect(said({ maxVolts: 250, trackHighVolts: 240 })).toContain('fitsOne');
    const narrow = { startVolts: 400, trackLowVolts: 400, trackHighVolts: 430, maxVolts: 440 };
    expect(outOf(narrow).verdict).toBe('none');
    expect(outOf({ ...narrow }).strings).toBeUndefined();
  });

  it('splits modules into equal strings the input can bear', () => {
    expect(outOf({ modules: 16 })).toMatchObject({ length: 10, strings: 1, leftOver: 6 });
    const two = { modules: 16, usableAmps: 26, shortCircuitAmps: 40 };
    expect(outOf(two)).toMatchObject({ length: 8, strings: 2, leftOver: 0, mostStrings: 2 });
    expect(said({ modules: 3 })).toContain('noSplit');
    expect(said({ shortCircuitAmps: 12 })).toContain('oneStringTooMuch');
  });

  it('makes the best split there is', () => {
    const count = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(
        count,
        count,
        count,
        fc.integer({ min: 1, max: 6 }),
        (modules, least, more, mostStrings) => {
          const most = least + (more % 8);
          const best = bestSplit(modules, least, most, mostStrings);
          for (let length = least; length <= most; length++) {
            for (let strings = 1; strings <= mostStrings; strings++) {
              if (strings * length <= modules)
                expect(best!.leftOver).toBeLessThanOrEqual(modules - strings * length);
            }
          }
          if (best) expect(best.strings * best.length + best.leftOver).toBe(modules);
          else expect(modules).toBeLessThan(least);
        },
      ),
    );
  });

  it('allows no more in colder weather and asks for no fewer in hotter', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -55, max: 20, noNaN: true }),
        fc.double({ min: 25, max: 90, noNaN: true }),
        (recordLowC, hotCellC) => {
          const here = outOf({ recordLowC, hotCellC });
          const harsher = outOf({ recordLowC: recordLowC - 5, hotCellC: hotCellC + 5 });
          expect(harsher.most!).toBeLessThanOrEqual(here.most!);
          expect(harsher.least!).toBeGreaterThanOrEqual(here.least!);
        },
      ),
    );
  });

  it.each<[string, Partial<In>]>([
    ['vmpAboveVoc', { vmpVolts: 42 }],
    ['impAboveIsc', { impAmps: 12 }],
    ['windowUpsideDown', { trackLowVolts: 430 }],
    ['startAboveMaximum', { startVolts: 500 }],
    ['trackingAboveMaximum', { trackHighVolts: 501 }],
  ])('refuses with %s', (reason, change) => {
    const result = stringLength.compute({ ...usual, ...change });
    expect(!result.ok && result.reason.id).toBe(`worksheet.string-length.${reason}`);
  });
});
