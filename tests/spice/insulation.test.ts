import { describe, expect, it } from 'vitest';
import { insulationFrom } from '../../src/worksheets/pv/insulation.ts';
import { last, simulate } from './ngspice.ts';

const moduleVolts = 40;
const modules = 10;
const meterOhms = 10e6;

/** A leak to ground after `at` modules from the positive end. */
interface Leak {
  at: number;
  ohms: number;
}

/** The string as modules in series, its leaks, and one meter from a pole to ground. Frame and earth are node 0. */
function deck(leaks: readonly Leak[], meterAt: number): string {
  const node = (at: number): string => `n${at}`;
  return [
    'string',
    ...Array.from({ length: modules }, (_, i) => `V${i} ${node(i)} ${node(i + 1)} DC ${moduleVolts}`),
    ...leaks.map((leak, i) => `RL${i} ${node(leak.at)} 0 ${leak.ohms}`),
    `RM ${node(meterAt)} 0 ${meterOhms}`,
    '.op',
    '.end',
  ].join('\n');
}

async function poleVolts(leaks: readonly Leak[]): Promise<{ positiveVolts: number; negativeVolts: number }> {
  return {
    positiveVolts: last(await simulate(deck(leaks, 0)), 'v(n0)'),
    negativeVolts: last(await simulate(deck(leaks, modules)), `v(n${modules})`),
  };
}

async function insulation(leaks: readonly Leak[]) {
  const result = insulationFrom({
    ...(await poleVolts(leaks)),
    vocVolts: modules * moduleVolts,
    meterOhms,
    modules,
    poleErrorVolts: 0,
    vocErrorVolts: 0,
  });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('insulation from pole-to-ground volts against ngspice', () => {
  const cases = [0, 1, 4, 7, 10].flatMap((at) => [1e3, 1e5, 1e6, 2e7].map((ohms) => ({ at, ohms })));

  it.each(cases)('finds a leak of $ohms Ω after module $at', async (leak) => {
    const found = await insulation([leak]);
    expect(found.isoOhms.value / leak.ohms).toBeCloseTo(1, 3);
    expect(found.modulesFromPositive!.value).toBeCloseTo(leak.at, 4);
  });

  it('takes a leak at each pole as the two in parallel', async () => {
    const found = await insulation([
      { at: 0, ohms: 3e6 },
      { at: modules, ohms: 1e6 },
    ]);
    expect(found.isoOhms.value / 0.75e6).toBeCloseTo(1, 4);
    expect(found.modulesFromPositive!.value).toBeCloseTo(7.5, 3);
  });

  it('is led to a place between by two faults in the string, as the page warns', async () => {
    const found = await insulation([
      { at: 2, ohms: 1e5 },
      { at: 8, ohms: 1e5 },
    ]);
    expect(found.modulesFromPositive!.value).toBeCloseTo(5, 2);
  });
});
