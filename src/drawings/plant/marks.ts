import { el, escapeMarkup, line, type Spot } from '../svg.ts';

/** Marks that say what state a part is in and where the leads go: by shape and letter, colour added. */

/** A filled bolt: these conductors are live. */
export function bolt({ x, y }: Spot): string {
  return el(
    'g',
    { class: 'pd-mark pd-mark-live' },
    el('rect', { class: 'pd-plate', x: x - 10, y: y - 12, width: 20, height: 24, rx: 3 }),
    el('path', { class: 'pd-bolt', d: `M${x + 2} ${y - 10}l-8 12h5l-2 8 8-12h-5z` }),
  );
}

/** A padlock: open and locked. */
export function padlock({ x, y }: Spot): string {
  return el(
    'g',
    { class: 'pd-mark pd-mark-locked' },
    el('rect', { class: 'pd-halo', x: x - 13, y: y - 15, width: 26, height: 29, rx: 4 }),
    el('path', { class: 'pd-shackle', d: `M${x - 6} ${y - 1}v-5a6 6 0 0 1 12 0v5` }),
    el('rect', { class: 'pd-plate', x: x - 10, y: y - 1, width: 20, height: 14, rx: 2 }),
    el('circle', { class: 'pd-keyhole', cx: x, cy: y + 6, r: 2.5 }),
  );
}

/** A nought in a frame: proved dead. */
export function dead({ x, y }: Spot, words: string): string {
  const width = 12 + words.length * 7.5;
  return el(
    'g',
    { class: 'pd-mark pd-mark-dead' },
    el('rect', { class: 'pd-frame', x: x - width / 2, y: y - 11, width, height: 22, rx: 2 }),
    el('text', { class: 'pd-mark-text', x, y: y + 5, 'text-anchor': 'middle' }, escapeMarkup(words)),
  );
}

/** A question mark in a broken ring: not known, so treat as live. */
export function unknown({ x, y }: Spot): string {
  return el(
    'g',
    { class: 'pd-mark pd-mark-unknown' },
    el('circle', { class: 'pd-frame', cx: x, cy: y, r: 11 }),
    el('text', { class: 'pd-mark-text', x, y: y + 5, 'text-anchor': 'middle' }, '?'),
  );
}

/** The letters of a test point. */
export function code({ x, y }: Spot, id: string, chosen: boolean): string {
  const width = id.length > 1 ? 28 : 22;
  return el(
    'g',
    { class: chosen ? 'pd-code pd-code-here' : 'pd-code', 'data-point': id },
    el('rect', { x: x - width / 2, y: y - 10, width, height: 20, rx: 4 }),
    el('text', { x, y: y + 5, 'text-anchor': 'middle' }, id),
  );
}

/** A lead with its tip on the spot. Red is a square tag, black a round one; each bears its letter. */
export function lead(at: Spot & { side: 'left' | 'right' }, colour: 'red' | 'black', letter: string): string {
  const way = at.side === 'left' ? -1 : 1;
  const tagX = at.x + way * 27;
  const tag =
    colour === 'red'
      ? el('rect', { class: 'pd-tag', x: tagX - 12, y: at.y - 12, width: 24, height: 24 })
      : el('circle', { class: 'pd-tag', cx: tagX, cy: at.y, r: 12.5 });
  return el(
    'g',
    { class: `pd-lead pd-lead-${colour}`, 'data-lead': colour },
    el('circle', { class: 'pd-tip', cx: at.x, cy: at.y, r: 8 }),
    line('pd-probe', at.x, at.y, tagX, at.y),
    tag,
    el('text', { x: tagX, y: at.y + 6, 'text-anchor': 'middle' }, escapeMarkup(letter)),
  );
}

/** A clamp round one conductor, jaws closed; on its body the arrow that must point the way the current counts as positive. */
export function clamp(at: Spot & { side: 'left' | 'right'; flow?: 'up' | 'down' }, above: number): string {
  const way = at.side === 'left' ? -1 : 1;
  const y = at.y + above;
  const bodyX = at.x + way * 36;
  const tip = at.flow === 'up' ? -8 : 8;
  return el(
    'g',
    { class: 'pd-clamp', 'data-lead': 'clamp' },
    el('ellipse', { class: 'pd-jaw', cx: at.x, cy: y, rx: 16, ry: 9 }),
    line('pd-probe', at.x + way * 16, y, bodyX, y),
    el('rect', { class: 'pd-tag', x: bodyX - 12, y: y - 14, width: 24, height: 28, rx: 6 }),
    at.flow
      ? line('pd-blade', bodyX, y - tip, bodyX, y + tip) +
          line('pd-blade', bodyX - 5, y + tip * 0.3, bodyX, y + tip, bodyX + 5, y + tip * 0.3)
      : '',
  );
}
