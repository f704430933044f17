import { type INetwork, infer } from 'bayesjs';
import { describe, expect, it } from 'vitest';
import { entry } from './network.ts';

describe('the library itself, on the chest clinic of Lauritzen & Spiegelhalter (1988)', () => {
  const two = (id: string, p: number) => ({
    id,
    states: ['yes', 'no'],
    parents: [],
    cpt: { yes: p, no: 1 - p },
  });
  const child = (id: string, parents: string[], p: readonly (readonly [string, number])[]) => ({
    id,
    states: ['yes', 'no'],
    parents,
    cpt: p.map(([key, yes]) =>
      entry(Object.fromEntries(parents.map((parent, at) => [parent, key[at] === 'y' ? 'yes' : 'no'])), {
        yes,
        no: 1 - yes,
      }),
    ),
  });
  const nodes = [
    two('asia', 0.01),
    two('smoke', 0.5),
    child(
      'tub',
      ['asia'],
      [
        ['y', 0.05],
        ['n', 0.01],
      ],
    ),
    child(
      'lung',
      ['smoke'],
      [
        ['y', 0.1],
        ['n', 0.01],
      ],
    ),
    child(
      'bronc',
      ['smoke'],
      [
        ['y', 0.6],
        ['n', 0.3],
      ],
    ),
    child(
      'either',
      ['lung', 'tub'],
      [
        ['yy', 1],
        ['yn', 1],
        ['ny', 1],
        ['nn', 0],
      ],
    ),
    child(
      'xray',
      ['either'],
      [
        ['y', 0.98],
        ['n', 0.05],
      ],
    ),
    child(
      'dysp',
      ['bronc', 'either'],
      [
        ['yy', 0.9],
        ['yn', 0.8],
        ['ny', 0.7],
        ['nn', 0.1],
      ],
    ),
  ];
  const clinic: INetwork = Object.fromEntries(nodes.map((node) => [node.id, node]));

  it.each<[Record<string, string>, Record<string, number>]>([
    [{}, { tub: 0.0104, lung: 0.055, bronc: 0.45, either: 0.064828, xray: 0.11029004, dysp: 0.4359706 }],
    [{ dysp: 'yes' }, { tub: 0.0188453, lung: 0.1027592, bronc: 0.8339673 }],
    [
      { dysp: 'yes', asia: 'yes' },
      { tub: 0.087751, lung: 0.0995251, bronc: 0.8114021 },
    ],
    [
      { dysp: 'yes', asia: 'yes', xray: 'yes' },
      { tub: 0.3917117, lung: 0.4442705, bronc: 0.6288218 },
    ],
    [
      { dysp: 'yes', asia: 'yes', smoke: 'no', xray: 'no' },
      { tub: 0.002735, lung: 0.000547, bronc: 0.7728301 },
    ],
  ])('given %j', (evidence, expected) => {
    for (const [node, share] of Object.entries(expected)) {
      expect(infer(clinic, { [node]: 'yes' }, evidence)).toBeCloseTo(share, 6);
    }
  });

  it('and on the sprinkler: rain given the sprinkler off is .2920', () => {
    const rain: INetwork = {
      rain: { id: 'rain', states: ['yes', 'no'], parents: [], cpt: { yes: 0.2, no: 0.8 } },
      sprinkler: child(
        'sprinkler',
        ['rain'],
        [
          ['y', 0.01],
          ['n', 0.4],
        ],
      ),
    };
    expect(infer(rain, { rain: 'yes' }, { sprinkler: 'no' })).toBeCloseTo(0.292, 4);
  });
});
