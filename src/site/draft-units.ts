import type { UnitSystem } from '../quantity/kinds.ts';
import { draftFactIds, readFact, type SheetDraft, textOfFact } from './draft.ts';
import { factOf } from './facts.ts';

/** The draft in other units: each number that can be read is rewritten, anything else stays as it was typed. */
export function withUnits(draft: SheetDraft, units: UnitSystem): SheetDraft {
  const before: UnitSystem = draft.typed.units === 'us' ? 'us' : 'metric';
  if (before === units) return draft;
  const typed: Record<string, string> = { ...draft.typed, units };
  for (const id of draftFactIds(draft)) {
    const fact = factOf(id);
    const text = draft.typed[id];
    if (fact.answer.type !== 'number' || text === undefined || text.trim() === '') continue;
    const reading = readFact(fact, text, before);
    if (reading.ok) typed[id] = textOfFact(fact, reading.value, units);
  }
  return { ...draft, typed };
}
