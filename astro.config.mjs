import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';

/** A sub-path to serve under (`/guide/`), for hosts that give no root of their own. */
const base = process.env['FAULTWRIGHT_BASE'] ?? '/';

export default defineConfig({
  base,
  output: 'static',
  trailingSlash: 'always',
  outDir: process.env['FAULTWRIGHT_OUT'] ?? './dist',
  publicDir: './src/public',
  prefetch: false,
  devToolbar: { enabled: false },
  // Astro's own default removes the space between inline elements on separate lines, which would glue numbers to words.
  compressHTML: true,
  prerenderConflictBehavior: 'error',
  build: { format: 'directory', inlineStylesheets: 'never' },
  integrations: [mdx(), preact()],
  security: {
    csp: {
      algorithm: 'SHA-256',
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
