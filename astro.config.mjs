import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { hash } from './src/layouts/early-script.ts';

/** A sub-path to serve under (`/guide/`), for hosts that give no root of their own. */
const base = process.env.FAULTWRIGHT_BASE ?? '/';

/** Files of `src/` by the start of their path. */
const files = (...paths) => new RegExp(`/src/(${paths.join('|')})`);

/**
 * Scripts that are wanted together, in one file: a phone asks its saved files for each one in turn, and a dozen small ones
 * take it longer than one of the same size.
 */
const together = [
  {
    name: 'base',
    priority: 1,
    test: files(
      'components/href',
      'expected/(earlier|hot-cell|pv/(build|site|string-volts))',
      'islands/run/dom',
      'quantity/',
      'safety/(effects|plant)',
      'site/(fact-paths|meter)',
      'visit/(db|log-limits|store|uncertainty)',
      'words/en/(devices|run-page|zones)',
      'worksheets/(result|pv/string-volts)',
    ),
  },
  {
    name: 'pv-string',
    test: files('expected/pv/(battery|refusal|volts|works)', 'worksheets/pv/string-window'),
  },
];

export default defineConfig({
  base,
  output: 'static',
  trailingSlash: 'always',
  outDir: process.env.FAULTWRIGHT_OUT ?? './dist',
  publicDir: './src/public',
  prefetch: false,
  devToolbar: { enabled: false },
  // Astro's own default removes the space between inline elements on separate lines, which would glue numbers to words.
  compressHTML: true,
  prerenderConflictBehavior: 'error',
  build: { format: 'directory', inlineStylesheets: 'never' },
  integrations: [mdx(), preact()],
  vite: {
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: { codeSplitting: { groups: together } },
          },
        },
      },
    },
  },
  security: {
    csp: {
      algorithm: 'SHA-256',
      scriptDirective: { hashes: [hash] },
      directives: [
        "default-src 'self'",
        "connect-src 'self'",
        "img-src 'self' data: blob:",
        "font-src 'self'",
        "manifest-src 'self'",
        "worker-src 'self'",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
      ],
    },
  },
});
