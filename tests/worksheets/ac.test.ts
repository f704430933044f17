import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prefill } from '../../src/expected/prefill.ts';
import { awgAreaMm2, awgGauges } from '../../src/quantity/wire.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { bondCurrents, groundShare } from '../../src/worksheets/ac/bond-currents.ts';
import { commonNeutral, commonNeutralAmps } from '../../src/worksheets/ac/common-neutral.ts';
import { apartVolts, joinOutputs } from '../../src/worksheets/ac/join-outputs.ts';
import { legLimit } from '../../src/worksheets/ac/leg-limit.ts';
import { motorStart, startOf } from '../../src/worksheets/ac/motor-start.ts';
import { spread } from '../../src/worksheets/ac/spread.ts';
import { type Circuit, land, spreadLegs } from '../../src/worksheets/ac/spread-legs.ts';
import type { AnyWorksheet, Field } from '../../src/worksheets/define.ts';
import { nec430_7B } from '../../src/worksheets/tables/nec-430-7-b.ts';
import { anyInputs } from './any-inputs.ts';

/** A worksheet's defaults with some of its fields changed. */
const sheet =
  (worksheet: AnyWorksheet, over: Record<string, unknown>) => (change: Record<string, unknown>) => {
    const fields = Object.entries(worksheet.inputs as Record<string, Field>);
    const defaults = Object.fromEntries(
      fields.map(([name, field]) => [name, 'default' in field ? field.default : undefined]),
    );
    return worksheet.compute({ ...defaults, ...over, ...change });
  };
const outOf = (result: ReturnType<AnyWorksheet['compute']>) => {
  if (!result.ok) throw new Error(result.reason.id);
  return result.out as Readonly<Record<string, number | undefined>>;
};
const amps = fc.integer({ min: 0, max: 400 }).map((tenths) => tenths / 10);

