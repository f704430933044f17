import { el, line } from '../svg.ts';

/** Symbols after the practice of IEC 60617 and IEEE 315, drawn by us. Every one is drawn round its own spot. */

/** A photovoltaic module: a frame with the open triangle. */
export function pvModule(left: number, top: number, width: number, height: number): string {
  return (
    el('rect', { class: 'pd-body', x: left, y: top, width, height }) +
    line('pd-thin', left, top, left + width / 2, top + height * 0.55, left + width, top)
  );
}

/** Light falling on a photovoltaic part: two arrows. */
export function light(tipX: number, tipY: number): string {
  const arrow = (dx: number) =>
    line('pd-thin', tipX + dx - 14, tipY - 16, tipX + dx, tipY) +
    line('pd-thin', tipX + dx - 8, tipY - 1, tipX + dx, tipY, tipX + dx, tipY - 9);
  return arrow(0) + arrow(14);
}

/** A terminal: a ring on a conductor. */
export function terminal(atX: number, atY: number): string {
  return el('circle', { class: 'pd-terminal', cx: atX, cy: atY, r: 5 });
}

/** Conductors joined: a dot. */
export function joint(atX: number, atY: number): string {
  return el('circle', { class: 'pd-dot', cx: atX, cy: atY, r: 3.5 });
}

/**
 * One pole of an upright switch between two spots. The blade hangs at the bottom and opens to the `lean` side.
 * `kind`: an isolator has a bar at its fixed contact, a breaker a cross.
 */
export function switchPole(
  atX: number,
  top: number,
  bottom: number,
  open: boolean,
  kind: 'isolator' | 'breaker',
  lean: -1 | 1 = -1,
): string {
  const contact =
    kind === 'isolator'
      ? line('pd-blade', atX - 6, top, atX + 6, top)
      : line('pd-blade', atX - 4, top - 4, atX + 4, top + 4) +
        line('pd-blade', atX + 4, top - 4, atX - 4, top + 4);
  const blade = open
    ? line('pd-blade', atX, bottom, atX + lean * (bottom - top) * 0.45, top + (bottom - top) * 0.12)
    : line('pd-blade', atX, bottom, atX, top);
  return contact + blade + el('circle', { class: 'pd-dot', cx: atX, cy: bottom, r: 3 });
}

/** The mechanical link between the poles of one handle. */
export function gang(fromX: number, toX: number, atY: number): string {
  return line('pd-gang', fromX, atY, toX, atY);
}

/** A fuse on an upright conductor. */
export function fuse(atX: number, top: number, bottom: number): string {
  return (
    el('rect', { class: 'pd-body', x: atX - 7, y: top, width: 14, height: bottom - top }) +
    line('pd-thin', atX, top, atX, bottom)
  );
}

/** Cells of a battery across two posts: long and short plates. */
export function cells(left: number, right: number, atY: number): string {
  const middle = (left + right) / 2;
  const plates = [-12, 0].map(
    (dx) =>
      line('pd-thin', middle + dx, atY - 11, middle + dx, atY + 11) +
      line('pd-blade', middle + dx + 6, atY - 5, middle + dx + 6, atY + 5),
  );
  return (
    line('pd-thin', left, atY - 16, left, atY, middle - 12, atY) +
    line('pd-thin', middle + 6, atY, right, atY, right, atY - 16) +
    plates.join('')
  );
}

/** A round machine with its letter: a generator G, a motor M. */
export function machine(atX: number, atY: number, r: number, letter: string): string {
  return (
    el('circle', { class: 'pd-body', cx: atX, cy: atY, r }) +
    el('text', { class: 'pd-letter', x: atX, y: atY + 2, 'text-anchor': 'middle' }, letter) +
    sine(atX, atY + 11)
  );
}

/** The alternating-current mark. */
export function sine(atX: number, atY: number): string {
  return el('path', { class: 'pd-thin', d: `M${atX - 9} ${atY}q4.5-8 9 0t9 0` });
}

/** An inverter: a square split by a diagonal, direct current below left, alternating above right. */
export function converter(left: number, top: number, size: number): string {
  return (
    el('rect', { class: 'pd-body', x: left, y: top, width: size, height: size }) +
    line('pd-thin', left, top + size, left + size, top) +
    line('pd-thin', left + 6, top + 13, left + 22, top + 13) +
    line('pd-thin', left + 6, top + 18, left + 22, top + 18) +
    sine(left + size - 14, top + size - 12)
  );
}

/** A plug and its inlet on an upright conductor. */
export function inlet(atX: number, atY: number): string {
  return (
    el('path', { class: 'pd-thin', d: `M${atX - 7} ${atY - 7}a7 7 0 0 0 14 0` }) +
    line('pd-blade', atX, atY - 12, atX, atY - 2)
  );
}

/** The earth: three bars below a conductor. */
export function earth(atX: number, atY: number): string {
  return (
    line('pd-blade', atX - 16, atY, atX + 16, atY) +
    line('pd-blade', atX - 10, atY + 7, atX + 10, atY + 7) +
    line('pd-blade', atX - 4, atY + 14, atX + 4, atY + 14)
  );
}

/** A receptacle: two slots in a face. */
export function receptacle(left: number, top: number, width: number, height: number): string {
  return el('rect', { class: 'pd-body', x: left, y: top, width, height, rx: 10 });
}
