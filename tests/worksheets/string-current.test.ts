import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awgAreaMm2, awgGauges } from '../../src/quantity/wire.ts';
import { pvBasisSays } from '../../src/words/en/worksheets/nec-basis.ts';
import {
  codeAmps,
  codeBases,
  editionOf,
  nec690,
  smallestSizes,
} from '../../src/worksheets/pv/string-amps.ts';
import { stringCurrent } from '../../src/worksheets/pv/string-current.ts';
import { necAmbient, necBundling } from '../../src/worksheets/tables/nec-310-15.ts';
import { nec310_16 } from '../../src/worksheets/tables/nec-310-16.ts';
import { necEditions } from '../../src/worksheets/tables/standard-ratings.ts';

type In = Parameters<typeof stringCurrent.compute>[0];

const usual: In = {
  iscAmps: 11.5,
  strings: 1,
  basis: 'nec-2023',
  areaMm2: awgAreaMm2(10),
  metal: 'copper',
  insulation: 'c90',
  termination: 'c75',
  ambientC: 45,
  conductors: 2,
  device: 'fitted',
  deviceAmps: undefined,
  seriesFuseAmps: 20,
  usableAmps: 18,
  shortCircuitAmps: 25,
};

function outOf(change: Partial<In>) {
  const result = stringCurrent.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

const said = (change: Partial<In>): string[] =>
  stringCurrent.remarks!({ ...usual, ...change }, outOf(change)).map(
    (remark) => remark.id.split('.').at(-1)!,
  );

describe('string current', () => {
  it.each<[string, Partial<In>, string]>([
    ['10 AWG and a fuse as sized', {}, 'fits'],
    ['14 AWG cannot be protected by 20 A', { areaMm2: awgAreaMm2(14) }, 'notProtected'],
    ['14 AWG with no device', { areaMm2: awgAreaMm2(14), device: 'none' }, 'fits'],
    ['three strings on 10 AWG', { strings: 3, shortCircuitAmps: 60, seriesFuseAmps: undefined }, 'tooSmall'],
    ['a roof so hot that little is left', { ambientC: 85, conductors: 12 }, 'tooSmall'],
    ['hotter than the insulation', { ambientC: 80, insulation: 'c75' }, 'tooHot'],
    ['a fuse that opens for nothing', { deviceAmps: 15 }, 'deviceTooSmall'],
    ['a fuse above the label of the module', { deviceAmps: 25 }, 'deviceOverModule'],
    ['a fuse above the conductor', { deviceAmps: 40, seriesFuseAmps: 40 }, 'notProtected'],
    ['an input that cannot bear it', { strings: 2 }, 'overTracker'],
    ['a code that is not carried', { basis: 'other' }, 'notChecked'],
    ['the tracker’s limit under any code', { basis: 'other', strings: 2 }, 'overTracker'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('takes the larger of the two rules, which is not their product', () => {
    // One string of 18 A, six conductors in a raceway at 60 °C: rule 1 asks 28.1 A, rule 2 22.5 A at 0.71 × 0.8.
    const out = outOf({
      iscAmps: 18,
      ambientC: 60,
      conductors: 6,
      seriesFuseAmps: undefined,
      device: 'none',
    });
    expect(out.plainMm2).toBe(awgAreaMm2(10));
    expect(out.correctedMm2).toBe(awgAreaMm2(10));
    expect(out.smallestMm2).toBe(awgAreaMm2(10));
    // Multiplied, 28.1 A ÷ 0.568 would have asked for 49.5 A of the 90 °C column: 8 AWG.
    expect(out.ratedAmps! / (0.71 * 0.8)).toBeGreaterThan(40);
  });

  it('leaves everything of the code open where no code is carried', () => {
    const out = outOf({ basis: 'other' });
    expect(out.totalIscAmps).toBe(11.5);
    expect(out.smallestMm2).toBeUndefined();
    expect(out.leastDeviceAmps).toBeUndefined();
    expect(said({ basis: 'other' })[0]).toBe('notChecked');
  });

  it('says what it could not check', () => {
    expect(said({ seriesFuseAmps: undefined })).toContain('seriesFuseUnknown');
    expect(said({ shortCircuitAmps: undefined })).toContain('trackerUnknown');
    expect(said({ device: 'none' })).toContain('noDevice');
    expect(said({ usableAmps: 10 })).toContain('clips');
    expect(said({ areaMm2: awgAreaMm2(14), iscAmps: 15, seriesFuseAmps: undefined })).toContain('nextSize');
  });

  it('refuses a conductor that the table does not hold', () => {
    const result = stringCurrent.compute({ ...usual, areaMm2: 1.5 });
    expect(!result.ok && result.reason.id).toBe('worksheet.string-current.noRow');
  });

  it('carries every edition it offers, with its clauses', () => {
    for (const basis of codeBases) {
      const edition = editionOf(basis);
      if (basis === 'other') expect(edition).toBeUndefined();
      else expect(necEditions).toContain(edition);
    }
    for (const edition of necEditions) {
      const said = pvBasisSays[`nec-${edition}`]!;
      const { maximum, conductor, device } = nec690.clauseByEdition[edition];
      const tables = [nec310_16, necAmbient, necBundling].map(
        ({ clauseByEdition }) => clauseByEdition[edition],
      );
      for (const clause of [edition, maximum, conductor, device, ...tables])
        expect(said).toContain(`${clause}`);
    }
  });
});

describe('smallest sizes', () => {
  const place = {
    metal: 'copper' as const,
    insulation: 90 as const,
    termination: 75 as const,
    ambientC: 45,
    conductors: 4,
  };
  const amps = fc.double({ min: 1, max: 30, noNaN: true });

  it('fit, and the size below does not', () => {
    const gauges = awgGauges.filter((gauge) => gauge <= 14).map(awgAreaMm2);
    fc.assert(
      fc.property(
        amps,
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: -10, max: 70 }),
        (isc, n, ambientC) => {
          const here = { ...place, ambientC };
          const sizes = smallestSizes(codeAmps(isc, n), here, undefined);
          const both = sizes.protectedMm2!;
          expect(both).toBe(Math.max(sizes.plainMm2!, sizes.correctedMm2!));
          const fits = (areaMm2: number): boolean =>
            outOf({
              iscAmps: isc,
              strings: n,
              ambientC,
              conductors: 4,
              areaMm2,
              device: 'none',
              seriesFuseAmps: undefined,
              shortCircuitAmps: undefined,
            }).verdict === 'fits';
          expect(fits(both)).toBe(true);
          const below = gauges.filter((area) => area < both * 0.99).toSorted((a, b) => b - a)[0];
          if (below !== undefined) expect(fits(below)).toBe(false);
        },
      ),
    );
  });

  it('never fall with more amps, heat, company or a device', () => {
    fc.assert(
      fc.property(
        amps,
        fc.integer({ min: -10, max: 60 }),
        fc.integer({ min: 2, max: 20 }),
        (isc, ambientC, conductors) => {
          const size = (change: object, factor = 1, device?: number): number =>
            smallestSizes(
              codeAmps(isc * factor, 1),
              { ...place, ambientC, conductors, ...change },
              device === undefined ? undefined : { amps: device, edition: '2023' },
            ).protectedMm2!;
          const here = size({});
          expect(size({}, 1.3)).toBeGreaterThanOrEqual(here);
          expect(size({ ambientC: ambientC + 10 })).toBeGreaterThanOrEqual(here);
          expect(size({ conductors: conductors + 5 })).toBeGreaterThanOrEqual(here);
          expect(size({ metal: 'aluminium' })).toBeGreaterThanOrEqual(here);
          expect(size({}, 1, 60)).toBeGreaterThanOrEqual(here);
        },
      ),
    );
  });
});