describe('spreading over two legs', () => {
  it('is never beaten by trying every way', () => {
    fc.assert(
      fc.property(fc.array(amps, { maxLength: 11 }), amps, (weights, fixed) => {
        const found = spread(
          weights.map((difference) => ({ difference })),
          fixed,
        );
        let least = Number.POSITIVE_INFINITY;
        for (let mask = 0; mask < 1 << weights.length; mask++) {
          const sum = weights.reduce((total, each, at) => total + ((mask >> at) & 1 ? -each : each), fixed);
          least = Math.min(least, Math.abs(sum));
        }
        expect(Math.abs(found.difference)).toBeCloseTo(least, 9);
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  const circuit = fc.record({
    name: fc.constant(''),
    amps,
    poles: fc.constantFrom(undefined, 1, 2),
    shares: fc.constantFrom(undefined, undefined, 1, 2, 3),
  });

  it('lands every circuit once, pairs on opposite legs, two-pole loads on both', () => {
    let pairs = 0;
    fc.assert(
      fc.property(fc.array(circuit, { maxLength: 9 }), (circuits) => {
        const found = land(circuits);
        if (found.kind !== 'landed') return;
        const { leg1, leg2, both } = found.landed;
        expect([...leg1, ...leg2, ...both].toSorted((a, b) => a - b)).toEqual(circuits.map((_, at) => at));
        for (const at of both) expect(circuits[at]!.poles).toBe(2);
        for (const leg of [leg1, leg2]) {
          const shared = leg.map((at) => circuits[at]!.shares).filter((each) => each !== undefined);
          pairs += shared.length;
          expect(new Set(shared).size).toBe(shared.length);
        }
      }),
      { numRuns: 2000, seed: 12 },
    );
    expect(pairs).toBeGreaterThan(100);
  });

  it('does not depend on the order of the list, and scales with it', () => {
    const single = fc.array(amps, { minLength: 1, maxLength: 10 });
    const as = (list: readonly number[]): Circuit[] =>
      list.map((each) => ({ name: '', amps: each, poles: undefined, shares: undefined }));
    const differs = (list: readonly number[]) => {
      const found = land(as(list));
      return found.kind === 'landed' ? Math.abs(found.amps1 - found.amps2) : Number.NaN;
    };
    fc.assert(
      fc.property(single, (list) => {
        expect(differs(list.toReversed())).toBeCloseTo(differs(list), 9);
        expect(differs(list.map((each) => 3 * each))).toBeCloseTo(3 * differs(list), 8);
      }),
      { numRuns: 200, seed: 13 },
    );
  });

  it('takes 24 circuits within a keystroke', () => {
    const list = Array.from({ length: 24 }, (_, at) => ({
      name: `${at}`,
      amps: 1 + ((at * 7919) % 97) / 10,
      poles: undefined,
      shares: undefined,
    }));
    land(list);
    const started = performance.now();
    land(list);
    expect(performance.now() - started).toBeLessThan(500);
  });

  it('says why there is no answer', () => {
    const row = { name: 'A', amps: 5, poles: undefined, shares: 1 };
    const at = sheet(spreadLegs, { circuits: [row] });
    const reason = (change: Record<string, unknown>) => {
      const result = at(change);
      return result.ok ? 'answered' : result.reason.id.replace('worksheet.spread-legs.', '');
    };
    expect(reason({ circuits: [] })).toBe('nothing');
    expect(reason({ topology: 'single-230' })).toBe('oneLeg');
    expect(reason({ topology: 'common-120' })).toBe('inStep');
    expect(reason({ circuits: [row, row, row] })).toBe('tooManyShare');
    expect(reason({ circuits: [{ ...row, poles: 2 }] })).toBe('acrossShares');
  });

  it('calls a row without a name by its place', () => {
    const rows = [5, 9].map((each) => ({ name: '', amps: each, poles: undefined, shares: undefined }));
    const out = outOf(sheet(spreadLegs, {})({ circuits: rows }));
    expect([out.leg1, out.leg2].flat().toSorted()).toEqual(['#1', '#2']);
  });
});

describe('neutral with legs in step', () => {
  it('never carries less than on opposed legs, nor more than the source gives', () => {
    fc.assert(
      fc.property(amps, amps, amps, (one, two, source) => {
        const inStep = commonNeutralAmps(one, two, source);
        expect(inStep).toBeGreaterThanOrEqual(Math.min(source, Math.max(one, two)));
        expect(inStep).toBeLessThanOrEqual(source);
        expect(commonNeutralAmps(two, one, source)).toBe(inStep);
      }),
    );
  });

  it('is good for more with every larger size, for no more in hotter air or fuller pipe', () => {
    const at = sheet(commonNeutral, { breaker1Amps: 20, breaker2Amps: 20 });
    const good = (change: Record<string, unknown>): number => outOf(at(change)).goodForAmps ?? 0;
    const sizes = awgGauges.filter((gauge) => gauge <= 14).map((gauge) => awgAreaMm2(gauge));
    const rising = sizes.toSorted((a, b) => a - b).map((areaMm2) => good({ areaMm2 }));
    expect(rising).toEqual(rising.toSorted((a, b) => a - b));
    expect(new Set(rising).size).toBe(rising.length);
    for (const [cool, hot] of [
      [{ ambientC: 30 }, { ambientC: 50 }],
      [{ conductors: 3 }, { conductors: 9 }],
    ])
      expect(good({ areaMm2: 13.3, ...hot })).toBeLessThan(good({ areaMm2: 13.3, ...cool }));
  });

  it('names a size that passes, and a pair of breakers that passes', () => {
    fc.assert(
      fc.property(anyInputs(commonNeutral), (inputs) => {
        const result = commonNeutral.compute(inputs as never);
        if (!result.ok || result.out.needMm2 === undefined) return;
        const again = commonNeutral.compute({ ...inputs, areaMm2: result.out.needMm2 } as never);
        expect(again.ok && again.out.verdict).toBe('within');
        const each = result.out.mostEachAmps;
        if (each === undefined) return;
        const smaller = commonNeutral.compute({ ...inputs, breaker1Amps: each, breaker2Amps: each } as never);
        expect(smaller.ok && smaller.out.verdict).toBe('within');
      }),
      { numRuns: 500, seed: 14 },
    );
  });

  it('does not judge by tables of another code', () => {
    const at = sheet(commonNeutral, { breaker1Amps: 100, breaker2Amps: 100, areaMm2: 2.5 });
    for (const codeBasis of ['iec', 'other']) {
      const out = outOf(at({ codeBasis }));
      expect(out.verdict).toBe('notChecked');
      expect(out.goodForAmps).toBeUndefined();
    }
  });
});

describe('limit of one leg', () => {
  const at = sheet(legLimit, { ratedWatts: 6000, legLimitWatts: 3000, breakerAmps: 30 });

  it('is the same whichever leg is which', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9000 }), fc.integer({ min: 0, max: 9000 }), (one, two) => {
        const [there, back] = [
          outOf(at({ watts1: one, watts2: two })),
          outOf(at({ watts1: two, watts2: one })),
        ];
        expect([there.verdict, there.spareWatts, there.moveWatts]).toEqual([
          back.verdict,
          back.spareWatts,
          back.moveWatts,
        ]);
      }),
    );
  });

  it('gives no more with a smaller breaker, more heat or a smaller inverter', () => {
    const most = (change: Record<string, unknown>) => outOf(at(change)).mostWatts;
    expect(most({ breakerAmps: 15 })).toBe(2880);
    expect(most({ breakerAmps: 15, breakerKind: 'full' })).toBe(3600);
    expect(most({ leftShare: 0.5 })).toBe(3000);
    expect(outOf(at({ breakerAmps: 15 })).limitedBy).toBe('breaker');
    expect(outOf(at({})).limitedBy).toBe('breaker');
    expect(outOf(at({ breakerAmps: 50 })).limitedBy).toBe('inverterTotal');
    expect(outOf(at({ breakerAmps: 50, legLimitWatts: 2500 })).limitedBy).toBe('inverterLeg');
  });

  it('tells a full leg beside an idle one from a full inverter', () => {
    expect(outOf(at({ breakerAmps: 60, watts1: 3200 })).verdict).toBe('legOver');
    expect(outOf(at({ breakerAmps: 60, watts1: 3000, watts2: 3000 })).verdict).toBe('within');
    expect(outOf(at({ breakerAmps: 60, legLimitWatts: 4000, watts1: 3500, watts2: 3500 })).verdict).toBe(
      'totalOver',
    );
    expect(outOf(at({ breakerAmps: 20, watts1: 2000 })).verdict).toBe('breakerOver');
  });
});

