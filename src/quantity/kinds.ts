/**
 * What a number measures. A value of a kind is always held in the one unit named in `insideUnit`; the user's
 * own unit exists only in what was typed and what is shown.
 */
export const quantityKinds = [
  'voltage',
  'current',
  'resistance',
  'power',
  'apparentPower',
  'energy',
  'capacitance',
  'charge',
  'temperature',
  'temperatureDifference',
  'temperatureCoefficient',
  'length',
  'altitude',
  'area',
  'wireSize',
  'time',
  'frequency',
  'airflow',
  'ratio',
  'irradiance',
  'speed',
  'money',
  'count',
] as const;

export type QuantityKind = (typeof quantityKinds)[number];

/** Which everyday units are shown: feet, °F and AWG, or metres, °C and mm². */
export type UnitSystem = 'us' | 'metric';

interface KindFacts {
  /** Symbol of the unit that values of this kind are held in. */
  insideUnit: string;
  /** Largest magnitude that can be meant on an install of this kind, in the inside unit: beyond it is a slip. */
  maxMagnitude: number;
  /** Whether a value below zero can be meant without the caller asking for a signed reading. */
  belowZero: boolean;
}

/**
 * Three kinds are not held in SI: charge in ampere-hours, temperatures in °C, conductor areas in mm². The trade
 * and every published table use those, so converting twice would only add slips.
 * A `ratio` is a fraction inside and a percentage outside; a `temperatureCoefficient` is a fraction per °C
 * inside and %/°C outside; `money` is in whatever the person counts in; `wireSize` is the conductor's area, typed and shown as AWG or mm².
 */
export const kindFacts: Record<QuantityKind, KindFacts> = {
  voltage: { insideUnit: 'V', maxMagnitude: 2000, belowZero: false },
  current: { insideUnit: 'A', maxMagnitude: 2000, belowZero: false },
  resistance: { insideUnit: 'Ω', maxMagnitude: 1e11, belowZero: false },
  power: { insideUnit: 'W', maxMagnitude: 1e6, belowZero: false },
  apparentPower: { insideUnit: 'VA', maxMagnitude: 1e6, belowZero: false },
  energy: { insideUnit: 'J', maxMagnitude: 3.6e10, belowZero: false },
  capacitance: { insideUnit: 'F', maxMagnitude: 10, belowZero: false },
  charge: { insideUnit: 'Ah', maxMagnitude: 1e5, belowZero: false },
  temperature: { insideUnit: '°C', maxMagnitude: 1000, belowZero: true },
  temperatureDifference: { insideUnit: '°C', maxMagnitude: 1000, belowZero: false },
  temperatureCoefficient: { insideUnit: '1/°C', maxMagnitude: 0.05, belowZero: true },
  length: { insideUnit: 'm', maxMagnitude: 10_000, belowZero: false },
  altitude: { insideUnit: 'm', maxMagnitude: 9000, belowZero: true },
  area: { insideUnit: 'mm²', maxMagnitude: 2000, belowZero: false },
  wireSize: { insideUnit: 'mm²', maxMagnitude: 2000, belowZero: false },
  time: { insideUnit: 's', maxMagnitude: 1e9, belowZero: false },
  frequency: { insideUnit: 'Hz', maxMagnitude: 1e5, belowZero: false },
  airflow: { insideUnit: 'm³/s', maxMagnitude: 100, belowZero: false },
  ratio: { insideUnit: '', maxMagnitude: 100, belowZero: false },
  irradiance: { insideUnit: 'W/m²', maxMagnitude: 2500, belowZero: false },
  speed: { insideUnit: 'm/s', maxMagnitude: 100, belowZero: false },
  money: { insideUnit: '', maxMagnitude: 1e7, belowZero: false },
  count: { insideUnit: '', maxMagnitude: 1e6, belowZero: false },
};
