/** The label of a fact on the site sheet, and where to find it. */
export interface FactWords {
  label: string;
  hint?: string;
}

const isolating = {
  loadBreak: {
    label: 'Rated to break its current as DC?',
    hint: 'On its label: a DC volts and amps rating for switching. If you do not know, it is treated as no.',
  },
  polarised: {
    label: 'Marked + and −, or line and load?',
    hint: 'Such a device breaks current one way only. If you do not know, it is treated as yes.',
  },
};

const accuracy = (what: string, example: string): { ofReading: FactWords; counts: FactWords } => ({
  ofReading: { label: `${what}: percent of reading`, hint: `On the meter’s data sheet, such as ${example}.` },
  counts: { label: `${what}: counts`, hint: 'The figure after the plus: counts of the last digit.' },
});
const dcVolts = accuracy('DC volts', '±(0.5 % + 2)');
const acVolts = accuracy('AC volts', '±(1 % + 3)');
const ohms = accuracy('Ohms', '±(0.9 % + 3)');
const dcClamp = accuracy('DC clamp', '±(2 % + 5)');
const acClamp = accuracy('AC clamp', '±(2 % + 5)');

/** Words for every fact, by the fact's id. */
export const factWords: Readonly<Record<string, FactWords>> = {
  name: { label: 'Name of the site' },
  units: { label: 'Units', hint: 'Shown on every page, and taken for a bare number.' },
  codeBasis: { label: 'Electrical code here' },
  altitudeM: { label: 'Height above the sea' },
  'climate.recordLowC': {
    label: 'Record low air temperature',
    hint: 'The coldest ever recorded here, not the usual winter. It sets the highest string volts.',
  },
  'climate.usualLowC': { label: 'Usual cold morning' },
  'climate.usualHighC': { label: 'Usual hot afternoon' },
  'climate.hotCellRiseC': {
    label: 'Module cells above the air in full sun',
    hint: 'Only if you have measured it. Otherwise the mounting decides.',
  },
  'battery.cellsInSeries': {
    label: 'Cells in series in a pack',
    hint: 'Usually 15 or 16. Read the pack label; do not guess.',
  },
  'battery.packs': { label: 'Packs in parallel' },
  'battery.packCapacityAh': { label: 'Capacity of one pack' },
  'battery.cellRecoverMinV': {
    label: 'Lowest cell volts that may be charged again',
    hint: 'On the pack label. Below it the pack is out of service.',
  },
  'battery.cellMinV': { label: 'Cell volts: low disconnect' },
  'battery.cellChargeV': { label: 'Cell volts: end of charge' },
  'battery.cellMaxV': { label: 'Cell volts: high disconnect' },
  'battery.packContinuousA': { label: 'Continuous amps of one pack' },
  'battery.packPeakA': { label: 'Peak amps of one pack' },
  'battery.packResistanceOhm': { label: 'Resistance of one pack, post to post' },
  'battery.chargeMinC': { label: 'Lowest cell temperature for charging' },
  'battery.chargeMaxC': { label: 'Highest cell temperature for charging' },
  'mainSwitch.kind': { label: 'What opens the battery circuit' },
  'mainSwitch.ratedA': { label: 'Rated amps of the main switch' },
  'mainSwitch.ratedV': { label: 'Rated DC volts of the main switch' },
  'mainSwitch.loadBreak': isolating.loadBreak,
  'mainSwitch.polarised': isolating.polarised,
  'mainSwitch.lockable': { label: 'Takes a lock when open?' },
  'fuse.fitted': { label: 'A fuse in the main battery lead?' },
  'fuse.ratedA': { label: 'Rated amps of the fuse' },
  'fuse.interruptingA': {
    label: 'Short-circuit amps the fuse can break',
    hint: 'Often printed as AIC or kA.',
  },
  'packBreaker.fitted': { label: 'A breaker or fuse of its own on each pack?' },
  'packBreaker.ratedA': { label: 'Rated amps of a pack breaker' },
  'packBreaker.loadBreak': isolating.loadBreak,
  'packBreaker.polarised': isolating.polarised,
  'batteryCable.lengthM': { label: 'Battery cable, one way' },
  'batteryCable.areaMm2': { label: 'Battery cable size', hint: 'AWG such as 4/0, or mm² such as 70 mm².' },
  'outputFeeder.lengthM': { label: 'Feeder to the load panel, one way' },
  'outputFeeder.areaMm2': {
    label: 'Feeder conductor size',
    hint: 'AWG such as 6, or mm² such as 16 mm². A smaller neutral: its size.',
  },
  'precharge.resistorOhm': { label: 'Pre-charge resistor' },
  'precharge.ratedW': { label: 'Rated watts of the resistor' },
  'precharge.ratedEnergyJ': {
    label: 'Rated pulse energy of the resistor',
    hint: 'On its data sheet, in joules.',
  },
  'inverter.ratedW': { label: 'Continuous AC watts of one inverter' },
  'inverter.surgeW': { label: 'Surge AC watts of one inverter' },
  'inverter.legLimitW': { label: 'Continuous watts of one leg' },
  'inverter.idleW': { label: 'Idle draw', hint: 'Watts from the battery, inverter on, no load.' },
  'inverter.busCapacitanceF': {
    label: 'Capacitance across the DC posts',
    hint: 'In the manual or from its maker.',
  },
  'inverter.dcMinV': { label: 'Lowest battery volts it runs on' },
  'inverter.dcMaxV': { label: 'Highest battery volts it runs on' },
  'inverter.storedChargeWaitS': { label: 'Wait for stored charge, on its label' },
  'inverter.topology': { label: 'AC output' },
  'inverter.frequencyHz': { label: 'Output frequency' },
  'inverter.batteryFirst': {
    label: 'Battery must be on before PV?',
    hint: 'If you do not know, it is treated as yes.',
  },
  'inverter.insulationLimitOhm': { label: 'Insulation limit: it refuses to start below this' },
  'inverter.fanRule': { label: 'What turns the fans on' },
  'inverter.fanStartC': { label: 'Fans start at heatsink temperature' },
  'inverter.fanStartLoad': { label: 'Fans start at part of rated load' },
  'inverter.fanAirflowM3s': {
    label: 'Air through one unit, fans at full speed',
    hint: 'From its data sheet, or measured at the outlet. A fan’s own rating in free air is too high: take half of it.',
  },
  'inverter.efficiency': {
    label: 'Efficiency, battery to AC',
    hint: 'At the loads it usually carries. The figure on the front of a data sheet is the best it ever does.',
  },
  'inverter.derateStartC': {
    label: 'Air temperature from which it gives less power',
    hint: 'On the label or in the manual, often 40 or 45 °C.',
  },
  'inverter.fullPowerToM': { label: 'Height up to which it gives full power' },
  parallelUnits: { label: 'Inverters on this battery and output' },
  trackers: { label: 'Trackers' },
  strings: { label: 'PV strings' },
  'trackers[].name': { label: 'Name of the tracker', hint: 'As marked on the inverter, such as PV1.' },
  'trackers[].startV': { label: 'Start volts' },
  'trackers[].trackMinV': { label: 'Lowest tracking volts' },
  'trackers[].trackMaxV': { label: 'Highest tracking volts' },
  'trackers[].maxV': {
    label: 'Maximum volts',
    hint: 'The limit it must never see, not the tracking window.',
  },
  'trackers[].usableA': { label: 'Input amps it will use' },
  'trackers[].shortCircuitMaxA': { label: 'Maximum short-circuit amps' },
  'trackers[].startDelayS': { label: 'Start delay' },
  'strings[].name': { label: 'Name of the string', hint: 'As marked at its isolator.' },
  'strings[].tracker': { label: 'Lands on tracker', hint: 'Type the tracker’s name.' },
  'strings[].modulesInSeries': { label: 'Modules in series' },
  'strings[].parallel': { label: 'Equal strings in parallel', hint: '1 for a string alone.' },
  'strings[].vocV': { label: 'Module Voc', hint: 'Open-circuit volts on the module label.' },
  'strings[].vmpV': { label: 'Module Vmp', hint: 'Volts at maximum power on the label.' },
  'strings[].iscA': { label: 'Module Isc', hint: 'Short-circuit amps on the label.' },
  'strings[].impA': { label: 'Module Imp', hint: 'Amps at maximum power on the label.' },
  'strings[].vocPerC': {
    label: 'Temperature coefficient of Voc',
    hint: 'On the data sheet, negative, such as −0.28 %/°C.',
  },
  'strings[].pmaxPerC': { label: 'Temperature coefficient of power', hint: 'Negative, such as −0.35 %/°C.' },
  'strings[].vmpPerC': {
    label: 'Temperature coefficient of Vmp',
    hint: 'Seldom printed. The one of power stands in for it.',
  },
  'strings[].iscPerC': { label: 'Temperature coefficient of Isc' },
  'strings[].lengthM': { label: 'Cable run, one way' },
  'strings[].areaMm2': { label: 'PV cable size', hint: 'AWG such as 10, or mm² such as 4 mm².' },
  'strings[].mounting': { label: 'Air behind the modules' },
  'strings[].isolator.fitted': { label: 'A PV isolator between string and inverter?' },
  'strings[].isolator.ratedV': { label: 'Rated DC volts of the isolator' },
  'strings[].isolator.ratedA': { label: 'Rated amps of the isolator' },
  'strings[].isolator.loadBreak': isolating.loadBreak,
  'strings[].isolator.polarised': isolating.polarised,
  'strings[].shutdownDevices': { label: 'Shutdown devices at the modules?' },
  'secondSource.kind': { label: 'Second AC source' },
  'secondSource.ratedW': { label: 'Continuous watts of the second source' },
  'secondSource.neutralBonded': { label: 'Does it join its own neutral to ground?' },
  'dataLink.kind': { label: 'Data link, battery to inverter' },
  'dataLink.lengthM': { label: 'Length of the data lead' },
  'meter.dcVolts.ofReading': dcVolts.ofReading,
  'meter.dcVolts.counts': dcVolts.counts,
  'meter.acVolts.ofReading': acVolts.ofReading,
  'meter.acVolts.counts': acVolts.counts,
  'meter.ohms.ofReading': ohms.ofReading,
  'meter.ohms.counts': ohms.counts,
  'meter.dcClamp.ofReading': dcClamp.ofReading,
  'meter.dcClamp.counts': dcClamp.counts,
  'meter.acClamp.ofReading': acClamp.ofReading,
  'meter.acClamp.counts': acClamp.counts,
  'meter.hasDcClamp': { label: 'A clamp that reads DC at hand?' },
  'meter.category': {
    label: 'Measurement category',
    hint: 'CAT on the meter and on the leads: the lower of the two.',
  },
  'meter.categoryV': { label: 'Volts at that category' },
  'meter.lowImpedance': { label: 'A low-impedance volts mode?' },
  'meter.inputOhm': { label: 'Input resistance on volts', hint: 'Usually 10 MΩ.' },
  notes: { label: 'Notes for the next visit' },
};

