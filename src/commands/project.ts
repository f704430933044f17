/** Where the project lies, and how its commands start one another. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** The project's folder, with its last slash. */
export const root = fileURLToPath(new URL('../../', import.meta.url));

export interface Ran {
  code: number;
  /** What it printed, both streams in the order they came. */
  output: string;
}

/** What a test runner sets for itself and a build would take for its own. */
const notInherited = /^(NODE_ENV|MODE|BASE_URL|DEV|PROD|SSR|TEST|VITEST.*)$/;

const inherited = (): NodeJS.ProcessEnv =>
  Object.fromEntries(Object.entries(process.env).filter(([name]) => !notInherited.test(name)));

/**
 * Run a script with this same Node, in the project's folder. Its words are kept, and shown as they come where it is
 * `live`. `script` is a path from the project's folder.
 */
export function runNode(
  script: string,
  args: readonly string[] = [],
  env: NodeJS.ProcessEnv = {},
  show: 'live' | 'kept' = 'live',
): Promise<Ran> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, [script, ...args], {
      cwd: root,
      env: { ...inherited(), ASTRO_TELEMETRY_DISABLED: '1', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    const keep = (to: NodeJS.WriteStream) => (chunk: Buffer) => {
      output += chunk;
      if (show === 'live') to.write(chunk);
    };
    child.stdout.on('data', keep(process.stdout));
    child.stderr.on('data', keep(process.stderr));
    child.on('error', fail);
    child.on('close', (code) => done({ code: code ?? 1, output }));
  });
}

/** The scripts of the tools we use, as paths from the project's folder. */
export const tools = {
  astro: 'node_modules/astro/bin/astro.mjs',
  biome: 'node_modules/@biomejs/biome/bin/biome',
  tsc: 'node_modules/typescript/bin/tsc',
  vitest: 'node_modules/vitest/vitest.mjs',
} as const;
