/** One check: its name, and what it means here where the limit is broken. Gaps are filled as in a worksheet's words. */
interface CheckWords {
  readonly title: string;
  readonly broken: string;
}

/** The words of every check, by its id. */
export const checkWords: Readonly<Record<string, CheckWords>> = {
  'string-over-maximum': {
    title: 'String volts on the coldest morning',
    broken:
      'At {recordLowC:temperature} the string stands at {amount:voltage}. The tracker must never see more than {limit:voltage}: do not connect it.',
  },
  'string-near-maximum': {
    title: 'Room under the tracker’s maximum',
    broken:
      'At {recordLowC:temperature} the string stands at {amount:voltage}, within a few per cent of the tracker’s {maxVolts:voltage}. Read every module label again.',
  },
  'string-starts': {
    title: 'String volts to start on a hot afternoon',
    broken:
      'With cells at {hotCellC:temperature} the open string stands at {amount:voltage}. The tracker wants {limit:voltage}: on a hot afternoon it cannot start.',
  },
  'string-starts-late': {
    title: 'Margin to start on a hot afternoon',
    broken:
      'With cells at {hotCellC:temperature} the open string stands at {amount:voltage}; {limit:voltage} would leave room for haze, age and tolerance. It starts late, or not on some days.',
  },
  'string-tracks-hot': {
    title: 'String volts at work on a hot afternoon',
    broken:
      'With cells at {hotCellC:temperature} the string works at {amount:voltage}, under the {limit:voltage} at which the tracker still tracks.',
  },
  'string-tracks-cool': {
    title: 'String volts at work against the tracking window',
    broken:
      'The string works at {amount:voltage} by its labels; the tracker tracks up to {limit:voltage}. Power is lost whenever it is cool.',
  },
  'isolator-volts': {
    title: 'PV isolator volts',
    broken:
      'On the coldest morning the string stands at {amount:voltage}; the isolator is rated for {limit:voltage}. Do not open it under load.',
  },
  'meter-volts': {
    title: 'Meter and leads against the string',
    broken:
      'The string can stand at {amount:voltage}; meter and leads are rated for {limit:voltage}. Do not measure it with them.',
  },
  'tracker-short-circuit': {
    title: 'Short-circuit current on the tracker',
    broken:
      'The strings on it can give {amount:current} with a quarter on top for bright days; the tracker stands {limit:current}.',
  },
  'tracker-clips': {
    title: 'Current that the tracker uses',
    broken:
      'The strings on it give up to {amount:current}; the tracker uses {limit:current}. The rest is lost in full sun.',
  },
  'string-conductor': {
    title: 'String conductor',
    broken: 'The conductor must carry {amount:current}; as it is run it is good for {limit:current}.',
  },
  'isolator-amps': {
    title: 'PV isolator current',
    broken: 'The isolator must carry {amount:current}; it is rated for {limit:current}.',
  },
  'string-fuses': { title: 'Fuses of parallel strings', broken: 'Each string needs a fuse of its own.' },
  'string-drop': {
    title: 'Volts lost between array and inverter',
    broken: 'At full sun {amount:ratio} of the volts is lost in the run; {limit:ratio} is the usual most.',
  },
  'packs-continuous': {
    title: 'Packs at full power',
    broken:
      'At full power and {lowVolts:voltage} the inverter draws {amount:current}; the packs, sharing as packs do, are good for {limit:current}. The packs limit you, not the inverter.',
  },
  'packs-surge': {
    title: 'Packs in a surge',
    broken:
      'A full surge at {lowVolts:voltage} draws {amount:current}; the packs give {limit:current} for a moment. They cut off, and everything goes dark.',
  },
  'one-pack-out': {
    title: 'Full power with one pack out',
    broken:
      'With one pack out each of the others must give {amount:current} at full power; its label says {limit:current}. Ease the load when a pack is down.',
  },
  'pack-breaker-amps': {
    title: 'Breaker of each pack',
    broken:
      'At full power a pack’s breaker wants a rating of {amount:current}; it has {limit:current}. It trips on a long heavy load.',
  },
  'no-pack-breaker': {
    title: 'A device for each pack',
    broken:
      'No pack has a breaker or fuse of its own: the others can push {amount:current} into a pack that shorts, and nothing stops it.',
  },
  'no-main-fuse': {
    title: 'Protection of the battery cable',
    broken: 'A short in the battery cable draws {amount:current}, and no fuse or breaker stops it.',
  },
  'main-cable': {
    title: 'Battery cable',
    broken:
      'For full power at {lowVolts:voltage} the cable must be good for {amount:current}; as it is run it is good for {limit:current}.',
  },
  'main-device-small': {
    title: 'Main fuse or breaker against full power',
    broken:
      'Full power at {lowVolts:voltage} asks for a device of {amount:current}; it is of {limit:current}. The device limits you, not the inverter.',
  },
  'main-device-large': {
    title: 'Main fuse or breaker against the cable',
    broken:
      'The device is of {amount:current}; the cable is protected by {limit:current} at most. The cable burns before the device opens.',
  },
  'main-breaking': {
    title: 'Breaking capacity of the main fuse',
    broken:
      'A short can draw {amount:current}, with a quarter on top for a printed resistance; the fuse breaks {limit:current}. It can burst.',
  },
  'main-switch-amps': {
    title: 'Main switch current',
    broken:
      'Full power at {lowVolts:voltage} draws {amount:current}; the main switch is rated for {limit:current}. The switch limits you.',
  },
  'main-switch-volts': {
    title: 'Main switch volts',
    broken: 'The full bank stands at {amount:voltage}; the main switch is rated for {limit:voltage} DC.',
  },
  'battery-drop': {
    title: 'Volts lost in the battery cable',
    broken:
      'At full power {amount:ratio} of the lowest volts is lost in the cable; {limit:ratio} is the usual most.',
  },
  'bank-over-inverter': {
    title: 'Fullest bank against the inverter',
    broken:
      'The packs allow {amount:voltage} before they cut off; the inverter takes {limit:voltage}. A lost limit destroys it.',
  },
  'inverter-stops-first': {
    title: 'Low cut-off against the inverter',
    broken:
      'A usual low cut-off is {amount:voltage}; the inverter stops at {limit:voltage} by itself, before it.',
  },
  'precharge-pulse': {
    title: 'Pre-charge resistor: energy of one pulse',
    broken:
      'One pre-charge puts {amount:energy:J} into the resistor; it is rated for {limit:energy:J}. It can burst.',
  },
  'precharge-amps': {
    title: 'Pre-charge resistor: first current',
    broken:
      'The resistor has {amount:resistance}; under {limit:resistance} the first current is more than clips and fingers bear.',
  },
  'precharge-slow': {
    title: 'Pre-charge resistor: time',
    broken:
      'The resistor has {amount:resistance}; over {limit:resistance} the charge takes too long to be waited for.',
  },
  'leg-limit': {
    title: 'Legs against the whole',
    broken:
      'Both legs together give {amount:power}; the inverter is rated for {limit:power}. The legs limit you, not the inverter.',
  },
  'common-neutral': {
    title: 'Neutral shared by legs in step',
    broken:
      'The legs are in step, so the neutral carries both: {amount:current} on a conductor good for {limit:current}. No breaker stands in it.',
  },
  'made-common': {
    title: 'Neutral, if the legs were made common',
    broken:
      'With legs made common the neutral would carry {amount:current} on a conductor good for {limit:current}. Do not set the unit so on this feeder.',
  },
  'panel-volts': {
    title: 'Volts at the load panel',
    broken:
      'With the fuller leg at its limit the panel gets {amount:voltage}; under {limit:voltage} motors run hot.',
  },
  height: {
    title: 'Height above the sea',
    broken: 'The site stands at {amount:altitude}; the inverter gives full power up to {limit:altitude}.',
  },
  'hot-room': {
    title: 'Air on a hot afternoon',
    broken: 'The air reaches {amount:temperature}; from {limit:temperature} the inverter gives less.',
  },
  'fan-air': {
    title: 'Cooling air at full power',
    broken:
      'At full power the air warms by {amount:temperatureDifference} on its way through; {limit:temperatureDifference} is the usual most.',
  },
};

