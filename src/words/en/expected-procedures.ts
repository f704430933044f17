/**
 * Why a band stands where it does and what a worksheet says inside a step, with this site's numbers. A gap reads
 * `{name:kind}` or `{name:kind:unit}`, as in the words of worksheets.
 */

/** Places that the safe-work procedures measure. */
export const expectedProcedures: Readonly<Record<string, string>> = {
  'expected.dead':
    'Dead means {deadVolts:voltage} or less with your meter’s own error added, on DC and on AC. This project’s choice, well under anything that could hurt.',
  'expected.notRising':
    'The first reading was {first:voltage}. In half a minute it may creep to {most:voltage} and no further: stored charge that comes back shows as a rise.',
  'expected.proving':
    'A proving source gives the volts printed on it, {provingVolts:voltage} at the least (common practice). Compare the number too, not only that something shows.',
  'expected.knownLiveBattery':
    'The battery side is live in every state: {cells:count} cells, so {low:voltage} to {high:voltage}. A tester that reads it right here can be believed when it reads nothing elsewhere.',
  'expected.pvZero':
    'Up to {most:current:A} on a zeroed clamp counts as no current in a PV conductor (this project’s choice). An inverter that is off must show that, in any light.',
  'expected.batteryZero':
    'Up to {most:current} is standby electronics (this project’s choice). More than that is a load or a charger still on.',
  'expected.clamp.assumed':
    'The sheet does not know how far off your clamp may be, so a poor clamp is taken. With its own figures on the sheet more readings count.',
  'expected.clamp.shows':
    'Your clamp may be off by {percent:plain} % and {counts:plain} of its last digit, and all of that is added. With tenths of an ampere on its screen it shows no current at {tenths:plain:1} A or less, with hundredths at {hundredths:plain:2} A or less.',
  'expected.clamp.needsHundredths':
    'Your clamp may be off by {percent:plain} % and {counts:plain} of its last digit. With tenths of an ampere on its screen it cannot show no current here, not even at 0.0: use a range with hundredths, where {hundredths:plain:2} A or less will do, or a better clamp.',
  'expected.clamp.cannot':
    'Your clamp may be off by {percent:plain} % and {counts:plain} of its last digit. It cannot show no current here: use a better one.',
  'expected.batteryVolts':
    '{cells:count} cells of {cellLow:voltage} to {cellHigh:voltage} each: {low:voltage} to {high:voltage} between the pack’s own cut-offs.',
  'expected.packDifference':
    'Packs are joined at {most:voltage:V} apart or less, rested (this project’s choice). Through both packs’ own resistance each volt of difference would drive about {ampsPerVolt:current}.',
  'expected.displayVolts':
    'Your meter read {metered:voltage} at the posts. The screen may differ by {within:voltage:V}: a few tenths (common practice) and what the meter itself may be off.',
  'expected.chargeCellTemp':
    'Charging is allowed from {minC:temperature} to {maxC:temperature} at every cell: the pack’s label, and never below freezing. Where the sheet has no label figure, the usual limits of these cells stand in (common practice).',
  'expected.lowestCell':
    'The lowest cell that may still be charged has {least:voltage}: the label’s figure, or 2.0 V where it is silent (from memory). The highest allowed is {most:voltage}.',
  'expected.s2Before':
    'The battery side read {source:voltage}. With the main switch open and every source off, the inverter side should hold next to nothing. From {low:voltage} up it is alike, and something holds it there.',
  'expected.unitBefore':
    'The bus reads {source:voltage}. With its switch open and everything else of it off, the unit should hold next to nothing. From {low:voltage} up it is alike, and something holds it there.',
  'expected.s2Fell':
    'It read {before:voltage} a minute ago. Stored charge falls by a tenth or more in a minute, to {most:voltage} or below. A bus that something feeds stays where it is.',
  'expected.s2Rise':
    'The bus should come within 5 % of the battery’s {source:voltage}, so {low:voltage} or more, inside five time constants: {fiveTauS:time:s} with the resistor and capacitance on the sheet.',
  'expected.acrossMain':
    '5 % of {source:voltage} is {most:voltage} (this project’s choice). More than that across the open switch still drives a heavy surge when it closes.',
  'expected.preCharge.resistor':
    '{ohms:resistance} on this bank: {peakAmps:current} at the first moment, charged after {fiveTauS:time:s}, {joules:energy:J} of heat left in the resistor by each try.',
  'expected.preCharge.bankAssumed':
    'The sheet does not know the inverter’s capacitance. {capacitanceF:capacitance:mF} is taken, the high end for units of this class (common practice).',
  'expected.preCharge.fell':
    'It came up to {high:voltage} and fell to {low:voltage} with the resistor still on. A bus that only fills does not fall: something began to draw.',
  'expected.preCharge.tauSeen':
    'Your readings rise with a time constant of {seenTauS:time:s}. Resistor and capacitance on the sheet give {tauS:time:s}.',
  'expected.legVolts':
    'Nominal {nominal:voltage} to neutral, 5 % either way: {low:voltage} to {high:voltage} (ANSI C84.1, service range A; elsewhere your own code’s range).',
  'expected.legToLeg':
    'Legs opposed or a third of a turn apart stand {nominal:voltage} from each other, 5 % either way: {low:voltage} to {high:voltage}. It is read first, because it tells how the legs stand to each other.',
  'expected.legsInStep':
    'On this output both legs are in step, so there is nothing between them: {high:voltage} at most. A neutral they share carries the sum of both.',
  'expected.legRise':
    'Without the test load this leg read {unloaded:voltage}. On a sound neutral it gains {riseVolts:voltage} at most from a load on the other leg (common practice), and stays between {low:voltage} and {high:voltage}.',
  'expected.outputHz':
    'The inverter makes {nominal:frequency} by its own clock and holds it closely. The band of {low:frequency} to {high:frequency} allows for a meter that shows tenths (common practice). A label with a closer band wins.',
  'expected.neutralGround':
    'With the neutral bonded to ground once, at the source in use, they stand within {most:voltage} of each other (common practice).',
  'expected.neutralGroundLoaded':
    'Under the house loads the neutral drops volts of its own: up to half of the 5 % that a whole circuit may lose (common practice), {most:voltage}. More is a poor joint, a thin feeder, or loads that are all on one leg.',
  'expected.egcAmps':
    'With one test load on, the grounding conductor should carry next to nothing: under a tenth of the load’s current, {most:current:A} (common practice). Current in it means a neutral joined to ground in a second place.',
  'expected.sameLegApart':
    'Across the open breaker, leg to the same-named leg: {most:voltage} or less, steadily for a minute (this project’s choice). A reading that swells and fades is two units out of lock.',
  'expected.circulatingAmps':
    'With every load off, units in lock send each other next to nothing: {most:current} at most (common practice).',
  'expected.idleAmps':
    'Idle of {watts:power} at {volts:voltage} is about {amps:current:A}. The clamp’s own zero is of the same size, so it is read both ways round.',
  'expected.idleAmpsFlipped':
    'The same current with the jaw turned round: about {amps:current:A} with the other sign.',
  'expected.idle.draw':
    '{amps:current:A} at {volts:voltage} is {watts:power}: {dayJoules:energy:kWh} in a day. It takes {arrayLosslessWatts:power} of array over a four-hour window without losses, {arrayWatts:power} with the usual ones.',
  'expected.idle.sheet': 'The sheet has {idleW:power} for this unit.',
  'expected.stringPolarity':
    'The lowest reading, with its sign, of every string on the sheet ({strings:count}). Rated {rated:voltage}; in any fair light more than {low:voltage}, and never above the {high:voltage} that the input may see.',
  'expected.sisterVolts':
    'Your string read {own:voltage}. One of the same make-up, in the same minute, stands within 2 %: {low:voltage} to {high:voltage} (common practice).',
  'expected.poleToGround':
    'Through your meter’s {meterOhms:resistance}, a leak at the least allowed {leastOhms:resistance} leaves the two poles {voc:voltage} to share in part; up to {most:voltage} a pole is sound.',
};
