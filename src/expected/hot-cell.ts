import type { PvString, SiteSheet } from '../site/sheet.ts';

/**
 * How far cells stand above the air at 1000 W/m² with hardly any wind, by how the modules are mounted: Ross
 * coefficients of Skoplaki & Palyvos 2009 (free standing, sloped roof poorly vented, sloped roof not vented),
 * with 25 °C as the least that counts as hot (common practice).
 */
const riseByMountingC: Record<NonNullable<PvString['mounting']>, number> = {
  'open-rack': 25,
  'roof-gap': 34,
  'roof-flush': 56,
};

/** Where nobody knows the mounting: the middle of the usual 25 to 35 °C. Common practice. */
const usualRiseC = 30;

/** Cell temperature of a string on an ordinary hot afternoon in full sun [°C]; a measured rise on the sheet wins. */
export function hotCellC(sheet: SiteSheet, string: PvString | undefined): number {
  const { usualHighC, hotCellRiseC } = sheet.climate;
  const byMounting = string?.mounting ? riseByMountingC[string.mounting] : usualRiseC;
  return usualHighC + (hotCellRiseC ?? byMounting);
}
