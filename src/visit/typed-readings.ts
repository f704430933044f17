import type { JudgedReading, UnderstoodReading } from '../guide/reading.ts';
import { judgeOn, understand } from '../guide/reading.ts';
import { parseReading } from '../quantity/parse.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { LoggedReading } from './entries.ts';
import type { InputProblem, SeriesText } from './input.ts';
import { longestTyped } from './log-limits.ts';
import type { ReadingAsked } from './step.ts';

type Typed = string | SeriesText | undefined;
type Result = { ok: true; reading: LoggedReading } | { ok: false; problem: InputProblem };

const refuse = (field: string, id: string, params?: Record<string, string | number>): Result => ({
  ok: false,
  problem: { field, message: params ? { id, params } : { id } },
});

function logged(id: string, text: string, judged: JudgedReading): LoggedReading {
  const { scale, between, outcome, ...understood } = judged;
  const { kind, zones, expected, nominal, overRange, uses } = scale;
  return {
    ...understood,
    id,
    text: text.slice(0, longestTyped),
    outcome,
    ...(between ? { between } : {}),
    scale: {
      id: scale.id,
      kind,
      zones: zones.map(({ id: zone, min, max }) => ({ id: zone, min, max })),
      expected,
      uses,
      ...(nominal === undefined ? {} : { nominal }),
      ...(overRange === undefined ? {} : { overRange }),
    },
  };
}

/** Reads and judges what was typed for one reading of the present step. */
export function readTyped(asked: ReadingAsked, typed: Typed, sheet: SiteSheet): Result {
  const { id, scale, reading } = asked;
  if (!scale) return refuse(id, 'run.problem.missingFacts');
  if (typed === undefined || typed.length === 0) return refuse(id, 'quantity.empty');
  const wantsSeries = (reading.series ?? 1) > 1;
  if (wantsSeries !== (typeof typed !== 'string'))
    return refuse(id, wantsSeries ? 'run.problem.wantsSeries' : 'run.problem.wantsOne');
  if (typeof typed !== 'string') return readSeries(asked, typed, sheet);
  const read = understand(typed, reading, asked.kind, sheet);
  if (!read.ok) return { ok: false, problem: { field: id, message: read.problem } };
  return { ok: true, reading: logged(id, typed, judgeOn(read.reading, scale)) };
}

function readSeries(asked: ReadingAsked, typed: SeriesText, sheet: SiteSheet): Result {
  const { id, reading } = asked;
  const least = reading.series ?? 1;
  if (typed.length < least) return refuse(id, 'run.problem.seriesShort', { least, typed: typed.length });
  const points: [number, string, number][] = [];
  let last: UnderstoodReading | undefined;
  for (const [row, [time, text]] of typed.entries()) {
    const seconds = parseReading(String(time), { kind: 'time', unit: 's' });
    if (!seconds.ok) return refuse(id, 'run.problem.seriesTime', { row: row + 1, typed: String(time) });
    const before = points.at(-1)?.[0];
    if (before !== undefined && seconds.value <= before)
      return refuse(id, 'run.problem.seriesOrder', { row: row + 1 });
    const read = understand(text, reading, asked.kind, sheet);
    if (!read.ok) return { ok: false, problem: { field: id, message: read.problem } };
    if (read.reading.value === 'overRange')
      return refuse(id, 'run.problem.seriesOverRange', { row: row + 1 });
    points.push([seconds.value, text.slice(0, longestTyped), read.reading.value]);
    last = read.reading;
  }
  const text = points.at(-1)![1];
  return { ok: true, reading: { ...logged(id, text, judgeOn(last!, asked.scale!)), series: points } };
}
