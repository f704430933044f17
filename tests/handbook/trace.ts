import type { AnyWorksheet, Output } from '../../src/worksheets/define.ts';
import { worksheets } from '../../src/worksheets/index.ts';
import { outsideChecks } from './checks/index.ts';
import { commonPractice } from './common-practice.ts';
import type { OutsideCheck } from './outside-check.ts';
import { allowed } from './tolerances.ts';

/** An entry of the list of sources, as far as the trace needs it. */
export interface KnownSource {
  readonly id: string;
  readonly title: string;
  readonly edition?: string | undefined;
  readonly clause?: string | undefined;
  readonly how: 'read' | 'from memory' | 'common practice';
}

export interface TraceRow {
  readonly id: string;
  /** What it cites, with edition and clause. */
  readonly sources: readonly string[];
  /** Distinct outside sources that its figures are held to. */
  readonly outsideChecks: number;
  /** Figures compared, those that only guard against slips counted too. */
  readonly figures: number;
  /** The largest difference from any of them, as a share of the printed figure (of 1 where that is 0). */
  readonly worstDeviation: number;
  /** The largest difference as a share of what its tolerance allows. */
  readonly worstOfAllowed: number;
  /** Of `sources`, those that nobody here has read for this figure. */
  readonly fromMemory: readonly string[];
  /** Why it has no outside check, where it is listed so. */
  readonly commonPractice?: string;
}

/** A figure from memory or from practice is no outside check: it only guards against slips. */
export const isOutside = ({ origin }: OutsideCheck): boolean =>
  origin === 'published' || origin === 'worked apart';

/** Clauses by which protection, conductors and string volts are sized. */
const sizingClause = /\b(240\.|250\.122|310\.|690\.[789])/;

/** Protection, a conductor or string volts are chosen by what this worksheet gives. */
export const sizes = ({ outputs, sources }: AnyWorksheet): boolean =>
  Object.values(outputs as Record<string, Output>).some(
    (output) => 'kind' in output && output.kind === 'wireSize',
  ) || sources.some(({ clause }) => clause !== undefined && sizingClause.test(clause));

function citation(source: KnownSource, clause: string | undefined): string {
  const where = clause ?? source.clause;
  return [source.title, source.edition, where].filter(Boolean).join(', ');
}

const deviation = (published: number, worked: number): number =>
  Math.abs(worked - published) / (published === 0 ? 1 : Math.abs(published));

/** The worksheet's line of the trace. Throws where a check gives no number, or a source is not on the list. */
export function traceOf(worksheet: AnyWorksheet, known: readonly KnownSource[]): TraceRow {
  const checks = outsideChecks
    .filter((check) => check.worksheet === worksheet.id)
    .map((check) => {
      const worked = check.worked();
      if (worked === undefined || !Number.isFinite(worked)) throw new Error(`${check.id} gives no number`);
      return { check, worked };
    });
  const cited = worksheet.sources.map(({ id, clause }) => {
    const source = known.find((each) => each.id === id);
    if (!source) throw new Error(`The worksheet "${worksheet.id}" cites "${id}", which is on no list`);
    return { how: source.how, text: citation(source, clause) };
  });
  const reason = commonPractice[worksheet.id];
  return {
    id: worksheet.id,
    sources: cited.map(({ text }) => text),
    outsideChecks: new Set(checks.filter(({ check }) => isOutside(check)).map(({ check }) => check.source))
      .size,
    figures: checks.length,
    worstDeviation: Math.max(0, ...checks.map(({ check, worked }) => deviation(check.published, worked))),
    worstOfAllowed: Math.max(
      0,
      ...checks.map(({ check, worked }) => {
        const off = Math.abs(worked - check.published);
        return off === 0 ? 0 : off / allowed(check.published, check.tolerance);
      }),
    ),
    fromMemory: cited.filter(({ how }) => how === 'from memory').map(({ text }) => text),
    ...(reason === undefined ? {} : { commonPractice: reason }),
  };
}

/** Every worksheet of the shelf, in its order. */
export const trace = (known: readonly KnownSource[]): TraceRow[] =>
  worksheets.map((worksheet) => traceOf(worksheet, known));