describe('motor start', () => {
  it('has code letters without gap or overlap, and without I, O and Q', () => {
    const { rows } = nec430_7B;
    for (const [at, row] of rows.entries()) {
      const before = rows[at - 1]?.to;
      if (before !== undefined) expect(row.from - before, row.letter).toBeCloseTo(0.01, 9);
    }
    expect(rows.map((row) => row.letter).join('')).toBe('ABCDEFGHJKLMNPRSTUV');
    expect(rows.filter((row) => row.to === undefined).map((row) => row.letter)).toEqual(['V']);
  });

  it('reaches the motor with fewer volts and amps the longer the run, and all of them without one', () => {
    const ohms = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(ohms, ohms, fc.double({ min: 0.2, max: 1, noNaN: true }), (one, two, powerFactor) => {
        const at = (loopOhms: number) =>
          startOf({ sourceVolts: 240, motorVolts: 240, lockedAmps: 40, powerFactor, loopOhms });
        const [short, long] = [at(Math.min(one, two)), at(Math.max(one, two))];
        expect(long.volts).toBeLessThanOrEqual(short.volts + 1e-9);
        expect(long.amps).toBeLessThanOrEqual(short.amps + 1e-9);
        expect(at(0).volts).toBeCloseTo(240, 9);
        expect(at(0).amps).toBeCloseTo(40, 9);
      }),
    );
  });

  it('leaves 85 % at its own longest run', () => {
    const at = sheet(motorStart, {
      motorVolts: 240,
      lockedAmps: 60,
      sourceVolts: 240,
      areaMm2: 5.261,
      surgeVa: 2e4,
    });
    const { longestM } = outOf(at({}));
    expect(outOf(at({ lengthM: longestM })).motorShare).toBeCloseTo(0.85, 6);
    expect(outOf(at({ lengthM: 1.01 * longestM! })).verdict).toBe('dips');
    expect(outOf(at({ lengthM: 0.99 * longestM! })).verdict).toBe('starts');
  });

  it('gives one leg half of the surge', () => {
    const at = sheet(motorStart, {
      motorVolts: 120,
      lockedAmps: 60,
      sourceVolts: 120,
      areaMm2: 13.3,
      lengthM: 5,
    });
    expect(outOf(at({ connection: 'leg', surgeVa: 12_000 })).verdict).toBe('overSurge');
    expect(outOf(at({ connection: 'leg', surgeVa: 12_000, topology: 'common-120' })).verdict).toBe('starts');
    expect(at({ connection: 'across', topology: 'common-120' })).toMatchObject({ ok: false });
  });

  it('wants the locked-rotor amps, or a letter with a power', () => {
    const at = sheet(motorStart, { motorVolts: 240, sourceVolts: 240, areaMm2: 13.3 });
    const reason = (change: Record<string, unknown>) => {
      const result = at(change);
      return result.ok ? 'answered' : result.reason.id.replace('worksheet.motor-start.', '');
    };
    expect(reason({})).toBe('noData');
    expect(reason({ letter: 'G' })).toBe('noData');
    expect(reason({ letter: 'V', ratedWatts: 746 })).toBe('noUpperEnd');
    expect(reason({ letter: 'G', ratedWatts: 746 })).toBe('answered');
  });
});

