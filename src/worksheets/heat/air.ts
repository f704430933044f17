/** Pressure of the standard atmosphere at sea level [Pa]. */
const seaLevelPa = 101_325;
/** Gas constant of dry air [J/(kg·K)]. */
const dryAirR = 287.042;
/** Specific heat of air at constant pressure [J/(kg·K)]. */
const airCp = 1006;
const zeroC = 273.15;

/** Density of the air for which fans are rated and rules of thumb are written: 20 °C at sea level [kg/m³]. */
export const standardDensity = 1.2042;

/** Pressure at a height in the standard atmosphere, −500 to 11 000 m [Pa]. ASHRAE Fundamentals 2017, chapter 1, equation 3. */
export function pressurePa(altitudeM: number): number {
  return seaLevelPa * (1 - 2.25577e-5 * altitudeM) ** 5.2559;
}

/** Density of dry air at a height and temperature [kg/m³]. Ideal gas; moisture takes off about 1 % on a hot wet day. */
export function airDensity(altitudeM: number, tempC: number): number {
  return pressurePa(altitudeM) / (dryAirR * (tempC + zeroC));
}

/** How much warmer the air leaves than it came, when it carries this loss away [°C]. */
export function airRiseC(lossWatts: number, airflowM3s: number, density: number): number {
  return lossWatts / (density * airCp * airflowM3s);
}

/** Airflow that carries a loss away with no more than this rise [m³/s]. */
export function airflowForM3s(lossWatts: number, riseC: number, density: number): number {
  return lossWatts / (density * airCp * riseC);
}
