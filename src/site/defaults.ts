import type { UnitSystem } from '../quantity/kinds.ts';
import { draftFactIds, type SheetDraft, type SheetList } from './draft.ts';
import { factOf } from './facts.ts';

/**
 * An empty sheet, ready to be typed: every fact that may stay unknown is unknown, and nothing is assumed about
 * the install but that it has one tracker and one string to describe.
 */
export function emptyDraft(id: string, units: UnitSystem): SheetDraft {
  const draft: SheetDraft = {
    id,
    invented: false,
    rows: { trackers: 1, strings: 1 },
    typed: { units },
    unknown: [],
  };
  return { ...draft, unknown: draftFactIds(draft).filter((each) => factOf(each).unknownAllowed) };
}

/** The draft with one more row at the end of a list, empty but for the unknowns. */
export function withRow(draft: SheetDraft, list: SheetList): SheetDraft {
  const row = draft.rows[list];
  const longer = { ...draft, rows: { ...draft.rows, [list]: row + 1 } };
  const added = draftFactIds(longer).filter(
    (id) => id.startsWith(`${list}[${row}].`) && factOf(id).unknownAllowed,
  );
  return { ...longer, unknown: [...draft.unknown, ...added] };
}

/** The draft without one row of a list; the rows after it move up. */
export function withoutRow(draft: SheetDraft, list: SheetList, row: number): SheetDraft {
  const moved = (id: string): string | undefined => {
    const at = new RegExp(`^${list}\\[(\\d+)\\]`).exec(id);
    if (!at) return id;
    const index = Number(at[1]);
    if (index === row) return undefined;
    return index > row ? id.replace(`[${index}]`, `[${index - 1}]`) : id;
  };
  const kept = <T>(pairs: [string, T][]): [string, T][] =>
    pairs.flatMap(([id, value]) => {
      const to = moved(id);
      return to === undefined ? [] : [[to, value] as [string, T]];
    });
  return {
    ...draft,
    rows: { ...draft.rows, [list]: draft.rows[list] - 1 },
    typed: Object.fromEntries(kept(Object.entries(draft.typed))),
    unknown: draft.unknown.flatMap((id) => moved(id) ?? []),
  };
}
