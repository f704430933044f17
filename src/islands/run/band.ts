import { type BarZone, bandBarSvg } from '../../drawings/band-bar.ts';
import type { Scale } from '../../expected/scale.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import { findUnit, fromInside, usualUnitOf } from '../../quantity/units.ts';
import { runWords } from '../../words/en/run-page.ts';
import { zoneName } from '../../words/en/zones.ts';
import { freshId, svgElement } from './dom.ts';

/** The unit that a reading is typed in on this site, where none is typed with it. */
export const unitOf = (kind: Scale['kind'], units: UnitSystem): string => usualUnitOf(kind, units);

/** The band of a reading in words: `292.7 V to 368.1 V`. */
export function bandText(scale: Scale, units: UnitSystem): string {
  const zone = scale.zones.find((each) => each.id === scale.expected);
  const show = (value: number) => formatQuantity(value, scale.kind, { system: units });
  if (!zone) return '';
  const name = zoneName(zone.id);
  if (zone.min !== null && zone.max !== null)
    return runWords.band.between(name, show(zone.min), show(zone.max));
  if (zone.min !== null) return runWords.band.over(name, show(zone.min));
  return zone.max === null ? name : runWords.band.under(name, show(zone.max));
}

/** The band as a bar, with a value on it where there is one. */
export function bandBar(
  scale: Scale,
  units: UnitSystem,
  title: string,
  reading?: { value: number; u: number },
): SVGElement {
  const unit = findUnit(unitOf(scale.kind, units), scale.kind);
  const shown = (value: number) => (unit ? fromInside(value, unit) : value);
  const zones = scale.zones.map(
    ({ id, min, max }): BarZone => ({
      id,
      label: zoneName(id),
      expected: id === scale.expected,
      ...(min === null ? {} : { min: shown(min) }),
      ...(max === null ? {} : { max: shown(max) }),
    }),
  );
  const svg = bandBarSvg({
    id: freshId('band'),
    title,
    zones,
    unit: unit?.symbol ?? '',
    ...(reading ? { value: shown(reading.value), halfWidth: Math.abs(shown(reading.u) - shown(0)) } : {}),
  });
  return svgElement(svg);
}
