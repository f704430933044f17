import { drawing, el, label, line, short } from './svg.ts';

/** A zone of a scale. A bound left out is open: the zone runs to the end of the bar. */
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

const width = 360;
const margin = 10;
const top = 34;
const height = 28;

/** The band of a reading as a bar, with the typed value landing on it and the meter's uncertainty as its width. */
export function bandBarSvg(options: BandBarOptions): string {
  const { zones, value, halfWidth = 0, unit } = options;
  const format = options.format ?? ((n: number) => short(n).replace('-', '−'));
  const scale = scaleOf(zones, value);
  const bars = zones.map((zone) => zoneBar(zone, scale));
  const bounds = [...new Set(zones.flatMap(({ min, max }) => [min, max]))].filter(isBound);
  return drawing(
    {
      className: 'bb',
      viewBox: [0, 0, width, 86],
      id: options.id,
      title: options.title,
      desc: describe(zones, unit, format),
    },
    ...bars,
    ...boundLabels(bounds, scale, unit, format),
    value === undefined ? '' : needle(value, halfWidth, scale),
  );
}

/** From a value to its place on the bar; values beyond the ends are held at the ends. */
interface Scale {
  from: number;
  to: number;
  place: (value: number) => number;
}

function isBound(value: number | undefined): value is number {
  return value !== undefined && Number.isFinite(value);
}

/** The bounds with room at both ends; stretched to take in the value, unless that would squeeze the bounds together. */
function scaleOf(zones: readonly BarZone[], value: number | undefined): Scale {
  const bounds = zones.flatMap(({ min, max }) => [min, max]).filter(isBound);
  const known = bounds.length > 0 ? bounds : [0, value ?? 1];
  const low = Math.min(...known);
  const high = Math.max(...known);
  const span = high - low || Math.abs(high) || 1;
  let from = low - span * 0.35;
  let to = high + span * 0.35;
  if (value !== undefined && value < from) from = Math.max(value - span * 0.1, low - span * 2);
  if (value !== undefined && value > to) to = Math.min(value + span * 0.1, high + span * 2);
  const place = (at: number) => {
    const share = (at - from) / (to - from);
    return margin + Math.min(1, Math.max(0, share)) * (width - 2 * margin);
  };
  return { from, to, place };
}

function zoneBar(zone: BarZone, { from, to, place }: Scale): string {
  const left = place(isBound(zone.min) ? zone.min : from);
  const right = place(isBound(zone.max) ? zone.max : to);
  const expected = zone.expected ?? zone.id === 'ok';
  const fits = zone.label.length * 7.2 < right - left - 4;
  return el(
    'g',
    { class: expected ? 'bb-zone bb-expected' : 'bb-zone', 'data-zone': zone.id },
    el('rect', { x: left, y: top, width: Math.max(0, right - left), height }),
    fits ? label('bb-label', (left + right) / 2, top + 19, zone.label, 'middle') : '',
  );
}

/** The bounds under the bar, in two rows where they would touch; the unit stands after the last. */
function boundLabels(
  bounds: readonly number[],
  { place }: Scale,
  unit: string,
  format: (value: number) => string,
): string[] {
  const sorted = [...bounds].sort((a, b) => a - b);
  let freeFrom = Number.NEGATIVE_INFINITY;
  return sorted.map((bound, i) => {
    const text = i === sorted.length - 1 ? `${format(bound)} ${unit}` : format(bound);
    const half = text.length * 4.3;
    const at = place(bound);
    const middle = Math.min(width - half - 2, Math.max(half + 2, at));
    const row = middle - half < freeFrom ? 1 : 0;
    if (row === 0) freeFrom = middle + half + 4;
    return (
      line('bb-tick', at, top + height, at, top + height + (row === 0 ? 4 : 10)) +
      label('bb-number', middle, top + height + (row === 0 ? 15 : 23), text, 'middle')
    );
  });
}

function needle(value: number, halfWidth: number, { from, to, place }: Scale): string {
  const at = place(value);
  const beyond = value < from ? -1 : value > to ? 1 : 0;
  if (beyond !== 0) {
    return el('path', {
      class: 'bb-needle',
      'data-beyond': beyond < 0 ? 'low' : 'high',
      d: `M${short(at)} 18l${-beyond * 14}-9v18z`,
    });
  }
  const left = place(value - halfWidth);
  const right = place(value + halfWidth);
  return el(
    'g',
    { class: 'bb-reading' },
    right - left > 1 ? line('bb-spread', left, 14, left, 24, left, 19, right, 19, right, 14, right, 24) : '',
    el('path', { class: 'bb-needle', d: `M${short(at)} ${top}l-8-14h16z` }),
    line('bb-hair', at, top, at, top + height),
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
