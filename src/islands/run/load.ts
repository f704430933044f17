import { scales, waits, works } from '../../expected/index.ts';
import { compile } from '../../guide/compile.ts';
import { flatten } from '../../guide/flatten.ts';
import { questions } from '../../guide/questions.ts';
import type { Machine } from '../../guide/vocabulary.ts';
import type { Knowledge } from '../../visit/knowledge.ts';

type Load = () => Promise<unknown>;

/** Each machine in a file of its own, fetched only when a page runs it. */
const guideFiles: Record<string, Load> = import.meta.glob(
  ['../../../machines/*.ts', '!../../../machines/index.ts', '!../../../machines/shared.ts'],
  { import: 'default' },
);
const procedureFiles: Record<string, Load> = import.meta.glob('../../../machines/procedures/*.ts', {
  import: 'default',
});

async function machine(id: string): Promise<Machine> {
  const load =
    guideFiles[`../../../machines/${id}.ts`] ?? procedureFiles[`../../../machines/procedures/${id}.ts`];
  if (!load) throw new Error(`no machine ${id}`);
  return (await load()) as Machine;
}

/** The procedures that these machines perform, and those that they perform in turn. */
async function performed(
  machines: readonly Machine[],
  found: Record<string, Machine> = {},
): Promise<Record<string, Machine>> {
  const ids = machines
    .flatMap(({ steps }) => Object.values(steps))
    .flatMap((step) => (step.kind === 'perform' ? [step.procedure] : []))
    .filter((id) => !found[id]);
  if (ids.length === 0) return found;
  const loaded = await Promise.all([...new Set(ids)].map(machine));
  return performed(loaded, { ...found, ...Object.fromEntries(loaded.map((each) => [each.id, each])) });
}

/** A guide or procedure with everything that judges it. */
export async function loadKnowledge(id: string): Promise<Knowledge> {
  const own = await machine(id);
  const procedures = await performed([own]);
  return { compiled: compile(flatten(own, procedures)), scales, works, waits, questions };
}
