import { describe, expect, it } from 'vitest';
import { procedures, proceduresById } from '../../machines/index.ts';
import type { ExpectContext } from '../../src/expected/context.ts';
import { scales, waits, works } from '../../src/expected/index.ts';
import { flatten } from '../../src/guide/flatten.ts';
import { checkTotality } from '../../src/guide/prove/totality.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';

type Series = readonly (readonly [number, number])[];

function run(id: string, sheet: SiteSheet, readings: ExpectContext['readings'] = {}, rise: Series = []) {
  const series: ExpectContext['series'] = rise.length > 0 ? { 'rise.s2': rise } : {};
  const result = works[id]!.work({ sheet, readings, series, outcomes: {} });
  if (!result.ok) throw new Error(`${id} lacks ${result.missing.join(', ')}`);
  const said = (message: string) => result.says.find((each) => each.id === message)?.params ?? {};
  return { outcome: result.outcome, said, inputs: result.use?.inputs ?? {} };
}

const withResistor = (precharge: Partial<SiteSheet['precharge']>): SiteSheet => ({
  ...sallowCreek,
  precharge: { ...sallowCreek.precharge, ...precharge },
});

describe('which pre-charge resistor fits', () => {
  it('takes 25 Ω at Sallow Creek: 58.4 V gives 2.34 A, 2.5 s, 34.1 J', () => {
    const { outcome, said } = run('pre-charge-resistor', sallowCreek);
    expect(outcome).toBe('fits');
    const figures = said('expected.preCharge.resistor');
    expect(figures.peakAmps).toBeCloseTo(2.336, 3);
    expect(figures.fiveTauS).toBeCloseTo(2.5, 6);
    expect(figures.joules).toBeCloseTo(34.106, 3);
  });

  it('takes 47 Ω at Tern Ledge', () => {
    expect(run('pre-charge-resistor', ternLedge).outcome).toBe('fits');
  });

  it.each([
    ['10 Ω: 5.8 A at the first moment', { resistorOhm: 10 }],
    ['200 Ω: 20 s to charge', { resistorOhm: 200 }],
    ['1 W: one try is more than it takes', { ratedW: 1, ratedEnergyJ: null }],
  ])('refuses %s', (_what, precharge) => {
    expect(run('pre-charge-resistor', withResistor(precharge)).outcome).toBe('unfit');
  });

  it('asks for the resistor when the sheet does not know it', () => {
    const result = works['pre-charge-resistor']!.work({
      sheet: withResistor({ resistorOhm: null }),
      readings: {},
      outcomes: {},
    });
    expect(result).toEqual({ ok: false, missing: ['precharge.resistorOhm'] });
  });

  it('takes the high end for a bank nobody knows, and says so', () => {
    const sheet = { ...sallowCreek, inverter: { ...sallowCreek.inverter, busCapacitanceF: null } };
    const { inputs, said } = run('pre-charge-resistor', sheet);
    expect(inputs.capacitanceF).toBe(0.03);
    expect(said('expected.preCharge.bankAssumed').capacitanceF).toBe(0.03);
  });
});

/** Volts of a bank behind a resistor, with or without a load across it, rounded as a meter shows them. */
function risen(times: number[], volts: number, ohms: number, farads: number, loadOhms = Infinity): Series {
  const end = loadOhms === Infinity ? volts : (volts * loadOhms) / (ohms + loadOhms);
  const tau = farads * (loadOhms === Infinity ? ohms : (ohms * loadOhms) / (ohms + loadOhms));
  return times.map((t) => [t, Math.round(10 * end * (1 - Math.exp(-t / tau))) / 10] as const);
}

