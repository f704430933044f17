import { describe, expect, it } from 'vitest';
import { last, simulate } from './ngspice.ts';

describe('ngspice as a witness', () => {
  it('answers a divider', async () => {
    const waves = await simulate('divider\nV1 a 0 10\nR1 a b 1k\nR2 b 0 3k\n.op\n.end');
    expect(last(waves, 'v(b)')).toBeCloseTo(7.5, 9);
  });

  it('fails on a netlist it cannot parse', async () => {
    await expect(simulate('bad\nV1 a 0 10\nQ1 a b 0 nomodel\n.op\n.end')).rejects.toThrow(/ngspice/);
  });

  it('still answers after an error', async () => {
    const waves = await simulate('divider\nV1 a 0 10\nR1 a b 1k\nR2 b 0 1k\n.op\n.end');
    expect(last(waves, 'v(b)')).toBeCloseTo(5, 9);
  });
});
