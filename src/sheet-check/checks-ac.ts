import type { SiteSheet } from '../site/sheet.ts';
import { commonNeutral } from '../worksheets/ac/common-neutral.ts';
import { legLimit } from '../worksheets/ac/leg-limit.ts';
import { legVolts } from '../worksheets/ac/leg-volts.ts';
import { legFacts } from '../worksheets/ac/topology.ts';
import { heatRise } from '../worksheets/heat/heat-rise.ts';
import type { Check } from './check.ts';

/** The fuller leg may fall to this share of its nominal volts at the panel. ANSI C84.1, range A. */
const leastPanelShare = 0.95;
/** Fans of a unit in good order keep the air under this rise at full load [°C]. Common practice. */
const usualMostRiseC = 20;

const twoLegs = ({ inverter }: SiteSheet): boolean => legFacts[inverter.topology].angle !== undefined;

/** Every way that the two hots can be asked for what the source gives: both breakers larger than it. */
const sourceSetsIt = { breaker1Amps: 400, breaker2Amps: 400 };

/** The heaviest ordinary case: one leg full and the other empty; legs in step and a single line carry all they can. */
function heaviest(sheet: SiteSheet): Readonly<Record<string, number | string>> {
  const { inverter, parallelUnits } = sheet;
  const { angle, legVolts: sourceVolts } = legFacts[inverter.topology];
  const all = inverter.ratedW * parallelUnits;
  const leg = (inverter.legLimitW ?? inverter.ratedW / 2) * parallelUnits;
  if (angle === undefined) return { sourceVolts, watts1: all, watts2: 0 };
  return angle === 0
    ? { sourceVolts, watts1: all / 2, watts2: all / 2 }
    : { sourceVolts, watts1: leg, watts2: 0 };
}

/** Legs, neutral, feeder and what heat and height take away. */
export const acChecks: readonly Check[] = [
  {
    id: 'leg-limit',
    worksheet: legLimit,
    of: 'site',
    severity: 'limits',
    kind: 'power',
    side: 'atLeast',
    applies: twoLegs,
    needs: ['inverter.legLimitW'],
    judge: ({ given, out }) => ({ amount: out.mostWatts, limit: given.ratedWatts }),
    lifts: ['inverter.legLimitW'],
  },
  {
    id: 'common-neutral',
    worksheet: commonNeutral,
    of: 'site',
    severity: 'danger',
    kind: 'current',
    side: 'atMost',
    applies: ({ inverter }) => inverter.topology === 'common-120',
    inputs: () => sourceSetsIt,
    needs: ['outputFeeder.areaMm2'],
    judge: ({ out }) =>
      out.goodForAmps === undefined ? 'codeBasis' : { amount: out.neutralAmps, limit: out.goodForAmps },
    lifts: ['outputFeeder.areaMm2'],
  },
  {
    id: 'made-common',
    worksheet: commonNeutral,
    of: 'site',
    severity: 'limits',
    kind: 'current',
    side: 'atMost',
    applies: ({ inverter }) => ['opposed-120-240', 'wye-120-208'].includes(inverter.topology),
    inputs: () => sourceSetsIt,
    needs: ['outputFeeder.areaMm2'],
    judge: ({ out }) =>
      out.goodForAmps === undefined ? 'codeBasis' : { amount: out.neutralAmps, limit: out.goodForAmps },
    lifts: ['outputFeeder.areaMm2'],
  },
  {
    id: 'panel-volts',
    worksheet: legVolts,
    of: 'site',
    severity: 'fails',
    kind: 'voltage',
    side: 'atLeast',
    needs: ['outputFeeder.lengthM', 'outputFeeder.areaMm2'],
    inputs: heaviest,
    judge: ({ given, out }) => ({
      amount: Math.min(out.v1, out.v2 === undefined || given.watts2 === 0 ? out.v1 : out.v2),
      limit: leastPanelShare * given.sourceVolts,
    }),
    lifts: ['outputFeeder.areaMm2', 'outputFeeder.lengthM'],
  },
  {
    id: 'height',
    worksheet: legLimit,
    of: 'site',
    severity: 'limits',
    kind: 'altitude',
    side: 'atMost',
    needs: ['altitudeM', 'inverter.fullPowerToM'],
    judge: ({ sheet }) => ({ amount: sheet.altitudeM ?? 0, limit: sheet.inverter.fullPowerToM ?? 0 }),
    lifts: ['inverter.fullPowerToM'],
  },
  {
    id: 'hot-room',
    worksheet: legLimit,
    of: 'site',
    severity: 'limits',
    kind: 'temperature',
    side: 'atMost',
    needs: ['inverter.derateStartC'],
    judge: ({ sheet }) => ({ amount: sheet.climate.usualHighC, limit: sheet.inverter.derateStartC ?? 0 }),
    lifts: ['inverter.derateStartC'],
  },
  {
    id: 'fan-air',
    worksheet: heatRise,
    of: 'site',
    severity: 'limits',
    kind: 'temperatureDifference',
    side: 'atMost',
    needs: ['inverter.fanAirflowM3s', 'altitudeM'],
    inputs: ({ inverter, climate }) => ({ acWatts: inverter.ratedW, inletC: climate.usualHighC }),
    judge: ({ out }) => ({ amount: out.riseC, limit: usualMostRiseC }),
    lifts: ['inverter.fanAirflowM3s'],
  },
];
