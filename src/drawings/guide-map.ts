import { type Layers, layer, type MapEdge, type Slot } from './map/layers.ts';
import { drawing, el, label, short } from './svg.ts';
import { wrap } from './wrap.ts';

export interface MapNode {
  id: string;
  title: string;
  /** `hold`, `verdict`, `end`, `perform` have shapes of their own; any other kind is a plain plate. */
  kind: string;
  /** Makes the plate a link. */
  href?: string;
}

export interface GuideMapOptions {
  /** Unique on the page. */
  id: string;
  title: string;
  /** The first is the start. */
  nodes: readonly MapNode[];
  edges: readonly MapEdge[];
  /** Steps taken, in order. */
  path?: readonly string[];
  here?: string;
}

const plate = { width: 156, lineHeight: 17, pad: 10, gap: 18, rowGap: 52, bend: 22 } as const;

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
  lines: string[];
}

/** The map of a guide: plates in rows, the way taken in heavy copper. One unit is one CSS pixel. */
export function guideMapSvg(options: GuideMapOptions): string {
  const { nodes, edges, path = [], here } = options;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const layers = layer(
    nodes.map(({ id }) => id),
    edges,
  );
  const boxes = place(layers, byId);
  const right = Math.max(...[...boxes.values()].map((box) => box.x + box.width));
  const bottom = Math.max(...[...boxes.values()].map((box) => box.y + box.height));
  const taken = new Set(path.slice(1).map((id, i) => `${path[i]} ${id}`));
  const isTaken = ({ from, to }: MapEdge) => taken.has(`${from} ${to}`);
  const lanes = layers.back.map((edge, i) => backEdge(edge, boxes, right + 14 + i * 9, isTaken(edge)));
  const ways = layers.down.map(({ edge, through }) => downEdge(edge, through, boxes, isTaken(edge)));
  const width = right + 24 + layers.back.length * 9;
  const svg = drawing(
    {
      className: 'gm',
      viewBox: [0, 0, width, bottom + 12],
      id: options.id,
      title: options.title,
      interactive: nodes.some(({ href }) => href),
    },
    // Ways taken are drawn last, so that they lie on top.
    ...[...lanes, ...ways].sort((a, b) => Number(a.taken) - Number(b.taken)).map(({ markup }) => markup),
    ...nodes.map((node) => drawPlate(node, boxes.get(node.id)!, path.includes(node.id), node.id === here)),
  );
  return svg.replace('<svg ', `<svg width="${short(width)}" height="${short(bottom + 12)}" `);
}

function place({ rows }: Layers, byId: ReadonlyMap<string, MapNode>): Map<string, Box> {
  const widthOf = (slot: Slot) => (slot.bend ? plate.bend : plate.width);
  const boxes = new Map<string, Box>();
  let y = 8;
  for (const row of rows) {
    // Every row begins at the left: a narrow screen opens on the start.
    let x = 8;
    let rowHeight = 0;
    for (const slot of row) {
      const lines = slot.bend ? [] : wrap(byId.get(slot.id)!.title, 19);
      const height = slot.bend ? 0 : Math.max(48, lines.length * plate.lineHeight + 2 * plate.pad);
      boxes.set(slot.id, { x, y, width: widthOf(slot), height, lines });
      x += widthOf(slot) + plate.gap;
      rowHeight = Math.max(rowHeight, height);
    }
    // A bend is as tall as its row, so that a passing edge runs straight by the plates.
    for (const slot of row) if (slot.bend) boxes.get(slot.id)!.height = rowHeight;
    y += rowHeight + plate.rowGap;
  }
  return boxes;
}

interface Way {
  markup: string;
  taken: boolean;
}

function downEdge(
  edge: MapEdge,
  through: readonly string[],
  boxes: ReadonlyMap<string, Box>,
  taken: boolean,
): Way {
  const stops = through.map((id) => boxes.get(id)!);
  let d = '';
  for (let i = 0; i + 1 < stops.length; i++) {
    const from = stops[i]!;
    const to = stops[i + 1]!;
    const x1 = from.x + from.width / 2;
    const y1 = from.y + from.height;
    const x2 = to.x + to.width / 2;
    const y2 = to.y;
    const half = (y1 + y2) / 2;
    d += i === 0 ? `M${short(x1)} ${short(y1)}` : `L${short(x1)} ${short(y1)}`;
    d += `C${short(x1)} ${short(half)} ${short(x2)} ${short(half)} ${short(x2)} ${short(y2)}`;
  }
  const last = stops.at(-1)!;
  const tip = arrowDown(last.x + last.width / 2, last.y);
  return { markup: way(edge, d, tip, taken), taken };
}

function backEdge(edge: MapEdge, boxes: ReadonlyMap<string, Box>, lane: number, taken: boolean): Way {
  const from = boxes.get(edge.from)!;
  const to = boxes.get(edge.to)!;
  const y1 = from.y + from.height - 12;
  const y2 = to.y + 12;
  const x2 = to.x + to.width;
  // Below the row it leaves and above the row it enters, clear of the plates between.
  const out = from.y + from.height + 12;
  const into = to.y - 12;
  const d =
    `M${short(from.x + from.width)} ${short(y1)}h8V${short(out)}H${short(lane)}` +
    `V${short(into)}H${short(x2 + 8)}V${short(y2)}h-2`;
  const tip = `M${short(x2)} ${short(y2)}l9-5v10z`;
  return { markup: way(edge, d, tip, taken), taken };
}

function arrowDown(x: number, y: number): string {
  return `M${short(x)} ${short(y)}l-5-9h10z`;
}

function way(edge: MapEdge, d: string, tip: string, taken: boolean): string {
  return el(
    'g',
    { class: taken ? 'gm-way gm-taken' : 'gm-way', 'data-from': edge.from, 'data-to': edge.to },
    el('path', { class: 'gm-line', d }),
    el('path', { class: 'gm-tip', d: tip }),
  );
}

function drawPlate(node: MapNode, box: Box, taken: boolean, here: boolean): string {
  const kinds = `gm-node gm-kind-${node.kind}${taken ? ' gm-done' : ''}${here ? ' gm-here' : ''}`;
  const round = node.kind === 'end' ? box.height / 2 : node.kind === 'perform' ? 0 : 6;
  const firstLine = box.y + box.height / 2 - (box.lines.length - 1) * (plate.lineHeight / 2) + 5;
  const inner = [
    el('rect', { class: 'gm-plate', x: box.x, y: box.y, width: box.width, height: box.height, rx: round }),
    node.kind === 'verdict' || node.kind === 'perform'
      ? el('rect', {
          class: 'gm-inner',
          x: box.x + 4,
          y: box.y + 4,
          width: box.width - 8,
          height: box.height - 8,
          rx: Math.max(0, round - 3),
        })
      : '',
    node.kind === 'hold'
      ? el('path', {
          class: 'gm-tape',
          // Over the upper edge, where no word stands.
          d: `M${short(box.x + 4)} ${short(box.y)}H${short(box.x + box.width - 4)}`,
        })
      : '',
    label('gm-title', box.x + box.width / 2, firstLine, box.lines, 'middle', plate.lineHeight),
  ];
  const attributes = { class: kinds, 'data-node': node.id, 'aria-current': here ? 'step' : undefined };
  return node.href ? el('a', { ...attributes, href: node.href }, ...inner) : el('g', attributes, ...inner);
}
