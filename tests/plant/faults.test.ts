import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faults, faultsOf, samplePlant } from '../../src/plant/faults/index.ts';
import { measure, type Probe } from '../../src/plant/meter/measure.ts';
import { type MeterFunction, meterOf } from '../../src/plant/meter/spec.ts';
import { randomFrom } from '../../src/plant/numeric/random.ts';
import { displays, looks, temperature } from '../../src/plant/observe.ts';
import { firstSubject } from '../../src/plant/places.ts';
import { settle } from '../../src/plant/settle.ts';
import type { Plant } from '../../src/plant/spec.ts';
import { sampleSites } from './sites.ts';

const probes: [Probe, MeterFunction][] = [
  [{ red: 'P1+', black: 'P1-' }, 'dcVolts'],
  [{ red: 'P2+', black: 'P2-' }, 'lowZVolts'],
  [{ red: 'P1+', black: 'PG' }, 'dcVolts'],
  [{ red: 'T+', black: 'T-' }, 'lowZVolts'],
  [{ red: 'fuse-in', black: 'fuse-out' }, 'dcVolts'],
  [{ clamp: 'P2+' }, 'dcClamp'],
  [{ clamp: 'array' }, 'dcClamp'],
  [{ clamp: 'S1+' }, 'dcClamp'],
  [{ red: 'I+', black: 'I-' }, 'dcVolts'],
  [{ red: 'B+', black: 'B-' }, 'dcVolts'],
  [{ red: 'C-H', black: 'C-L' }, 'dcVolts'],
  [{ red: 'D-L1', black: 'D-N' }, 'acVolts'],
  [{ red: 'D-N', black: 'G' }, 'acVolts'],
  [{ clamp: 'D-N' }, 'acClamp'],
];

/** Everything a person can find out without moving anything, as text. */
function findings(plant: Plant): string {
  const sheet = sampleSites[0]!;
  const meter = meterOf(sheet, randomFrom(1), false);
  const random = randomFrom(2);
  const readings = probes.flatMap(([probe, mode]) =>
    (['steady', 'start'] as const).map((moment) =>
      measure(plant, meter, probe, mode, firstSubject, random, moment),
    ),
  );
  const temps = (['inlet', 'outlet', 'case', 'jacket'] as const).map((place) =>
    temperature(plant, place, firstSubject, random, false),
  );
  return JSON.stringify({
    readings,
    temps,
    shown: displays(plant, firstSubject),
    seen: looks(plant, firstSubject),
    link: settle(plant).link,
  });
}

const sample = (fault: (typeof faults)[number] | undefined, from: number) => {
  for (let seed = from; seed < from + 40; seed++)
    for (const sheet of sampleSites) {
      const sampled = samplePlant({ sheet, fault, seed });
      if (sampled) return sampled;
    }
  throw new Error(`${fault?.cause} fits no site`);
};

describe.each(faults.map((fault) => [`${fault.id} ${fault.cause}`, fault] as const))('%s', (_name, fault) => {
  it('gives numbers, never NaN, however bad it is drawn', () => {
    for (let seed = 1; seed <= 4; seed++) {
      const { plant } = sample(fault, seed * 100);
      const settled = settle(plant);
      expect(settled.pv.point.ok && settled.dc.point.ok && settled.ac.point.ok).toBe(true);
      // JSON turns NaN and infinity into null: nothing found may be either.
      expect(findings(plant)).not.toMatch(/null/);
    }
  });

  it('is the same plant for the same seed, and another for another', () => {
    const [one, again, other] = [sample(fault, 5), sample(fault, 5), sample(fault, 905)];
    expect(findings(again.plant)).toBe(findings(one.plant));
    expect(findings(other.plant)).not.toBe(findings(one.plant));
  });
});

it('leaves a trace that can be found without moving anything', () => {
  const unseen = faults.filter((fault) => {
    const traces = [1, 2, 3, 4, 5, 6].some((seed) => {
      const sheet = sampleSites.find((site) => !fault.fits || fault.fits(site))!;
      const bad = samplePlant({ sheet, fault, seed });
      const conditions = fault.conditions?.({
        sheet,
        subject: firstSubject,
        random: randomFrom(seed).fork('fault'),
      });
      const good = samplePlant({ sheet, fault: undefined, seed, conditions });
      return bad && good && findings(bad.plant) !== findings(good.plant);
    });
    return !traces;
  });
  expect(unseen.map(({ cause }) => cause)).toEqual([]);
});

it('has every cause of the first guide, each with a page', () => {
  const pages = readdirSync(new URL('../../content/en/causes', import.meta.url)).map((name) =>
    name.replace('.mdx', ''),
  );
  const causes = new Set(faultsOf('a').map(({ cause }) => cause));
  for (const cause of causes) expect(pages).toContain(cause);
});

it('numbers every cause of groups a to d', () => {
  for (const [group, count] of [
    ['a', 13],
    ['b', 14],
    ['c', 11],
    ['d', 14],
  ] as const) {
    const ids = new Set(faultsOf(group).map(({ id }) => id));
    expect([...ids].sort()).toEqual(Array.from({ length: count }, (_, i) => `${group}${i + 1}`).sort());
  }
});

it('leaves a healthy plant without events, every tracker at work or held back by a full battery', () => {
  for (let seed = 1; seed <= 40; seed++) {
    const { plant } = samplePlant({
      sheet: sampleSites[seed % sampleSites.length]!,
      fault: undefined,
      seed,
    })!;
    const settled = settle(plant);
    expect(settled.unit).toBe('running');
    expect(displays(plant, firstSubject).events).toEqual([]);
    expect(settled.pv.trackers.every(({ doing }) => doing === 'running' || doing === 'waiting')).toBe(true);
  }
});
