import { describe, expect, it } from 'vitest';
import { entropyBits } from '../../src/suspects/information.ts';
import { bitsForError } from '../../src/suspects/knapsack-bound.ts';
import { bayesLimit, likeness } from '../../src/suspects/limit.ts';
import { eightBySix } from './tables.ts';

const table = eightBySix();
const limit = bayesLimit(table);
const prior = table.suspects.map((s) => s.prior);
const at = (id: string): number => table.suspects.findIndex((s) => s.id === id);

describe('the Bayes limit of the eight by six', () => {
  it('is .8127 over 216 vectors of readings, .9423 for the two likeliest', () => {
    expect(limit.vectors).toBe(216);
    expect(limit.accuracy).toBeCloseTo(0.8127, 4);
    expect(limit.topTwo).toBeCloseTo(0.9423, 4);
    expect(Math.max(...prior)).toBe(0.22);
  });

  it('leaves .7498 of 2.8568 bits, so that Fano asks for at least 10 % errors', () => {
    expect(entropyBits(prior)).toBeCloseTo(2.8568, 4);
    expect(limit.residualBits).toBeCloseTo(0.7498, 4);
    expect(entropyBits(prior) - limit.residualBits).toBeCloseTo(2.107, 3);
    expect(bitsForError(entropyBits(prior), 0.1, 8)).toBeGreaterThan(2.107);
    expect(bitsForError(entropyBits(prior), 0.11, 8)).toBeLessThan(2.107);
  });

  it('rises to .8729 and .9023 when look-alikes share a remedy', () => {
    const fuse = (id: string) => (id === 'precharge' ? 'dcfuse' : id);
    expect(bayesLimit(eightBySix(fuse)).accuracy).toBeCloseTo(0.8729, 4);
    const both = (id: string) => (id === 'acOverload' ? 'inverter' : fuse(id));
    expect(bayesLimit(eightBySix(both)).accuracy).toBeCloseTo(0.9023, 4);
  });

  it('knows its look-alikes: fuse and pre-charge .944, inverter and AC overload .857, then .415', () => {
    expect(likeness(table, at('dcfuse'), at('precharge'))).toBeCloseTo(0.944, 3);
    expect(likeness(table, at('inverter'), at('acOverload'))).toBeCloseTo(0.857, 3);
    const all = prior.flatMap((_, a) => prior.flatMap((__, b) => (b > a ? [likeness(table, a, b)] : [])));
    expect(all.sort((a, b) => b - a)[2]).toBeCloseTo(0.415, 3);
  });
});
