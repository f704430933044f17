import { awgAreaMm2 } from '../../../src/quantity/wire.ts';
import { commonNeutral, neutralGoodFor } from '../../../src/worksheets/ac/common-neutral.ts';
import { checksOf } from './check.ts';

type Given = Parameters<typeof commonNeutral.compute>[0];
const given: Given = {
  breaker1Amps: 20,
  breaker2Amps: 20,
  sourceAmps: undefined,
  areaMm2: awgAreaMm2(12),
  metal: 'copper',
  insulation: '75',
  termination: '75',
  ambientC: 30,
  conductors: 3,
  codeBasis: 'us-nec',
};
const neutral = (change: Partial<Given>) => {
  const result = commonNeutral.compute({ ...given, ...change });
  return result.ok ? result.out : undefined;
};
const eightAwg = (ambientC: number, conductors: number) =>
  neutralGoodFor({
    areaMm2: awgAreaMm2(8),
    metal: 'copper',
    insulation: 90,
    termination: 75,
    ambientC,
    conductors,
  });

const mailing =
  'Technical mailing list on shared neutrals: two 20 A circuits of one leg put 40 A on the neutral';
const answers = 'Published answer on shared neutrals: 15 A and 15 A of one leg put 30 A on the neutral';
const journal = 'Article on conductor sizing, 8 AWG THHN at 40 °C, six in a raceway';
const exam = 'Multiple-choice question with its answer, 8 AWG THHN, six conductors in a raceway at 30 °C';
const motors = 'Examination question, nine 8 AWG THHN in one conduit at 30 °C';

export const commonNeutralChecks = checksOf('common-neutral', [
  ['40', mailing, 'published', 'neutral amps', 40, () => neutral({})?.neutralAmps, 'exact'],
  [
    '30',
    answers,
    'published',
    'neutral amps',
    30,
    () => neutral({ breaker1Amps: 15, breaker2Amps: 15 })?.neutralAmps,
    'exact',
  ],
  ['thhn-40', journal, 'published', 'good for, A', 40.04, () => eightAwg(40, 6), 'rounded'],
  ['thhn-six', exam, 'published', 'good for, A', 44, () => eightAwg(30, 6), 'rounded'],
  ['thhn-nine', motors, 'published', 'good for, A', 38.5, () => eightAwg(30, 9), 'rounded'],
  [
    'site-50',
    'Worked by hand: 6 kW at 120 V on breakers of 50 and 50 A',
    'worked apart',
    'neutral amps, set by the source',
    50,
    () => neutral({ breaker1Amps: 50, breaker2Amps: 50, sourceAmps: 6000 / 120 })?.neutralAmps,
    'exact',
  ],
]);
