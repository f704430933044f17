import type { SiteSheet } from '../site/sheet.ts';
import type { Check, Finding, NotChecked } from './check.ts';
import { checks } from './checks.ts';
import { figures, usedInputs } from './figures.ts';

/** A hair of rounding error breaks no limit. */
const hair = 1e-9;

/** The rows that a check runs for on this sheet. A tracker is met at the first string that lands on it. */
export function rowsOf(check: Check, sheet: SiteSheet): readonly number[] {
  const rows =
    check.of === 'site'
      ? [0]
      : sheet.strings.flatMap(({ tracker }, row) => {
          const first = sheet.strings.findIndex((string) => string.tracker === tracker) === row;
          return check.of === 'string' || first ? [row] : [];
        });
  return rows.filter((row) => check.applies?.(sheet, row) ?? true);
}

const placeOf = (check: Check, sheet: SiteSheet, row: number) => ({
  check: check.id,
  row,
  ...(check.of === 'site'
    ? {}
    : { name: sheet.strings[row]?.[check.of === 'string' ? 'name' : 'tracker'] ?? '' }),
});

/** Makes one check on one row. */
export function runCheck(check: Check, sheet: SiteSheet, row: number): Finding | NotChecked {
  const place = placeOf(check, sheet, row);
  const worksheet = check.worksheet.id;
  const found = figures(check.worksheet, sheet, row, check.inputs?.(sheet, row), check.needs);
  if (!found.ok) return { ...place, worksheet, why: found.why };
  const judged = check.judge(found.worked);
  if (typeof judged === 'string') return { ...place, worksheet, why: { kind: judged } };
  const { amount, limit } = judged;
  const room = check.side === 'atMost' ? limit - amount : amount - limit;
  return {
    ...place,
    amount,
    limit,
    severity: check.severity,
    kind: check.kind,
    side: check.side,
    holds: room >= -hair * Math.max(1, Math.abs(limit)),
    ...(limit === 0 ? {} : { margin: room / Math.abs(limit) }),
    use: { worksheet, inputs: usedInputs(found.worked) },
    assumed: found.assumed,
  };
}

export const isFinding = (made: Finding | NotChecked): made is Finding => 'holds' in made;

export interface SheetChecked {
  /** Broken limits. */
  readonly broken: readonly Finding[];
  /** Broken ones of which a stronger one says the same. */
  readonly quiet: readonly Finding[];
  /** Kept ones, the tightest first. */
  readonly kept: readonly Finding[];
  readonly notChecked: readonly NotChecked[];
}

const order: readonly Finding['severity'][] = ['danger', 'fails', 'limits'];

/** Every check that applies, made. The most severe first, then the furthest over. */
export function checkSite(sheet: SiteSheet): SheetChecked {
  const made = checks.flatMap((check) => rowsOf(check, sheet).map((row) => runCheck(check, sheet, row)));
  const findings = made.filter(isFinding);
  const broken = findings.filter(({ holds }) => !holds);
  const unless = new Map(checks.map(({ id, unless }) => [id, unless]));
  const isQuiet = ({ check, row }: Finding): boolean =>
    broken.some((each) => each.row === row && each.check === unless.get(check));
  const said = broken.filter((finding) => !isQuiet(finding));
  const tightness = ({ margin }: Finding): number => margin ?? Number.NEGATIVE_INFINITY;
  return {
    broken: said.toSorted(
      (a, b) => order.indexOf(a.severity) - order.indexOf(b.severity) || tightness(a) - tightness(b),
    ),
    quiet: broken.filter(isQuiet),
    kept: findings.filter(({ holds }) => holds).toSorted((a, b) => tightness(a) - tightness(b)),
    notChecked: made.filter((each): each is NotChecked => !isFinding(each)),
  };
}
