import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awgAreaMm2 } from '../../src/quantity/wire.ts';
import { smallestCableMm2 } from '../../src/worksheets/battery-dc/battery-circuit.ts';
import { inverterCable } from '../../src/worksheets/battery-dc/inverter-cable.ts';

type In = Parameters<typeof inverterCable.compute>[0];
const usual: In = {
  basis: 'nec-2023',
  acWatts: 6000,
  efficiency: 0.93,
  idleWatts: 100,
  lowVolts: 42,
  areaMm2: awgAreaMm2(-3),
  runs: 1,
  lengthM: 1.8,
  insulation: 'c90',
  termination: 'c75',
  ambientC: 40,
  conductors: 2,
  fuseAmps: 200,
  interruptingAmps: 20_000,
  fullVolts: 58.4,
  packs: 2,
  packOhms: 0.012,
  packShortAmps: undefined,
};

function outOf(change: Partial<In>) {
  const result = inverterCable.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('cable and fuse for the inverter', () => {
  it.each<[string, Partial<In>, Partial<ReturnType<typeof outOf>>]>([
    [
      'the demo bank',
      {},
      { cable: 'fits', fuse: 'fits', breaking: 'breaks', leastFuseAmps: 200, mostFuseAmps: 250 },
    ],
    ['a thin cable', { areaMm2: awgAreaMm2(0) }, { cable: 'thin', fuse: 'tooLarge' }],
    ['a hot place', { ambientC: 70 }, { cable: 'thin' }],
    [
      'too hot for 75 °C insulation',
      { ambientC: 72, insulation: 'c75' },
      { cable: 'tooHot', fuse: 'notChecked' },
    ],
    ['a fuse by nominal volts', { fuseAmps: 150 }, { fuse: 'tooSmall' }],
    ['a fuse over the cable', { fuseAmps: 300 }, { fuse: 'tooLarge' }],
    ['no fuse yet', { fuseAmps: undefined }, { fuse: 'toChoose', leastFuseAmps: 200 }],
    ['small breaking capacity', { interruptingAmps: 5000 }, { breaking: 'cannot' }],
    ['breaking capacity hardly over the sum', { interruptingAmps: 10_000 }, { breaking: 'close' }],
    [
      'breaking capacity over the label’s figure',
      { interruptingAmps: 10_000, packShortAmps: 5000 },
      { breaking: 'breaks' },
    ],
    ['breaking capacity unknown', { interruptingAmps: undefined }, { breaking: 'notChecked' }],
    ['pack resistance unknown', { packOhms: undefined }, { breaking: 'notChecked', shortAmps: undefined }],
    [
      'the label’s short before the sum',
      { packShortAmps: 12_000 },
      { breaking: 'cannot', shortAmps: 24_000 },
    ],
    ['thin cables in parallel', { areaMm2: awgAreaMm2(2), runs: 2 }, { cable: 'noParallel' }],
    [
      'a code that is not carried',
      { basis: 'other' },
      {
        cable: 'notChecked',
        fuse: 'notChecked',
        breaking: 'breaks',
        ratedAmps: undefined,
        smallestMm2: undefined,
      },
    ],
  ])('%s', (_, change, expected) => {
    expect(outOf(change)).toMatchObject(expected);
  });

  it('never multiplies the 125 % into the factors for heat', () => {
    // 90 °C column of 2/0, 195 A at 50 °C: 159.9 A, which carries 150 A. 1.25 × 150 A is 187.5 A: over its 175 A lugs.
    const amps = (watts: number) => ({ acWatts: watts, efficiency: 0.95, idleWatts: 0, lowVolts: 50 });
    const given = { areaMm2: awgAreaMm2(-1), ambientC: 50, fuseAmps: undefined };
    expect(outOf({ ...given, ...amps(0.95 * 50 * 139) }).cable).toBe('fits');
    expect(outOf({ ...given, ...amps(0.95 * 50 * 141) }).cable).toBe('thin');
  });

  it('never calls a cable or fuse good that its own limits do not bear out', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 30_000 }),
        fc.constantFrom(8, 6, 4, 2, 0, -1, -2, -3),
        fc.integer({ min: 10, max: 80 }),
        fc.constantFrom(1, 2, 3),
        fc.integer({ min: 2, max: 12 }),
        fc.integer({ min: 20, max: 700 }),
        (acWatts, gauge, ambientC, runs, conductors, fuseAmps) => {
          const out = outOf({ acWatts, areaMm2: awgAreaMm2(gauge), ambientC, runs, conductors, fuseAmps });
          if (out.cable === 'fits') {
            expect(out.plainAmps).toBeGreaterThanOrEqual(1.25 * out.amps! - 1e-6);
            expect(out.correctedAmps).toBeGreaterThanOrEqual(out.amps! - 1e-6);
          }
          if (out.fuse === 'fits') {
            expect(fuseAmps).toBeGreaterThanOrEqual(1.25 * out.amps! - 1e-6);
            expect(fuseAmps).toBeLessThanOrEqual(out.mostFuseAmps!);
          }
        },
      ),
    );
  });

  it('names a smallest cable that fits, and no thinner one does', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 300 }), fc.integer({ min: 10, max: 55 }), (amps, ambientC) => {
        const cable = { runs: 1, insulation: 90, termination: 75, ambientC, conductors: 2 } as const;
        const here = smallestCableMm2(amps, cable, 0, '2023');
        const more = smallestCableMm2(1.1 * amps, cable, 0, '2023');
        const hotter = smallestCableMm2(amps, { ...cable, ambientC: ambientC + 10 }, 0, '2023');
        expect(here).toBeDefined();
        if (more !== undefined) expect(more).toBeGreaterThanOrEqual(here!);
        if (hotter !== undefined) expect(hotter).toBeGreaterThanOrEqual(here!);
      }),
    );
  });

  it('draws more at lower volts, and shorts harder with more packs', () => {
    expect(outOf({ lowVolts: 40 }).amps).toBeGreaterThan(outOf({}).amps!);
    expect(outOf({ packs: 4 }).shortAmps).toBeCloseTo(2 * outOf({}).shortAmps!, 6);
  });

  it('refuses full volts under the lowest', () => {
    const result = inverterCable.compute({ ...usual, fullVolts: 30 });
    expect(!result.ok && result.reason.id).toBe('worksheet.inverter-cable.voltsTurned');
  });
});
