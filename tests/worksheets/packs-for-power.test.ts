import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packsForPower } from '../../src/worksheets/battery-dc/packs-for-power.ts';

type In = Parameters<typeof packsForPower.compute>[0];
const usual: In = {
  acWatts: 6000,
  surgeWatts: 12_000,
  efficiency: 0.93,
  idleWatts: 100,
  lowVolts: 42,
  packAmps: 120,
  packPeakAmps: 200,
  planShare: 0.8,
  packs: 2,
};

function outOf(change: Partial<In>) {
  const result = packsForPower.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('packs for a given power', () => {
  it.each<[string, Partial<In>, string]>([
    ['a pack to spare', { packs: 3, surgeWatts: 6000 }, 'spare'],
    ['just enough', { surgeWatts: 6000 }, 'enough'],
    ['one pack for two packs’ work', { packs: 1, surgeWatts: 6000 }, 'shortContinuous'],
    ['a surge over the packs’ peak', { surgeWatts: 18_000 }, 'shortSurge'],
    ['no peak on the label', { packPeakAmps: undefined }, 'surgeUnknown'],
    ['no surge typed', { surgeWatts: undefined }, 'surgeUnknown'],
    ['no peak, and too few anyway', { packPeakAmps: undefined, packs: 1 }, 'shortContinuous'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('never lets a missing peak pass for a surge that holds', () => {
    expect(outOf({ packs: 30, packPeakAmps: undefined }).verdict).toBe('surgeUnknown');
  });

  it('draws more at lower volts and needs no fewer packs', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 12, max: 60, noNaN: true }),
        fc.integer({ min: 500, max: 40_000 }),
        (lowVolts, acWatts) => {
          const [here, lower] = [lowVolts, lowVolts - 1].map((volts) =>
            outOf({ lowVolts: volts, acWatts, surgeWatts: acWatts }),
          );
          expect(lower!.bankAmps).toBeGreaterThan(here!.bankAmps!);
          expect(lower!.neededPacks).toBeGreaterThanOrEqual(here!.neededPacks!);
        },
      ),
    );
  });

  it('holds by its own count: the needed packs carry the power, one fewer does not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 60_000 }), (acWatts) => {
        const { neededContinuous } = outOf({ acWatts, surgeWatts: acWatts });
        const held = (packs: number) => outOf({ acWatts, surgeWatts: acWatts, packs }).heldWatts!;
        expect(held(neededContinuous!)).toBeGreaterThanOrEqual(acWatts - 1e-6);
        if (neededContinuous! > 1) expect(held(neededContinuous! - 1)).toBeLessThan(acWatts);
      }),
    );
  });

  it('refuses a peak under the continuous amps', () => {
    const result = packsForPower.compute({ ...usual, packPeakAmps: 50 });
    expect(!result.ok && result.reason.id).toBe('worksheet.packs-for-power.peakUnderContinuous');
  });
});
