import { describe, expect, test } from 'vitest';
import { cardOf } from '../../src/visit/card.ts';
import { entrySchema } from '../../src/visit/entries.ts';
import { importVisits, mergeLog } from '../../src/visit/exchange.ts';
import { openRun } from '../../src/visit/run.ts';
import { exportVisits } from '../../src/visit/visit-file.ts';
import { Drive } from './drive.ts';

const run = new Drive().toClosed();
run.take({ type: 'note', text: 'Lid was off.' }).take({ type: 'undoAct' }).take({ type: 'away' });
run.take({ type: 'cant' }).take({ type: 'confirm', item: 'owner-told', met: true });
const { log } = run;

const refusal = (text: string) => {
  const read = importVisits(text);
  return read.ok ? 'taken' : read.reason.id;
};
/** The exported file with something done to it. */
const tampered = (change: (file: { visits: { entries: Record<string, unknown>[] }[] }) => void) => {
  const file = JSON.parse(exportVisits([log]));
  change(file);
  return refusal(JSON.stringify(file));
};

describe('a file of visits', () => {
  test('comes back whole, entry by entry, and replays to the same run', () => {
    const read = importVisits(exportVisits([log]));
    expect(read).toEqual({ ok: true, logs: [log] });
    if (read.ok) expect(openRun(run.know, read.logs[0]!)).toEqual(run.state);
  });

  test('has every line that a run writes inside the schema', () => {
    expect(log.map((entry) => entrySchema.safeParse(entry).success)).not.toContain(false);
    expect(new Set(log.map((entry) => entry.kind)).size).toBeGreaterThan(5);
  });

  test.each([
    ['', 'visit.file.notJson'],
    ['{"format":"faultwright-visits"', 'visit.file.notJson'],
    ['[]', 'visit.file.notVisits'],
    ['null', 'visit.file.notVisits'],
    ['{"format":"faultwright-sites","version":1,"sites":[]}', 'visit.file.notVisits'],
    ['{"format":"faultwright-visits","version":2,"visits":[]}', 'visit.file.newer'],
    ['{"format":"faultwright-visits","version":"1","visits":[]}', 'visit.file.badVersion'],
    ['{"format":"faultwright-visits","version":1,"visits":[]}', 'visit.file.empty'],
    ['{"format":"faultwright-visits","version":1,"visits":[{"entries":[]}]}', 'visit.file.emptyVisit'],
    ['{"format":"faultwright-visits","version":1,"visits":[null]}', 'visit.file.emptyVisit'],
    ['{"__proto__":{"x":1},"format":"faultwright-visits","version":1}', 'visit.file.poisoned'],
    [`${'['.repeat(50_000)}`, 'visit.file.notJson'],
  ])('%s is refused', (text, id) => {
    expect(refusal(text)).toBe(id);
  });

  test('is refused when a line is missing, moved, doctored or of another visit', () => {
    expect(tampered(({ visits }) => visits[0]!.entries.splice(3, 1))).toBe('visit.file.gap');
    expect(tampered(({ visits }) => visits[0]!.entries.shift())).toBe('visit.file.gap');
    expect(tampered(({ visits }) => Object.assign(visits[0]!.entries[2]!, { visit: 'visit-000002' }))).toBe(
      'visit.file.mixed',
    );
    expect(tampered(({ visits }) => Object.assign(visits[0]!.entries[2]!, { extra: 1 }))).toBe(
      'visit.file.badLine',
    );
    expect(
      tampered(({ visits }) => Object.assign(visits[0]!.entries[2]!, { at: '2001-01-01T00:00:00.000Z' })),
    ).toBe('visit.file.backInTime');
    expect(
      tampered(({ visits }) => {
        const answer = visits[0]!.entries.find((entry) => entry.kind === 'answer')!;
        answer.does = [{ measuredDead: 'everything' }];
      }),
    ).toBe('visit.file.badLine');
    expect(
      tampered(({ visits }) => {
        const [first] = visits[0]!.entries;
        (first!.sheet as Record<string, unknown>).name = '<img src=x>'.repeat(100);
      }),
    ).toBe('visit.file.badLine');
  });

  test('whose deed was slipped in is read as a record, and its run stops where it no longer fits the guide', () => {
    const file = JSON.parse(exportVisits([log])) as { visits: { entries: Record<string, unknown>[] }[] };
    const answer = file.visits[0]!.entries.find((entry) => entry.kind === 'answer')!;
    answer.does = [{ measuredDead: 'invDC' }];
    const read = importVisits(JSON.stringify(file));
    expect(read.ok && openRun(run.know, read.logs[0]!).misfit).toEqual({ seq: answer.seq });
  });
});

describe('bringing a log in beside one that is kept', () => {
  test('adds what is new and never loses either', () => {
    expect(mergeLog(undefined, log, 'visit-000009').how).toBe('new');
    expect(mergeLog(log, log.slice(0, 4), 'visit-000009')).toEqual({ how: 'had' });
    expect(mergeLog(log.slice(0, 4), log, 'visit-000009')).toEqual({ how: 'longer', add: log.slice(4) });
    const other = new Drive().choose('other').log;
    const parted = mergeLog(log, other, 'visit-000009');
    expect(parted.how).toBe('parted');
    expect(parted.how === 'parted' && parted.add.every((entry) => entry.visit === 'visit-000009')).toBe(true);
  });

  test('does not mind the order of keys', () => {
    const shuffled = log.map((entry) => Object.fromEntries(Object.entries(entry).reverse())) as typeof log;
    expect(mergeLog(log, shuffled, 'visit-000009')).toEqual({ how: 'had' });
  });
});

test('a card says what the list of visits shows', () => {
  expect(cardOf(log)).toMatchObject({ id: 'visit-000001', guide: 'fx-guide', entries: log.length });
  expect(cardOf(log).result).toBeUndefined();
});
