import type { SiteSheet } from '../site/sheet.ts';
import { inverterCable } from '../worksheets/battery-dc/inverter-cable.ts';
import { figures } from './figures.ts';
import { type Part, rating } from './part.ts';
import { dcParts } from './parts-dc.ts';
import { acParts, pvParts } from './parts-pv-ac.ts';

/**
 * What a job like this needs that does not come with the inverter, with the ratings it must have: a list to print and to
 * price. A rating is what this site asks for, not what is fitted.
 */
export const partsOf = (sheet: SiteSheet): readonly Part[] => [
  ...pvParts(sheet),
  ...dcParts(sheet),
  ...acParts(sheet),
  ...labels(sheet),
];

/** Labels at the places where the next person puts a hand. */
function labels(sheet: SiteSheet): readonly Part[] {
  const label = (id: string, quantity: number, ratings: Part['ratings'] = []): Part => ({
    id,
    quantity,
    ratings,
    missing: [],
  });
  const cable = figures(inverterCable, sheet, 0);
  const shortAmps: number | undefined = cable.ok ? cable.worked.out.shortAmps : undefined;
  const volts = rating('volts', 'voltage', sheet.battery.cellsInSeries * sheet.battery.cellMaxV);
  return [
    ...(sheet.strings.length === 0 ? [] : [label('label-pv', sheet.strings.length)]),
    label('label-battery', 1, [...volts, ...rating('breaks', 'current', shortAmps)]),
    label('label-precharge', 1),
    label('label-capacitors', sheet.parallelUnits),
    ...(sheet.inverter.topology === 'common-120' ? [label('label-no-multiwire', 1)] : []),
    ...(sheet.secondSource.kind === 'none' ? [] : [label('label-two-sources', 1)]),
    label('label-directory', 1),
  ];
}