/** Words for every choice, by the fact's id and the choice. */
export const choiceWords: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  units: { us: 'Feet, °F, AWG', metric: 'Metres, °C, mm²' },
  codeBasis: {
    'us-nec': 'US National Electrical Code',
    iec: 'IEC 60364 or a code built on it',
    other: 'Another',
  },
  'mainSwitch.kind': { switch: 'Switch', breaker: 'Breaker' },
  'inverter.topology': {
    'opposed-120-240': '120/240 V, opposed legs',
    'common-120': '120 V only, legs in step',
    'wye-120-208': '120/208 V, two legs of three',
    'single-230': '230 V single',
  },
  'inverter.frequencyHz': { 50: '50 Hz', 60: '60 Hz' },
  'inverter.fanRule': {
    temperature: 'Temperature',
    load: 'Load',
    'temperature-or-load': 'Temperature or load',
    always: 'Always on',
  },
  'strings[].mounting': {
    'open-rack': 'Open rack',
    'roof-gap': 'On a roof with a gap behind',
    'roof-flush': 'Flat on a roof, no gap',
  },
  'secondSource.kind': {
    none: 'None',
    'generator-manual': 'Generator, started by hand',
    'generator-auto': 'Generator that starts by itself',
    utility: 'Utility supply',
  },
  'dataLink.kind': { none: 'None', can: 'CAN', 'serial-485': 'Serial, 485 type' },
  'meter.category': { II: 'CAT II', III: 'CAT III', IV: 'CAT IV' },
};
