import { describe, expect, test } from 'vitest';
import { guides, procedures, proceduresById } from '../../machines/index.ts';
import { familyOfEach } from '../../src/expected/families.ts';
import { scales, waits, works } from '../../src/expected/index.ts';
import { flatten } from '../../src/guide/flatten.ts';
import { leanGuide, performedBy } from '../../src/guide/lean.ts';
import type { Machine } from '../../src/guide/vocabulary.ts';

const familyOf = await familyOfEach();

test('the families hold every expectation there is, and no other', () => {
  const all = [
    ...Object.keys(scales).map((id) => `scale:${id}`),
    ...Object.keys(works).map((id) => `work:${id}`),
    ...Object.keys(waits).map((id) => `wait:${id}`),
  ];
  expect(Object.keys(familyOf).sort()).toEqual(all.sort());
});

describe.each([...guides, ...procedures].map((machine) => [machine.id, machine] as const))(
  '%s',
  (_id, machine) => {
    const edgesOf = (flat: ReturnType<typeof flatten>, path: string) => flat.nodes.get(path)?.edges;
    const whole = flatten(machine, proceduresById);

    test('as the browser first has it, leads from its own steps where the whole machine leads', () => {
      const lean = JSON.parse(JSON.stringify(leanGuide(machine, proceduresById, familyOf)));
      const flat = flatten(lean.machine, lean.outlines);
      const own = [...whole.nodes.keys()].filter((path) => !path.includes('/'));
      for (const path of own) expect(edgesOf(flat, path)).toEqual(edgesOf(whole, path));
      expect([flat.start, flat.stop, flat.escape]).toEqual([whole.start, whole.stop, whole.escape]);
    });

    test('with its procedures fetched, has the whole machine’s graph', () => {
      const known: Record<string, Machine> = {};
      for (const each of performedBy(machine, proceduresById))
        known[each.id] = leanGuide(each, proceduresById, familyOf).machine;
      const flat = flatten(leanGuide(machine, proceduresById, familyOf).machine, known);
      expect([...flat.nodes.keys()]).toEqual([...whole.nodes.keys()]);
      for (const path of whole.nodes.keys()) expect(edgesOf(flat, path)).toEqual(edgesOf(whole, path));
    });
  },
);
