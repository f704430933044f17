/**
 * Why the bands of the PV guide stand where they do, and what its arithmetic says, with this site's numbers. A gap reads
 * `{name:kind}` or `{name:kind:unit}`, as in the words of worksheets.
 */

const bands = {
  'expected.pv.stringVolts':
    '{modules:count} modules of {vocVolts:voltage} make about {nominal:voltage} at these cells. Within 5 % of the label (IEC 62446-1 practice, from memory) that is {low:voltage} to {high:voltage}. The input must never see {maxVolts:voltage}.',
  'expected.pv.cellRead':
    'Cells taken from {cellLowC:temperature} to {cellHighC:temperature}: your reading, 5 °C either way (common practice).',
  'expected.pv.cellNotRead':
    'No cell temperature was read, so anything from {cellLowC:temperature} to {cellHighC:temperature} is allowed for. One missing module can hide in a band that wide.',
  'expected.pv.weakLight':
    'In weak light open volts may stand an eighth lower. Down to {low:voltage} is allowed for.',
  'expected.pv.inverterSide':
    'The same as the array side: {low:voltage} to {high:voltage}, about {nominal:voltage}. A few volts behind an open contact are a ghost that a high-impedance meter picks up.',
  'expected.pv.loadedVolts':
    'Open, the string stands at {openVolts:voltage}. At work: {low:voltage} to {high:voltage}, which is 0.75 to 0.9 of that. Under {collapsed:voltage} it has collapsed. Common practice.',
  'expected.pv.openRead': 'The open volts are the ones you read at P1.',
  'expected.pv.openFromLabel': 'The open volts are taken from the label at the likeliest cell temperature.',
  'expected.pv.runningVolts':
    'At work this string stands between {low:voltage} and {high:voltage}: 0.75 of its open volts when hot to 0.9 when cold. Common practice.',
  'expected.pv.screenVolts':
    'Open and in light the whole string shows {low:voltage} to {high:voltage}. The input must never see {maxVolts:voltage}.',
  'expected.pv.acrossPole':
    'A closed pole at no current shows {closed:voltage} at most. An open one shows {open:voltage} and more.',
  'expected.pv.plusToGround':
    'The string makes about {nominal:voltage}. Sound, the plus pole drifts to within a twentieth of that. A steady value is a leak.',
  'expected.pv.minusToGround':
    'The string makes about {nominal:voltage}. Sound, the minus pole drifts to within a twentieth of that, with a minus sign. A steady value is a leak.',
  'expected.pv.stringClamp':
    'Up to {zeroAmps:current} either way counts as no current in a PV conductor (this project’s choice). In full sun a reversed or shorted string carries about {iscAmps:current}.',
  'expected.pv.tryAmps':
    'A tracker that tries draws more than {tryAmps:current}. Less is a clamp’s own noise (common practice).',
  'expected.pv.making':
    'Up to {idleWatts:power} is a tracker that waits. This string is rated {ratedWatts:power}.',
  'expected.pv.afterLoad':
    'Before the load it gave {beforeWatts:power}. At least {followWatts:power} more shows that it follows: {low:power} and up.',
  'expected.pv.cellTemp':
    'Labels are written for 25 °C cells. In sun, cells stand 25 to 35 °C above the air. Under {lowC:temperature} or over {highC:temperature} it is a slip, or the wrong unit.',
  'expected.pv.insulationOhms':
    'At least {leastOhms:resistance}, tested at {testVolts:voltage:V} (IEC 62446-1, from memory; the unit’s own limit where that is higher). The string is rated {ratedVolts:voltage}.',
  'expected.pv.batteryScreen':
    'The unit works from {low:voltage} to {high:voltage}. With {cells:count} cells, from {fullVolts:voltage} up it is full or nearly.',
  'expected.pv.batteryAtInverter':
    'The unit works from {low:voltage} to {high:voltage}. The pack itself lives between {packLow:voltage} and {packHigh:voltage}.',
  'expected.pv.chargePermit':
    'Up to 2 A is none. {packs:count} packs of {eachAmps:current} each can permit far more.',
  'expected.pv.cellColdest':
    'Charging is allowed from {minC:temperature}: the pack’s label, and never below freezing.',
  'expected.pv.cellHottest':
    'Charging is allowed up to {maxC:temperature}: the pack’s label, or 45 °C where the sheet has none (common practice).',
  'expected.pv.cellHighest':
    'Charging aims at {target:voltage} a cell and the pack cuts off at {trip:voltage}. A cell from {high:voltage} up stops the charge for all of them.',
} as const;

const arithmetic = {
  'expected.pv.missingModules':
    'You read {measured:voltage}. {modules:count} modules should make {nominal:voltage}: about {missing:count} are missing, which leaves {left:count}. The tracker starts at {startVolts:voltage}.',
  'expected.pv.missingCoarse':
    'Without a cell temperature that is coarse: anything from {missingLow:plain} to {missingHigh:plain} modules.',
  'expected.pv.coldFromMeasured':
    'You read {measured:voltage}, which is about {modules:count} modules; the sheet has {sheetModules:count}. At the record low of {recordLowC:temperature} that becomes {cold:voltage}. The input must never see {maxVolts:voltage}.',
  'expected.pv.startMargin':
    'You read {measured:voltage}. The tracker starts at {startVolts:voltage}. A whole string should make about {nominal:voltage} now.',
  'expected.pv.swapFits':
    'At the record low this string makes {cold:voltage} and at most {iscAmps:current}. The other tracker takes {maxVolts:voltage}. The other string fits this tracker too.',
  'expected.pv.swapTooMuch':
    'At the record low this string makes {cold:voltage} and at most {iscAmps:current}. One of the two trackers may not see what it would get.',
  'expected.pv.swapTooLittle':
    'Both strings keep within the limits, up to {cold:voltage} and {iscAmps:current}. One of them is too short for the other tracker to start or to follow it in the heat.',
  'expected.pv.between':
    '{volts:voltage} and {amps:current}: too near a limit to be given to one side. Both sides are weighed, and the careful one is taken.',
  'expected.pv.ampsForLight':
    '{amps:current} in full sun. The label works at {labelAmps:current}. Bypassed modules leave the amps; a bad joint lets under half of them through. Common practice.',
  'expected.pv.betweenScreen':
    '{volts:voltage} is too near a limit to be given to one side. Both sides are weighed, and the careful one is taken.',
  'expected.pv.voltsBetween':
    'P1 {p1:voltage}, P2 {p2:voltage}: too near a limit to be given to one side. Both sides are weighed, and the careful one is taken.',
  'expected.pv.p1Between':
    'P1 {p1:voltage}. A whole string would make about {nominal:voltage}. Half of that, plus, is enough to show the polarity.',
  'expected.pv.swapNoOther': 'The sheet has no other tracker with a string on it.',
} as const;

/** Every one of them, by message id. */
export const expectedPv: Readonly<Record<string, string>> = { ...bands, ...arithmetic };
