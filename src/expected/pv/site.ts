import { readingUncertainty } from '../../quantity/meter.ts';
import { meterSpecOf } from '../../site/meter.ts';
import type { PvString, SiteSheet, Tracker } from '../../site/sheet.ts';
import { ratingTempC, vocAt } from '../../worksheets/pv/string-volts.ts';
import type { ExpectContext, Missing } from '../context.ts';
import { hotCellC } from '../hot-cell.ts';

/** How far a cell may stand from a thermometer held behind its module, or from a careful estimate [°C]. Common practice. */
const cellReadingErrorC = 5;
/** Cells of a module under the sky stay within these; a reading beyond is a slip of the pen or the wrong unit [°C]. Common practice. */
export const cellLimits = { lowC: -40, highC: 100 };
/** The hottest cell that the string worksheet takes [°C]. */
const hottestCellC = 95;

/** The string that a run is about, and the tracker it lands on. */
export interface RunString {
  string: PvString;
  tracker: Tracker;
}

/** A range of cell temperatures and the likeliest one [°C]. */
export interface CellRange {
  lowC: number;
  likelyC: number;
  highC: number;
  /** A temperature was read at the module. */
  read: boolean;
}

/** The string of this run; the only one where there is one. */
export function runString({ sheet, stringId }: ExpectContext): ({ ok: true } & RunString) | Missing {
  const string =
    sheet.strings.find(({ name }) => name === stringId) ??
    (sheet.strings.length === 1 ? sheet.strings[0] : undefined);
  if (!string) return { ok: false, missing: ['strings'] };
  const tracker =
    sheet.trackers.find(({ name }) => name === string.tracker) ??
    (sheet.trackers.length === 1 ? sheet.trackers[0] : undefined);
  return tracker ? { ok: true, string, tracker } : { ok: false, missing: ['trackers'] };
}

/** Cell temperature on an ordinary hot afternoon, within what the string worksheet takes [°C]. */
export const hotCells = (sheet: SiteSheet, string: PvString): number =>
  Math.min(hottestCellC, Math.max(ratingTempC, hotCellC(sheet, string)));

/** Where a run reads the cells, the latest place first: a string check follows a repair, and that follows the first look. */
const cellBlocks = ['string-check--cell-temp', 'cell-again', 'over-cells', 'cell-temp'];

/** What the cells may stand at now: what was last read at the module, else anything from a cold morning to a hot afternoon. */
export function cellRange(context: ExpectContext, string: PvString): CellRange {
  const read = cellBlocks
    .map((block) => context.readings[`${block}.cell`])
    .find((each) => each !== undefined && each >= cellLimits.lowC && each <= cellLimits.highC);
  if (read !== undefined)
    return { lowC: read - cellReadingErrorC, likelyC: read, highC: read + cellReadingErrorC, read: true };
  const { climate } = context.sheet;
  const lowC = climate.usualLowC ?? climate.recordLowC;
  const highC = hotCells(context.sheet, string);
  return { lowC, likelyC: (lowC + highC) / 2, highC, read: false };
}

/** Open-circuit volts of the whole string at a cell temperature [V]. */
export const stringVoc = (string: PvString, tempC: number): number =>
  string.modulesInSeries * vocAt(string.vocV, string.vocPerC, tempC);

/** Rated power of the strings on this pair of conductors [W]. */
export const ratedWatts = (string: PvString): number =>
  string.modulesInSeries * string.parallel * string.vmpV * string.impA;

/** The person called the light weak, at the last place where it was asked. */
export const lightIsWeak = (context: ExpectContext): boolean => context.outcomes['light'] === 'weak';

/** Expanded uncertainty of a DC volts reading on this site's meter [V], for a reading written to a tenth of a volt. */
export function voltsU(sheet: SiteSheet, volts: number): number {
  const spec = meterSpecOf(sheet, 'dcVolts') ?? { percentOfReading: 1, counts: 3 };
  return readingUncertainty(volts, spec, 0.1).expanded;
}
