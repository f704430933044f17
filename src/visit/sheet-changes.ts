import type { FactValue } from '../site/fact-paths.ts';
import type { SiteSheet } from '../site/sheet.ts';

/** A fact of the sheet before and after; `null` where it was not known or not there. */
export interface FactChange {
  id: string;
  from: FactValue;
  to: FactValue;
}

function leaves(value: unknown, id: string, into: Map<string, FactValue>): Map<string, FactValue> {
  if (typeof value !== 'object' || value === null) into.set(id, value as FactValue);
  else if (Array.isArray(value))
    for (const [row, part] of value.entries()) leaves(part, `${id}[${row}]`, into);
  else for (const [key, part] of Object.entries(value)) leaves(part, id === '' ? key : `${id}.${key}`, into);
  return into;
}

/** Facts that differ between two states of a sheet. */
export function sheetChanges(before: SiteSheet, after: SiteSheet): FactChange[] {
  const from = leaves(before, '', new Map());
  const to = leaves(after, '', new Map());
  return [...new Set([...from.keys(), ...to.keys()])]
    .map((id) => ({ id, from: from.get(id) ?? null, to: to.get(id) ?? null }))
    .filter((change) => change.from !== change.to);
}
