import { formatQuantity } from '../quantity/format.ts';
import type { UnitSystem } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import { concreteIds, idOfPath } from './fact-paths.ts';
import { type Fact, factOf, getFact, isFactId } from './facts.ts';
import { type SiteSheet, sheetSchema } from './sheet.ts';

/** Something wrong with a sheet, and the concrete facts it concerns, the one to show it at first. */
export interface Problem {
  factIds: string[];
  reason: MessageRef;
}

/** Warnings describe an install that can exist but should not; only what cannot be true refuses a sheet. */
export type SheetResult =
  | { ok: true; sheet: SiteSheet; warnings: Problem[] }
  | { ok: false; problems: Problem[] };

/** Judges anything at all as a site sheet: each value alone, then the values against each other. */
export function checkSheet(input: unknown): SheetResult {
  const parsed = sheetSchema.safeParse(input);
  if (!parsed.success) {
    const units = unitsOf(input);
    return { ok: false, problems: parsed.error.issues.map((issue) => problemOf(issue, input, units)) };
  }
  const problems = contradictions(parsed.data);
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, sheet: parsed.data, warnings: warnings(parsed.data) };
}

type Issue = NonNullable<ReturnType<typeof sheetSchema.safeParse>['error']>['issues'][number];

function unitsOf(input: unknown): UnitSystem {
  return (input as { units?: unknown } | null)?.units === 'us' ? 'us' : 'metric';
}

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

/** Pairs that can stand only in this order; `<=` where they may be equal. Rows of a list are compared row by row. */
const orders: readonly [lower: string, sign: '<' | '<=', upper: string][] = [
  ['climate.recordLowC', '<=', 'climate.usualLowC'],
  ['climate.usualLowC', '<', 'climate.usualHighC'],
  ['climate.recordLowC', '<', 'climate.usualHighC'],
  ['battery.cellRecoverMinV', '<=', 'battery.cellMinV'],
  ['battery.cellMinV', '<', 'battery.cellChargeV'],
  ['battery.cellChargeV', '<=', 'battery.cellMaxV'],
  ['battery.packContinuousA', '<=', 'battery.packPeakA'],
  ['inverter.dcMinV', '<', 'inverter.dcMaxV'],
  ['inverter.ratedW', '<=', 'inverter.surgeW'],
  ['inverter.legLimitW', '<=', 'inverter.ratedW'],
  ['trackers[].trackMinV', '<', 'trackers[].trackMaxV'],
  ['trackers[].trackMaxV', '<=', 'trackers[].maxV'],
  ['trackers[].startV', '<', 'trackers[].maxV'],
  ['trackers[].usableA', '<=', 'trackers[].shortCircuitMaxA'],
  ['strings[].vmpV', '<', 'strings[].vocV'],
  ['strings[].impA', '<', 'strings[].iscA'],
];

function contradictions(sheet: SiteSheet): Problem[] {
  return [
    ...orders.flatMap(([lower, sign, upper]) => {
      const uppers = concreteIds(sheet, upper);
      return concreteIds(sheet, lower).flatMap((id, row) =>
        wrongOrder(sheet, id, sign, uppers[row] as string),
      );
    }),
    ...sameNames(sheet, 'trackers'),
    ...sameNames(sheet, 'strings'),
    ...lostTrackers(sheet),
  ];
}

function wrongOrder(sheet: SiteSheet, lower: string, sign: '<' | '<=', upper: string): Problem[] {
  const [low, high] = [getFact(sheet, lower), getFact(sheet, upper)];
  if (typeof low !== 'number' || typeof high !== 'number') return [];
  if (sign === '<' ? low < high : low <= high) return [];
  return [
    {
      factIds: [lower, upper],
      reason: {
        id: sign === '<' ? 'site.mustBeBelow' : 'site.mustNotExceed',
        params: {
          lowerFact: lower,
          upperFact: upper,
          lower: shown(sheet, lower),
          upper: shown(sheet, upper),
        },
      },
    },
  ];
}

function sameNames(sheet: SiteSheet, list: 'trackers' | 'strings'): Problem[] {
  const names = sheet[list].map((row) => row.name.trim().toLowerCase());
  return names.flatMap((name, row) =>
    names.indexOf(name) === row
      ? []
      : [
          {
            factIds: [`${list}[${row}].name`],
            reason: { id: 'site.nameTwice', params: { name: sheet[list][row]?.name ?? '' } },
          },
        ],
  );
}

function lostTrackers(sheet: SiteSheet): Problem[] {
  const names = sheet.trackers.map((each) => each.name);
  return sheet.strings.flatMap((string, row) =>
    names.includes(string.tracker)
      ? []
      : [
          {
            factIds: [`strings[${row}].tracker`],
            reason: {
              id: 'site.noSuchTracker',
              params: { tracker: string.tracker, names: names.join(', ') },
            },
          },
        ],
  );
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

function shown(sheet: SiteSheet, id: string): string {
  const value = getFact(sheet, id);
  const { answer } = factOf(id);
  return typeof value === 'number' && answer.type === 'number'
    ? formatQuantity(value, answer.kind, { system: sheet.units, unit: answer.unit })
    : String(value);
}
