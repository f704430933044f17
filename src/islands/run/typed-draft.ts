/**
 * What is typed and not yet handed in, kept over a reload: one step's worth, in local storage, and in memory where that is
 * blocked. It is no part of the visit.
 */
const key = 'faultwright-typed';

export interface TypedDraft {
  /** Visit and place that it was typed at. */
  at: string;
  texts: Record<string, string>;
  /** Rows of a series: seconds and value. */
  rows: Record<string, [string, string][]>;
  /** When the clock of a series was started, milliseconds since 1970. */
  clocks: Record<string, number>;
}

let held: TypedDraft | undefined;

const empty = (at: string): TypedDraft => ({ at, texts: {}, rows: {}, clocks: {} });

/** What was typed at this place of this visit. */
export function typedAt(at: string): TypedDraft {
  if (held?.at === at) return held;
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? 'null') as Partial<TypedDraft> | null;
    held = kept?.at === at ? { ...empty(at), ...kept } : empty(at);
  } catch {
    held = empty(at); // Blocked, or not ours to read.
  }
  return held;
}

export function keepTyped(draft: TypedDraft): void {
  held = draft;
  try {
    localStorage.setItem(key, JSON.stringify(draft));
  } catch {
    // Blocked or full: what is typed stays on the screen all the same.
  }
}

export function forgetTyped(): void {
  held = undefined;
  try {
    localStorage.removeItem(key);
  } catch {
    // Blocked: nothing was kept.
  }
}
