import { defineConfig } from 'vitest/config';

/** Files that ask ngspice: its engine keeps its last answer for as long as its process lives, so each gets its own. */
const spice = ['tests/spice/**/*.test.ts', 'tests/plant/*spice.test.ts'];

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    testTimeout: 60_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'units',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'node_modules/**', ...spice],
          // Nothing here changes a module's state: to read all modules once and not for each file halves the time.
          isolate: false,
        },
      },
      { extends: true, test: { name: 'spice', include: spice } },
    ],
  },
});
