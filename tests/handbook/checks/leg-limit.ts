import { legLimit } from '../../../src/worksheets/ac/leg-limit.ts';
import { checksOf } from './check.ts';

type Given = Parameters<typeof legLimit.compute>[0];
const given: Given = {
  topology: 'opposed-120-240',
  ratedWatts: 7600,
  legLimitWatts: undefined,
  leftShare: 1,
  breakerAmps: undefined,
  breakerKind: 'standard',
  watts1: 0,
  watts2: 0,
  wattsAcross: 0,
};
const legs = (change: Partial<Given>) => {
  const result = legLimit.compute({ ...given, ...change });
  return result.ok ? result.out : undefined;
};
const course = 'Course text on PV systems (2023 NEC): 7600 W at 240 V is 31.67 A';
const code = 'NEC 210.20(A), 215.3: 125 % of a continuous load; 32 A asks for a 40 A breaker';
const panel = 'Course notes on panel loads: 225 A panel × 0.8 carries 180 A';
const blog = 'Article on loading a 200 A panel: 75 A on one leg and 30 A on the other, 52.5 A averaged';
const rule = 'Common practice: a leg gives half of the nameplate';

export const legLimitChecks = checksOf('leg-limit', [
  [
    '7600',
    course,
    'published',
    'amps of each leg',
    31.67,
    () => legs({ wattsAcross: 7600 })?.fullerAmps,
    'threeFigures',
  ],
  [
    '40a',
    code,
    'published',
    'amps of one pole for good',
    32,
    () => legs({ breakerAmps: 40 })!.breakerLegWatts! / 120,
    'exact',
  ],
  [
    '225a',
    panel,
    'published',
    'amps of one pole for good',
    180,
    () => legs({ breakerAmps: 225 })!.breakerLegWatts! / 120,
    'exact',
  ],
  [
    '75-30',
    blog,
    'published',
    'amps the main sees',
    75,
    () => legs({ watts1: 75 * 120, watts2: 30 * 120 })?.fullerAmps,
    'exact',
  ],
  [
    '75-30-move',
    blog,
    'published',
    'amps of a leg once even',
    52.5,
    () => {
      const out = legs({ watts1: 75 * 120, watts2: 30 * 120 });
      return out && (out.leg1Watts! - out.moveWatts!) / 120;
    },
    'exact',
  ],
  [
    'breaker-3840',
    'Worked by hand: two poles of 20 A at 80 % on 120 V',
    'worked apart',
    'watts for good',
    3840,
    () => legs({ breakerAmps: 20 })?.mostWatts,
    'exact',
  ],
  [
    'half',
    rule,
    'common practice',
    'watts of one leg of 6 kW',
    3000,
    () => legs({ ratedWatts: 6000 })?.legLimitEachWatts,
    'exact',
  ],
]);
