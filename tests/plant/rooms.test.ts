import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { anchorIds, pointIds, testPoints } from '../../src/drawings/plant/points.ts';
import { answerReading, firstSubject, meterOf, randomFrom, samplePlant } from '../../src/plant/index.ts';
import { conductorOf, spotOf } from '../../src/plant/places.ts';
import { sallowCreek } from '../../src/site/demo.ts';

const top = fileURLToPath(new URL('../..', import.meta.url));

/** Everything a file brings in, and what that brings in, from the project's folder. */
function reached(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  const text = readFileSync(join(top, file), 'utf8');
  for (const [, to] of text.matchAll(/(?:from|import)\s*\(?\s*'(\.[^']+\.ts)'/g))
    reached(relative(top, resolve(top, dirname(file), to!)), seen);
  return seen;
}

const filesIn = (room: string): string[] =>
  readdirSync(join(top, 'src', room), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `src/${room}/${name}`);

const reach = (room: string): string[] => {
  const all = new Set<string>();
  for (const file of filesIn(room)) reached(file, all);
  return [...all];
};

it('the plant knows nothing of worksheets and expected bands, by any way round', () => {
  const found = reach('plant');
  expect(found.length).toBeGreaterThan(30);
  expect(found.filter((file) => /^src\/(worksheets|expected)\//.test(file))).toEqual([]);
});

it.each(['worksheets', 'expected'])('%s know nothing of the plant', (room) => {
  const found = reach(room);
  expect(found.length).toBeGreaterThan(10);
  expect(found.filter((file) => file.startsWith('src/plant/'))).toEqual([]);
});

it('the plant needs no package at run time', () => {
  const packages = filesIn('plant').flatMap((file) =>
    [...readFileSync(join(top, file), 'utf8').matchAll(/from '([^.'][^']*)'/g)].map(([, name]) => name),
  );
  expect(packages).toEqual([]);
});

it('every place of the drawing is a place of the plant', () => {
  expect(anchorIds.filter((anchor) => spotOf(anchor, firstSubject, 0) === undefined)).toEqual([]);
  const clamps = pointIds.flatMap((id) =>
    testPoints[id].pairs.flatMap((pair) => ('clamp' in pair ? [pair.clamp] : [])),
  );
  expect(clamps.filter((anchor) => conductorOf(anchor, firstSubject) === undefined)).toEqual([]);
});

it('every further point is a place too, on a plant of several trackers', () => {
  const { plant } = samplePlant({ sheet: sallowCreek, fault: undefined, seed: 1 })!;
  const asker = {
    meter: meterOf(sallowCreek, randomFrom(1), false),
    subject: firstSubject,
    sheetTracker: 0,
    random: randomFrom(1),
  };
  for (const point of [
    'tracker',
    'tracker-across',
    'tracker-back',
    'fuse',
    'array',
    'run',
    'pack-breaker',
    'unit-dc',
    'unit-switch',
    'link-pack',
    'wire-same',
    'sister-P1',
    'proving-source',
    'frame',
  ]) {
    const mode = point === 'array' ? 'dcClamp' : 'dcVolts';
    expect(answerReading(plant, { point, mode }, asker)?.shown.kind).toBe('value');
  }
  expect(answerReading(plant, { point: 'clock', mode: 'dcVolts' }, asker)).toBeUndefined();
  expect(answerReading(plant, { point: 'module', mode: 'temperature' }, asker)?.shown.kind).toBe('value');
});
