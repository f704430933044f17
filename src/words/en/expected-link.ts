/** Why the bands of the battery-link guide stand where they do, with this site's numbers. */
export const expectedLink: Readonly<Record<string, string>> = {
  'expected.link.ends':
    'Two end resistors read {two:resistance}; {low:resistance} to {high:resistance} is taken as two. One reads {one:resistance}, three read {three:resistance}. Both plugs in, both devices off.',
  'expected.link.oneEnd':
    'With the plug out, each side of a sound link holds one end resistor: {one:resistance}, and {low:resistance} to {high:resistance} is taken as one. {two:resistance} on one side is one too many. That holds where the resistors sit inside the devices at the ends.',
  'expected.link.wire.joined':
    'A whole wire of this lead reads {most:resistance} or less. Over range is a broken wire (common practice).',
  'expected.link.wire.open':
    'These two pins must not meet: {open:resistance} or more, best over range. An end resistor in the lead reads 120 Ω between the two data wires and is no fault.',
  'expected.link.canPin':
    'A CAN pin stands near 2.5 V to the port’s own reference pin, 2.0 to 3.0 V at idle; traffic pulls the average as far as 1.3 or 3.5 V. Under {none:voltage:V} the port drives nothing, over {ok:voltage:V} something else is on that pin (ISO 11898-2, from memory).',
  'expected.link.serialIdle':
    'A biased pair stands at {weak:voltage:V} or more between its wires. Which way round is to be compared with the other device, not with the letters. Under that, this device does not bias the pair (TIA-485-A, from memory).',
  'expected.link.pairOff':
    'With both devices off nothing stands between the wires: {off:voltage:V} or less. More means that something still feeds the pair, and an ohms reading would lie.',
  'expected.link.timeOut':
    'The unit’s own time-out stands in its settings or its manual. Where neither says, {silent:time} is taken (common practice).',
  'expected.link.alarmAfter':
    'The unit’s time-out is {timeOut:time}; with the hand on the watch the alarm must stand within {most:time}.',
  'expected.link.clearsAfter':
    'The unit may wait its time-out of {timeOut:time} and a minute more before it believes the link again: {most:time}.',
  'expected.link.permitted':
    '{packs:count} packs may charge with {label:current} at the most, by their label. What they permit now may be far less: cold, hot or full cells.',
  'expected.link.chargeAmps':
    'The packs permit {permits:current}. Under {enough:current} the chargers do not push hard enough to tell. Over {most:current} the limit is not kept (common practice).',
  'expected.link.chargeNone':
    'The packs permit {permits:current}: none. None flowing is the limit kept. Over {most:current} it is not kept (common practice).',
  'expected.link.readBack':
    '{cells:count} cells: {target:voltage}. The unit may round it to between {low:voltage} and {high:voltage}. Type the tenths.',
  'expected.link.byVoltage':
    '{cells:count} cells in series. Charge {chargeVolts:voltage}, float {floatVolts:voltage}, low cut {cutVolts:voltage}, restart {restartVolts:voltage}, charge amps {chargeAmps:current} for all chargers together.',
  'expected.link.bias.same':
    'The pack holds the pair at {packVolts:voltage}, the inverter at {unitVolts:voltage}: the same way round.',
  'expected.link.bias.opposite':
    'The pack holds the pair at {packVolts:voltage}, the inverter at {unitVolts:voltage}, with red on the same wire: the pair is turned between them.',
  'expected.link.bias.one-biases':
    'One device holds the pair beyond {threshold:voltage:V} and the other does not. That is how it should be: bias belongs at one place only. It does not show which way round the other one is.',
  'expected.link.bias.none-biases':
    'Neither device holds the pair beyond {threshold:voltage:V}. Some receivers are made for that; others then hear noise. It does not show which way round they are.',
};
