import type { WorksheetWords } from '../../worksheet-words.ts';

export const cellTemperature: WorksheetWords = {
  inputs: {
    irradiance: {
      label: 'Light on the module’s face',
      symbol: 'G',
      hint: 'Full sun is 1000 W/m². Thin high cloud 600 to 800, heavy overcast 100 to 200.',
      limit: 'Cloud edges and snow can lift it for seconds, never beyond.',
    },
    airC: {
      label: 'Air temperature',
      symbol: 'Ta',
      hint: 'In the shade. For a design, an ordinary hot afternoon.',
      limit: 'People do not live outside that.',
    },
    windMs: {
      label: 'Wind over the modules',
      symbol: 'v',
      hint: 'A design counts on hardly any: 1 m/s, 2 mph.',
      limit: 'The models were measured below a gale.',
    },
    mounting: {
      label: 'Mounting',
      options: {
        'open-rack': 'Open rack',
        'roof-gap': 'Roof, with a gap behind',
        'roof-flush': 'Roof, no gap',
      },
    },
    noctC: {
      label: 'NOCT of the module',
      symbol: 'NOCT',
      hint: 'On the data sheet, also as NMOT. 45 °C is usual.',
      limit: 'Data sheets print 42 to 50 °C.',
    },
    efficiency: {
      label: 'Efficiency of the module',
      symbol: 'η',
      hint: 'Label watts ÷ (area × 1000 W/m²). Take 0 when no current flows: all the light becomes heat.',
      limit: 'No module on the market turns more into power.',
    },
  },
  outputs: {
    likelyC: { label: 'Likely cell temperature' },
    hottestC: { label: 'Hottest that a model gives: design with this' },
    coolestC: { label: 'Coolest that a model gives' },
    riseC: { label: 'Hottest above the air' },
    noctC: { label: 'By NOCT' },
    rossC: { label: 'By mounting (Ross)' },
    faimanC: { label: 'By wind (Faiman)' },
    sandiaC: { label: 'By wind and mounting (Sandia)' },
    samC: { label: 'By NOCT, wind and efficiency (SAM)' },
  },
  working: {
    noct: {
      what: 'By the module’s NOCT, made for an open rack',
      formula: 'Ta + (NOCT − 20 °C) ÷ 800 W/m² × G',
      numbers:
        '{airC:temperature:°C} + ({noctOfModuleC:temperature:°C} − 20 °C) ÷ 800 W/m² × {irradiance:irradiance}',
      result: '{cellC:temperature:°C}',
    },
    ross: {
      what: 'By mounting, hardly any wind',
      formula: 'Ta + k × G',
      numbers: '{airC:temperature:°C} + {perWattC:plain} °C per W/m² × {irradiance:irradiance}',
      result: '{rossC:temperature:°C}',
    },
    faiman: {
      what: 'By wind, open rack',
      formula: 'Ta + G ÷ (25 + 6.84 × v)',
      numbers: '{airC:temperature:°C} + {irradiance:irradiance} ÷ (25 + 6.84 × {windMs:speed:m/s})',
      result: '{faimanC:temperature:°C}',
    },
    sandia: {
      what: 'By wind and mounting',
      formula: 'Ta + G × e^(a + b × v) + Δ × G ÷ 1000 W/m²',
      numbers:
        '{airC:temperature:°C} + {irradiance:irradiance} × e^({a:plain} + ({b:plain}) × {windMs:speed:m/s}) + {deltaC:plain} °C × {irradiance:irradiance} ÷ 1000 W/m²',
      result: '{sandiaC:temperature:°C}',
    },
    sam: {
      what: 'By NOCT where it is mounted, wind and efficiency',
      formula: 'Ta + G ÷ 800 W/m² × (NOCT − 20 °C) × (1 − η ÷ 0.9) × 9.5 ÷ (5.7 + 3.8 × 0.51 × v)',
      numbers:
        '{airC:temperature:°C} + {irradiance:irradiance} ÷ 800 W/m² × ({noctPlacedC:temperature:°C} − 20 °C) × (1 − {efficiency:ratio} ÷ 90 %) × 9.5 ÷ (5.7 + 3.8 × 0.51 × {windMs:speed:m/s})',
      result: '{samC:temperature:°C}',
    },
    likely: {
      what: 'Likely: the middle of what the models give',
      formula: 'middle of the list',
      numbers: 'between {coolestC:temperature} and {hottestC:temperature}',
      result: '{likelyC:temperature}',
    },
  },
  says: {
    design:
      'To size a string for a hot afternoon, take {hottestC:temperature}. To judge a reading now, take {likelyC:temperature} and expect it anywhere from {coolestC:temperature} to {hottestC:temperature}.',
    flush:
      'With no gap behind, the cells run far hotter than the data sheet’s NOCT promises. The string loses volts when you need them. A hand’s width of gap is worth more than a better module.',
    apart:
      'The models are {spreadC:temperatureDifference} apart here. Measure the back of a module in the middle of the array, under a scrap of tape, and add 1 to 3 °C.',
    windy:
      'In this wind the cells follow every gust within minutes. Read volts and temperature in the same minute.',
  },
  plot: {
    title: 'Cell temperature over light, by each model',
    x: 'Light on the module',
    y: 'Cell temperature',
    lines: {
      noctC: 'NOCT',
      rossC: 'Ross, by mounting',
      faimanC: 'Faiman',
      sandiaC: 'Sandia',
      samC: 'SAM',
      air: 'Air',
      likely: 'Likely now',
    },
  },
  leavesOut: [
    'Time: a module takes about ten minutes to follow a change of light or wind.',
    'A clear night sky cools modules a few degrees below the air. Before sunrise that lifts cold volts by about a per cent.',
    'Wind from behind a roof ridge, snow on the face, a hot roof under the array.',
    'One hot cell among cool ones: shade or a broken cell can be 30 °C above its neighbours.',
  ],
  search: [
    'NOCT',
    'NMOT',
    'panel temperature',
    'module temperature',
    'hot panels',
    'Faiman',
    'Ross',
    'cell temp',
  ],
};
