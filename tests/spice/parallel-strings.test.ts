import { describe, expect, it } from 'vitest';
import {
  groupAmps,
  joined,
  moduleCurve,
  type StringGroup,
  steepnessOf,
} from '../../src/worksheets/pv/unequal.ts';
import { last, simulate } from './ngspice.ts';

const label = { vocVolts: 41, vmpVolts: 34, iscAmps: 11.5, impAmps: 10.8 };

/** The same label as a current source and a diode: the emission volts and the saturation current that fit its points. */
const steepness = steepnessOf(label);
const emissionVolts = steepness * label.vocVolts;
const saturationAmps = label.iscAmps / Math.expm1(1 / steepness);
const thermalVolts = (1.380649e-23 * 300.15) / 1.602176634e-19;

/** Groups of strings, each a source with a diode as long as its modules, on one pair of conductors. */
function deck(groups: readonly StringGroup[], load: string): string {
  return [
    'strings in parallel',
    ...groups.flatMap(({ modules, strings }, i) => [
      `V${i} bus s${i} DC 0`,
      `I${i} 0 s${i} DC ${strings * label.iscAmps}`,
      `D${i} s${i} 0 D${i}M`,
      `.model D${i}M D(IS=${strings * saturationAmps} N=${(modules * emissionVolts) / thermalVolts} TNOM=27)`,
    ]),
    load,
    '.options gmin=1e-15 reltol=1e-6 temp=27',
    '.op',
    '.end',
  ].join('\n');
}

const cases: readonly (readonly StringGroup[])[] = [
  [{ modules: 8, strings: 2 }],
  [
    { modules: 8, strings: 1 },
    { modules: 7, strings: 1 },
  ],
  [
    { modules: 10, strings: 2 },
    { modules: 8, strings: 1 },
  ],
  [
    { modules: 6, strings: 1 },
    { modules: 9, strings: 3 },
  ],
];

describe('strings in parallel against ngspice', () => {
  it.each(cases.map((groups) => ({ groups })))(
    'open volts and backward amps of $groups',
    async ({ groups }) => {
      const waves = await simulate(deck(groups, 'RL bus 0 1e9'));
      const { openVolts } = joined(label, groups);
      expect(openVolts / last(waves, 'v(bus)')).toBeCloseTo(1, 4);
      for (const [i, { modules, strings }] of groups.entries()) {
        // The source's current runs from bus into the string: backwards is plus.
        const intoString = last(waves, `i(v${i})`);
        expect(-strings * moduleCurve(label)(openVolts / modules)).toBeCloseTo(intoString, 2);
      }
    },
  );

  it.each(cases.map((groups) => ({ groups })))('amps at the best point of $groups', async ({ groups }) => {
    const { bestVolts, bestWatts } = joined(label, groups);
    const waves = await simulate(deck(groups, `VL bus 0 DC ${bestVolts}`));
    expect(bestWatts / (bestVolts * last(waves, 'i(vl)'))).toBeCloseTo(1, 4);
    for (const volts of [0.97 * bestVolts, 1.03 * bestVolts]) {
      const beside = await simulate(deck(groups, `VL bus 0 DC ${volts}`));
      expect(volts * last(beside, 'i(vl)')).toBeLessThan(bestWatts);
      expect(groupAmps(moduleCurve(label), groups, volts) / last(beside, 'i(vl)')).toBeCloseTo(1, 4);
    }
  });
});
