import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Machine } from '../vocabulary.ts';

const looksLikeMachine = (value: unknown): value is Machine =>
  typeof value === 'object' && value !== null && 'steps' in value && 'start' in value && 'id' in value;

/**
 * Reads a machine from a file: JSON, or a module whose default export (or only machine export) is one.
 * @throws Error that says what was expected
 */
export async function loadMachine(file: string): Promise<Machine> {
  const path = resolve(file);
  const value: unknown = file.endsWith('.json')
    ? JSON.parse(await readFile(path, 'utf8'))
    : await import(pathToFileURL(path).href).then(
        (module: Record<string, unknown>) => module.default ?? Object.values(module).find(looksLikeMachine),
      );
  if (!looksLikeMachine(value))
    throw new Error(`${file}: expected a machine with id, start and steps (default export, or JSON)`);
  return value;
}
