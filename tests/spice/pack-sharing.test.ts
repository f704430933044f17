import { describe, expect, it } from 'vitest';
import { type BankWiring, sourceAmps, wiredShares } from '../../src/worksheets/battery-dc/parallel-packs.ts';
import { last, simulate } from './ngspice.ts';

/** Amps of each pack of a bank joined pack to pack, with its load at the ends of the bars. */
async function bank(packs: number, wiring: BankWiring, packOhms: number, linkOhms: number, amps: number) {
  const numbers = Array.from({ length: packs }, (_, at) => at + 1);
  const waves = await simulate(
    [
      'bank',
      ...numbers.flatMap((pack) => [
        `VB${pack} e${pack} n${pack} DC 53`,
        `RB${pack} e${pack} p${pack} ${packOhms}`,
      ]),
      ...numbers
        .slice(1)
        .flatMap((pack) => [
          `RP${pack} p${pack - 1} p${pack} ${linkOhms}`,
          `RN${pack} n${pack - 1} n${pack} ${linkOhms}`,
        ]),
      `IL p1 n${wiring === 'bothEnds' ? packs : 1} DC ${amps}`,
      'RG n1 0 1m',
      '.op',
      '.end',
    ].join('\n'),
  );
  return numbers.map((pack) => (last(waves, `v(e${pack})`) - last(waves, `v(p${pack})`)) / packOhms);
}

describe('pack sharing against ngspice', () => {
  it.each<[number, BankWiring, number, number]>([
    [2, 'oneEnd', 0.012, 0.0003],
    [4, 'oneEnd', 0.02, 0.0015],
    [4, 'bothEnds', 0.02, 0.0015],
    [6, 'oneEnd', 0.015, 0.001],
    [5, 'bothEnds', 0.01, 0.002],
  ])('%s packs, %s, %s Ω, links of %s Ω', async (packs, wiring, packOhms, linkOhms) => {
    const seen = await bank(packs, wiring, packOhms, linkOhms, 200);
    const worked = wiredShares(packs, wiring, packOhms, linkOhms).map((share) => 200 * share);
    for (const [at, amps] of seen.entries()) expect(worked[at]! / amps).toBeCloseTo(1, 4);
  });

  it('gives the amps of unequal packs that are joined', async () => {
    const waves = await simulate(
      [
        'join',
        'VA a 0 DC 53.4',
        'VB b 0 DC 52.6',
        'RA a j 0.012',
        'RB b j 0.02',
        'IL j 0 DC 15',
        '.op',
        '.end',
      ].join('\n'),
    );
    const joint = last(waves, 'v(j)');
    const [a, b] = sourceAmps(
      [
        { volts: 53.4, ohms: 0.012 },
        { volts: 52.6, ohms: 0.02 },
      ],
      15,
    );
    expect(a).toBeCloseTo((53.4 - joint) / 0.012, 3);
    expect(b).toBeCloseTo((52.6 - joint) / 0.02, 3);
    expect(b).toBeLessThan(0);
  });
});
