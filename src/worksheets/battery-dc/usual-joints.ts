/**
 * Greatest resistance of a sound part of the battery path [Ω]. Common practice, for parts of 100 to 300 A; the data
 * sheet of a fuse, switch or breaker wins.
 */
export const usualOhms = {
  joint: 0.0001,
  fuse: 0.0004,
  switch: 0.0003,
  breaker: 0.001,
} as const;
