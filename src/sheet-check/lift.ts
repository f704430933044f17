import type { UnitSystem } from '../quantity/kinds.ts';
import { findUnit, fromInside, toInside, usualUnitOf } from '../quantity/units.ts';
import { awgAreaMm2, awgGauges, metricAreasMm2 } from '../quantity/wire.ts';
import { checkSheet } from '../site/check.ts';
import type { FactValue } from '../site/fact-paths.ts';
import { type Fact, factOf, setFact } from '../site/facts.ts';
import type { SiteSheet } from '../site/sheet.ts';
import { standardRatings } from '../worksheets/tables/standard-ratings.ts';
import type { Check, Finding, Lift } from './check.ts';
import { checks } from './checks.ts';
import { concreteFact, factValue } from './figures.ts';
import { checkSite, isFinding, runCheck } from './run.ts';

/** Steps of the first look outwards from what the sheet says; they lie closest near it. */
const steps = 120;
/** Halvings between the last value that fails and the first that does not. */
const halvings = 30;

type NumberAnswer = Extract<Fact['answer'], { type: 'number' }>;

/** Values that are sold, for facts that are ratings or sizes: nobody fits a fuse of 187 A. */
const soldIn: Readonly<Record<string, (units: UnitSystem) => readonly number[]>> = {
  ratedA: () => standardRatings('2023', 'fuse'),
  areaMm2: (units) => (units === 'us' ? awgGauges.map(awgAreaMm2).toSorted((a, b) => a - b) : metricAreasMm2),
  ratedV: () => [48, 60, 80, 100, 125, 150, 250, 300, 500, 600, 1000, 1500],
  categoryV: () => [150, 300, 600, 1000, 1500],
  interruptingA: () => [1500, 2500, 5000, 10_000, 20_000, 50_000, 100_000, 200_000],
};

/**
 * For each fact that could lift a finding, the smallest change that does, in the check's own order. A change that
 * contradicts the sheet, breaks another limit or leaves one unchecked that could be checked before is none.
 */
export function liftsOf(finding: Finding, sheet: SiteSheet): readonly Lift[] {
  const check = checks.find(({ id }) => id === finding.check);
  if (!check) throw new Error(`no check is called ${finding.check}`);
  const before = standing(sheet);
  return check.lifts.flatMap((id) => {
    const fact = concreteFact(sheet, finding.row, id);
    const lift = liftBy(check, finding.row, sheet, fact, before);
    return lift ? [lift] : [];
  });
}

/** Every check that now stands broken or undone. */
function standing(sheet: SiteSheet): ReadonlySet<string> {
  const { broken, quiet, notChecked } = checkSite(sheet);
  return new Set([...broken, ...quiet, ...notChecked].map(({ check, row }) => `${check}:${row}`));
}

function liftBy(
  check: Check,
  row: number,
  sheet: SiteSheet,
  fact: string,
  before: ReadonlySet<string>,
): Lift | undefined {
  const from = factValue(sheet, fact);
  const clears = (value: FactValue): boolean => {
    const made = runCheck(check, setFact(sheet, fact, value), row);
    return isFinding(made) && made.holds;
  };
  const sound = (value: FactValue): boolean => {
    const changed = setFact(sheet, fact, value);
    return checkSheet(changed).ok && [...standing(changed)].every((key) => before.has(key));
  };
  const { answer } = factOf(fact);
  const to =
    answer.type === 'yesNo'
      ? [true, false].find((value) => value !== from && clears(value) && sound(value))
      : answer.type === 'number' && typeof from === 'number'
        ? nearest(from, answer, fact, sheet.units, (value) => clears(value) && sound(value), clears)
        : undefined;
  return to === undefined ? undefined : { fact, from, to };
}

function nearest(
  from: number,
  answer: NumberAnswer,
  fact: string,
  units: UnitSystem,
  lifts: (value: number) => boolean,
  clears: (value: number) => boolean,
): number | undefined {
  const { min, max, kind } = answer;
  const inBounds = (value: number): boolean => value >= min && value <= max;
  const byDistance = (values: readonly number[]): number[] =>
    values
      .filter((value) => inBounds(value) && value !== from)
      .toSorted((a, b) => Math.abs(a - from) - Math.abs(b - from));
  const sold = soldIn[fact.slice(fact.lastIndexOf('.') + 1)]?.(units);
  if (sold) return byDistance(sold).find(lifts);
  if (kind === 'count')
    return byDistance(Array.from({ length: max - min + 1 }, (_, at) => min + at)).find(lifts);
  const ways = [max, min].flatMap((end) => {
    const found = outwards(from, end, clears);
    if (found === undefined) return [];
    const rounded = readable(found, from, answer, units);
    const value = inBounds(rounded) && lifts(rounded) ? rounded : found;
    return lifts(value) ? [value] : [];
  });
  return byDistance(ways)[0];
}

/** The value nearest to `from`, on the way to `end`, that clears; steps first, then halves. */
function outwards(from: number, end: number, clears: (value: number) => boolean): number | undefined {
  const at = (step: number): number => (step === steps ? end : from + (end - from) * (step / steps) ** 3);
  const first = Array.from({ length: steps }, (_, step) => step + 1).find((step) => clears(at(step)));
  if (first === undefined) return undefined;
  let fails = at(first - 1);
  let good = at(first);
  for (let halving = 0; halving < halvings; halving++) {
    const middle = (fails + good) / 2;
    if (clears(middle)) good = middle;
    else fails = middle;
  }
  return good;
}

/** Rounded away from where it stood to three figures in the unit that the person reads. */
function readable(value: number, from: number, { kind, unit }: NumberAnswer, units: UnitSystem): number {
  const shown = findUnit(unit ?? usualUnitOf(kind, units), kind);
  if (!shown) return value;
  const outside = fromInside(value, shown);
  const place = 10 ** (Math.floor(Math.log10(Math.abs(outside) || 1)) - 2);
  // Dividing by a place below one leaves hairs that would round a whole step too far.
  const scaled = outside / place;
  const whole = value > from ? Math.ceil(scaled - 1e-6) : Math.floor(scaled + 1e-6);
  return toInside(Number((whole * place).toPrecision(12)), shown);
}
