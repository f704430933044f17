import { drawing, el, label, line, short } from './svg.ts';
import { wrap } from './wrap.ts';

/** A zone of a scale. A bound left out is open: the zone runs on without end. */
export interface BarZone {
  id: string;
  min?: number;
  max?: number;
  label: string;
  /** The zone that is expected here; `ok` is one by its id. */
  expected?: boolean;
}

export interface BandBarOptions {
  /** Unique on the page. */
  id: string;
  title: string;
  /** From lowest to highest, in the unit shown. */
  zones: readonly BarZone[];
  unit: string;
  /** What the meter showed, in the unit shown. */
  value?: number;
  /** Half of the meter's uncertainty at that value, not negative. */
  halfWidth?: number;
  /** How a number is written; by itself one decimal at most and a true minus. */
  format?: (value: number) => string;
}

const sheet = { width: 360, height: 94, margin: 6, top: 30, bar: 42 } as const;

/**
 * The band of a reading as a bar, with the typed value landing on it and the meter's uncertainty as its width.
 * Not to one scale: every zone gets room for its name, and within a zone the value stands in proportion.
 */
export function bandBarSvg(options: BandBarOptions): string {
  const { zones, value, halfWidth = 0, unit } = options;
  const format = options.format ?? ((n: number) => short(n).replace('-', '−'));
  const spans = spansOf(zones);
  return drawing(
    {
      className: 'bb',
      viewBox: [0, 0, sheet.width, sheet.height],
      id: options.id,
      title: options.title,
      desc: describe(zones, unit, format),
    },
    ...spans.map(zoneBar),
    ...boundLabels(spans, unit, format),
    value === undefined ? '' : needle(value, halfWidth, spans),
  );
}

/** A zone with its place on the bar. */
interface Span {
  zone: BarZone;
  left: number;
  right: number;
}

function isBound(value: number | undefined): value is number {
  return value !== undefined && Number.isFinite(value);
}

function isExpected(zone: BarZone): boolean {
  return zone.expected ?? zone.id === 'ok';
}

function spansOf(zones: readonly BarZone[]): Span[] {
  const weight = (zone: BarZone) => (isExpected(zone) ? 1.4 : 1);
  const total = zones.reduce((sum, zone) => sum + weight(zone), 0);
  const room = sheet.width - 2 * sheet.margin;
  let left: number = sheet.margin;
  return zones.map((zone) => {
    const right = left + (room * weight(zone)) / total;
    const span = { zone, left, right };
    left = right;
    return span;
  });
}

/** Where a value stands. In an open zone it nears the end of the bar the further it lies out. */
function placeOf(value: number, spans: readonly Span[]): number {
  const last = spans.at(-1)!;
  const span = spans.find(({ zone }) => !isBound(zone.max) || value < zone.max) ?? last;
  const { zone, left, right } = span;
  const width = right - left;
  if (isBound(zone.min) && isBound(zone.max)) {
    const share = (value - zone.min) / (zone.max - zone.min || 1);
    return left + width * Math.min(1, Math.max(0, share));
  }
  const reach = knownWidth(spans);
  if (isBound(zone.min)) return right - width / (1 + (2 * Math.max(0, value - zone.min)) / reach);
  if (isBound(zone.max)) return left + width / (1 + (2 * Math.max(0, zone.max - value)) / reach);
  return (left + right) / 2;
}

/** A length to measure open zones by: the widest bounded zone, or the size of the bound itself. */
function knownWidth(spans: readonly Span[]): number {
  const widths = spans.flatMap(({ zone: { min, max } }) => (isBound(min) && isBound(max) ? [max - min] : []));
  const bounds = spans.flatMap(({ zone: { min, max } }) => [min, max].filter(isBound).map(Math.abs));
  return Math.max(...widths, 0) || Math.max(...bounds, 0) || 1;
}

function zoneBar({ zone, left, right }: Span): string {
  const lines = wrap(zone.label, Math.floor((right - left - 4) / 7.4));
  const fits = lines.length <= 2 && lines.every((text) => text.length * 7.4 <= right - left);
  const middle = sheet.top + sheet.bar / 2 + 5 - (lines.length - 1) * 8;
  return el(
    'g',
    { class: isExpected(zone) ? 'bb-zone bb-expected' : 'bb-zone', 'data-zone': zone.id },
    el('rect', { x: left, y: sheet.top, width: right - left, height: sheet.bar }),
    fits ? label('bb-label', (left + right) / 2, middle, lines, 'middle') : '',
  );
}

/** The bounds between zones, under the bar; the unit stands after the last. */
function boundLabels(spans: readonly Span[], unit: string, format: (value: number) => string): string[] {
  const bounds = spans.flatMap(({ zone, left, right }, i) => [
    ...(i === 0 && isBound(zone.min) ? [{ at: left, value: zone.min }] : []),
    ...(isBound(zone.max) ? [{ at: right, value: zone.max }] : []),
  ]);
  const foot = sheet.top + sheet.bar;
  return bounds.map(({ at, value }, i) => {
    const text = i === bounds.length - 1 ? `${format(value)} ${unit}` : format(value);
    const half = text.length * 4.3;
    const middle = Math.min(sheet.width - half, Math.max(half, at));
    return line('bb-tick', at, foot, at, foot + 6) + label('bb-number', middle, foot + 19, text, 'middle');
  });
}

function needle(value: number, halfWidth: number, spans: readonly Span[]): string {
  const at = placeOf(value, spans);
  const left = placeOf(value - halfWidth, spans);
  const right = placeOf(value + halfWidth, spans);
  const foot = sheet.top + sheet.bar;
  return el(
    'g',
    { class: 'bb-reading' },
    right - left > 1 ? line('bb-spread', left, 4, left, 16, left, 10, right, 10, right, 4, right, 16) : '',
    el('path', { class: 'bb-needle', d: `M${short(at)} ${sheet.top}l-9-16h18z` }),
    line('bb-hair', at, sheet.top, at, sheet.top + 9),
    line('bb-hair', at, foot - 9, at, foot),
  );
}

function describe(zones: readonly BarZone[], unit: string, format: (value: number) => string): string {
  return zones
    .map(({ label: name, min, max }) => {
      const low = isBound(min) ? format(min) : '…';
      const high = isBound(max) ? format(max) : '…';
      return `${name}: ${low} – ${high} ${unit}.`;
    })
    .join(' ');
}
