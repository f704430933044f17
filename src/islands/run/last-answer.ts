import { formatQuantity, showQuantity } from '../../quantity/format.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import type { LoggedReading } from '../../visit/entries.ts';
import type { TrailStep } from '../../visit/trail.ts';
import { uncertaintyText } from '../../visit/uncertainty.ts';
import { runWords } from '../../words/en/run-page.ts';
import { zoneName } from '../../words/en/zones.ts';
import { make, ours } from './dom.ts';
import type { Plate } from './plate.ts';

/** A reading as it was understood and judged, in one line. */
export function readingLine(reading: LoggedReading, label: string, units: UnitSystem): string {
  const zone = zoneName(reading.outcome);
  if (reading.value === 'overRange') return runWords.lastOverRange(label, zone);
  const { kind } = reading.scale;
  const { unit } = showQuantity(reading.value, kind, { system: units });
  return runWords.lastReading(
    label,
    formatQuantity(reading.value, kind, { system: units }),
    uncertaintyText(reading.uncertaintyU, kind, unit),
    zone,
  );
}

/** What the last answer was and what it means, over the step that it led to. */
export function lastAnswer(step: TrailStep, plate: Plate | undefined, units: UnitSystem): HTMLElement {
  const label = plate?.outcomeLabel(step.outcome) ?? zoneName(step.outcome);
  const by =
    step.by === 'sheet'
      ? ` ${runWords.bySheet}.`
      : step.by === 'worksheet'
        ? ` ${runWords.byWorksheet}.`
        : '';
  return ours(
    make(
      'div',
      { className: 'run-last' },
      make('p', { className: 'plate-label', textContent: `${runWords.last}: ${plate?.title ?? step.block}` }),
      ...step.readings.map((reading) =>
        make('p', {
          className: 'reading-line',
          textContent: readingLine(reading, plate?.readingLabel(reading.id) ?? reading.id, units),
        }),
      ),
      make('p', {}, make('b', { textContent: `${label}.` }), by),
      plate?.outcomeNote(step.outcome),
    ),
  );
}
