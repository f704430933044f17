import { href } from '../../components/href.ts';
import type { ScaleDef, WaitDef, WorkDef } from '../../expected/context.ts';
import { families } from '../../expected/families.ts';
import { type FlatNode, flatten } from '../../guide/flatten.ts';
import type { LeanGuide } from '../../guide/lean.ts';
import { movesOf } from '../../guide/moves.ts';
import { questions } from '../../guide/questions.ts';
import type { Machine } from '../../guide/vocabulary.ts';
import type { Knowledge } from '../../visit/knowledge.ts';

/**
 * What a run is judged by, fetched as the run comes to it: the guide at once, each procedure when its first step is
 * reached, and the expectations of a step before it is shown. Everything comes from this site's own saved files.
 */
export class Book {
  #know: Knowledge;
  readonly #machine: Machine;
  readonly #familyOf: Record<string, string>;
  readonly #procedures: Record<string, Machine>;
  /** Procedures that are here whole, and not in outline. */
  readonly #whole = new Set<string>();
  readonly #loaded = new Set<string>();

  private constructor(guide: LeanGuide) {
    this.#machine = guide.machine;
    this.#familyOf = { ...guide.families };
    this.#procedures = { ...guide.outlines };
    this.#know = {
      compiled: movesOf(flatten(guide.machine, guide.outlines)),
      scales: {},
      works: {},
      waits: {},
      questions,
    };
  }

  static async open(kind: 'guide' | 'procedure', id: string): Promise<Book> {
    return new Book(await fetchLean(kind, id));
  }

  get know(): Knowledge {
    return this.#know;
  }

  /** Fetches whatever the steps at these places need; each place is a path of the run. */
  async prepare(paths: Iterable<string>): Promise<void> {
    const all = new Set(paths);
    for (const path of all) await this.#procedureAt(path);
    await Promise.all(
      [...new Set([...all].flatMap((path) => this.#familiesAt(path)))].map((name) => this.#family(name)),
    );
  }

  /** The procedures on the way to a place, from the outermost in. */
  async #procedureAt(path: string): Promise<void> {
    let at = this.#machine;
    for (const part of path.split('/').slice(0, -1)) {
      const step = at.steps[part];
      if (step?.kind !== 'perform') return;
      if (!this.#whole.has(step.procedure)) await this.#fetchProcedure(step.procedure);
      at = this.#procedures[step.procedure]!;
    }
  }

  async #fetchProcedure(id: string): Promise<void> {
    const lean = await fetchLean('procedure', id);
    this.#whole.add(id);
    for (const [each, outline] of Object.entries(lean.outlines)) this.#procedures[each] ??= outline;
    this.#procedures[id] = lean.machine;
    Object.assign(this.#familyOf, lean.families);
    this.#know = { ...this.#know, compiled: movesOf(flatten(this.#machine, this.#procedures)) };
  }

  /** The families of expectations that the step at a place is judged by. */
  #familiesAt(path: string): string[] {
    const step = this.#know.compiled.flat.nodes.get(path)?.step;
    const keys =
      step?.kind === 'measure' || step?.kind === 'display'
        ? Object.values(step.readings).map((reading) => `scale:${reading.scale}`)
        : step?.kind === 'workOut'
          ? [`work:${step.ask}`]
          : step?.kind === 'wait'
            ? [`wait:${step.wait}`]
            : [];
    return keys.map((key) => this.#familyOf[key]).filter((name) => name !== undefined);
  }

  async #family(name: string): Promise<void> {
    if (this.#loaded.has(name)) return;
    const { scales, works, waits } = await families[name]!();
    this.#loaded.add(name);
    this.#know = {
      ...this.#know,
      scales: { ...this.#know.scales, ...byId<ScaleDef>(scales) },
      works: { ...this.#know.works, ...byId<WorkDef>(works) },
      waits: { ...this.#know.waits, ...byId<WaitDef>(waits) },
    };
  }

  /** The steps that a plain answer here may lead to, as far as they are here. */
  after(path: string): FlatNode[] {
    const { nodes } = this.#know.compiled.flat;
    const edges = nodes.get(path)?.edges.filter(({ outcome }) => !atEveryStep.includes(outcome)) ?? [];
    return [...new Set(edges.map(({ to }) => to))].flatMap((to) => nodes.get(to) ?? []);
  }
}

/** Answers that every step has. */
const atEveryStep: readonly string[] = ['cant', 'unsure', 'stop'];

const byId = <T extends { id: string }>(list: readonly T[] = []): Record<string, T> =>
  Object.fromEntries(list.map((each) => [each.id, each]));

async function fetchLean(kind: 'guide' | 'procedure', id: string): Promise<LeanGuide> {
  const answer = await fetch(href(`${kind}s/${id}/machine.json`));
  if (!answer.ok) throw new Error(`${kind} ${id}: ${answer.status}`);
  return (await answer.json()) as LeanGuide;
}
