import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/browser/**/*.test.ts'],
    globalSetup: ['tests/browser/support/build-once.ts'],
    // Two at a time: each waits for its browser more than it works, and the tests time nothing.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 15_000 } },
  },
});
