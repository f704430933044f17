/** A sentence or a line of working by id, with the numbers that stand in it. */
export interface Said {
  readonly id: string;
  readonly params: Record<string, number>;
}

/**
 * Gathers the numbers of several objects under one id; whatever is no number, such as a verdict or a result
 * that has no meaning here, is left out. Later parts win.
 */
export function say(id: string, ...parts: readonly object[]): Said {
  const pairs = parts.flatMap((part) => Object.entries(part));
  return { id, params: Object.fromEntries(pairs.filter((pair) => typeof pair[1] === 'number')) };
}
