import type { WorksheetWords } from '../../worksheet-words.ts';

export const dcPath: WorksheetWords = {
  inputs: {
    batteryVolts: {
      label: 'Volts at the battery posts',
      symbol: 'Vb',
      hint: 'On the posts themselves, not on the lugs. Same meter, same range, steady load.',
      limit: 'For banks of the 48 V class and below.',
    },
    inverterVolts: {
      label: 'Volts at the inverter’s DC posts',
      symbol: 'Vi',
      hint: 'Within seconds of the other one.',
      limit: 'For banks of the 48 V class and below.',
    },
    amps: {
      label: 'Battery amps',
      symbol: 'I',
      hint: 'Plus while discharging, minus while charging. Half of rated load or more, or nothing shows.',
      limit: 'One clamp, zeroed on the spot.',
    },
    voltsError: {
      label: 'Error of the difference',
      hint: 'Same meter and range: a few of its last digits. Two meters: their errors added, and that is too much.',
      limit: 'With more, measure the millivolts across each part instead.',
    },
    lengthM: {
      label: 'Cable length, one way',
      symbol: 'L',
      limit: 'One way; the worksheet counts out and back.',
    },
    areaMm2: {
      label: 'Cable size',
      symbol: 'A',
      hint: 'As 4/0 AWG or 70 mm².',
      limit: 'One conductor. Two in parallel: add their areas.',
    },
    coating: {
      label: 'Copper',
      options: { plain: 'Plain', tinned: 'Tinned' },
      hint: 'Marine and PV cable is usually tinned.',
    },
    conductorC: {
      label: 'Temperature of the copper',
      hint: 'Hand-warm is 40 °C.',
      limit: 'Insulation gives up near 120 °C.',
    },
    joints: {
      label: 'Joints in the path',
      symbol: 'n',
      hint: 'Count every lug, crimp and stud, both poles. 0.1 mΩ each is a sound one.',
      limit: 'Count both poles.',
    },
    devicesOhms: {
      label: 'Fuse, switch and breaker together',
      symbol: 'Rd',
      hint: 'Fuse 0.2 to 0.4 mΩ, switch 0.1 to 0.3, moulded breaker 0.3 to 1.',
      limit: 'In milliohms.',
    },
  },
  outputs: {
    verdict: {
      label: 'The path',
      verdicts: {
        sound: 'What its parts add up to',
        high: 'More than its parts add up to',
        wrongSign: 'Wrong sign: a meter or a sense error',
        undetermined: 'Inside the meter’s error',
      },
    },
    lostVolts: { label: 'Volts lost' },
    pathOhms: { label: 'Resistance of the path' },
    pathLowOhms: { label: 'At least' },
    pathHighOhms: { label: 'At most' },
    cableOhms: { label: 'Cable alone, out and back' },
    expectedOhms: { label: 'Expected of all parts' },
    expectedVolts: { label: 'Volts lost, expected' },
    cableVolts: { label: 'Volts lost in cable alone' },
    expectedShare: { label: 'Expected loss, share of battery volts' },
    excessOhms: { label: 'Too much' },
    jointShareOhms: { label: 'Too much, shared over all joints' },
    heatWatts: { label: 'Heat in the whole path' },
    excessWatts: { label: 'Heat of the excess, if one joint has it all' },
  },
  working: {
    lost: {
      what: 'Volts lost',
      formula: 'Vb − Vi',
      numbers: '{batteryVolts:voltage} − {inverterVolts:voltage}',
      result: '{lostVolts:voltage}',
    },
    path: {
      what: 'Resistance of the path',
      formula: '(Vb − Vi) ÷ I',
      numbers: '{lostVolts:voltage} ÷ {amps:current}',
      result: '{pathOhms:resistance}',
    },
    cable: {
      what: 'Cable, out and back, at its temperature',
      formula: '2 × L × r',
      numbers: '2 × {oneWayM:length} × {ohmsPerM:resistance}/m',
      result: '{cableOhms:resistance}',
    },
    expected: {
      what: 'All parts',
      formula: 'cable + n × 0.1 mΩ + Rd',
      numbers: '{cableOhms:resistance} + {joints:count} × {jointOhms:resistance} + {devicesOhms:resistance}',
      result: '{expectedOhms:resistance}',
    },
    expectedVolts: {
      what: 'Volts lost, expected',
      formula: '|I| × all parts',
      numbers: '{amps:current} × {expectedOhms:resistance}',
      result: '{expectedVolts:voltage}',
    },
    excess: {
      what: 'Too much',
      formula: 'path − all parts',
      numbers: '{pathOhms:resistance} − {expectedOhms:resistance}',
      result: '{excessOhms:resistance}',
    },
    heat: {
      what: 'Heat of the excess',
      formula: 'I² × too much',
      numbers: '({amps:current})² × {excessOhms:resistance}',
      result: '{excessWatts:power}',
    },
  },
  says: {
    sound:
      'The path loses what cable, joints and devices add up to. Look for the sag in the battery, not here.',
    high: 'The path has {excessOhms:resistance} more than its parts. Measure millivolts across each lug, fuse, switch and breaker at this load. The one with the volts across it is the fault.',
    wrongSign:
      'While discharging, the inverter must read below the battery; while charging, above. These readings have it the other way round. That is a meter, a swapped lead or the inverter’s own sense, never a cable.',
    undetermined:
      'The difference lies inside the meter’s error at this current. Load it harder, or read the millivolts across each part straight.',
    hotJoint:
      'If one joint holds all of it, that joint gives off {excessWatts:power}: it will be hot within minutes. Two volts lost in one lug would be smoking. If all lugs stay cool, the loss hides inside a fuse holder, switch or breaker.',
    cableThin:
      'Sound joints would still lose {expectedShare:ratio} of the battery’s volts here. The cable is thin or long for this current.',
    noCurrent:
      'At {amps:current} nothing shows. Put at least {leastAmps:current} through the path, better half of rated load.',
  },
  leavesOut: [
    'What the cable may carry. This is loss, not ampacity or protection.',
    'Drop inside the pack: measure at its posts.',
    'Ripple: a meter shows the mean, and the heat is a little more.',
  ],
  search: [
    'voltage drop',
    'hot lug',
    'bad joint',
    'milliohm',
    'sag under load',
    'cable size',
    'path resistance',
  ],
};
