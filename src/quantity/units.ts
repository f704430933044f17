import { kindFacts, type QuantityKind, quantityKinds, type UnitSystem } from './kinds.ts';

/** A unit people write: `inside = typed * factor + offset`. */
export interface Unit {
  /** As shown, with its proper letter case. */
  symbol: string;
  /** Value of one of it in the kind's inside unit. */
  factor: number;
  /** Added after the factor; only °F needs one. */
  offset: number;
  /** Other ways people type it. Letter case matters only where two units of a kind differ by it alone. */
  aliases: readonly string[];
  /** The system in which the unit is shown; both when missing, never when `typedOnly`. */
  system?: UnitSystem;
  /** Understood when typed, never chosen for showing. */
  typedOnly?: true;
}

type UnitRow = [
  symbol: string,
  factor: number,
  aliases: string[],
  shown?: UnitSystem | 'typedOnly',
  offset?: number,
];

/** Rows of a kind stand from the smallest unit to the largest, as `format.ts` relies on. */
const rows: Record<Exclude<QuantityKind, 'wireSize'>, UnitRow[]> = {
  voltage: [
    ['mV', 1e-3, ['mv', 'millivolt', 'millivolts']],
    ['V', 1, ['v', 'volt', 'volts', 'vdc', 'vac', 'v dc', 'v ac']],
    ['kV', 1e3, ['kv'], 'typedOnly'],
  ],
  current: [
    ['mA', 1e-3, ['ma', 'milliamp', 'milliamps']],
    ['A', 1, ['a', 'amp', 'amps', 'ampere', 'amperes', 'adc', 'aac', 'a dc', 'a ac']],
    ['kA', 1e3, ['ka'], 'typedOnly'],
  ],
  resistance: [
    ['mΩ', 1e-3, ['mohm', 'mohms', 'milliohm', 'milliohms']],
    ['Ω', 1, ['ohm', 'ohms', 'Ohm', 'Ohms', 'OHM', 'OHMS', 'r', 'R']],
    ['kΩ', 1e3, ['k', 'K', 'KΩ', 'kohm', 'kohms', 'Kohm', 'Kohms', 'kilohm', 'kilohms']],
    ['MΩ', 1e6, ['M', 'Mohm', 'Mohms', 'MOhm', 'meg', 'megohm', 'megohms', 'megaohm', 'megaohms']],
    ['GΩ', 1e9, ['G', 'Gohm', 'Gohms', 'GOhm', 'gigohm', 'gigohms', 'gigaohm', 'gigaohms']],
  ],
  power: [
    ['mW', 1e-3, ['milliwatt', 'milliwatts'], 'typedOnly'],
    ['W', 1, ['w', 'watt', 'watts']],
    // The mechanical horsepower, 550 ft·lbf/s, of American motor plates.
    ['hp', 745.69987, ['HP', 'Hp', 'horsepower'], 'typedOnly'],
    ['kW', 1e3, ['kw', 'KW', 'kilowatt', 'kilowatts']],
    ['MW', 1e6, [], 'typedOnly'],
  ],
  apparentPower: [
    ['VA', 1, ['va', 'volt-amp', 'volt-amps']],
    ['kVA', 1e3, ['kva', 'KVA']],
  ],
  energy: [
    ['J', 1, ['j', 'joule', 'joules', 'ws'], 'typedOnly'],
    ['kJ', 1e3, ['kj', 'kilojoule', 'kilojoules'], 'typedOnly'],
    ['Wh', 3600, ['wh', 'watt-hour', 'watt-hours']],
    ['kWh', 3.6e6, ['kwh', 'KWh', 'KWH', 'kilowatt-hour', 'kilowatt-hours']],
  ],
  capacitance: [
    ['nF', 1e-9, ['nf']],
    ['µF', 1e-6, ['uF', 'uf', 'µf', 'mfd', 'microfarad', 'microfarads']],
    ['mF', 1e-3, ['mf', 'millifarad', 'millifarads']],
    ['F', 1, ['f', 'farad', 'farads']],
  ],
  charge: [
    ['mAh', 1e-3, ['mah'], 'typedOnly'],
    ['Ah', 1, ['ah', 'amp-hour', 'amp-hours', 'amp hours', 'amp hour']],
  ],
  temperature: [
    ['°C', 1, ['c', 'C', 'degc', 'deg c', 'deg C', '° c', '° C', 'celsius'], 'metric'],
    ['°F', 5 / 9, ['f', 'F', 'degf', 'deg f', 'deg F', '° f', '° F', 'fahrenheit'], 'us', -160 / 9],
  ],
  temperatureDifference: [
    ['°C', 1, ['c', 'C', 'k', 'K', 'degc', 'deg c', 'deg C', 'celsius'], 'metric'],
    ['°F', 5 / 9, ['f', 'F', 'degf', 'deg f', 'deg F', 'fahrenheit'], 'us'],
  ],
  temperatureCoefficient: [
    ['%/°C', 0.01, ['%', '%/c', '%/C', '%/k', '%/K', '% / °C', '% / K', '% per °C', 'percent', '%/deg C']],
  ],
  length: [
    ['mm', 1e-3, ['millimetre', 'millimetres', 'millimeter', 'millimeters'], 'metric'],
    ['cm', 1e-2, ['centimetre', 'centimetres', 'centimeter', 'centimeters'], 'typedOnly'],
    ['in', 0.0254, ['"', '″', 'inch', 'inches'], 'us'],
    ['ft', 0.3048, ["'", '′', 'foot', 'feet'], 'us'],
    ['yd', 0.9144, ['yard', 'yards'], 'typedOnly'],
    ['m', 1, ['metre', 'metres', 'meter', 'meters'], 'metric'],
    ['km', 1e3, ['kilometre', 'kilometres', 'kilometer', 'kilometers'], 'typedOnly'],
  ],
  altitude: [
    ['ft', 0.3048, ["'", '′', 'foot', 'feet'], 'us'],
    ['m', 1, ['metre', 'metres', 'meter', 'meters'], 'metric'],
  ],
  area: [['mm²', 1, ['mm^2', 'sq mm', 'sqmm']]],
  time: [
    ['ms', 1e-3, ['millisecond', 'milliseconds']],
    ['s', 1, ['sec', 'secs', 'second', 'seconds']],
    ['min', 60, ['mins', 'minute', 'minutes']],
    ['h', 3600, ['hr', 'hrs', 'hour', 'hours']],
    ['d', 86_400, ['day', 'days'], 'typedOnly'],
  ],
  frequency: [
    ['Hz', 1, ['hz', 'hertz', 'HZ']],
    ['kHz', 1e3, ['khz', 'KHz']],
  ],
  airflow: [
    ['m³/h', 1 / 3600, ['m3/h', 'm^3/h', 'cmh', 'cubic metres per hour', 'cubic meters per hour'], 'metric'],
    ['cfm', 0.3048 ** 3 / 60, ['CFM', 'ft3/min', 'ft³/min', 'cubic feet per minute'], 'us'],
    ['l/s', 1e-3, ['L/s', 'litres per second', 'liters per second'], 'typedOnly'],
    ['m³/min', 1 / 60, ['m3/min', 'm^3/min'], 'typedOnly'],
    ['m³/s', 1, ['m3/s', 'm^3/s'], 'typedOnly'],
  ],
  ratio: [['%', 0.01, ['percent', 'pct']]],
  irradiance: [
    ['W/m²', 1, ['w/m2', 'w/m²', 'w/m^2', 'W/m^2']],
    ['kW/m²', 1e3, ['kw/m2', 'kw/m²'], 'typedOnly'],
  ],
  speed: [
    ['m/s', 1, ['mps', 'metres per second', 'meters per second'], 'metric'],
    ['mph', 0.44704, ['mi/h', 'miles per hour'], 'us'],
    ['km/h', 1 / 3.6, ['kmh', 'kph'], 'typedOnly'],
    ['kn', 1852 / 3600, ['kt', 'knot', 'knots'], 'typedOnly'],
  ],
  money: [['', 1, []]],
  count: [['', 1, []]],
};

