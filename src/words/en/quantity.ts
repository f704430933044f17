/** What stands in a sentence's gaps. */
type Params = Readonly<Record<string, string | number>>;

/** What each kind of quantity is called in a sentence. */
export const quantityNames: Readonly<Record<string, string>> = {
  voltage: 'volts',
  current: 'amps',
  resistance: 'ohms',
  power: 'watts',
  apparentPower: 'volt-amps',
  energy: 'energy',
  capacitance: 'capacitance',
  charge: 'amp-hours',
  temperature: 'a temperature',
  temperatureDifference: 'a temperature difference',
  temperatureCoefficient: 'a temperature coefficient',
  length: 'a length',
  altitude: 'a height',
  area: 'an area',
  wireSize: 'a wire size',
  time: 'a time',
  frequency: 'a frequency',
  airflow: 'an airflow',
  ratio: 'a percentage',
  irradiance: 'irradiance',
  speed: 'a speed',
  money: 'an amount of money',
  count: 'a count',
};

const nameOf = (kind: string | number | undefined): string => quantityNames[String(kind)] ?? String(kind);
const inUnit = (unit: string | number | undefined): string =>
  unit === '' || unit === undefined ? '' : ` in ${unit}`;

/** Why a typed number was not taken, by message id. Each says what is wrong and what is expected. */
export const quantityMessages: Readonly<Record<string, (params: Params) => string>> = {
  'quantity.empty': () => 'Nothing is typed. Type the number the meter shows.',
  'quantity.overRange': () =>
    'The meter shows over-range, so there is no number to judge here. Choose a higher range and read again.',
  'quantity.notANumber': ({ typed }) => `“${typed}” is not a number. Type digits, such as 52.4 or 52,4.`,
  'quantity.spaceInside': ({ typed }) =>
    `“${typed}” has a space in the middle of the number. Type it without spaces.`,
  'quantity.twoSeparators': ({ typed }) =>
    `“${typed}” has more than one comma or point. Use one, for the decimals only: 1234.5 or 1234,5.`,
  'quantity.thousandsOrDecimal': ({ typed }) => {
    const [whole, rest] = String(typed).split(',');
    return `“${typed}” can mean ${whole}${rest} or ${whole}.${rest}. Type one of those.`;
  },
  'quantity.unknownUnit': ({ typedUnit, kind, unit }) =>
    `“${typedUnit}” is not a unit known here. This asks for ${nameOf(kind)}${inUnit(unit)}.`,
  'quantity.wrongKind': ({ typedUnit, typedKind, kind, unit }) =>
    `“${typedUnit}” is ${nameOf(typedKind)}. This asks for ${nameOf(kind)}${inUnit(unit)}.`,
  'quantity.unitCase': ({ typedUnit }) =>
    `“${typedUnit}” could be milli or mega. Small m is milli (a thousandth), large M is mega (a million).`,
  'quantity.negative': ({ typed }) => `“${typed}” is below zero. This cannot be negative.`,
  'quantity.tooLarge': ({ typed, max, unit }) =>
    `“${typed}” is too large to be meant: the most here is ${max}${unit === '' ? '' : ` ${unit}`}. Check the number and its unit.`,
  'quantity.notWhole': ({ typed }) => `“${typed}” is not a whole number. Count whole ones.`,
  'quantity.noSuchGauge': ({ typed }) =>
    `“${typed}” is not a wire size known here. Type a gauge such as 4/0 or 6 AWG, or an area such as 35 mm².`,
};
