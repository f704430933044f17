import { formatQuantity } from '../quantity/format.ts';
import type { UnitSystem } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import { contradictions, type Problem, unitsOf } from './contradictions.ts';
import { idOfPath } from './fact-paths.ts';
import { type Fact, factOf, isFactId } from './facts.ts';
import { type SiteSheet, sheetSchema } from './sheet.ts';

export type { Problem } from './contradictions.ts';

/** Warnings describe an install that can exist but should not; only what cannot be true refuses a sheet. */
export type SheetResult =
  | { ok: true; sheet: SiteSheet; warnings: Problem[] }
  | { ok: false; problems: Problem[] };

/** Judges anything at all as a site sheet: each value alone, and those that are right alone against each other. */
export function checkSheet(input: unknown): SheetResult {
  const parsed = sheetSchema.safeParse(input);
  if (!parsed.success) {
    const units = unitsOf(input);
    const problems = parsed.error.issues.map((issue) => problemOf(issue, input, units));
    return { ok: false, problems: [...problems, ...contradictions(input, factsOf(problems))] };
  }
  const problems = contradictions(parsed.data);
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, sheet: parsed.data, warnings: warnings(parsed.data) };
}

type Issue = NonNullable<ReturnType<typeof sheetSchema.safeParse>['error']>['issues'][number];

/** The facts that problems concern. */
export const factsOf = (problems: readonly Problem[]): ReadonlySet<string> =>
  new Set(problems.flatMap(({ factIds }) => factIds));

function problemOf(issue: Issue, input: unknown, units: UnitSystem): Problem {
  const id = idOfPath(issue.path);
  if (issue.code === 'unrecognized_keys') {
    const names = issue.keys.map((key) => (id === '' ? key : `${id}.${key}`)).join(', ');
    return { factIds: [], reason: { id: 'site.unknownField', params: { names: names.slice(0, 120) } } };
  }
  const fact = isFactId(id) ? factOfOrNone(id) : undefined;
  const factIds = [id];
  if (!fact) return { factIds, reason: { id: 'site.badRecord', params: { field: id } } };
  const given = issue.path.reduce<unknown>(
    (part, key) => (part as Record<PropertyKey, unknown> | null)?.[key],
    input,
  );
  if (given === undefined || given === null)
    return { factIds, reason: { id: 'site.missing', params: { fact: fact.id } } };
  return { factIds, reason: reasonOf(fact, units) };
}

const factOfOrNone = (id: string): Fact | undefined =>
  id === 'strings' || id === 'trackers' ? undefined : factOf(id);

/** Why a value given for a fact is none it can have. */
export function reasonOf(fact: Fact, units: UnitSystem): MessageRef {
  const { answer } = fact;
  if (answer.type === 'choice') {
    return { id: 'site.notAChoice', params: { fact: fact.id, choices: answer.choices.join(', ') } };
  }
  if (answer.type === 'yesNo') return { id: 'site.notYesNo', params: { fact: fact.id } };
  if (answer.type === 'text') return { id: 'site.badText', params: { fact: fact.id } };
  const show = (value: number) => formatQuantity(value, answer.kind, { system: units, unit: answer.unit });
  return { id: 'site.outOfRange', params: { fact: fact.id, min: show(answer.min), max: show(answer.max) } };
}

function warnings(sheet: SiteSheet): Problem[] {
  const { battery, inverter } = sheet;
  const fullBankV = battery.cellsInSeries * battery.cellChargeV;
  const found: Problem[] = [];
  const warn = (id: string, factIds: string[], params?: Record<string, string | number>) =>
    found.push({ factIds, reason: params ? { id, params } : { id } });
  const volts = (value: number) => formatQuantity(value, 'voltage');
  if (fullBankV > inverter.dcMaxV) {
    warn('site.fullAboveInverter', ['inverter.dcMaxV', 'battery.cellsInSeries', 'battery.cellChargeV'], {
      full: volts(fullBankV),
      max: volts(inverter.dcMaxV),
    });
  }
  if (fullBankV <= inverter.dcMinV) {
    warn('site.fullBelowInverter', ['inverter.dcMinV', 'battery.cellsInSeries', 'battery.cellChargeV'], {
      full: volts(fullBankV),
      min: volts(inverter.dcMinV),
    });
  }
  if (battery.packs > 1 && sheet.packBreaker.fitted === false)
    warn('site.packsWithoutBreakers', ['packBreaker.fitted']);
  if (sheet.fuse.fitted === false) warn('site.noFuse', ['fuse.fitted']);
  return found;
}
