import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { spread } from './spread.ts';
import { legFacts, topologies } from './topology.ts';

/** Twice twelve weights: what the search does at once on a slow phone. */
const mostCircuits = 24;

export interface Circuit {
  name: string;
  amps: number;
  /** 2 for a load from leg to leg. */
  poles: number | undefined;
  /** Circuits of the same number share a neutral. */
  shares: number | undefined;
}

export interface Landed {
  leg1: number[];
  leg2: number[];
  both: number[];
}

export type Landing =
  | { kind: 'landed'; landed: Landed; amps1: number; amps2: number; acrossAmps: number }
  | { kind: 'tooManyShare' | 'acrossShares'; number: number };

/**
 * The most even way of landing circuits on two legs: the two of a shared neutral on opposite ones, two-pole loads on
 * both. Rows by their place in the list. A shared neutral of one circuit alone lands as a single one.
 */
export function land(circuits: readonly Circuit[]): Landing {
  const across = circuits.flatMap((circuit, at) => (circuit.poles === 2 ? [at] : []));
  const groups = new Map<string, number[]>();
  for (const [at, { poles, shares }] of circuits.entries()) {
    if (poles === 2) {
      if (shares !== undefined) return { kind: 'acrossShares', number: at + 1 };
      continue;
    }
    const key = shares === undefined ? `alone ${at}` : `shares ${shares}`;
    groups.set(key, [...(groups.get(key) ?? []), at]);
  }
  const rows = [...groups.values()];
  const crowd = rows.find((group) => group.length > 2);
  if (crowd) return { kind: 'tooManyShare', number: circuits[crowd[0]!]!.shares! };
  const ampsOf = (at: number | undefined) => (at === undefined ? 0 : circuits[at]!.amps);
  const found = spread(rows.map(([one, two]) => ({ difference: ampsOf(one) - ampsOf(two) })));
  const landed: Landed = { leg1: [], leg2: [], both: across };
  for (const [at, [one, two]] of rows.entries()) {
    const [first, second] = found.asGiven[at] ? [landed.leg1, landed.leg2] : [landed.leg2, landed.leg1];
    first.push(one!);
    if (two !== undefined) second.push(two);
  }
  const sum = (places: readonly number[]) => places.reduce((total, at) => total + ampsOf(at), 0);
  const acrossAmps = sum(across);
  return {
    kind: 'landed',
    landed,
    acrossAmps,
    amps1: sum(landed.leg1) + acrossAmps,
    amps2: sum(landed.leg2) + acrossAmps,
  };
}

export const spreadLegs = defineWorksheet({
  id: 'spread-legs',
  group: 'ac',
  hazards: ['ac-shock', 'neutral-open'],
  inputs: {
    topology: { options: topologies, default: 'opposed-120-240', from: ['inverter.topology'] },
    circuits: {
      rows: {
        name: { text: true, most: 24 },
        amps: { kind: 'current', min: 0, max: 200 },
        poles: { kind: 'count', min: 1, max: 2, optional: true },
        shares: { kind: 'count', min: 1, max: 12, optional: true },
      },
      mostRows: mostCircuits,
    },
    legAmps: { kind: 'current', min: 1, max: 1000, optional: true },
  },
  outputs: {
    verdict: { verdicts: ['even', 'uneven', 'over'], headline: true },
    leg1: { names: true, headline: true },
    leg2: { names: true, headline: true },
    both: { names: true },
    amps1: { kind: 'current', headline: true },
    amps2: { kind: 'current', headline: true },
    differenceAmps: { kind: 'current' },
    unevenShare: { kind: 'ratio' },
    neutralAmps: { kind: 'current' },
    asListedAmps: { kind: 'current' },
  },
  compute({ topology, circuits, legAmps }) {
    const { angle } = legFacts[topology];
    if (angle === undefined) return refuse('worksheet.spread-legs.oneLeg');
    if (circuits.length === 0) return refuse('worksheet.spread-legs.nothing');
    if (angle === 0 && circuits.some((circuit) => circuit.shares !== undefined))
      return refuse('worksheet.spread-legs.inStep');
    if (angle === 0 && circuits.some((circuit) => circuit.poles === 2))
      return refuse('worksheet.spread-legs.nothingAcross');
    const found = land(circuits);
    if (found.kind !== 'landed')
      return refuse(`worksheet.spread-legs.${found.kind}`, { number: found.number });
    const { landed, amps1, amps2 } = found;
    const differenceAmps = Math.abs(amps1 - amps2);
    const unevenShare = amps1 + amps2 === 0 ? 0 : differenceAmps / Math.max(amps1, amps2);
    // A row without a name is called by its place.
    const named = (places: readonly number[]) => places.map((at) => circuits[at]!.name || `#${at + 1}`);
    const [n1, n2] = [amps1 - found.acrossAmps, amps2 - found.acrossAmps];
    return give({
      verdict:
        legAmps !== undefined && Math.max(amps1, amps2) > legAmps
          ? ('over' as const)
          : unevenShare <= 0.2
            ? ('even' as const)
            : ('uneven' as const),
      leg1: named(landed.leg1),
      leg2: named(landed.leg2),
      both: named(landed.both),
      amps1,
      amps2,
      differenceAmps,
      unevenShare,
      neutralAmps:
        angle === 180 ? differenceAmps : angle === 0 ? n1 + n2 : Math.sqrt(n1 ** 2 + n2 ** 2 - n1 * n2),
      asListedAmps: turnAbout(circuits),
    });
  },
  working(given, out) {
    const { angle } = legFacts[given.topology];
    return [
      say('leg1', given, out),
      say('leg2', given, out),
      say('difference', given, out),
      say(angle === 180 ? 'neutral' : angle === 0 ? 'neutralSum' : 'neutralThird', given, out),
    ];
  },
  remarks(given, out) {
    const numbers = given.circuits.flatMap(({ shares }) => (shares === undefined ? [] : [shares]));
    const lone = numbers.find((each) => numbers.filter((other) => other === each).length === 1);
    const ids = [
      out.verdict,
      ...(numbers.length > 0 ? ['pairs'] : []),
      ...(lone === undefined ? [] : ['lonePair']),
      ...(out.asListedAmps! > out.differenceAmps! + 1 ? ['gained'] : []),
      'sameTime',
    ];
    return ids.map((id) => say(`worksheet.spread-legs.${id}`, given, out, { number: lone ?? 0 }));
  },
  sources: [
    { id: 'nec-210-11-b' },
    { id: 'nec-210-4', clause: '210.4(B)' },
    { id: 'burkardt-partition' },
    { id: 'common-practice' },
  ],
});

/** Difference when rows go to the legs turn about, as the places of a panel do. */
function turnAbout(circuits: readonly Circuit[]): number {
  const single = circuits.filter((circuit) => circuit.poles !== 2);
  return Math.abs(single.reduce((sum, { amps }, at) => sum + (at % 2 === 0 ? amps : -amps), 0));
}
