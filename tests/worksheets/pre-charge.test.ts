import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { timeToVolts, voltsAt } from '../../src/worksheets/battery-dc/capacitor-charge.ts';
import { plateauLoadOhms, plateauWatts, voltsUnderPower } from '../../src/worksheets/battery-dc/plateau.ts';
import { preCharge } from '../../src/worksheets/battery-dc/pre-charge.ts';
import {
  chooseResistor,
  preChargeLimits,
  resistorHeat,
} from '../../src/worksheets/battery-dc/resistor-choice.ts';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
type In = Parameters<typeof preCharge.compute>[0];

const usual: In = {
  sourceVolts: 52.8,
  resistorOhms: 25,
  capacitanceF: 0.02,
  startVolts: 0,
  standbyWatts: 0,
  pathOhms: 0.01,
  ratedWatts: 50,
  pulseJoules: 200,
  readings: [],
};

describe('charging through a resistor', () => {
  it('rises all the time, never past the source, slower through more ohms', () => {
    fc.assert(
      fc.property(
        range(40, 60),
        range(5, 200),
        range(1e-3, 0.1),
        range(0, 30),
        range(0.01, 5),
        (v, r, c, t, dt) => {
          const circuit = { sourceVolts: v, resistorOhms: r, capacitanceF: c };
          expect(voltsAt(circuit, t + dt)).toBeGreaterThanOrEqual(voltsAt(circuit, t));
          expect(voltsAt(circuit, t)).toBeLessThanOrEqual(v);
          expect(voltsAt({ ...circuit, resistorOhms: 2 * r }, t)).toBeLessThanOrEqual(voltsAt(circuit, t));
        },
      ),
    );
  });

  it('gives the time to a level that it then stands at, and none to a level it never reaches', () => {
    fc.assert(
      fc.property(range(40, 60), range(5, 200), range(1e-3, 0.1), range(0.05, 0.98), (v, r, c, share) => {
        const circuit = { sourceVolts: v, resistorOhms: r, capacitanceF: c };
        expect(voltsAt(circuit, timeToVolts(circuit, share * v)!)).toBeCloseTo(share * v, 6);
        expect(timeToVolts({ ...circuit, loadOhms: r }, 0.6 * v)).toBeUndefined();
        expect(timeToVolts(circuit, 1.01 * v)).toBeUndefined();
      }),
    );
  });

  it('has a plateau and its inverse that undo each other', () => {
    fc.assert(
      fc.property(range(40, 60), range(5, 200), range(0.1, 2000), (v, r, load) => {
        const bus = (v * load) / (r + load);
        expect(plateauLoadOhms(v, r, bus)! / load).toBeCloseTo(1, 6);
        const watts = plateauWatts(v, r, bus);
        if (bus > v / 2) expect(voltsUnderPower(v, r, watts)!).toBeCloseTo(bus, 4);
      }),
    );
    expect(plateauLoadOhms(51.2, 33, 51.2)).toBeUndefined();
  });
});

describe('choosing the resistor', () => {
  it('offers only sizes that keep all three limits', () => {
    fc.assert(
      fc.property(
        range(40, 60),
        range(1e-3, 0.05),
        range(0, 3),
        (sourceVolts, capacitanceF, standbyWatts) => {
          const choice = chooseResistor({ sourceVolts, capacitanceF, standbyWatts });
          if (!choice.ok) return;
          for (const ohms of choice.out.sizesOhms) {
            expect(sourceVolts / ohms).toBeLessThanOrEqual(preChargeLimits.mostAmps + 1e-9);
            expect(5 * ohms * capacitanceF).toBeLessThanOrEqual(preChargeLimits.longestS + 1e-9);
            expect(voltsUnderPower(sourceVolts, ohms, standbyWatts)!).toBeGreaterThanOrEqual(
              preChargeLimits.reachShare * sourceVolts - 1e-9,
            );
          }
        },
      ),
    );
    const choice = chooseResistor({ sourceVolts: 52.8, capacitanceF: 0.02, standbyWatts: 0 });
    expect(choice.ok && choice.out.sizesOhms).toContain(22);
  });

  it('says which limit leaves no resistor', () => {
    const large = chooseResistor({ sourceVolts: 52, capacitanceF: 0.2, standbyWatts: 0 });
    expect(!large.ok && large.reason.id).toBe('worksheet.pre-charge.bankTooLarge');
    const hungry = chooseResistor({ sourceVolts: 52, capacitanceF: 0.01, standbyWatts: 40 });
    expect(!hungry.ok && hungry.reason.id).toBe('worksheet.pre-charge.standbyTooLarge');
  });

  it('counts the tries a resistor has in it and how long it lives across a short', () => {
    const heat = resistorHeat({ sourceVolts: 50, capacitanceF: 0.02 }, 25, 50, 200);
    if (!heat.ok) throw new Error(heat.reason.id);
    expect(heat.out.joulesPerTry).toBe(25);
    expect(heat.out.tries).toBe(8);
    expect(heat.out.coolPerTryS).toBe(0.5);
    // 100 W into a 50 W part: 50 W too much against 200 J.
    expect(heat.out.shortS).toBe(4);
    const large = resistorHeat({ sourceVolts: 50, capacitanceF: 0.02 }, 25, 100);
    expect(large.ok && large.out.shortS).toBeUndefined();
  });

  it.each([
    ['noSource', { sourceVolts: 0, capacitanceF: 0.01, standbyWatts: 0 }],
    ['noCapacitance', { sourceVolts: 50, capacitanceF: 0, standbyWatts: 0 }],
    ['negativeStandby', { sourceVolts: 50, capacitanceF: 0.01, standbyWatts: -1 }],
  ] as const)('refuses with %s', (reason, need) => {
    const choice = chooseResistor(need);
    expect(!choice.ok && choice.reason.id).toBe(`worksheet.pre-charge.${reason}`);
  });
});

describe('the pre-charge worksheet', () => {
  const remarksOf = (given: In): string[] => {
    const result = preCharge.compute(given);
    if (!result.ok) throw new Error(result.reason.id);
    return preCharge.remarks!(given, result.out).map((remark) =>
      remark.id.replace('worksheet.pre-charge.', ''),
    );
  };

  it('always says that the pass is not the whole of it', () => {
    expect(remarksOf(usual)).toContain('passIsNotAll');
  });

  it.each<[string, Partial<In>]>([
    ['resistorLow', { resistorOhms: 10 }],
    ['resistorHigh', { resistorOhms: 300 }],
    ['noResistorFits', { capacitanceF: 0.5 }],
    ['resistorTooSmall', { ratedWatts: 1, pulseJoules: 10 }],
    ['shortLimit', { ratedWatts: 50 }],
    ['neverSettles', { standbyWatts: 40 }],
    ['stopsShort', { standbyWatts: 10 }],
    [
      'load',
      {
        readings: [
          { tS: 2, value: 33.9 },
          { tS: 4, value: 34 },
          { tS: 8, value: 34 },
        ],
      },
    ],
  ])('remarks %s', (remark, change) => {
    expect(remarksOf({ ...usual, ...change })).toContain(remark);
  });

  it('refuses a bus that is already at the source', () => {
    const result = preCharge.compute({ ...usual, startVolts: 53 });
    expect(!result.ok && result.reason.id).toBe('worksheet.pre-charge.alreadyCharged');
  });
});
