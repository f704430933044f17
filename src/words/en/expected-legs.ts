/**
 * Why the bands of the legs stand where they do, and what the arithmetic on them says, with this site's numbers. A gap
 * reads `{name:kind}` or `{name:kind:unit}`, as in the words of worksheets.
 */

const bands = {
  'expected.legs.leg':
    'Nominal {nominal:voltage} to neutral, 5 % either way: {low:voltage} to {high:voltage} (ANSI C84.1, service range A; elsewhere your own code’s range). Up to {dead:voltage} the leg counts as dead.',
  'expected.legs.rise':
    'With nothing on, this leg read {unloaded:voltage}. One heater on the other leg moves it by less than {riseVolts:voltage}, long feeder and meter’s error counted, or the neutral is lost (common practice). A poor joint below that shows in ohms.',
  'expected.legs.amps':
    'One leg may give {limit:current} for long: its watts by the label, or half of the unit’s, at {nominal:voltage}.',
  'expected.legs.testAmps':
    'A heater of 1 kW draws about {nominal:current}. Under {least:current} it is not on, or nothing flows.',
  'expected.legs.neutralGround':
    'Tied to ground once, at the source in use, the neutral stands within {most:voltage}. Up to {floats:voltage} can be its own drop under load. More is a neutral that floats (common practice).',
  'expected.legs.lowZ':
    'A ghost falls away on low impedance, to {ghostVolts:voltage} or less (common practice). What stays has a source behind it.',
  'expected.legs.lowest':
    'Before, the leg read {stood:voltage}. A dip to no less than {deep:voltage}, which is 5 %, is an ordinary start. Over {seen:voltage} nobody sees it (common practice).',
  'expected.legs.highest':
    'Before, the leg read {stood:voltage}. A start on a sound neutral lifts no leg over {rises:voltage} (common practice).',
  'expected.legs.runDrop':
    'At {current:current} a sound conductor of {ohms:resistance}, its ends counted, loses well under {most:voltage}: one and a half times its share (common practice).',
} as const;

const works = {
  'expected.legs.found':
    'Leg to leg {v12:voltage}, leg 1 {v1:voltage}, leg 2 {v2:voltage}: {apart:voltage} between the legs.',
  'expected.legs.output':
    'With nothing on it the unit gives {v1:voltage} and {v2:voltage}, {v12:voltage} between them. It should give {nominal:voltage} a leg.',
  'expected.legs.sag':
    'At the panel {panel:voltage}, at the output {output:voltage}. The feeder loses {drop:voltage}. The unit itself stands {sag:voltage} under its {nominal:voltage}.',
  'expected.legs.start':
    'In the start the panel dips by {panel:voltage}, the output by {output:voltage}. The source is the reason where at least half of the panel’s dip is the output’s own.',
  'expected.legs.share':
    'Leg 1 {i1:current}, leg 2 {i2:current}: {share:ratio} between them. A leg may give {limit:current}, both together {sumLimit:current}: they draw {sum:current}. The neutral carries {neutral:current} of it.',
  'expected.legs.lineBetween':
    '{volts:voltage} is too near a limit of the band about {nominal:voltage}. It is taken by the side it stands on.',
  'expected.legs.step':
    'At {amps:current} the loaded leg fell by {fall:voltage} over the feeder and the panel’s neutral moved by {shift:voltage}. Neutral: {neutralOhms:resistance}, from {neutralLow:resistance} to {neutralHigh:resistance}. Hot: {hotOhms:resistance}, from {hotLow:resistance} to {hotHigh:resistance}, by this meter.',
  'expected.legs.feeder':
    'By length and size each may have {limit:resistance}, its ends and half as much again counted (common practice). A fault in the hot that adds less than {hotHigh:resistance} in all can hide in the meter’s error.',
  'expected.legs.feederUnknown':
    'The sheet does not know the feeder. The two conductors are held against each other: alike is sound, one far above the other is a joint.',
  'expected.legs.moved':
    'Over the feeder the loaded leg fell by {fall:voltage}, and the panel’s neutral moved by {shift:voltage}. At the output the loaded leg fell by {outFall:voltage}. The test load drew {amps:current}.',
  'expected.legs.noLoad':
    'The clamp shows {amps:current}. The test load is not on, or the jaw holds the wrong conductor.',
  'expected.legs.line':
    'At {amps:current} the run lost {fall:voltage}, {ng:voltage} of it in the neutral. Neutral {neutralOhms:resistance}, line {lineOhms:resistance} (up to {lineHigh:resistance} by this meter). Each may have {limit:resistance}.',
  'expected.legs.lineUnknown':
    'At {amps:current} the run lost {fall:voltage}, {ng:voltage} of it in the neutral. Neutral {neutralOhms:resistance}, line {lineOhms:resistance} (up to {lineHigh:resistance} by this meter). The sheet does not know the feeder, so the two are held against each other.',
  'expected.legs.retest':
    '{ng:voltage} at {amps:current}: the neutral has {neutralOhms:resistance}. It may have {limit:resistance}.',
  'expected.legs.retestHot':
    'The hot conductor alone loses {drop:voltage} at {amps:current}: {hotOhms:resistance}. It may have {limit:resistance}.',
} as const;

export const expectedLegs: Readonly<Record<string, string>> = { ...bands, ...works };
