import type { SiteSheet } from '../site/sheet.ts';
import type { Variant } from './plant.ts';

/**
 * The plant variant a site sheet describes. What the sheet does not know counts as the answer that asks for more care:
 * not load-break, polarised. A utility counts as a source that comes back by itself.
 */
export function variantOf(sheet: SiteSheet): Variant {
  const sources = {
    none: 'none',
    'generator-manual': 'manual',
    'generator-auto': 'autoStart',
    utility: 'autoStart',
  } as const;
  const isolators = sheet.strings.map((string) => string.isolator);
  return {
    source: sources[sheet.secondSource.kind],
    packs: sheet.battery.packs > 1 ? 'several' : 'one',
    inverters: sheet.parallelUnits > 1 ? 'several' : 'one',
    mainLoadBreak: sheet.mainSwitch.loadBreak === true,
    pvLoadBreak: isolators.length > 0 && isolators.every((isolator) => isolator.loadBreak === true),
    polarised:
      sheet.mainSwitch.polarised !== false || isolators.some((isolator) => isolator.polarised !== false),
    daylight: 'unknown',
  };
}
