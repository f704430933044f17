import { showQuantity } from '../quantity/format.ts';
import { kindFacts, type UnitSystem } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import { type ParsedReading, parseReading } from '../quantity/parse.ts';
import { usualUnitOf } from '../quantity/units.ts';
import { checkSheet, factsOf, reasonOf, type SheetResult } from './check.ts';
import { contradictions, type Problem } from './contradictions.ts';
import { concreteIds, type FactValue, pathKeys } from './fact-paths.ts';
import { type Fact, factOf, facts, getFact } from './facts.ts';
import type { SiteSheet } from './sheet.ts';

/** A list whose rows the form can add and take away. */
export type SheetList = 'trackers' | 'strings';

/**
 * A sheet while it is being typed: what stands in each box, right or wrong, so that nothing typed is ever lost.
 * Numbers are in the units of `typed.units`, as the person wrote them.
 */
export interface SheetDraft {
  id: string;
  invented: boolean;
  rows: Record<SheetList, number>;
  /** Text by concrete fact id; choices and yes/no stand as `yes`, `no` or the choice. */
  typed: Record<string, string>;
  /** Concrete fact ids ticked "I don't know". */
  unknown: string[];
}

/** Digits enough to show any stored value without rounding it visibly. */
const draftDigits = 6;

/** The concrete ids of every fact that a draft has a box for, in the order of the sheet. */
export function draftFactIds(draft: SheetDraft): string[] {
  return facts.flatMap(({ id }) => {
    const list = /^(\w+)\[\]/.exec(id)?.[1] as SheetList | undefined;
    return list ? Array.from({ length: draft.rows[list] }, (_, row) => id.replace('[]', `[${row}]`)) : [id];
  });
}

/** The unit a bare number is taken in for a fact, and that its label names; empty where there is none. */
export function unitOfFact(fact: Fact, units: UnitSystem): string {
  if (fact.answer.type !== 'number') return '';
  return fact.answer.unit ?? usualUnitOf(fact.answer.kind, units);
}

/** What would stand in the box of a fact that has this value. */
export function textOfFact(fact: Fact, value: FactValue, units: UnitSystem): string {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (fact.answer.type !== 'number' || typeof value === 'string') return String(value);
  const { kind } = fact.answer;
  if (kind === 'wireSize') {
    const { number, unit } = showQuantity(value, kind, { system: units, digits: draftDigits });
    return units === 'us' ? `${number} ${unit}` : number;
  }
  return showQuantity(value, kind, { digits: draftDigits, unit: unitOfFact(fact, units) }).number;
}

/** The draft that shows a sheet as it is kept. */
export function draftOfSheet(sheet: SiteSheet): SheetDraft {
  const ids = facts.flatMap((fact) => concreteIds(sheet, fact.id));
  return {
    id: sheet.id,
    invented: sheet.invented,
    rows: { trackers: sheet.trackers.length, strings: sheet.strings.length },
    typed: Object.fromEntries(ids.map((id) => [id, textOfFact(factOf(id), getFact(sheet, id), sheet.units)])),
    unknown: ids.filter((id) => getFact(sheet, id) === null),
  };
}

export type FactReading = { ok: true; value: FactValue } | { ok: false; reason: MessageRef };

/** The value a person means by `text` for a fact, or why it is none. */
export function readFact(fact: Fact, text: string, units: UnitSystem): FactReading {
  const { answer } = fact;
  const trimmed = text.trim();
  if (answer.type === 'text') {
    if (trimmed === '' && fact.id !== 'notes') return missing(fact);
    return { ok: true, value: trimmed };
  }
  if (trimmed === '') return missing(fact);
  if (answer.type === 'yesNo') {
    return trimmed === 'yes' || trimmed === 'no'
      ? { ok: true, value: trimmed === 'yes' }
      : wrong(fact, units);
  }
  if (answer.type === 'choice') {
    const choice = answer.choices.find((each) => String(each) === trimmed);
    return choice === undefined ? wrong(fact, units) : { ok: true, value: choice };
  }
  const reading = readNumberFact(fact, trimmed, units);
  if (!reading.ok) return { ok: false, reason: reading.reason };
  // Rounding between units, to the digits a box shows, must not put the range's own end outside it.
  const slack = 10 ** (1 - draftDigits) * Math.max(Math.abs(answer.min), Math.abs(answer.max));
  if (reading.value < answer.min - slack || reading.value > answer.max + slack) return wrong(fact, units);
  return { ok: true, value: Math.min(answer.max, Math.max(answer.min, reading.value)) };
}

/** The typed number of a fact as `parseReading` understands it, for showing back what was understood. */
export function readNumberFact(fact: Fact, text: string, units: UnitSystem): ParsedReading {
  const { answer } = fact;
  if (answer.type !== 'number') throw new Error(`${fact.id} is no number`);
  const { maxMagnitude, belowZero } = kindFacts[answer.kind];
  return parseReading(text, {
    kind: answer.kind,
    unit: unitOfFact(fact, units),
    allowNegative: answer.min < 0 || belowZero,
    maxMagnitude: Math.max(maxMagnitude, answer.max),
  });
}

/**
 * Reads a whole draft. A box left as `base` would show it keeps the value of `base` to the last bit, so that
 * showing a figure rounded never changes it.
 */
export function sheetOfDraft(draft: SheetDraft, base?: SiteSheet): SheetResult {
  const units: UnitSystem = draft.typed.units === 'us' ? 'us' : 'metric';
  const problems: Problem[] = [];
  const record = { format: 'faultwright-site', version: 1, id: draft.id, invented: draft.invented };
  const input: Record<string, unknown> = { ...record, trackers: [], strings: [] };
  for (const id of draftFactIds(draft)) {
    const fact = factOf(id);
    const reading = readBox(draft, id, fact, units, base);
    if (reading.ok) put(input, id, reading.value);
    else problems.push({ factIds: [id], reason: reading.reason });
  }
  if (problems.length === 0) return checkSheet(input);
  const together = contradictions(input, factsOf(problems));
  return { ok: false, problems: inOrder([...problems, ...together], draftFactIds(draft)) };
}

/** Problems in the order in which a person meets their boxes. */
function inOrder(problems: readonly Problem[], ids: readonly string[]): Problem[] {
  const place = new Map(ids.map((id, at) => [id, at]));
  const at = ({ factIds: [id] }: Problem): number => place.get(id ?? '') ?? ids.length;
  return [...problems].sort((one, other) => at(one) - at(other));
}

function readBox(
  draft: SheetDraft,
  id: string,
  fact: Fact,
  units: UnitSystem,
  base?: SiteSheet,
): FactReading {
  if (fact.unknownAllowed && draft.unknown.includes(id)) return { ok: true, value: null };
  const text = draft.typed[id] ?? '';
  if (base && base.units === units && text !== '') {
    const kept = getFact(base, id);
    if (kept !== null && textOfFact(fact, kept, units) === text) return { ok: true, value: kept };
  }
  return readFact(fact, text, units);
}

function put(input: Record<string, unknown>, id: string, value: FactValue): void {
  const keys = pathKeys(id);
  const last = keys.pop() as string;
  let holder = input;
  for (const key of keys) {
    holder[key] ??= {};
    holder = holder[key] as Record<string, unknown>;
  }
  holder[last] = value;
}

const missing = (fact: Fact): FactReading => ({
  ok: false,
  reason: { id: fact.unknownAllowed ? 'site.missingOrUnknown' : 'site.missing', params: { fact: fact.id } },
});

const wrong = (fact: Fact, units: UnitSystem): FactReading => ({ ok: false, reason: reasonOf(fact, units) });
