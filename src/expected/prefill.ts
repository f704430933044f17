import { getFact, isFactId } from '../site/facts.ts';
import type { PvString, SiteSheet } from '../site/sheet.ts';
import { legFacts } from '../worksheets/ac/topology.ts';
import { energyCellV, nominalJoules, usualUsableShare } from '../worksheets/battery-dc/bank-energy.ts';
import { isNumber } from '../worksheets/check-inputs.ts';
import type { AnyWorksheet, Field } from '../worksheets/define.ts';
import { hotCellC } from './hot-cell.ts';

/** A cell at rest in the flat middle of its curve: near enough for what a worksheet starts with. Common practice. */
const restCellV = 3.3;

/** A figure of one inverter for all of them on this battery. */
const ofAllUnits = (sheet: SiteSheet, each: number | null): number | null =>
  each === null ? null : each * sheet.parallelUnits;

/** A figure of the string of that row; nothing where there is none. */
function ofString(sheet: SiteSheet, row: number, figure: (string: PvString) => number): number | null {
  const string = sheet.strings[row];
  return string ? figure(string) : null;
}

/** Facts that a worksheet wants and the sheet holds only in parts. */
const derived: Readonly<Record<string, (sheet: SiteSheet, row: number) => number | string | null>> = {
  'derived.hotCellC': (sheet, row) => hotCellC(sheet, sheet.strings[row]),
  'derived.bankVolts': (sheet) => sheet.battery.cellsInSeries * restCellV,
  'derived.bankCapacitanceF': (sheet) =>
    sheet.inverter.busCapacitanceF === null ? null : sheet.inverter.busCapacitanceF * sheet.parallelUnits,
  'derived.bankEnergyJ': ({ battery }) =>
    usualUsableShare *
    nominalJoules({
      cells: battery.cellsInSeries,
      cellVolts: energyCellV,
      packAh: battery.packCapacityAh,
      packs: battery.packs,
    }),
  'derived.fullVolts': ({ battery }) => battery.cellsInSeries * battery.cellMaxV,
  'derived.ratedWatts': (sheet) => sheet.inverter.ratedW * sheet.parallelUnits,
  'derived.surgeWatts': (sheet) => ofAllUnits(sheet, sheet.inverter.surgeW),
  'derived.idleWatts': (sheet) => ofAllUnits(sheet, sheet.inverter.idleW),
  // What protects the battery cable: its fuse, else a main breaker. A plain switch protects nothing.
  'derived.mainDeviceA': ({ fuse, mainSwitch }) =>
    fuse.fitted !== false ? fuse.ratedA : mainSwitch.kind === 'breaker' ? mainSwitch.ratedA : null,
  'derived.mainDeviceBreaksA': ({ fuse }) => (fuse.fitted !== false ? fuse.interruptingA : null),
  'derived.legLimitWatts': (sheet) => ofAllUnits(sheet, sheet.inverter.legLimitW),
  // A second source passes through and may give more; one of unknown size may give anything.
  'derived.commonAmps': ({ inverter, parallelUnits, secondSource }) =>
    secondSource.kind !== 'none' && secondSource.ratedW === null
      ? null
      : Math.max(inverter.ratedW * parallelUnits, secondSource.ratedW ?? 0) / legFacts['common-120'].legVolts,
  'derived.necBasis': ({ codeBasis }) => (codeBasis === 'us-nec' ? 'nec-2023' : 'other'),
  'derived.fuseBasis': ({ codeBasis }) => (codeBasis === 'us-nec' ? 'nec-2023' : codeBasis),
  'derived.pvPlace': ({ codeBasis }) => (codeBasis === 'us-nec' ? 'dwelling' : 'otherCode'),
  'derived.stringVmpRatedV': (sheet, row) => ofString(sheet, row, (each) => each.vmpV * each.modulesInSeries),
  'derived.stringIscA': (sheet, row) => ofString(sheet, row, (each) => each.iscA * each.parallel),
  'derived.stringImpA': (sheet, row) => ofString(sheet, row, (each) => each.impA * each.parallel),
  'derived.stringVocRatedV': (sheet, row) => ofString(sheet, row, (each) => each.vocV * each.modulesInSeries),
};

/**
 * A fact by the id under which worksheets ask for it: a fact of the sheet, `string.` and `tracker.` for the string
 * of that row and the tracker it lands on, or one derived here. Nothing where the sheet does not know.
 * Throws on an id that names none: a slip in a worksheet's definition.
 */
export function worksheetFact(sheet: SiteSheet, row: number, id: string): number | string | undefined {
  const make = derived[id];
  const value = make ? make(sheet, row) : getFactOf(sheet, row, id);
  return typeof value === 'number' || typeof value === 'string' ? value : undefined;
}

function getFactOf(sheet: SiteSheet, row: number, id: string): ReturnType<typeof getFact> {
  const [list, key] = id.split('.');
  const trackerRow = sheet.trackers.findIndex((tracker) => tracker.name === sheet.strings[row]?.tracker);
  const concrete =
    list === 'string'
      ? `strings[${row}].${key}`
      : list === 'tracker'
        ? `trackers[${Math.max(0, trackerRow)}].${key}`
        : id;
  if (!isFactId(concrete))
    throw new Error(`a worksheet asks for "${id}", which is no fact of the site sheet`);
  return list === 'tracker' && trackerRow < 0 ? null : getFact(sheet, concrete);
}

/** What the sheet gives for a worksheet's fields, for the string of that row; the first known fact of a field wins. */
export function prefill(
  worksheet: AnyWorksheet,
  sheet: SiteSheet,
  row: number,
): Readonly<Record<string, number | string>> {
  const fields = Object.entries(worksheet.inputs as Record<string, Field>);
  return Object.fromEntries(
    fields.flatMap(([name, field]) => {
      const ids = 'from' in field ? (field.from ?? []) : [];
      const value = ids.map((id) => worksheetFact(sheet, row, id)).find((each) => each !== undefined);
      const fits =
        !isNumber(field) || (typeof value === 'number' && value >= field.min && value <= field.max);
      return value !== undefined && fits ? [[name, value]] : [];
    }),
  );
}
