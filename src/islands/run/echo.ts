import { judgeOn, understand } from '../../guide/reading.ts';
import { formatAsTyped } from '../../quantity/format.ts';
import type { MessageRef } from '../../quantity/message.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import type { ReadingAsked } from '../../visit/step.ts';
import { uncertaintyText } from '../../visit/uncertainty.ts';
import { runWords } from '../../words/en/run-page.ts';
import { zoneName } from '../../words/en/zones.ts';

const words = runWords.meter;

/** What is said of a text while it is typed, and where its value lands on the bar. */
export interface Echo {
  says: string;
  value?: { value: number; u: number };
  /** Why it was not understood. */
  problem?: MessageRef;
}

/** What was understood of a typed text; nothing for an empty one. */
export function echo(text: string, asked: ReadingAsked, sheet: SiteSheet): Echo {
  if (text.trim() === '') return { says: '' };
  const read = understand(text, asked.reading, asked.kind, sheet);
  if (!read.ok) return { says: '', problem: read.problem };
  const { reading } = read;
  const judged = asked.scale && judgeOn(reading, asked.scale);
  const zone = !judged
    ? ''
    : judged.between
      ? words.between(zoneName(judged.between[0]), zoneName(judged.between[1]))
      : words.isZone(zoneName(judged.outcome));
  const assumed = reading.meter.assumed && asked.reading.mode !== 'display' ? ` ${words.assumed}` : '';
  if (reading.value === 'overRange') return { says: `${words.overRange}${zone}.${assumed}` };
  const value = formatAsTyped(reading.value, reading.resolution, reading.unit, asked.kind);
  const u = uncertaintyText(reading.uncertaintyU, asked.kind, reading.unit);
  return {
    says: `${words.readAs(value, u)}${zone}.${assumed}`,
    value: { value: reading.value, u: reading.uncertaintyU },
  };
}
