/** A source of chance that repeats itself for the same seed, on every machine. */
export interface Random {
  /** In [0, 1). */
  next(): number;
  /** Evenly in [low, high). */
  between(low: number, high: number): number;
  /** Evenly in the logarithm; both ends above 0. */
  logBetween(low: number, high: number): number;
  /** A whole number from low to high, both possible. */
  whole(low: number, high: number): number;
  /** One of the list, which is not empty. */
  pick<T>(list: readonly T[]): T;
  /** True with this probability. */
  chance(probability: number): boolean;
  /** Normal deviate, mean 0, standard deviation 1 (Box & Muller, Ann. Math. Stat. 29, 1958). */
  normal(): number;
  /** A new source, set by this one's next number and a name: adding a draw in one part moves no other part. */
  fork(name: string): Random;
}

/** 32-bit FNV-1a of a text, to turn names into seeds. */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

/** The generator "mulberry32" (Tommy Ettinger, public domain): 32 bits of state, enough for sampling plants. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x1_0000_0000;
  };
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    logBetween: (low, high) => low * (high / low) ** next(),
    whole: (low, high) => low + Math.floor(next() * (high - low + 1)),
    pick: (list) => list[Math.floor(next() * list.length)]!,
    chance: (probability) => next() < probability,
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    fork: (name) => randomFrom((Math.floor(next() * 0x1_0000_0000) ^ hashText(name)) >>> 0),
  };
}
