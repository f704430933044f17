import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packSharing } from '../../src/worksheets/battery-dc/pack-sharing.ts';
import { bankWirings, sourceAmps, wiredShares } from '../../src/worksheets/battery-dc/parallel-packs.ts';

type In = Parameters<typeof packSharing.compute>[0];
const usual: In = {
  packAmps: [],
  clampError: 1,
  labelAmps: 100,
  wiring: 'equalLeads',
  packOhms: 0.02,
  linkOhms: 0.0015,
  apartVolts: undefined,
};
const rows = (...amps: number[]) => amps.map((each) => ({ amps: each }));

function outOf(change: Partial<In>) {
  const result = packSharing.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('pack sharing', () => {
  it.each<[string, Partial<In>, string]>([
    ['two alike', { packAmps: rows(51, 49) }, 'even'],
    ['two alike while charging', { packAmps: rows(-51, -49) }, 'even'],
    ['four joined at one end', { packAmps: rows(71, 52, 41, 36), wiring: 'oneEnd' }, 'asWired'],
    ['the same with equal leads', { packAmps: rows(71, 52, 41, 36) }, 'uneven'],
    ['one that is off', { packAmps: rows(66, 67, 0.4) }, 'silent'],
    ['one that is charged by the others', { packAmps: rows(70, -20, 60) }, 'backwards'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('gives the bank what its busiest pack leaves it', () => {
    const out = outOf({ packAmps: rows(60, 40) });
    expect(out.mostPack).toBe(1);
    expect(out.bankAmps).toBeCloseTo(100 / 0.6, 9);
    expect(out.paperAmps).toBe(200);
  });

  it('never gives the bank more than its labels', () => {
    const amps = fc.double({ min: 5, max: 200, noNaN: true });
    fc.assert(
      fc.property(fc.array(amps, { minLength: 2, maxLength: 8 }), (each) => {
        const out = outOf({ packAmps: rows(...each) });
        expect(out.bankAmps).toBeLessThanOrEqual(out.paperAmps! + 1e-9);
      }),
    );
  });

  it.each<[string, In['packAmps'], string]>([
    ['one pack', rows(50), 'fewPacks'],
    ['no pack', [], 'fewPacks'],
    ['next to no current', rows(1, 0.5), 'littleCurrent'],
  ])('refuses %s', (_, packAmps, reason) => {
    const result = packSharing.compute({ ...usual, packAmps });
    expect(!result.ok && result.reason.id).toBe(`worksheet.pack-sharing.${reason}`);
  });
});

describe('shares by wiring', () => {
  const packs = fc.integer({ min: 2, max: 16 });
  const link = fc.double({ min: 0.00001, max: 0.003, noNaN: true });

  it('add up to one, fall from the take-off of one end, and are mirrored for opposite ends', () => {
    fc.assert(
      fc.property(packs, link, fc.constantFrom(...bankWirings), (count, linkOhms, wiring) => {
        const shares = wiredShares(count, wiring, 0.02, linkOhms);
        expect(shares.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 6);
        if (wiring === 'oneEnd') {
          for (const [at, share] of shares.slice(1).entries()) expect(share).toBeLessThan(shares[at]!);
        } else {
          for (const [at, share] of shares.entries()) expect(share).toBeCloseTo(shares.at(-1 - at)!, 6);
        }
      }),
    );
  });

  it('are even with no resistance in the links', () => {
    for (const wiring of bankWirings)
      expect(wiredShares(4, wiring, 0.02, 0)).toEqual([0.25, 0.25, 0.25, 0.25]);
  });

  it('balance: what unequal sources give is what the load takes', () => {
    const source = fc.record({
      volts: fc.double({ min: 40, max: 58, noNaN: true }),
      ohms: fc.double({ min: 0.005, max: 0.1, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(source, { minLength: 1, maxLength: 6 }),
        fc.double({ min: -200, max: 300, noNaN: true }),
        (sources, load) => {
          const sum = sourceAmps(sources, load).reduce((total, each) => total + each, 0);
          expect(sum).toBeCloseTo(load, 6);
        },
      ),
    );
  });
});