function toUnit([symbol, factor, aliases, shown, offset = 0]: UnitRow): Unit {
  const unit: Unit = { symbol, factor, offset, aliases };
  if (shown === 'typedOnly') return { ...unit, typedOnly: true };
  return shown === undefined ? unit : { ...unit, system: shown };
}

/** The units of each kind, smallest first. A wire size has its own grammar in `wire.ts`; these serve its bare areas. */
export const unitsOf: Record<QuantityKind, readonly Unit[]> = Object.fromEntries(
  quantityKinds.map((kind) => [kind, rows[kind === 'wireSize' ? 'area' : kind].map(toUnit)]),
) as unknown as Record<QuantityKind, readonly Unit[]>;

/** One spelling for letters that look alike (both ohm signs, both micro signs, ² and 2), odd spaces collapsed. */
export function foldUnit(text: string): string {
  return text.normalize('NFKC').replace(/\s+/g, ' ').trim().replace(/\.$/, '');
}

/** The unit of `kind` that a person means by `typed`; letter case counts only where the kind itself needs it. */
export function findUnit(typed: string, kind: QuantityKind): Unit | undefined {
  const folded = foldUnit(typed);
  const units = unitsOf[kind];
  const exact = units.find((unit) => namesOf(unit).includes(folded));
  if (exact) return exact;
  // In these kinds "m…" is milli and "M…" is mega, both in use: a factor of a thousand million is not guessed.
  const caseDecides = (kind === 'resistance' || kind === 'power') && /^m/i.test(folded);
  if (caseDecides && !/^(milli|meg|mega)[a-z]{3,}$/i.test(folded)) return undefined;
  const lower = folded.toLowerCase();
  const loose = units.filter((unit) => namesOf(unit).some((name) => name.toLowerCase() === lower));
  return loose.length === 1 ? loose[0] : undefined;
}

/** Every kind that has a unit spelled so, to say what was typed when another kind was expected. */
export function kindsNamed(typed: string): QuantityKind[] {
  return quantityKinds.filter(
    (kind) => kind !== 'wireSize' && typed !== '' && findUnit(typed, kind) !== undefined,
  );
}

export const toInside = (typed: number, unit: Unit): number => typed * unit.factor + unit.offset;
export const fromInside = (inside: number, unit: Unit): number => (inside - unit.offset) / unit.factor;

const namesOf = (unit: Unit): string[] => [unit.symbol, ...unit.aliases].map(foldUnit);

const usualUnit: Partial<Record<QuantityKind, [us: string, metric: string]>> = {
  energy: ['Wh', 'Wh'],
  capacitance: ['mF', 'mF'],
  temperature: ['°F', '°C'],
  temperatureDifference: ['°F', '°C'],
  temperatureCoefficient: ['%/°C', '%/°C'],
  length: ['ft', 'm'],
  altitude: ['ft', 'm'],
  wireSize: ['AWG', 'mm²'],
  airflow: ['cfm', 'm³/h'],
  speed: ['mph', 'm/s'],
  ratio: ['%', '%'],
};

/** The unit a bare number is taken in, and that a form's label names, unless the caller chooses another. */
export function usualUnitOf(kind: QuantityKind, system: UnitSystem): string {
  const pair = usualUnit[kind];
  return pair ? pair[system === 'us' ? 0 : 1] : kindFacts[kind].insideUnit;
}
