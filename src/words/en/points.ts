/** Names of test points, of the places where leads go, and of what is on the plant drawing. */

/** A test point in a few words. */
export const pointNames = {
  P1: 'array side of the PV isolator',
  P2: 'inverter side of the PV isolator',
  PG: 'ground terminal at the PV isolator',
  I: 'inverter DC posts',
  S2: 'inverter side of the main switch',
  S1: 'battery side of the main switch',
  B: 'battery posts',
  C: 'data-link pins',
  A: 'AC-input terminals',
  O: 'inverter AC output terminals',
  D: 'load-panel lugs',
  R: 'far receptacle or load',
  E: 'equipment-grounding conductor',
} as const;

/** A place where one lead tip goes, as it reads after "red on". */
export const anchorNames = {
  'PS+': 'the plus conductor of one string, before it joins the others',
  'P1+': 'P1+, array side of the PV isolator',
  'P1-': 'P1−, array side of the PV isolator',
  'P2+': 'P2+, inverter side of the PV isolator',
  'P2-': 'P2−, inverter side of the PV isolator',
  PG: 'PG, the ground terminal at the PV isolator',
  'I+': 'I+, the inverter’s DC plus post',
  'I-': 'I−, the inverter’s DC minus post',
  'S2+': 'S2+, inverter side of the main switch',
  'S2-': 'S2−, inverter side of the main switch',
  'S1+': 'S1+, battery side of the main switch',
  'S1-': 'S1−, battery side of the main switch',
  'B+': 'B+, the pack’s plus post',
  'B-': 'B−, the pack’s minus post',
  'C-H': 'the H pin of the data link',
  'C-L': 'the L pin of the data link',
  'A-L1': 'L1 of the AC input',
  'A-N': 'N of the AC input',
  'A-L2': 'L2 of the AC input',
  'O-L1': 'L1 of the inverter’s AC output',
  'O-N': 'N of the inverter’s AC output',
  'O-L2': 'L2 of the inverter’s AC output',
  'D-L1': 'the L1 lug of the load panel',
  'D-N': 'the N bar of the load panel',
  'D-L2': 'the L2 lug of the load panel',
  'R-L': 'the hot slot of the far receptacle',
  'R-N': 'the neutral slot of the far receptacle',
  GA: 'the ground terminal at the AC input',
  G: 'the equipment-grounding conductor nearest to the work',
} as const;

/** A part in a few words, for the way in and for what is read out. */
export const partNames = {
  strings: 'PV strings',
  pvIsolator: 'PV isolator',
  generator: 'Generator and inlet',
  inverter: 'Inverter',
  mainSwitch: 'DC main switch and fuse',
  outputBreaker: 'AC output breaker',
  loadPanel: 'Load panel',
  dataLink: 'Data link',
  packs: 'Battery packs',
  loads: 'Loads',
  ground: 'Ground bar',
} as const;

const zoneNames = {
  packPost: 'Battery posts',
  battBus: 'Battery side of the main switch',
  invDC: 'Inverter side of the main switch',
  pvString: 'Array side of the PV isolator',
  pvBus: 'Inverter side of the PV isolator',
  acOut: 'Inverter AC output',
  loadPanel: 'Load panel',
  acIn: 'AC input',
  inlet: 'Generator inlet',
  control: 'Data link',
} as const;

const zoneStates = {
  live: 'live',
  dead: 'proved dead',
  unknown: 'not known: treat as live',
} as const;

const deviceNames = {
  packs: 'Pack breakers',
  main: 'DC main switch',
  pv: 'PV isolator',
  acIn: 'AC input breaker',
  acOut: 'AC output breaker',
} as const;

const deviceStates = { closed: 'closed', open: 'open', locked: 'open and locked' } as const;

type Name<Names> = keyof Names;

/** The words of the plant drawing. */
export const plantWords = {
  leadLetters: { red: 'R', black: 'B' },
  deadMark: '0 V',
  parts: {
    strings: ['PV strings'],
    pvIsolator: ['PV', 'isolator'],
    generator: ['Generator'],
    inverter: ['Inverter'],
    mainSwitch: ['Main', 'switch'],
    fuse: ['Fuse'],
    outputBreaker: ['Output', 'breaker'],
    loadPanel: ['Load', 'panel'],
    dataLink: [],
    packs: ['Battery packs'],
    pack: ['Battery pack'],
    loads: ['Loads'],
    ground: ['Ground'],
  },
  sentences: {
    red: (anchor: Name<typeof anchorNames>) => `Red lead on ${anchorNames[anchor]}.`,
    black: (anchor: Name<typeof anchorNames>) => `Black lead on ${anchorNames[anchor]}.`,
    clamp: (anchor: Name<typeof anchorNames>) => `Clamp round the conductor at ${anchorNames[anchor]}.`,
    zone: (zone: Name<typeof zoneNames>, state: Name<typeof zoneStates>) =>
      `${zoneNames[zone]}: ${zoneStates[state]}.`,
    device: (device: Name<typeof deviceNames>, state: Name<typeof deviceStates>) =>
      `${deviceNames[device]}: ${deviceStates[state]}.`,
  },
};
