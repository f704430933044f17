import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/browser/**/*.test.ts'],
    globalSetup: ['tests/browser/support/build-once.ts'],
    // One file at a time: the tests measure nothing against a busy machine, and two browsers starve each other on two cores.
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 15_000 } },
  },
});
