import { defineWorksheet } from '../define.ts';
import { give } from '../result.ts';
import { say } from '../say.ts';
import { lagDegrees, magnitude, phasor, plus } from './phasor.ts';
import { legFacts, topologies } from './topology.ts';

export const neutralCurrent = defineWorksheet({
  id: 'neutral-current',
  group: 'ac',
  hazards: ['ac-shock', 'live-metering'],
  inputs: {
    topology: { options: topologies, default: 'opposed-120-240', from: ['inverter.topology'] },
    amps1: { kind: 'current', min: 0, max: 400 },
    factor1: { kind: 'ratio', min: 0, max: 1, default: 1 },
    amps2: { kind: 'current', min: 0, max: 400, default: 0 },
    factor2: { kind: 'ratio', min: 0, max: 1, default: 1 },
    ratedAmps: { kind: 'current', min: 1, max: 400, optional: true },
  },
  outputs: {
    verdict: { verdicts: ['within', 'over', 'noRating'], headline: true },
    neutralAmps: { kind: 'current', headline: true },
    sumAmps: { kind: 'current' },
    differenceAmps: { kind: 'current' },
    heatTimes: { kind: 'count', decimals: 1 },
  },
  compute(given) {
    const { angle } = legFacts[given.topology];
    const one = phasor(given.amps1, -lagDegrees(given.factor1));
    const two = angle === undefined ? phasor(0, 0) : phasor(given.amps2, angle - lagDegrees(given.factor2));
    const neutralAmps = magnitude(plus(one, two));
    const { ratedAmps } = given;
    const amps2 = angle === undefined ? 0 : given.amps2;
    const larger = Math.max(given.amps1, amps2);
    return give({
      verdict:
        ratedAmps === undefined
          ? ('noRating' as const)
          : neutralAmps > ratedAmps
            ? ('over' as const)
            : ('within' as const),
      neutralAmps,
      sumAmps: given.amps1 + amps2,
      differenceAmps: Math.abs(given.amps1 - amps2),
      heatTimes: larger === 0 ? undefined : (neutralAmps / larger) ** 2,
    });
  },
  working(given, out) {
    const line = {
      'opposed-120-240': 'opposed',
      'wye-120-208': 'third',
      'common-120': 'common',
      'single-230': 'single',
    }[given.topology];
    return [say(line, given, out)];
  },
  remarks(given, out) {
    const { angle } = legFacts[given.topology];
    const ids = [
      ...(out.verdict === 'over' ? ['over'] : []),
      angle === undefined ? 'single' : angle === 0 ? 'common' : angle === 120 ? 'third' : 'opposed',
      ...(angle !== undefined && given.factor1 !== given.factor2 ? ['unlikeFactors'] : []),
    ];
    return ids.map((id) => say(`worksheet.neutral-current.${id}`, given, out));
  },
  sources: [{ id: 'kuphaldt-ac', clause: 'complex numbers, phasor sums' }, { id: 'common-practice' }],
});
