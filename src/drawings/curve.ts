import { drawing, el, label, line, short } from './svg.ts';

/** A drawn line: what is expected, or what was fitted. */
export interface CurveLine {
  id: string;
  label: string;
  points: readonly (readonly [x: number, y: number])[];
  /** Broken lines are limits and expectations; whole ones are what is. */
  broken?: boolean;
}

export interface CurveOptions {
  /** Unique on the page. */
  id: string;
  title: string;
  desc?: string;
  xLabel: string;
  yLabel: string;
  lines: readonly CurveLine[];
  /** Measured points, in order. */
  marks?: readonly { x: number; y: number }[];
  /** Level lines with a name: a target, a limit, a window. */
  levels?: readonly { y: number; label: string }[];
  /** Kept on the sheet whatever the data: 0 for a curve that begins at nothing. */
  includeY?: readonly number[];
}

const sheet = { width: 420, height: 280, left: 56, right: 14, top: 30, bottom: 48 } as const;

/** A curve with measured points on it: axes, at most six ticks each way, lines named at their end. */
export function curveSvg(options: CurveOptions): string {
  const { lines, marks = [], levels = [], includeY = [] } = options;
  const all = [...lines.flatMap((one) => one.points), ...marks.map(({ x, y }) => [x, y] as const)];
  const xs = axis(
    all.map(([x]) => x),
    sheet.left,
    sheet.width - sheet.right,
  );
  const ys = axis(
    [...all.map(([, y]) => y), ...levels.map(({ y }) => y), ...includeY],
    sheet.height - sheet.bottom,
    sheet.top,
  );
  const base = sheet.height - sheet.bottom;
  return drawing(
    {
      className: 'cv',
      viewBox: [0, 0, sheet.width, sheet.height],
      id: options.id,
      title: options.title,
      desc: options.desc,
    },
    ...ys.ticks.map(
      (tick) =>
        line('cv-grid', sheet.left, ys.place(tick), sheet.width - sheet.right, ys.place(tick)) +
        label('cv-number', sheet.left - 6, ys.place(tick) + 5, write(tick), 'end'),
    ),
    ...xs.ticks.map(
      (tick) =>
        line('cv-grid', xs.place(tick), base, xs.place(tick), base + 5) +
        label('cv-number', xs.place(tick), base + 20, write(tick), 'middle'),
    ),
    line('cv-axis', sheet.left, sheet.top - 8, sheet.left, base, sheet.width - sheet.right, base),
    label('cv-name', sheet.width - sheet.right, sheet.height - 6, options.xLabel, 'end'),
    label('cv-name', 4, 15, options.yLabel),
    ...levels.map(
      (level) =>
        line('cv-level', sheet.left, ys.place(level.y), sheet.width - sheet.right, ys.place(level.y)) +
        label('cv-tag', sheet.left + 6, ys.place(level.y) - 5, level.label),
    ),
    ...lines.map((one) => drawLine(one, xs, ys)),
    ...marks.map(({ x, y }) => el('circle', { class: 'cv-mark', cx: xs.place(x), cy: ys.place(y), r: 5 })),
  );
}

interface Axis {
  ticks: number[];
  place: (value: number) => number;
}

/** An axis over the values, from and to round numbers. */
function axis(values: readonly number[], start: number, end: number): Axis {
  const known = values.filter(Number.isFinite);
  const low = Math.min(...known, Number.POSITIVE_INFINITY);
  const high = Math.max(...known, Number.NEGATIVE_INFINITY);
  const from = Number.isFinite(low) ? low : 0;
  const to = Number.isFinite(high) && high > from ? high : from + 1;
  const step = roundStep((to - from) / 5);
  const first = Math.floor(from / step + 1e-9) * step;
  const last = Math.ceil(to / step - 1e-9) * step;
  const count = Math.round((last - first) / step);
  const ticks = Array.from({ length: count + 1 }, (_, i) => first + i * step);
  return { ticks, place: (value) => start + ((value - first) / (last - first)) * (end - start) };
}

/** 1, 2 or 5 times a power of ten, at or above the wish. */
function roundStep(wish: number): number {
  const power = 10 ** Math.floor(Math.log10(wish));
  const factor = [1, 2, 5, 10].find((candidate) => candidate * power >= wish * 0.999) ?? 10;
  return factor * power;
}

function write(value: number): string {
  return String(Number(value.toPrecision(6))).replace('-', '−');
}

function drawLine(one: CurveLine, xs: Axis, ys: Axis): string {
  const d = one.points
    .map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${short(xs.place(x))} ${short(ys.place(y))}`)
    .join('');
  const end = one.points.at(-1);
  const atX = end ? Math.min(xs.place(end[0]), sheet.width - sheet.right) - 4 : 0;
  return el(
    'g',
    { 'data-line': one.id },
    el('path', { class: one.broken ? 'cv-line cv-broken' : 'cv-line', d }),
    end ? label('cv-tag', atX, ys.place(end[1]) - 9, one.label, 'end') : '',
  );
}
