import type { PvString, SiteSheet } from '../site/sheet.ts';
import type { Variant } from './plant.ts';

/** Open-circuit volts of a whole string at the coldest air on record, by the label's linear coefficient from 25 °C. */
const coldestVocV = (string: PvString, recordLowC: number) =>
  string.modulesInSeries * string.vocV * (1 + string.vocPerC * (recordLowC - 25));

function breaksString(string: PvString, recordLowC: number): boolean {
  const { fitted, loadBreak, ratedV, ratedA } = string.isolator;
  return (
    fitted === true &&
    loadBreak === true &&
    ratedV !== null &&
    ratedA !== null &&
    ratedV >= coldestVocV(string, recordLowC) &&
    ratedA >= string.iscA * string.parallel
  );
}

function breaksBank({ mainSwitch, battery }: SiteSheet): boolean {
  const { loadBreak, ratedV } = mainSwitch;
  return loadBreak === true && ratedV !== null && ratedV >= battery.cellMaxV * battery.cellsInSeries;
}

const sources = {
  none: 'none',
  'generator-manual': 'manual',
  'generator-auto': 'autoStart',
  // The utility comes back by itself, as a generator with auto-start does.
  utility: 'autoStart',
} as const satisfies Record<SiteSheet['secondSource']['kind'], Variant['source']>;

/** The kind of plant a site is. What the sheet does not know counts as the kind that asks for more care. */
export function variantOfSheet(sheet: SiteSheet): Variant {
  const { strings, climate, mainSwitch, packBreaker } = sheet;
  return {
    source: sources[sheet.secondSource.kind],
    packs: sheet.battery.packs > 1 ? 'several' : 'one',
    inverters: sheet.parallelUnits > 1 ? 'several' : 'one',
    mainLoadBreak: breaksBank(sheet),
    pvLoadBreak: strings.length > 0 && strings.every((string) => breaksString(string, climate.recordLowC)),
    polarised:
      mainSwitch.polarised !== false ||
      (packBreaker.fitted !== false && packBreaker.polarised !== false) ||
      strings.some(({ isolator }) => isolator.fitted !== false && isolator.polarised !== false),
    // A phone cannot see whether there is light on the array.
    daylight: 'unknown',
  };
}
