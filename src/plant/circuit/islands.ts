import type { Circuit, Node, PartId } from './netlist.ts';

/** Parts that hang together without going through ground: each group is solved by itself. */
export interface Island {
  /** Its nodes, ground left out; the place in the list is the row in the equations. */
  nodes: Node[];
  parts: PartId[];
  /** No part reaches ground: only differences inside it mean anything. */
  floating: boolean;
}

/** Splits a circuit where only ground joins it. */
export function islandsOf({ nodes, parts }: Circuit): Island[] {
  const parent = Int32Array.from(nodes, (_, i) => i);
  const root = (node: Node): Node => {
    let at = node;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!;
      at = parent[at]!;
    }
    return at;
  };
  for (const { a, b } of parts) if (a !== 0 && b !== 0) parent[root(a)] = root(b);
  const byRoot = new Map<Node, Island>();
  for (let node = 1; node < nodes.length; node++) {
    const at = root(node);
    const island = byRoot.get(at);
    if (island) island.nodes.push(node);
    else byRoot.set(at, { nodes: [node], parts: [], floating: true });
  }
  parts.forEach(({ a, b }, id) => {
    const island = byRoot.get(root(a === 0 ? b : a));
    if (!island) return;
    island.parts.push(id);
    if (a === 0 || b === 0) island.floating = false;
  });
  return [...byRoot.values()];
}