describe('bond check', () => {
  it('shares a current so that nothing is lost, and evenly between equals', () => {
    const ohms = fc.double({ min: 1e-3, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 400, noNaN: true }), ohms, ohms, (load, neutral, ground) => {
        expect(groundShare(load, neutral, ground) + groundShare(load, ground, neutral)).toBeCloseTo(load, 6);
        expect(groundShare(load, neutral, neutral)).toBeCloseTo(load / 2, 9);
        expect(groundShare(load, neutral, 2 * ground)).toBeLessThan(groundShare(load, neutral, ground));
      }),
    );
  });

  const at = sheet(bondCurrents, { loadAmps: 10, lengthM: 60, neutralMm2: 13.3, groundMm2: 5.261 });

  it('tells none from a second bond, and says when it cannot', () => {
    expect(outOf(at({ groundAmps: 0 })).verdict).toBe('oneBond');
    expect(outOf(at({ groundAmps: 2.8 })).verdict).toBe('secondBond');
    expect(outOf(at({ groundAmps: 0.4 })).verdict).toBe('someCurrent');
    expect(outOf(at({ groundAmps: 0, loadAmps: 0.3 })).verdict).toBe('cannotTell');
    expect(at({ groundAmps: 12 })).toMatchObject({ ok: false });
  });

  it('names a load from which it can tell', () => {
    const { needAmps } = outOf(at({ groundAmps: 0, loadAmps: 0.3 }));
    expect(outOf(at({ groundAmps: 0, loadAmps: 1.001 * needAmps! })).verdict).toBe('oneBond');
  });

  it('finds the ohms of the other path again', () => {
    const { expectedAmps, groundOhms } = outOf(at({ groundAmps: 0 }));
    expect(outOf(at({ groundAmps: expectedAmps })).seenOhms).toBeCloseTo(groundOhms!, 9);
  });
});

