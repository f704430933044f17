import { formatQuantity, showQuantity } from '../quantity/format.ts';
import type { UnitSystem } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import { isAct } from '../safety/effects.ts';
import { attemptsIn } from './attempts.ts';
import type { Entry, EntryOf, LoggedReading } from './entries.ts';
import { takenBack } from './taken-back.ts';
import { uncertaintyText } from './uncertainty.ts';

/** One line of a visit as people read it: on the page, on paper, in a text file. */
export interface LogLine {
  seq: number;
  at: string;
  message: MessageRef;
  /** Readings, deeds, facts: one each. */
  details: readonly MessageRef[];
  /** Taken back later: struck out, never left out. */
  isVoid: boolean;
}

/** The whole log as lines, in order. */
export function readableLog(entries: readonly Entry[]): LogLine[] {
  const begin = entries[0];
  const units = begin?.kind === 'begin' ? begin.sheet.units : 'metric';
  const taken = takenBack(entries);
  return entries.map((entry) => ({
    seq: entry.seq,
    at: entry.at,
    isVoid: taken.has(entry.seq),
    ...lineOf(entry, units, entries),
  }));
}

type Line = Pick<LogLine, 'message' | 'details'>;

const line = (id: string, params: Record<string, string | number>, details: MessageRef[] = []): Line => ({
  message: { id, params },
  details,
});

const titleOf = (entry: EntryOf<'answer' | 'confirm'>) => entry.asked?.title ?? entry.block;

function lineOf(entry: Entry, units: UnitSystem, entries: readonly Entry[]): Line {
  switch (entry.kind) {
    case 'begin':
      return line('visit.log.begin', {
        guide: entry.guideTitle ?? entry.guide,
        site: entry.sheet.name,
        subject: entry.subject ?? '',
        begins: entry.begins,
      });
    case 'answer':
      return answerLine(entry, units);
    case 'confirm':
      return line(entry.met ? 'visit.log.confirmed' : 'visit.log.unconfirmed', {
        title: titleOf(entry),
        item: entry.asked?.items?.[entry.item] ?? entry.item,
      });
    case 'fact':
      return line(
        'visit.log.facts',
        {},
        entry.changes.map(({ id, from, to }) => ({
          id: 'visit.log.fact',
          params: { fact: id, from: factText(from), to: factText(to) },
        })),
      );
    case 'correct':
    case 'undoAct': {
      const answered = entries.find((each) => each.seq === entry.toSeq);
      const title = answered?.kind === 'answer' ? titleOf(answered) : String(entry.toSeq);
      return line(entry.kind === 'correct' ? 'visit.log.correct' : 'visit.log.undo', { title });
    }
    case 'expiry':
      return line(`visit.log.expiry.${entry.reason}`, {});
    case 'changed':
      return line('visit.log.changed', { version: entry.guideVersion });
    case 'note':
      return line('visit.log.note', { text: entry.text });
    case 'closed':
      return line('visit.log.closed', { result: entry.result, leaves: entry.leaves }, [
        ...attemptsIn(entries).map(({ title, result }) => ({
          id: 'visit.log.tried',
          params: { title, retest: result ?? '', closed: entry.result },
        })),
        ...(entry.ruledOut ?? []).map(({ cause, by }) => ({
          id: 'visit.log.ruledOut',
          params: { cause, by: by.join('; ') },
        })),
      ]);
  }
}

const factText = (value: string | number | boolean | null): string => (value === null ? '' : String(value));

function answerLine(entry: EntryOf<'answer'>, units: UnitSystem): Line {
  const readings = (entry.readings ?? []).map((reading) =>
    readingMessage(reading, units, entry.asked?.readings?.[reading.id]),
  );
  const deeds = entry.does.filter(isAct).map((act): MessageRef => {
    const [verb, object] = Object.entries(act)[0] as [string, string | boolean];
    return { id: 'visit.log.deed', params: { verb, of: String(object) } };
  });
  const pairs = pairLines(entry);
  const id = entry.by ? `visit.log.by.${entry.by}` : 'visit.log.answer';
  const params = { title: titleOf(entry), answer: entry.asked?.answer ?? '', outcome: entry.outcome };
  const retest = entry.retest ? [{ id: `visit.log.retest.${entry.retest}` }] : [];
  return line(id, params, [...readings, ...pairs, ...deeds, ...retest]);
}

/** The pair chosen of a pairing grid, or the one that this answer speaks of and how long it was given. */
function pairLines({ pairing, tried }: EntryOf<'answer'>): MessageRef[] {
  return [
    ...(pairing?.pair ? [{ id: 'visit.log.pair', params: { ...pairing.pair } }] : []),
    ...(tried ? [{ id: 'visit.log.pairTried', params: { ...tried } }] : []),
  ];
}

/** A reading as it was typed, understood and judged. */
export function readingMessage(reading: LoggedReading, units: UnitSystem, label?: string): MessageRef {
  const { kind, zones, expected } = reading.scale;
  const show = (value: number) => formatQuantity(value, kind, { system: units });
  const { value: read } = reading;
  const unit = read === 'overRange' ? '' : showQuantity(read, kind, { system: units }).unit;
  const zone = zones.find((each) => each.id === expected);
  return {
    id: read === 'overRange' ? 'visit.log.overRange' : 'visit.log.reading',
    params: {
      label: label ?? reading.id,
      typed: reading.text,
      value: read === 'overRange' ? '' : show(read),
      u: uncertaintyText(reading.uncertaintyU, kind, unit),
      min: zone?.min === null || zone?.min === undefined ? '' : show(zone.min),
      max: zone?.max === null || zone?.max === undefined ? '' : show(zone.max),
      outcome: reading.outcome,
      between: reading.between?.join(' ') ?? '',
      points: reading.series?.length ?? 0,
    },
  };
}
