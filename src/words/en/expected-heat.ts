/** Why the bands of the guide to hot units and loud fans stand where they do, and what its arithmetic says. */

const bands = {
  'expected.heat.output':
    'One unit is rated {ratedW:power}. Up to {idle:power} it is at rest. Over {over:power} it carries more than its label says.',
  'expected.heat.charge': 'Up to {most:current} is no charge worth speaking of. Common practice.',
  'expected.heat.outputAgain':
    'When it failed it gave {before:power}. A re-test needs at least {least:power}.',
  'expected.heat.outputAgainAllowed':
    'It gave more than label and height allow: {before:power} is left to it. A re-test needs at least {least:power}, and no more than {before:power}.',
  'expected.heat.outputAgainNotRead':
    'The load at which it failed was not read, so the test is at what label and height allow: {before:power}. A re-test needs at least {least:power}, and no more than {before:power}.',
  'expected.heat.chargeAgain':
    'When it failed it charged with {before:current}. A re-test needs {least:current}.',
  'expected.heat.sink':
    'Its fans are asked for from a heatsink of {startC:temperature}. Under {lowC:temperature} it would be colder than the air it stands in, which it cannot be.',
  'expected.heat.sinkAssumed':
    'The sheet does not say when its fans start: {startC:temperature} is taken (common practice, 40 to 50 °C). Under {lowC:temperature} it would be colder than the air.',
  'expected.heat.finRest':
    'The screen says {screenC:temperature}. At rest, a taped fin within 10 °C of that agrees: {low:temperature} to {high:temperature}. Common practice.',
  'expected.heat.finLoad':
    'The screen says {screenC:temperature}. Under load the inside is up to 30 °C hotter than a fin outside, and never 10 °C colder: {low:temperature} to {high:temperature}. Common practice.',
  'expected.heat.finStart':
    'The fans should have started at the latest with the inside at {startC:temperature}. A fin outside is cooler than the inside, so from there up they are due for certain.',
  'expected.heat.jacket':
    'Ordinary 90 °C cable stays under {most:temperature} at its jacket. Hotter on both poles: too small, too much, or two bad joints. Common practice.',
  'expected.heat.joint':
    'The cooler of the two is {twin:temperature}. The same amps heat two sound joints alike: within 5 °C, and 3 °C more for the thermometer, {high:temperature}. Common practice.',
  'expected.heat.va':
    'Beside {watts:power} an ordinary load draws no more than {most:apparentPower}. The heat and the fans follow the amps, not the watts. Common practice.',
  'expected.heat.rest':
    '{units:count} on this bank, {idleWatts:power} each by the sheet. A third over that, and the packs’ own electronics, come to {high:power}. Common practice.',
  'expected.heat.restAssumed':
    'The sheet does not know the idle draw. {units:count} on this bank at {idleWatts:power} is usual; up to {high:power} is not unusual. Common practice.',
  'expected.heat.together':
    'One unit alone shows {one:current}. If that only goes round between the units, the same leg of all of them in one jaw cancels to {most:current} or less.',
  'expected.heat.room':
    'The label takes power away from {derateC:temperature} at the inlet. A hot afternoon here is {usualHighC:temperature}, outdoors and in shade.',
  'expected.heat.roomAssumed':
    'The sheet does not say where the label begins to take power away: {derateC:temperature} is taken (common practice). A hot afternoon here is {usualHighC:temperature}.',
  'expected.heat.below':
    'The room is {roomC:temperature}. From {limitC:temperature} up this is exhaust that the upper unit may breathe.',
  'expected.heat.inlet':
    'The room is {roomC:temperature}. An inlet over {limitC:temperature} breathes used air. Common practice, 5 to 10 °C over the room.',
  'expected.heat.inletStacked':
    'The room is {roomC:temperature}, the exhaust below {belowC:temperature}. Over {limitC:temperature} the upper unit breathes a third of it or more. Over {exhaustC:temperature} the exhaust alone cannot explain it. Common practice.',
  'expected.heat.outlet':
    '{lossWatts:power} of heat at {acWatts:power}, in {airflowM3s:airflow} at {altitudeM:altitude}: the air should leave {riseC:temperatureDifference} warmer than {inletC:temperature}. Fans, filter and efficiency allowed for: {low:temperature} to {high:temperature}. Common practice for that allowance.',
  'expected.heat.outletUnknownFlow':
    'The airflow is not on the sheet. {lossWatts:power} of heat at {acWatts:power} should raise {inletC:temperature} by no more than {mostC:temperatureDifference}, and 3 °C for the reading: {high:temperature}. Common practice, coarse.',
} as const;

const arithmetic = {
  'expected.heat.makesHeat':
    'At {acWatts:power} out and {chargeWatts:power} of charge, one unit makes about {lossWatts:power} of heat. The fans have to carry that off.',
  'expected.heat.asked.by-design': 'The sheet says that these fans always run. That is how the unit is made.',
  'expected.heat.asked.load-asks':
    'The fans are asked for from {startWatts:power} of load, and there is {acWatts:power}. They do what they are told.',
  'expected.heat.asked.charge-asks':
    'The load alone asks for nothing, but the charge goes through the unit as well: {chargeWatts:power}. Together they pass {startWatts:power}.',
  'expected.heat.asked.heat-decides':
    'These fans follow the heatsink’s temperature. See what it is, and whether that heat is right for this load.',
  'expected.heat.asked.should-rest':
    'The fans are asked for from {startWatts:power}, and there is less. By the sheet they should rest.',
  'expected.heat.asked.not-known':
    'The sheet does not say what turns these fans on, or the load stands just at the threshold. Taking the load away will tell.',
  'expected.heat.silent.always': 'The sheet says that these fans always run. They are silent.',
  'expected.heat.silent.due':
    'By the sheet the fans run from {startWatts:power} of load and charge. There is {acWatts:power} out and {chargeWatts:power} of charge, and they are silent.',
  'expected.heat.silent.not-asked':
    'By the sheet these fans follow the load alone, and this load does not clearly ask for them. Silence is no fault by itself.',
  'expected.heat.silent.heat-decides':
    'The load does not decide here, or the sheet does not know the rule. How warm the heatsink is decides.',
  'expected.heat.height.below': '{altitudeM:altitude} is no height that takes power away.',
  'expected.heat.height.within':
    'Over {fullToM:altitude} about 1 % of power is lost for each 100 m (330 ft). Here {allowedWatts:power} is left, and you read {acWatts:power}.',
  'expected.heat.height.over-derated':
    'Over {fullToM:altitude} about 1 % of power is lost for each 100 m (330 ft). Here {allowedWatts:power} is left, and you read {acWatts:power}: it cuts back as it should.',
  'expected.heat.height.not-known':
    'The site is at {altitudeM:altitude}, and the sheet does not say up to which height the label gives full power. Thin air carries less heat.',
  'expected.heat.idle': 'On with nothing plugged in it takes {watts:power}: {dayJoules:energy} a day.',
  'expected.heat.idleAssumed':
    'The sheet does not know the idle draw. A usual {watts:power} would be {dayJoules:energy} a day. Measure yours.',
  'expected.heat.idleArray':
    'That eats {lossless4:power} of array at 4 hours of good sun and {lossless5:power} at 5, with no losses counted. With {chargePath:ratio} from array to battery and back: {eaten4:power} and {eaten5:power}.',
} as const;

/** Every one of them, by message id. */
export const expectedHeat: Readonly<Record<string, string>> = { ...bands, ...arithmetic };
