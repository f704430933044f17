/** How freely air passes behind the modules, as on the site sheet. */
export const mountings = ['open-rack', 'roof-gap', 'roof-flush'] as const;
export type Mounting = (typeof mountings)[number];

/** What sets the temperature of a module's cells. */
export interface CellWeather {
  /** Light on the module's face [W/m²], >= 0. */
  readonly irradiance: number;
  readonly airC: number;
  /** Wind over the modules [m/s], >= 0. */
  readonly windMs: number;
}

/** The light and air at which a module's nominal operating cell temperature is printed: 800 W/m², 20 °C. */
const noctIrradiance = 800;
const noctAirC = 20;

/** Ross 1976 with the module's own NOCT: Tc = Ta + (NOCT − 20)/800 × G. Made for an open rack in a light wind. */
export function noctCellC({ irradiance, airC }: CellWeather, noctC: number): number {
  return airC + ((noctC - noctAirC) / noctIrradiance) * irradiance;
}

/**
 * Ross coefficients by mounting [°C per W/m²], hardly any wind. Skoplaki & Palyvos 2009: free standing, sloped roof
 * poorly vented, sloped roof not vented.
 */
export const rossByMounting: Readonly<Record<Mounting, number>> = {
  'open-rack': 0.0208,
  'roof-gap': 0.0342,
  'roof-flush': 0.0563,
};

/** Ross 1976 with a coefficient: Tc = Ta + k·G. */
export function rossCellC({ irradiance, airC }: CellWeather, perWattC: number): number {
  return airC + perWattC * irradiance;
}

/** Faiman 2008, free standing glass-backed modules: Tc = Ta + G/(u0 + u1·v); u0 25 W/m²K, u1 6.84 W·s/m³K. */
export function faimanCellC({ irradiance, airC, windMs }: CellWeather, u0 = 25, u1 = 6.84): number {
  return airC + irradiance / (u0 + u1 * windMs);
}

/** One set of the Sandia model: `a`, `b` of the back of the module, `deltaC` from back to cell at 1000 W/m². */
export interface SandiaSet {
  readonly a: number;
  readonly b: number;
  readonly deltaC: number;
}

/**
 * King, Boyson, Kratochvil 2004 (SAND2004-3535), table of thermal coefficients: open rack with polymer back, close
 * roof mount, insulated back.
 */
export const sandiaByMounting: Readonly<Record<Mounting, SandiaSet>> = {
  'open-rack': { a: -3.56, b: -0.075, deltaC: 3 },
  'roof-gap': { a: -2.98, b: -0.0471, deltaC: 1 },
  'roof-flush': { a: -2.81, b: -0.0455, deltaC: 0 },
};

/** Sandia: back of the module Ta + G·e^(a + b·v), cell deltaC·G/1000 warmer. */
export function sandiaCellC({ irradiance, airC, windMs }: CellWeather, { a, b, deltaC }: SandiaSet): number {
  return airC + irradiance * Math.exp(a + b * windMs) + (deltaC * irradiance) / 1000;
}

/** Cell from the measured back of a module, Sandia's difference. */
export function cellFromBackC(backC: number, irradiance: number, mounting: Mounting): number {
  return backC + (sandiaByMounting[mounting].deltaC * irradiance) / 1000;
}

/** What a mounting adds to NOCT in the System Advisor Model: none in the open, gap of 1.5 to 2.5 in, under 0.5 in. */
export const samAddedC: Readonly<Record<Mounting, number>> = {
  'open-rack': 0,
  'roof-gap': 6,
  'roof-flush': 18,
};

/** Share of the light that the cells take up; wind that a low array feels. System Advisor Model. */
const absorbed = 0.9;
const lowArrayWind = 0.51;

/** NOCT with wind and efficiency (System Advisor Model; Duffie & Beckman): what leaves as power does not heat the cell. */
export function samCellC(
  { irradiance, airC, windMs }: CellWeather,
  noctC: number,
  efficiency: number,
  addedC = 0,
): number {
  const still = (irradiance / noctIrradiance) * (noctC + addedC - noctAirC);
  return airC + still * (1 - efficiency / absorbed) * (9.5 / (5.7 + 3.8 * lowArrayWind * windMs));
}

/** Every model's answer for one mounting [°C]; a model made for the open is left out on a roof. */
export interface CellTemps {
  readonly noctC?: number;
  readonly rossC: number;
  readonly faimanC?: number;
  readonly sandiaC: number;
  readonly samC: number;
}

/** All the models side by side; none of them knows the other. */
export function cellTempsOf(
  weather: CellWeather,
  module: { readonly mounting: Mounting; readonly noctC: number; readonly efficiency: number },
): CellTemps {
  const { mounting, noctC, efficiency } = module;
  const open = mounting === 'open-rack';
  return {
    noctC: open ? noctCellC(weather, noctC) : undefined,
    rossC: rossCellC(weather, rossByMounting[mounting]),
    faimanC: open ? faimanCellC(weather) : undefined,
    sandiaC: sandiaCellC(weather, sandiaByMounting[mounting]),
    samC: samCellC(weather, noctC, efficiency, samAddedC[mounting]),
  };
}

/** Coolest, middle and hottest of what the models say [°C]. */
export function spreadOf(temps: CellTemps): { coolestC: number; likelyC: number; hottestC: number } {
  const all = Object.values(temps)
    .filter((temp): temp is number => temp !== undefined)
    .toSorted((a, b) => a - b);
  const middle = (all.length - 1) / 2;
  return {
    coolestC: all[0]!,
    likelyC: (all[Math.floor(middle)]! + all[Math.ceil(middle)]!) / 2,
    hottestC: all.at(-1)!,
  };
}