describe('joining outputs', () => {
  const good = {
    volts1: 120,
    volts2: 120.5,
    highVolts: 2,
    lowVolts: 1,
    otherLegVolts: 2,
    heldS: 60,
    locked: 'yes',
  };
  const at = sheet(joinOutputs, good);

  it('finds the angle that made the volts', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 179, noNaN: true }), (degrees) => {
        const apart = apartVolts(120, degrees);
        expect(outOf(at({ volts2: 120, highVolts: apart, lowVolts: apart })).angle).toBeCloseTo(degrees, 4);
      }),
    );
  });

  it('lets nothing be joined unless every sign is there', () => {
    expect(outOf(at({})).verdict).toBe('join');
    const spoilt = {
      off: { volts1: 0, volts2: 0, highVolts: 0, lowVolts: 0 },
      outOfBand: { volts1: 100, highVolts: 20, lowVolts: 20 },
      breathing: { highVolts: 200, lowVolts: 3 },
      apart: { highVolts: 6, lowVolts: 5 },
      otherLegApart: { otherLegVolts: 240 },
      otherLegUnread: { otherLegVolts: undefined },
      notLocked: { locked: 'no' },
      tooSoon: { heldS: 59 },
    };
    for (const [verdict, change] of Object.entries(spoilt)) expect(outOf(at(change)).verdict).toBe(verdict);
  });

  it('never says join where like legs stand more than 5 V apart, whatever else is typed', () => {
    let joined = 0;
    const any = fc.record({
      highVolts: fc.double({ min: 0, max: 10, noNaN: true }),
      lowVolts: fc.double({ min: 0, max: 10, noNaN: true }),
      otherLegVolts: fc.double({ min: 0, max: 10, noNaN: true }),
      volts1: fc.double({ min: 100, max: 140, noNaN: true }),
      volts2: fc.double({ min: 100, max: 140, noNaN: true }),
      heldS: fc.constantFrom(0, 60),
      locked: fc.constantFrom('yes', 'no'),
    });
    fc.assert(
      fc.property(any, (change) => {
        if (String(outOf(at(change)).verdict) !== 'join') return;
        joined++;
        expect(Math.max(change.highVolts, change.lowVolts, change.otherLegVolts)).toBeLessThan(5);
        expect([change.heldS, change.locked]).toEqual([60, 'yes']);
      }),
      { numRuns: 3000, seed: 15 },
    );
    expect(joined).toBeGreaterThan(0);
  });
});

describe('filled from the demo sites', () => {
  it('knows what the AC sheets ask of them', () => {
    expect(prefill(legLimit, sallowCreek, 0)).toMatchObject({ ratedWatts: 6000, legLimitWatts: 3000 });
    expect(prefill(motorStart, sallowCreek, 0)).toMatchObject({ surgeVa: 12_000, batteryVolts: 42 });
    expect(prefill(commonNeutral, ternLedge, 0)).toMatchObject({
      codeBasis: 'other',
      areaMm2: 6,
      sourceAmps: 25,
    });
    const commonAmps = (secondSource: Partial<typeof sallowCreek.secondSource>) =>
      prefill(
        commonNeutral,
        { ...sallowCreek, secondSource: { ...sallowCreek.secondSource, ...secondSource } },
        0,
      ).sourceAmps;
    expect(commonAmps({})).toBe(50);
    expect(commonAmps({ ratedW: 12_000 })).toBe(100);
    expect(commonAmps({ ratedW: null })).toBeUndefined();
    expect(prefill(joinOutputs, ternLedge, 0)).toMatchObject({ rated1Watts: 3000, topology: 'common-120' });
    expect(prefill(spreadLegs, ternLedge, 0)).toEqual({ topology: 'common-120' });
  });
});