/** Words of the page of the sheet check. */
export const sheetCheckWords = {
  title: 'What limits this site',
  lede: 'Every check that the site sheet allows, made at once: what it limits, by how much, and what would lift it.',
  open: 'Check the whole site: what limits it, and the parts it needs',
  noScript: 'Without a script this page cannot check. The worksheets say how each figure is made.',
  site: 'Site',
  demo: (name: string): string => `${name} (made up)`,
  reading: 'Looking for sites on this phone…',
  noSites: 'No site is kept on this phone. This is a made-up one; enter your own under Site.',
  invented: 'A made-up site: its figures belong to no real place.',
  print: 'Print',
  power: {
    title: 'Most power for good',
    all: (watts: string): string => `${watts}, battery low. Nothing holds the inverter back.`,
    less: (watts: string, part: string): string =>
      `${watts}, battery low. What limits you is not the inverter: ${part.toLowerCase()}.`,
    open: 'Not every part is known or checked: it may be less.',
    unknown: 'not known or not checked',
    sound: 'This is what each part lets through. The weakest counts.',
    part: 'Part',
    watts: 'AC power',
    parts: {
      inverter: 'The inverter itself',
      legs: 'Both legs together',
      packs: 'The packs together',
      packBreakers: 'The breakers of the packs',
      mainDevice: 'The main fuse or breaker',
      mainSwitch: 'The main switch',
      cable: 'The battery cable',
    },
  },
  broken: 'What to put right',
  nothingBroken: 'No limit that was checked is broken.',
  counts: (broken: number, kept: number, open: number): string =>
    `${broken} to put right, ${kept} in order, ${open} not checked.`,
  severities: { danger: 'Danger', fails: 'Will not work', limits: 'Gives less' },
  of: {
    string: (name: string): string => `string ${name}`,
    tracker: (name: string): string => `tracker ${name}`,
  },
  figure: 'Figure',
  limit: 'Limit',
  margin: 'Margin',
  atMost: (limit: string): string => `at most ${limit}`,
  atLeast: (limit: string): string => `at least ${limit}`,
  over: (share: string): string => `${share} beyond`,
  left: (share: string): string => `${share} left`,
  lifts: 'Any one of these lifts it and breaks nothing else:',
  noLift: 'No change of one fact alone lifts it without breaking something else.',
  change: (fact: string, from: string, to: string): string => `${fact}: ${from} → ${to}`,
  yes: 'yes',
  no: 'no',
  unknown: 'not known',
  worksheet: 'Worksheet with these numbers',
  assumed: (fields: string): string => `Not on the sheet, taken as usual: ${fields}.`,
  notChecked: 'Not checked',
  notCheckedLede: 'None of these counts as passed.',
  allChecked: 'Everything was checked.',
  why: {
    missing: 'The sheet does not know:',
    codeBasis: 'The code that governs here is not carried. Check it by that code.',
    notOnSheet: 'It hangs on a label that no site sheet holds. Use the worksheet.',
    outside: 'A figure lies beyond what the worksheet takes.',
    refused: 'The worksheet gives no result for these figures.',
  },
  kept: 'In order',
  basis: {
    'us-nec': 'Code figures are of the NEC, 2023. Your local code and its edition govern.',
    iec: 'No conductor or protection rule of your code is carried: those are not checked. Your local code governs.',
    other:
      'No conductor or protection rule of your code is carried: those are not checked. Your local code governs.',
  },
  parts: {
    title: 'Parts this job needs',
    lede: 'What does not come in the inverter’s box. Ratings are the least that this site asks for; take the next that is sold, and what the equipment’s own instructions name.',
    conduit:
      'Conduit sizes are from memory, with every wire at the same size. Confirm them by the tables of your code.',
    columns: { part: 'Part', quantity: 'Quantity', ratings: 'Must have', price: 'Price' },
    codeOpen: 'size by your code',
    missing: 'not known:',
    emt: (trade: string): string => `trade size ${trade}, thin-wall steel (EMT)`,
    ratings: {
      volts: (value: string): string => `${value} or more`,
      amps: (value: string): string => `carries ${value} for good`,
      standardAmps: (value: string): string => `rated ${value}`,
      breaks: (value: string): string => `breaks ${value} or more`,
      wire: (value: string): string => `${value} or larger`,
      leastOhms: (value: string): string => `${value} or more`,
      mostOhms: (value: string): string => `${value} or less`,
      pulse: (value: string): string => `takes a pulse of ${value}`,
      poles: (value: string): string => `${value} poles`,
    },
    names: {
      'pv-isolator': 'PV isolator, load-break, DC, both poles',
      'pv-plugs': 'Pairs of PV plugs, both halves of one make',
      'pv-cable': 'PV cable, both conductors',
      'pv-conduit': 'Conduit for the PV run',
      'main-fuse': 'Main battery fuse with holder',
      'spare-fuse': 'Spare main fuse, the same',
      'main-disconnect': 'Main battery disconnect, load-break, lockable',
      'pack-device': 'Breaker or fuse for each pack, DC',
      busbar: 'Busbar with cover',
      'battery-cable': 'Battery cable, plus and minus',
      'battery-lug': 'Crimp lugs for it, with heat-shrink; hole to fit each stud',
      'battery-conduit': 'Conduit or tray for the battery run',
      'precharge-resistor': 'Pre-charge resistor, wire-wound, with insulated leads and a push switch',
      'output-breaker': 'Inverter output breaker',
      'feeder-cable': 'Feeder wire: hots, neutral and ground',
      'feeder-conduit': 'Conduit for the feeder',
      'source-breaker': 'Breaker for the second source, lockable',
      'label-pv': 'Label at each PV isolator: “PV disconnect”, with its highest volts and current',
      'label-battery':
        'Label at the main disconnect: “Battery disconnect”, with volts and short-circuit current',
      'label-precharge': 'Label at the main switch: “Pre-charge before closing”',
      'label-capacitors': 'Label on each inverter: “Stored charge: wait as its label says, then measure”',
      'label-no-multiwire':
        'Label at the panel: “Single 120 V supply. Do not connect multiwire branch circuits”',
      'label-two-sources': 'Label at the panel: “Two sources: inverter and second source”',
      'label-directory': 'Directory at the panel: every source, and where it is switched off',
    } as Readonly<Record<string, string>>,
  },
} as const;
