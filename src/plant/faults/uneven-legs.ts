import { acNominal } from '../../site/ac.ts';
import type { AcSpec } from '../ac/spec.ts';
import { copperOhm } from '../site-parts.ts';
import type { Draft, Fault, Making, Severity } from './fault.ts';

type Sheet = Making['sheet'];
const twoLegs = ({ inverter }: Sheet) => acNominal[inverter.topology].legs === 2;
/** A utility supply passes through the unit: no search, and it brings its own tie of neutral to ground. */
const ownSupply = ({ secondSource }: Sheet) => secondSource.kind !== 'utility';
/** Least resistance of one conductor of a run that counts as long [Ω]. */
const longOhm = 0.12;
/** A run is as long as its sheet says: a long one is on a sheet that says so, or that does not know. */
const longRun = (sheet: Sheet) => {
  const { lengthM, areaMm2 } = sheet.outputFeeder ?? { lengthM: null, areaMm2: null };
  return (
    twoLegs(sheet) && (lengthM === null || areaMm2 === null || copperOhm(lengthM, areaMm2, 30) >= longOhm)
  );
};
const opposed = ({ inverter }: Sheet) => inverter.topology === 'opposed-120-240';

function onAc(
  id: string,
  cause: string,
  frequency: Fault['frequency'],
  change: (ac: AcSpec, making: Making, draft: Draft) => Severity,
  fits: NonNullable<Fault['fits']> = twoLegs,
): Fault {
  return {
    id,
    cause,
    group: 'd',
    frequency,
    fits,
    make: (draft, making) => change(draft.spec.ac, making, draft),
  };
}

/** Puts the house mostly on one leg, which an open or poor neutral needs to show. */
function lean(ac: AcSpec, leg: '1' | '2', times: number): void {
  for (const load of ac.loads) if (load.at === leg) load.watts *= times;
}

/** Causes of *uneven leg voltages or loading, lost neutral, dimming and flicker*. */
export const unevenLegs: readonly Fault[] = [
  onAc(
    'd1',
    'neutral-open-feeder',
    'common',
    (ac, { random }) => {
      lean(ac, random.pick(['1', '2'] as const), random.between(1.5, 3));
      ac.neutralJoint = random.chance(0.7) ? Number.POSITIVE_INFINITY : random.logBetween(20, 2000);
      return { ohms: ac.neutralJoint };
    },
    opposed,
  ),
  onAc(
    'd2',
    'neutral-open-at-source',
    'occasional',
    (ac, { random }) => {
      lean(ac, random.pick(['1', '2'] as const), random.between(1.5, 3));
      for (const unit of ac.units) unit.neutral = Number.POSITIVE_INFINITY;
      return {};
    },
    opposed,
  ),
  onAc('d3', 'neutral-joint-poor', 'occasional', (ac, { random }) => {
    lean(ac, random.pick(['1', '2'] as const), random.between(1.5, 3));
    ac.neutralJoint = random.logBetween(0.15, 5);
    return { ohms: ac.neutralJoint };
  }),
  onAc('d4', 'hot-joint-poor', 'occasional', (ac, { random }) => {
    const leg = random.pick([0, 1] as const);
    lean(ac, leg === 0 ? '1' : '2', random.between(1.2, 2.5));
    ac.lineJoint[leg] = random.logBetween(0.15, 3);
    return { leg: leg + 1, ohms: ac.lineJoint[leg] };
  }),
  onAc('d5', 'source-sags', 'common', (ac, { random }, { spec }) => {
    const form = random.pick(['weak', 'dc'] as const);
    if (form === 'weak') {
      const times = random.between(6, 20);
      ac.innerOhm *= times;
      return { form, amount: times };
    }
    // Bus volts too low for the output it is asked for.
    spec.unit.regulatesFromV = spec.packs[0]!.cells * random.between(3.35, 3.7);
    return { form, amount: spec.unit.regulatesFromV };
  }),
  onAc('d6', 'leg-overloaded', 'common', (ac, { random }, { spec }) => {
    const leg = random.pick(['1', '2'] as const);
    const share = random.between(1.02, 1.5);
    const wanted = share * spec.unit.legLimitW * ac.units.length;
    const now = ac.loads.reduce((sum, load) => (load.at === leg ? sum + load.watts : sum), 0);
    lean(ac, leg, wanted / now);
    return { leg, share };
  }),
  onAc(
    'd7',
    'legs-in-phase',
    'occasional',
    (ac) => {
      ac.leg2Deg = 0;
      return {};
    },
    opposed,
  ),
  onAc(
    'd8',
    'legs-third-apart',
    'rare',
    (ac) => {
      ac.leg2Deg = 120;
      return {};
    },
    opposed,
  ),
  onAc('d9', 'leg-lost', 'occasional', (ac, { random }) => {
    const leg = random.pick([0, 1] as const);
    const form = random.pick(['unit', 'run'] as const);
    if (form === 'unit') for (const unit of ac.units) unit.line[leg] = Number.POSITIVE_INFINITY;
    else ac.lineJoint[leg] = Number.POSITIVE_INFINITY;
    return { leg: leg + 1, form };
  }),
  onAc('d10', 'start-dip', 'common', (ac, { random }) => {
    const motor = ac.loads.reduce((most, load) => (load.startTimes > most.startTimes ? load : most));
    motor.startTimes = random.between(5, 8);
    motor.watts *= random.between(1, 2.2);
    return { times: motor.startTimes };
  }),
  onAc(
    'd11',
    'search-mode',
    'common',
    (ac, { random }, { state }) => {
      ac.searchW = random.between(20, 60);
      state.loadsOn = ac.loads.map((load) => load.id === 'lights-1');
      for (const load of ac.loads)
        if (load.id === 'lights-1') load.watts = ac.searchW * random.between(0.2, 0.8);
      return { thresholdW: ac.searchW };
    },
    ownSupply,
  ),
  onAc(
    'd12',
    'source-flipping',
    'occasional',
    (_ac, _making, { spec, state }) => {
      state.sourceRunning = true;
      state.acInOn = true;
      spec.source.flips = true;
      return {};
    },
    (sheet) => sheet.secondSource.kind !== 'none',
  ),
  onAc(
    'd13',
    'neutral-not-grounded',
    'occasional',
    (ac) => {
      ac.bondAtUnit = Number.POSITIVE_INFINITY;
      ac.bondAtPanel = Number.POSITIVE_INFINITY;
      return {};
    },
    ownSupply,
  ),
  onAc(
    'd14',
    'shared-neutral-open',
    'occasional',
    (ac, { random }) => {
      for (const load of ac.loads) if (load.at === 'pair1') load.watts *= random.between(2, 5);
      ac.pairNeutral = random.chance(0.7) ? Number.POSITIVE_INFINITY : random.logBetween(20, 1000);
      return { ohms: ac.pairNeutral };
    },
    opposed,
  ),
  onAc(
    'd3',
    'feeder-long',
    'occasional',
    (ac, { sheet, random }) => {
      lean(ac, random.pick(['1', '2'] as const), random.between(1.5, 3));
      const { lengthM, areaMm2 } = sheet.outputFeeder ?? { lengthM: null, areaMm2: null };
      if (lengthM === null || areaMm2 === null) ac.feederOhm = random.between(longOhm, 0.4);
      return { ohms: ac.feederOhm };
    },
    longRun,
  ),
];
