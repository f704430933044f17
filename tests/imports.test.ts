import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

/**
 * Which room may import which. A room is a folder of `src`, or `machines`. What is not listed may not be imported;
 * a room may always import itself, Node's own modules and packages.
 */
const domain = [
  'quantity',
  'worksheets',
  'site',
  'expected',
  'sheet-check',
  'safety',
  'guide',
  'visit',
  'drawings',
  'search',
  'plant',
  'closed-loop',
  'suspects',
] as const;
const shown = [
  ...domain,
  'machines',
  'words',
  'offline',
  'islands',
  'components',
  'layouts',
  'styles',
] as const;

const mayImport: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  words: [],
  offline: [],
  worksheets: ['quantity'],
  site: ['quantity'],
  expected: ['quantity', 'site', 'worksheets'],
  'sheet-check': ['quantity', 'site', 'worksheets', 'expected'],
  safety: ['quantity', 'site'],
  guide: ['quantity', 'site', 'expected', 'safety'],
  machines: ['guide', 'expected', 'worksheets', 'safety', 'site', 'quantity'],
  visit: ['guide', 'site', 'safety', 'expected', 'quantity'],
  drawings: ['quantity', 'site'],
  search: ['quantity', 'guide', 'content-schemas'],
  plant: ['quantity', 'site'],
  'closed-loop': [
    'plant',
    'drawings',
    'visit',
    'guide',
    'expected',
    'safety',
    'machines',
    'site',
    'quantity',
  ],
  suspects: ['quantity'],
  islands: shown,
  components: [...shown, 'content-schemas'],
  layouts: shown,
  styles: [],
  pages: [...shown, 'content-schemas', 'handbook'],
  'content-schemas': [],
  'content.config': ['content-schemas'],
  commands: [...domain, 'machines', 'words', 'offline', 'components', 'content-schemas', 'handbook'],
};

/** Rooms whose code also runs under Node by itself: no page, no markup, no component. */
const plain = [...domain, 'machines', 'words', 'commands'];

const top = fileURLToPath(new URL('..', import.meta.url));
const sourceFile = /\.(ts|tsx|mts|mjs|astro)$/;

interface Source {
  /** From the project's folder, with forward slashes. */
  path: string;
  room: string;
  /** What stands between the quotes, of types too. */
  imports: string[];
}

const statement =
  /(?:^|[\n;])\s*(?:import|export)\s+(?:type\s)?(?:[^'"`;()]*?\sfrom\s+)?['"]([^'"\n]+)['"]|\bimport\(\s*['"]([^'"\n]+)['"]\s*\)/g;

const comment = /\/\*[\s\S]*?\*\/|(?<=^|[\s;{}])\/\/[^\n]*/g;

function importsIn(text: string): string[] {
  return [...text.replace(comment, '').matchAll(statement)].map(([, still, later]) => (still ?? later)!);
}

/** `src/guide/judge.ts` → `guide`, `src/content.config.ts` → `content.config`, `machines/x.ts` → `machines`. */
const roomOf = (path: string): string => {
  const [first, second = ''] = path.split('/');
  // The published figures, which the trace shows as the tests hold them.
  if (path.startsWith('tests/handbook/')) return 'handbook';
  return first === 'src' ? second.replace(sourceFile, '') : (first ?? '');
};

function sourcesIn(folder: string): Source[] {
  return readdirSync(join(top, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && sourceFile.test(entry.name))
    .map((entry) => relative(top, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((path) => !path.endsWith('.d.ts'))
    .map((path) => ({ path, room: roomOf(path), imports: importsIn(readFileSync(join(top, path), 'utf8')) }));
}

const sources = [...sourcesIn('src'), ...sourcesIn('machines')];

/** The file that a relative import names, from the project's folder. */
const target = (from: string, to: string): string =>
  relative(top, resolve(top, dirname(from), to.replace(/\?.*$/, '')))
    .split(sep)
    .join('/');

const ours = ({ path, imports }: Source) =>
  imports.filter((to) => to.startsWith('.')).map((to) => target(path, to));

describe('reading imports', () => {
  it('sees every way of writing one, and none in a comment', () => {
    const text = `
      import a, { b } from './a.ts';
      import type { C } from '../c.ts';
      import {
        d,
      } from './d.ts';
      import './e.css';
      export * from './f.ts';
      export { g } from './g.ts';
      const h = await import('./h.ts');
      // import i from './i.ts';
      /* import j from './j.ts'; */
      const k = 'from nowhere';`;
    expect(importsIn(text)).toEqual(['./a.ts', '../c.ts', './d.ts', './e.css', './f.ts', './g.ts', './h.ts']);
  });

  it('finds the project: hundreds of files, each in a room that the table knows', () => {
    expect(sources.length).toBeGreaterThan(150);
    const unknown = sources.filter(({ room }) => !(room in mayImport)).map(({ path }) => path);
    expect(unknown).toEqual([]);
  });
});

describe('imports', () => {
  it('run only in the direction of the table', () => {
    const against = sources.flatMap((source) =>
      ours(source)
        .filter((target) => {
          const room = roomOf(target);
          return room !== source.room && !mayImport[source.room]?.includes(room);
        })
        .map((target) => `${source.path} imports ${target}`),
    );
    expect(against).toEqual([]);
  });

  it('name the file with its ending where Node runs the code by itself', () => {
    const bare = sources
      .filter(({ room }) => plain.includes(room))
      .flatMap((source) =>
        ours(source)
          .filter((target) => !target.endsWith('.ts'))
          .map((target) => `${source.path} imports ${target}`),
      );
    expect(bare).toEqual([]);
  });

  it('bring no page, markup or component into the rooms that know nothing of a browser', () => {
    const rooms: readonly string[] = [...domain, 'machines', 'words'];
    const wrong = sources
      .filter(({ room }) => rooms.includes(room))
      .flatMap(({ path, imports }) =>
        imports
          .filter((to) => /^(astro|preact|@astrojs)\b|\.(astro|tsx|css)$/.test(to))
          .map((to) => `${path} imports ${to}`),
      );
    expect(wrong).toEqual([]);
  });

  it('never go round in a circle', () => {
    const graph = new Map(sources.map((source) => [source.path, ours(source)]));
    const done = new Set<string>();
    const circles: string[] = [];
    const visit = (path: string, way: readonly string[]): void => {
      const at = way.indexOf(path);
      if (at >= 0) circles.push([...way.slice(at), path].join(' → '));
      if (at >= 0 || done.has(path)) return;
      for (const next of graph.get(path) ?? []) visit(next, [...way, path]);
      done.add(path);
    };
    for (const path of graph.keys()) visit(path, []);
    expect(circles).toEqual([]);
  });
});
