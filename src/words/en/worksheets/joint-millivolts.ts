import type { WorksheetWords } from '../../worksheet-words.ts';

export const jointMillivolts: WorksheetWords = {
  inputs: {
    part: {
      label: 'What is between the probes',
      options: {
        joint: 'One joint: lug to stud, or crimp',
        fuse: 'A fuse with its holder',
        switch: 'A switch',
        breaker: 'A breaker',
      },
      hint: 'Without a twin or a first reading, its kind sets the limit.',
    },
    volts: {
      label: 'Millivolts across it',
      symbol: 'U',
      hint: 'Probes on the metal itself: one on the stud, one on the barrel of the lug. Sign left off.',
      limit: 'More than volts is an open contact: stop.',
    },
    amps: {
      label: 'Amps through it',
      symbol: 'I',
      hint: 'At the same moment. Half of full load or more.',
      limit: 'Under 1 A nothing shows.',
    },
    voltsError: {
      label: 'Error of the millivolts',
      hint: 'Short the probes and see what it shows. A few of its last digits.',
      limit: 'More than that is the wrong range.',
    },
    twinVolts: {
      label: 'Millivolts across its twin, same amps',
      symbol: 'Ut',
      hint: 'The same joint on the other pole or the other pack. May be empty.',
      limit: 'More than volts is an open contact: stop.',
    },
    firstOhms: {
      label: 'Its resistance when it was new',
      symbol: 'R0',
      hint: 'From the first load test. May be empty.',
      limit: 'In milliohms.',
    },
    fullAmps: {
      label: 'Most amps it will ever carry',
      symbol: 'If',
      hint: 'The fuse or switch rating, or full load. May be empty.',
      limit: 'One path.',
    },
  },
  outputs: {
    verdict: {
      label: 'This part',
      verdicts: {
        sound: 'Sound',
        high: 'Too much resistance',
        undetermined: 'Inside the meter’s error',
      },
    },
    ohms: { label: 'Resistance' },
    lowOhms: { label: 'At least' },
    highOhms: { label: 'At most' },
    limitOhms: { label: 'Should be under' },
    heatWatts: { label: 'Heat in it now' },
    fullVolts: { label: 'Volts lost at most amps' },
    fullWatts: { label: 'Heat at most amps' },
    twinOhms: { label: 'Its twin' },
    timesTwin: { label: 'Times its twin' },
    timesFirst: { label: 'Times its first reading' },
  },
  working: {
    ohms: {
      what: 'Resistance',
      formula: 'U ÷ I',
      numbers: '{volts:voltage:mV} ÷ {amps:current}',
      result: '{ohms:resistance:mΩ}',
    },
    error: {
      what: 'Of that, the meter’s error',
      formula: 'error ÷ I',
      numbers: '± {voltsError:voltage:mV} ÷ {amps:current}',
      result: '± {errorOhms:resistance:mΩ}',
    },
    heat: {
      what: 'Heat in it now',
      formula: 'U × I',
      numbers: '{volts:voltage:mV} × {amps:current}',
      result: '{heatWatts:power}',
    },
    twin: {
      what: 'Beside its twin',
      formula: 'U ÷ Ut',
      numbers: '{volts:voltage:mV} ÷ {twinVolts:voltage:mV}',
      result: '{timesTwin:plain:1} times',
    },
    full: {
      what: 'Heat at most amps',
      formula: 'If² × R',
      numbers: '({fullAmps:current})² × {ohms:resistance:mΩ}',
      result: '{fullWatts:power}',
    },
  },
  says: {
    nothing:
      'Nothing shows across it. A true joint always shows a little under load: are both tips on bare metal, and is the current really flowing here?',
    sound:
      'This part is as it should be. Write its milliohms down: they are what the next visit compares with.',
    high: 'At least {lowOhms:resistance:mΩ}, and it should be under {limitOhms:resistance:mΩ}. Isolate, lock and prove dead. Then open it, look, clean, make it up again to the label’s torque, and measure again.',
    undetermined:
      'The meter’s error is too large beside {limitOhms:resistance:mΩ}. Load it harder, or use a millivolt range with a finer last digit.',
    hot: 'With {hottestWatts:power} in the size of a thumb it is too hot to hold. Find out why before it is loaded like that for hours.',
    burning:
      '{hottestWatts:power} in one joint destroys it and what it sits on. Take the load off now, and isolate.',
    wouldBurn:
      'At most amps it would give off {hottestWatts:power}. That destroys it and what it sits on. Load it no harder until it is made up again.',
    twinWorse: 'Its twin is the worse one. Type that reading here as well.',
    noTwin:
      'The limit used here is common practice for such a part. A twin at the same amps, or its own first reading, judges better.',
    coarse:
      'The meter’s error is more than a quarter of the reading. The milliohms are a hint; a verdict rests on both ends of them.',
    onTheMetal:
      'Resistance is of what lies between your two probe tips. On the lug’s barrel it holds the crimp; on the palm it does not.',
  },
  plot: {
    title: 'Heat in this part',
    x: 'Amps through it',
    y: 'Heat',
    lines: { this: 'This part', limit: 'At its limit', now: 'Now' },
  },
  leavesOut: [
    'How well the part gets rid of its heat: feel for it from a distance, or use a thermometer.',
    'A joint that opens only when warm. Read again after half an hour of load.',
    'The battery’s own posts beyond your probe tip.',
  ],
  search: [
    'millivolt drop',
    'hot lug',
    'bad crimp',
    'contact resistance',
    'micro-ohm',
    'joint heat',
    'warm fuse holder',
    'breaker gets hot',
  ],
};
