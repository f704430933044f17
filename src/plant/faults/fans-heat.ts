import type { HeatSpec } from '../heat/spec.ts';
import type { Draft, Fault, Making, Severity } from './fault.ts';

const heatOf = ({ spec }: Draft, { subject }: Making): HeatSpec => spec.heat[subject.unit]!;

/** Loads the house to a share of what the units may give for long. */
function loadTo({ spec }: Draft, share: number): void {
  const now = spec.ac.loads.reduce((sum, { watts }) => sum + watts, 0);
  const wanted = share * spec.unit.ratedW * spec.ac.units.length;
  for (const load of spec.ac.loads) load.watts *= wanted / now;
}

function onHeat(
  id: string,
  cause: string,
  frequency: Fault['frequency'],
  change: (heat: HeatSpec, making: Making, draft: Draft) => Severity,
): Fault {
  return {
    id,
    cause,
    group: 'c',
    frequency,
    make(draft, making) {
      loadTo(draft, making.random.between(0.15, 0.75));
      return change(heatOf(draft, making), making, draft);
    },
  };
}

/** Causes of *fans always on, overheating, derating*. */
export const fansHeat: readonly Fault[] = [
  onHeat('c1', 'fans-normal', 'common', (heat, { random }, draft) => {
    const form = random.pick(['load', 'base-speed'] as const);
    if (form === 'load') loadTo(draft, random.between(0.5, 0.85));
    else heat.baseSpeed = random.between(0.2, 0.4);
    return { form };
  }),
  onHeat('c2', 'hot-room-or-sun', 'common', (heat, { random }) => {
    const form = random.pick(['room', 'sun'] as const);
    if (form === 'room') heat.roomC = heat.derateStartC + random.between(1, 15);
    else heat.sunW = random.between(120, 500);
    return { form, roomC: heat.roomC, sunW: heat.sunW };
  }),
  onHeat('c3', 'blocked-or-recirculated', 'common', (heat, { random }) => {
    heat.recirculation = random.between(0.25, 0.75);
    heat.overAnother = random.chance(0.3);
    return { share: heat.recirculation };
  }),
  onHeat('c4', 'dust-clogged', 'common', (heat, { random }) => {
    heat.openShare = random.between(0.15, 0.7);
    return { open: heat.openShare };
  }),
  onHeat('c5', 'hot-joint', 'occasional', (heat, { random }, draft) => {
    loadTo(draft, random.between(0.5, 0.85));
    heat.terminalSide = random.pick(['dc', 'ac'] as const);
    heat.terminalOhm =
      heat.terminalSide === 'dc' ? random.logBetween(4e-4, 4e-3) : random.logBetween(0.01, 0.08);
    return { side: heat.terminalSide, ohms: heat.terminalOhm };
  }),
  onHeat('c6', 'hidden-or-circulating', 'occasional', (_heat, { random }, draft) => {
    const { ac, unit } = draft.spec;
    const forms =
      ac.units.length > 1
        ? (['circulating', 'hidden', 'power-factor'] as const)
        : (['hidden', 'power-factor'] as const);
    const form = random.pick(forms);
    loadTo(draft, 0.08);
    if (form === 'circulating') {
      ac.units[1]!.aheadDeg = random.between(0.1, 1.2);
      ac.units[1]!.voltsShare = 1 + random.between(-0.01, 0.01);
    } else if (form === 'hidden')
      ac.loads.push({
        id: 'hidden',
        at: '1',
        watts: unit.ratedW * random.between(0.05, 0.2),
        powerFactor: 1,
        startTimes: 1,
      });
    else for (const load of ac.loads) load.powerFactor = random.between(0.25, 0.6);
    draft.state.loadsOn = ac.loads.map(() => true);
    return { form };
  }),
  {
    id: 'c7',
    cause: 'charging-hard',
    group: 'c',
    frequency: 'occasional',
    fits: ({ secondSource }) => secondSource.kind !== 'none',
    conditions: ({ random }) => ({ lightWm2: 0, charge: random.between(0.2, 0.7) }),
    make({ spec, state }, { random }) {
      state.sourceRunning = true;
      state.acInOn = true;
      // The house is quiet: what the fans answer is the charge.
      for (const load of spec.ac.loads) load.watts *= 0.2;
      spec.source.chargeA = spec.packs.length * spec.packs[0]!.continuousA * random.between(0.5, 0.9);
      return { amps: spec.source.chargeA };
    },
  },
  onHeat('c8', 'fan-failed', 'occasional', (heat, { random }) => {
    const form = random.pick(['all', 'one', 'scrapes'] as const);
    heat.fansWork = form === 'all' ? 0 : form === 'one' ? 0.5 : 1;
    heat.fanScrapes = form === 'scrapes';
    return { form };
  }),
  onHeat('c9', 'fan-sensor-stuck', 'rare', (heat, { random }) => {
    const form = random.pick(['sensor', 'driver'] as const);
    if (form === 'sensor') heat.sensorOffC = random.between(14, 70);
    else heat.driverStuck = true;
    return { form, offC: heat.sensorOffC };
  }),
  onHeat('c10', 'height-or-mounting', 'occasional', (heat, { random }, draft) => {
    const form = random.pick(['height', 'mounting'] as const);
    loadTo(draft, random.between(0.6, 0.9));
    if (form === 'height') heat.altitudeM = heat.fullPowerToM + random.between(300, 2500);
    else heat.upright = false;
    return { form };
  }),
  onHeat('c11', 'fan-setting', 'rare', (heat, { random }) => {
    heat.fanMode = random.pick(['full', 'quiet'] as const);
    return { mode: heat.fanMode };
  }),
];
