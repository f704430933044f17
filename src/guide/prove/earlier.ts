import type { Flat, FlatNode } from '../flatten.ts';
import { mayGoBack } from '../going-back.ts';

const questionKinds: readonly string[] = ['look', 'choose', 'workOut', 'display', 'measure', 'pair'];

/**
 * The earlier questions that a run can be taken back to from each step. Sets of steps are bit rows, because the walk asks
 * for them at every pair of step and energy state.
 */
export class Earlier {
  readonly size: number;
  private readonly nodes: readonly FlatNode[];
  private readonly index: ReadonlyMap<string, number>;
  private readonly before: readonly Uint32Array[];
  private readonly words: number;
  /** For each energy state: the questions open in it, and those already handed out. */
  private readonly open = new Map<string, Uint32Array>();
  private readonly given = new Map<string, Uint32Array>();

  constructor(flat: Flat) {
    this.nodes = [...flat.nodes.values()];
    this.size = this.nodes.length;
    this.index = new Map(this.nodes.map((node, i) => [node.path, i]));
    this.words = Math.ceil(this.size / 32);
    this.before = this.ancestors();
  }

  indexOf(path: string): number {
    return this.index.get(path)!;
  }

  /** Forget what was handed out: a new plant is walked. */
  restart(): this {
    this.open.clear();
    this.given.clear();
    return this;
  }

  /** Questions before a step that are open in an energy state and were not handed out for that state yet. */
  newTargets(path: string, energyKey: string, isOpen: (question: FlatNode) => boolean): FlatNode[] {
    let open = this.open.get(energyKey);
    if (!open) {
      open = new Uint32Array(this.words);
      for (let i = 0; i < this.size; i++)
        if (questionKinds.includes(this.nodes[i]!.step.kind) && isOpen(this.nodes[i]!)) set(open, i);
      this.open.set(energyKey, open);
      this.given.set(energyKey, new Uint32Array(this.words));
    }
    const given = this.given.get(energyKey)!;
    const before = this.before[this.indexOf(path)]!;
    const list: FlatNode[] = [];
    for (let w = 0; w < this.words; w++) {
      let fresh = before[w]! & open[w]! & ~given[w]!;
      if (fresh === 0) continue;
      given[w]! |= fresh;
      for (; fresh !== 0; fresh &= fresh - 1)
        list.push(this.nodes[w * 32 + 31 - Math.clz32(fresh & -fresh)]!);
    }
    return list;
  }

  private ancestors(): Uint32Array[] {
    const parents: number[][] = this.nodes.map(() => []);
    this.nodes.forEach((node, from) => {
      for (const edge of node.edges)
        for (const to of [edge.to, edge.limit?.otherwise])
          if (to !== undefined) parents[this.indexOf(to)]!.push(from);
    });
    return this.nodes.map((_, node) => {
      const row = new Uint32Array(this.words);
      const queue = [...parents[node]!];
      for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
        if (has(row, at)) continue;
        set(row, at);
        queue.push(...parents[at]!);
      }
      for (let i = 0; i < this.size; i++) if (!mayGoBack(this.nodes[node]!, this.nodes[i]!)) unset(row, i);
      return row;
    });
  }
}

const unset = (row: Uint32Array, i: number) => {
  row[i >> 5]! &= ~(1 << (i & 31));
};
const set = (row: Uint32Array, i: number) => {
  row[i >> 5]! |= 1 << (i & 31);
};
const has = (row: Uint32Array, i: number) => (row[i >> 5]! & (1 << (i & 31))) !== 0;
