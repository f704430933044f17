/** A layered layout of a guide's graph: each step below all that lead to it, ways back drawn apart. */

export interface MapEdge {
  from: string;
  to: string;
  label?: string;
}

/** A place in a layer: a step, or a bend of an edge that passes the layer by. */
export interface Slot {
  id: string;
  /** True for a bend. */
  bend: boolean;
}

export interface Layers {
  rows: Slot[][];
  /** Edges that run downwards, as the slots they pass, first and last being steps. */
  down: { edge: MapEdge; through: string[] }[];
  /** Edges that return to a step above or to themselves. */
  back: MapEdge[];
}

/** Lay the graph out in rows. The first id is the start; ids that nothing reaches stand in the first row too. */
export function layer(ids: readonly string[], edges: readonly MapEdge[]): Layers {
  const known = new Set(ids);
  const real = edges.filter(({ from, to }) => known.has(from) && known.has(to));
  const { forward, back } = split(ids, real);
  const rank = longestPath(ids, forward);
  const rows: Slot[][] = [];
  const place = (id: string, row: number, bend: boolean) => {
    while (rows.length <= row) rows.push([]);
    rows[row]!.push({ id, bend });
  };
  for (const id of ids) place(id, rank.get(id) ?? 0, false);
  const down = forward.map((edge, i) => {
    const through = [edge.from];
    for (let row = rank.get(edge.from)! + 1; row < rank.get(edge.to)!; row++) {
      const bend = `bend ${i} ${row}`;
      place(bend, row, true);
      through.push(bend);
    }
    through.push(edge.to);
    return { edge, through };
  });
  return { rows: order(rows, down), down, back };
}

/** Depth first from the start: an edge to a step still on the stack is a way back. */
function split(ids: readonly string[], edges: readonly MapEdge[]): { forward: MapEdge[]; back: MapEdge[] } {
  const out = new Map<string, MapEdge[]>();
  for (const edge of edges) {
    const list = out.get(edge.from) ?? [];
    list.push(edge);
    out.set(edge.from, list);
  }
  const forward: MapEdge[] = [];
  const back: MapEdge[] = [];
  const done = new Set<string>();
  const open = new Set<string>();
  const visit = (id: string) => {
    if (done.has(id)) return;
    open.add(id);
    for (const edge of out.get(id) ?? []) {
      if (open.has(edge.to)) back.push(edge);
      else {
        forward.push(edge);
        visit(edge.to);
      }
    }
    open.delete(id);
    done.add(id);
  };
  for (const id of ids) visit(id);
  return { forward, back };
}

function longestPath(ids: readonly string[], edges: readonly MapEdge[]): Map<string, number> {
  const rank = new Map(ids.map((id) => [id, 0]));
  // Relaxing once a step settles every longest path of a graph without ways back.
  for (let pass = 0; pass < ids.length; pass++) {
    let changed = false;
    for (const { from, to } of edges) {
      const wanted = rank.get(from)! + 1;
      if (rank.get(to)! < wanted) {
        rank.set(to, wanted);
        changed = true;
      }
    }
    if (!changed) break;
  }
  return rank;
}

/** Sort each row by the mean place of its neighbours, down and up in turn, which untangles most crossings. */
function order(rows: Slot[][], down: Layers['down']): Slot[][] {
  const above = new Map<string, string[]>();
  const below = new Map<string, string[]>();
  const add = (map: Map<string, string[]>, key: string, value: string) => {
    const list = map.get(key) ?? [];
    list.push(value);
    map.set(key, list);
  };
  for (const { through } of down) {
    for (let i = 0; i + 1 < through.length; i++) {
      add(below, through[i]!, through[i + 1]!);
      add(above, through[i + 1]!, through[i]!);
    }
  }
  let sorted = rows;
  for (let sweep = 0; sweep < 6; sweep++) {
    const neighbours = sweep % 2 === 0 ? above : below;
    const places = new Map(sorted.flatMap((row) => row.map((slot, i) => [slot.id, i] as const)));
    sorted = sorted.map((row) => {
      const weight = (slot: Slot) => {
        const list = neighbours.get(slot.id) ?? [];
        if (list.length === 0) return places.get(slot.id)!;
        return list.reduce((sum, id) => sum + places.get(id)!, 0) / list.length;
      };
      return [...row].sort((a, b) => weight(a) - weight(b));
    });
  }
  return sorted;
}
