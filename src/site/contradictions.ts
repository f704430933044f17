import { formatQuantity } from '../quantity/format.ts';
import type { UnitSystem } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import { concreteIds, valueAt } from './fact-paths.ts';
import { factOf } from './facts.ts';

/** Something wrong with a sheet, and the concrete facts it concerns, the one to show it at first. */
export interface Problem {
  factIds: string[];
  reason: MessageRef;
}

/** Pairs that can stand only in this order; `<=` where they may be equal. Rows of a list are compared row by row. */
const orders: readonly [lower: string, sign: '<' | '<=', upper: string][] = [
  ['climate.recordLowC', '<=', 'climate.usualLowC'],
  ['climate.usualLowC', '<', 'climate.usualHighC'],
  ['climate.recordLowC', '<', 'climate.usualHighC'],
  ['battery.cellRecoverMinV', '<=', 'battery.cellMinV'],
  ['battery.cellMinV', '<', 'battery.cellChargeV'],
  ['battery.cellChargeV', '<=', 'battery.cellMaxV'],
  ['battery.packContinuousA', '<=', 'battery.packPeakA'],
  ['inverter.dcMinV', '<', 'inverter.dcMaxV'],
  ['inverter.ratedW', '<=', 'inverter.surgeW'],
  ['inverter.legLimitW', '<=', 'inverter.ratedW'],
  ['trackers[].trackMinV', '<', 'trackers[].trackMaxV'],
  ['trackers[].trackMaxV', '<=', 'trackers[].maxV'],
  ['trackers[].startV', '<', 'trackers[].maxV'],
  ['trackers[].usableA', '<=', 'trackers[].shortCircuitMaxA'],
  ['strings[].vmpV', '<', 'strings[].vocV'],
  ['strings[].impA', '<', 'strings[].iscA'],
];

interface Row {
  readonly name?: unknown;
  readonly tracker?: unknown;
}

/** Whatever was given, with lists of rows in the places of lists: enough to look values up by their ids. */
interface Given {
  units: UnitSystem;
  trackers: readonly Row[];
  strings: readonly Row[];
}

/**
 * What cannot be true together. Values that are wrong or missing by themselves are left out, so that a person hears of
 * everything at once and of nothing twice.
 * @param input a sheet, or anything that was given for one
 * @param wrong concrete ids of facts that are refused by themselves
 */
export function contradictions(input: unknown, wrong: ReadonlySet<string> = new Set()): Problem[] {
  const given = givenOf(input);
  if (!given) return [];
  const found = [
    ...orders.flatMap(([lower, sign, upper]) => {
      const uppers = concreteIds(given, upper);
      return concreteIds(given, lower).flatMap((id, row) =>
        wrongOrder(given, id, sign, uppers[row] as string),
      );
    }),
    ...sameNames(given, 'trackers'),
    ...sameNames(given, 'strings'),
    ...lostTrackers(given, wrong),
  ];
  return found.filter(({ factIds }) => !factIds.some((id) => wrong.has(id)));
}

export function unitsOf(input: unknown): UnitSystem {
  return (input as { units?: unknown } | null)?.units === 'us' ? 'us' : 'metric';
}

function givenOf(input: unknown): Given | undefined {
  if (typeof input !== 'object' || input === null) return undefined;
  const rows = (list: unknown): readonly Row[] =>
    Array.isArray(list) && list.every((row) => typeof row === 'object' && row !== null) ? list : [];
  const { trackers, strings } = input as Record<string, unknown>;
  return { ...input, units: unitsOf(input), trackers: rows(trackers), strings: rows(strings) };
}

function wrongOrder(given: Given, lower: string, sign: '<' | '<=', upper: string): Problem[] {
  const [low, high] = [valueAt(given, lower), valueAt(given, upper)];
  if (typeof low !== 'number' || typeof high !== 'number') return [];
  if (sign === '<' ? low < high : low <= high) return [];
  return [
    {
      factIds: [lower, upper],
      reason: {
        id: sign === '<' ? 'site.mustBeBelow' : 'site.mustNotExceed',
        params: {
          lowerFact: lower,
          upperFact: upper,
          lower: shown(given, lower, low),
          upper: shown(given, upper, high),
        },
      },
    },
  ];
}

const nameOf = (row: Row): string => (typeof row.name === 'string' ? row.name : '');

function sameNames(given: Given, list: 'trackers' | 'strings'): Problem[] {
  const names = given[list].map((row) => nameOf(row).trim().toLowerCase());
  return names.flatMap((name, row) =>
    name === '' || names.indexOf(name) === row
      ? []
      : [
          {
            factIds: [`${list}[${row}].name`],
            reason: { id: 'site.nameTwice', params: { name: nameOf(given[list][row]!) } },
          },
        ],
  );
}

/** Strings on a tracker that is not entered; while a tracker has no name yet, nobody can say so. */
function lostTrackers({ trackers, strings }: Given, wrong: ReadonlySet<string>): Problem[] {
  const names = trackers.map(nameOf);
  if (wrong.has('trackers') || names.some((name, row) => name === '' || wrong.has(`trackers[${row}].name`)))
    return [];
  return strings.flatMap(({ tracker }, row) =>
    typeof tracker !== 'string' || names.includes(tracker)
      ? []
      : [
          {
            factIds: [`strings[${row}].tracker`],
            reason: { id: 'site.noSuchTracker', params: { tracker, names: names.join(', ') } },
          },
        ],
  );
}

function shown(given: Given, id: string, value: number): string {
  const { answer } = factOf(id);
  return answer.type === 'number'
    ? formatQuantity(value, answer.kind, { system: given.units, unit: answer.unit })
    : String(value);
}
