/** A file's text as JSON, or why it is none that this program would write. */
export type Json = { ok: true; value: unknown } | { ok: false; why: 'poisoned' | 'notJson' };

/** Keys that would reach into every object of the program if they were ever copied. */
const poisonedKeys = ['__proto__', 'constructor', 'prototype'];

/** Reads a file that somebody else may have made: nothing of it is trusted but that it is JSON. */
export function readJson(text: string): Json {
  let poisoned = false;
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''), (key, part) => {
      poisoned ||= poisonedKeys.includes(key);
      return part;
    });
    return poisoned ? { ok: false, why: 'poisoned' } : { ok: true, value };
  } catch {
    // A syntax error, or nesting too deep to walk: in both cases no file that was exported here.
    return { ok: false, why: 'notJson' };
  }
}
