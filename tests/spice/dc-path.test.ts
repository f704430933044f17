import { describe, expect, it } from 'vitest';
import { cableResistance } from '../../src/worksheets/battery-dc/cable-resistance.ts';
import { dcPath, soundJointOhms } from '../../src/worksheets/battery-dc/dc-path.ts';
import { last, simulate } from './ngspice.ts';

const given = {
  voltsError: 0.02,
  lengthM: 1.8,
  areaMm2: 107.2,
  coating: 'plain',
  conductorC: 40,
  joints: 8,
  devicesOhms: 0.0006,
} as const;

/** Battery with its own resistance, out and back cable, joints, devices, and an inverter drawing a current. */
async function network(
  amps: number,
  badJointOhms: number,
): Promise<{ batteryVolts: number; inverterVolts: number }> {
  const wireOhms = cableResistance(given.areaMm2, given.conductorC).ohmsPerM * given.lengthM;
  const half = (given.joints / 2) * soundJointOhms;
  const waves = await simulate(
    [
      'path',
      'VB e bn DC 53.1',
      'RB e bp 0.006',
      `RJ1 bp c1 ${half + badJointOhms}`,
      `RW1 c1 c2 ${wireOhms}`,
      `RD c2 ip ${given.devicesOhms}`,
      `RW2 in c3 ${wireOhms}`,
      `RJ2 c3 bn ${half}`,
      `IL ip in DC ${amps}`,
      // Ground the simulator at the battery's negative post, where the meter's black lead goes.
      'RG bn 0 1m',
      '.op',
      '.end',
    ].join('\n'),
  );
  return {
    batteryVolts: last(waves, 'v(bp)') - last(waves, 'v(bn)'),
    inverterVolts: last(waves, 'v(ip)') - last(waves, 'v(in)'),
  };
}

describe('DC path against ngspice', () => {
  it.each([30, 100, 150, -60])('adds up to what the network loses at %s A', async (amps) => {
    const result = dcPath.compute({ ...given, amps, ...(await network(amps, 0)) });
    if (!result.ok) throw new Error(result.reason.id);
    expect(result.out.pathOhms! / result.out.expectedOhms!).toBeCloseTo(1, 4);
    expect(result.out.expectedVolts).toBeCloseTo(Math.abs(result.out.lostVolts!), 5);
  });

  it('is called sound with good joints and high with a bad one', async () => {
    const good = dcPath.compute({ ...given, amps: 120, ...(await network(120, 0)) });
    const bad = dcPath.compute({ ...given, amps: 120, ...(await network(120, 0.003)) });
    if (!good.ok || !bad.ok) throw new Error('no result');
    expect(good.out.verdict).toBe('sound');
    expect(bad.out.verdict).toBe('high');
    expect(bad.out.excessOhms).toBeCloseTo(0.003, 5);
    expect(bad.out.excessWatts).toBeCloseTo(120 ** 2 * 0.003, 1);
  });

  it('calls a swapped pair of readings the wrong sign, not a bad joint', async () => {
    const { batteryVolts, inverterVolts } = await network(120, 0);
    const result = dcPath.compute({
      ...given,
      amps: 120,
      batteryVolts: inverterVolts,
      inverterVolts: batteryVolts,
    });
    expect(result.ok && result.out.verdict).toBe('wrongSign');
  });
});