describe('what a rise says', () => {
  const s1 = { 'sides.s1': 53.2, 'sides.s2': 0.1 };
  const sheet = sallowCreek;
  const cases: [what: string, rise: Series, outcome: string][] = [
    ['25 Ω into 20 mF', risen([0.5, 1, 2, 4], 53.2, 25, 0.02), 'complete'],
    ['all of it over before the first reading', risen([5, 6, 7, 8], 53.2, 25, 0.02), 'complete'],
    ['three times the bank on the sheet', risen([1, 2, 4, 10], 53.2, 25, 0.06), 'slow'],
    ['100 Ω across the bus', risen([0.5, 1, 2, 4], 53.2, 25, 0.02, 100), 'load'],
    ['half an ohm across the bus', risen([0.5, 1, 2, 4], 53.2, 25, 0.02, 0.5), 'short'],
    ['read too early', risen([0.2, 0.4, 0.6, 0.8], 53.2, 25, 0.02), 'rising'],
    ['nothing read', [], 'unclear'],
    [
      'a bus that goes negative',
      [
        [1, -5],
        [2, -9],
        [3, -12],
        [4, -13],
      ],
      'unclear',
    ],
  ];
  it.each(cases)('%s', (_what, rise, outcome) => {
    expect(run('pre-charge-fit', sheet, s1, rise).outcome).toBe(outcome);
  });

  it('says how large the load is: 53.2 V through 25 Ω onto 100 Ω stops at 42.6 V, 18 W', () => {
    const { said } = run('pre-charge-fit', sheet, s1, risen([0.5, 1, 2, 4], 53.2, 25, 0.02, 100));
    const load = said('worksheet.pre-charge.load');
    expect(load.seenVolts).toBeCloseTo(42.56, 0);
    expect(Number(load.loadWatts)).toBeGreaterThan(16);
    expect(Number(load.loadWatts)).toBeLessThan(20);
  });

  it('has nothing to be late against when the bank is not known', () => {
    const unknown = { ...sheet, inverter: { ...sheet.inverter, busCapacitanceF: null } };
    expect(run('pre-charge-fit', unknown, s1, risen([1, 2, 4, 10], 53.2, 25, 0.06)).outcome).toBe('complete');
  });
});

describe('idle draw', () => {
  const read = { 'idle.amps': 2.3, 'idle.flipped': -1.7, 'idle.volts': 52.5 };

  it('halves the difference of both ways round: 2 A at 52.5 V is 105 W, 2.52 kWh, 630 W of array in 4 h', () => {
    const { outcome, said } = run('idle-draw', sallowCreek, read);
    const draw = said('expected.idle.draw');
    expect(draw.watts).toBeCloseTo(105, 6);
    expect(Number(draw.dayJoules) / 3.6e6).toBeCloseTo(2.52, 6);
    expect(draw.arrayLosslessWatts).toBeCloseTo(630, 6);
    expect(outcome).toBe('as-sheet');
  });

  it.each([
    [4, 'high'],
    [0.5, 'low'],
  ])('%s A against 100 W on the sheet is %s', (amps, outcome) => {
    const readings = { 'idle.amps': amps, 'idle.flipped': -amps, 'idle.volts': 52.5 };
    expect(run('idle-draw', sallowCreek, readings).outcome).toBe(outcome);
  });

  it('only notes it when the sheet has no figure', () => {
    const sheet = { ...sallowCreek, inverter: { ...sallowCreek.inverter, idleW: null } };
    expect(run('idle-draw', sheet, read).outcome).toBe('noted');
  });
});

describe('waits', () => {
  const seconds = (id: string, sheet: SiteSheet) =>
    waits[id]!.seconds({ sheet, stringId: sheet.strings[0]!.name, readings: {}, outcomes: {} });
  it.each([
    ['label-wait', sallowCreek, 300],
    ['tracker-start', sallowCreek, 60],
    ['tracker-start', ternLedge, 300],
    ['in-step', sallowCreek, 60],
    ['idle-settle', sallowCreek, 600],
  ])('%s', (id, sheet, expected) => {
    expect(seconds(id, sheet)).toBe(expected);
  });

  it('waits ten minutes where no label is known', () => {
    const sheet = { ...sallowCreek, inverter: { ...sallowCreek.inverter, storedChargeWaitS: null } };
    expect(seconds('label-wait', sheet)).toBe(600);
  });

  it('cools a small resistor for as long as one try heats it: 34.1 J at 1 W', () => {
    expect(seconds('pre-charge-cool', withResistor({ ratedW: 1, ratedEnergyJ: null }))).toBe(35);
    expect(seconds('pre-charge-cool', sallowCreek)).toBe(30);
  });
});

describe('the procedures', () => {
  it.each(procedures.map((machine) => machine.id))('%s asks only for what there is', (id) => {
    const flat = flatten(proceduresById[id]!, proceduresById);
    checkTotality(flat, (scale) => scales[scale]?.zones);
    for (const { step } of flat.nodes.values()) {
      if (step.kind === 'wait') expect(waits[step.wait!], step.wait).toBeDefined();
      if (step.kind === 'workOut')
        expect([...works[step.ask!]!.answers].sort()).toEqual(Object.keys(step.outcomes).sort());
    }
  });
});
