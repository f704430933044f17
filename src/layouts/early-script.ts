import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { transformSync } from 'esbuild';

/**
 * `early.js` as it stands in the head of every page: inside the page itself, because a file of its own would hold up the
 * first paint. `hash` lets the security policy know it.
 */
const early = transformSync(readFileSync('src/layouts/early.js', 'utf8'), {
  minify: true,
  format: 'iife',
}).code.trim();
export default early;

export const hash = `sha256-${createHash('sha256').update(early).digest('base64')}`;
