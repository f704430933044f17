import type { WorksheetWords } from '../../worksheet-words.ts';

export const heatRise: WorksheetWords = {
  inputs: {
    acWatts: {
      label: 'AC watts out of one inverter',
      symbol: 'P',
      hint: 'Made from the battery or from PV. What a generator passes straight through does not count.',
      limit: 'One unit, not the whole stack.',
    },
    efficiency: {
      label: 'Efficiency at this load',
      symbol: 'η',
      hint: 'Idle draw not counted. 90 to 95 % is common; the figure on the front of a data sheet is its best.',
      limit: 'Outside it the figure is a slip.',
    },
    idleWatts: {
      label: 'Idle draw',
      symbol: 'P0',
      hint: 'Watts from the battery, on, with no load. It is all heat.',
      limit: 'More than that is a load.',
    },
    chargeWatts: {
      label: 'Charging watts by this unit',
      symbol: 'Pch',
      hint: 'Battery volts × charge amps, from PV or from a generator. 0 when it does not charge.',
      limit: 'One unit.',
    },
    chargeEfficiency: {
      label: 'Efficiency of charging',
      symbol: 'ηch',
      hint: '93 to 97 % is common.',
      limit: 'Outside it the figure is a slip.',
    },
    altitudeM: {
      label: 'Height above the sea',
      symbol: 'z',
      hint: 'Thin air carries less heat.',
      limit: 'Where people build.',
    },
    inletC: {
      label: 'Air at the inlet',
      symbol: 'T',
      hint: 'A thermometer in the air at the grille, in shade, not touching the case.',
      limit: 'Air, not metal.',
    },
    airflowM3s: {
      label: 'Air through the unit',
      symbol: 'Q',
      hint: 'All fans together, in place. A fan’s own rating is in free air: in a case it moves about half. Leave empty for the airflow it would need.',
      limit: 'For one unit.',
    },
    allowedRiseC: {
      label: 'Rise you will allow',
      symbol: 'ΔT',
      hint: '10 to 20 °C (18 to 36 °F) across the unit is usual.',
      limit: 'More cooks the unit.',
    },
  },
  outputs: {
    lossWatts: { label: 'Heat it makes' },
    riseC: { label: 'Air leaves warmer by' },
    outletC: { label: 'Air at the outlet' },
    neededM3s: { label: 'Air it needs for the rise you allow' },
    airShare: { label: 'Air here, of air at sea level and 20 °C (68 °F)' },
    seaLevelRiseC: { label: 'The rise by a rule made for sea level' },
  },
  working: {
    loss: {
      what: 'Heat it makes',
      formula: 'P × (1/η − 1) + Pch × (1/ηch − 1) + P0',
      numbers:
        '{acWatts:power} × (1/{efficiency:ratio} − 1) + {chargeWatts:power} × (1/{chargeEfficiency:ratio} − 1) + {idleWatts:power}',
      result: '{lossWatts:power}',
    },
    density: {
      what: 'Density of the air',
      formula: '101 325 Pa × (1 − 2.25577×10⁻⁵ z)^5.2559 ÷ (287.042 × (T + 273.15))',
      numbers: 'at {altitudeM:altitude} and {inletC:temperature}',
      result: '{density:plain:3} kg/m³',
    },
    rise: {
      what: 'Rise of the air',
      formula: 'heat ÷ (density × 1006 J/kg·K × Q)',
      numbers: '{lossWatts:power} ÷ ({density:plain:3} kg/m³ × 1006 J/kg·K × {airflowM3s:airflow})',
      result: '{riseC:temperatureDifference}',
    },
    needed: {
      what: 'Air it needs',
      formula: 'heat ÷ (density × 1006 J/kg·K × ΔT)',
      numbers:
        '{lossWatts:power} ÷ ({density:plain:3} kg/m³ × 1006 J/kg·K × {allowedRiseC:temperatureDifference})',
      result: '{neededM3s:airflow}',
    },
  },
  says: {
    riseLarge:
      'A rise of {riseC:temperatureDifference} is more than a unit in good order has at full load (common practice). Is the airflow the one in place, with the filter on?',
    thinAir:
      'The air here weighs {airShare:ratio} of sea-level air. A rule of thumb made for sea level would promise {seaLevelRiseC:temperatureDifference}; expect {riseC:temperatureDifference}.',
    idleOnly: 'With no load and no charge all of this is idle draw: it heats the room day and night.',
    bestFigure:
      'A data sheet’s best efficiency is met at one load only. At a fifth of the rating and at full load it is a few points lower, and the heat is a good deal more.',
  },
  leavesOut: [
    'Heat that leaves through the case by itself: 10 to 30 % with the fans slow.',
    'Sun on the case, and heat from packs and chargers beside it.',
    'The room: whether it gets rid of the heat is another question.',
    'Moisture: air with steam in it carries about 1 % less.',
  ],
  search: [
    'heat loss of an inverter',
    'how hot does an inverter get',
    'airflow needed',
    'cfm for an inverter room',
    'fan size',
    'air temperature rise',
    'altitude derating',
  ],
};
