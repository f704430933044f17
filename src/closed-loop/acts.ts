import { type Act, type Consequence, operate, type Plant, touchVolts } from '../plant/index.ts';
import type { Effect } from '../safety/effects.ts';
import type { Zone } from '../safety/plant.ts';
import type { Scene } from './scene.ts';

/**
 * Least current and volts that keep an arc between opening contacts of copper; below either a contact parts without one
 * (R. Holm, *Electric Contacts*, minimal arc; figures from memory).
 */
const leastArc = { amps: 0.4, volts: 13 } as const;
/** Most volts that bare skin may meet, wet (IEC TS 61201, from memory). */
const touchLimitV = { dc: 30, ac: 15 } as const;
/** Loads of a nominal leg live through this much more of it (ANSI C84.1 range B ends at 1.06; supplies stand a little more). */
const mostShare = 1.1;

/** Conductors of a zone that hands may be on. */
const anchorsOf: Partial<Record<Zone, readonly string[]>> = {
  pvBus: ['P2+', 'P2-', 'T+', 'T-'],
  pvRun: ['C+', 'C-', 'P1+', 'P1-'],
  pvString: ['C+', 'C-'],
  invDC: ['I+', 'I-', 'S2+', 'S2-'],
  acOut: ['O-L1', 'O-L2', 'O-N'],
  acIn: ['A-L1', 'A-L2', 'A-N'],
  inlet: ['A-L1', 'A-L2', 'A-N'],
  loadPanel: ['D-L1', 'D-L2', 'D-N'],
};

function harmOf(
  scene: Scene,
  block: string,
  act: Act,
  found: Consequence,
  sharedBefore: boolean,
  after: Plant,
): void {
  const add = (what: 'arc' | 'inrush' | 'volts-on-loads', size: number) =>
    scene.unsafe.push({ block, what, size });
  if (found.kind === 'opened-under-current') {
    // The breaker of an AC output is made to break its load; a PV or battery contact is trusted with nothing.
    if (act.move !== 'output' && found.amps > leastArc.amps && found.volts > leastArc.volts)
      add('arc', found.amps);
  } else if (found.kind === 'inrush') {
    const rated = scene.sheet.mainSwitch.ratedA ?? 100;
    if (found.amps > rated) add('inrush', found.amps);
  } else if (found.share > mostShare && !sharedBefore && after.state.loadsOn.some((on) => on))
    add('volts-on-loads', found.share);
}

/** Moves one thing in the plant, and writes down what it would have done to hands and gear. */
export function doAct(scene: Scene, block: string, act: Act): void {
  const overBefore = operate(scene.plant, {
    move: 'charge',
    amps: scene.plant.state.chargeHeldA,
  }).consequences.some(({ kind }) => kind === 'volts-on-loads');
  const { plant, consequences } = operate(scene.plant, act);
  for (const each of consequences) harmOf(scene, block, act, each, overBefore, plant);
  scene.plant = plant;
}

/** Hands on conductors of a zone. */
function touch(scene: Scene, block: string, zone: Zone): void {
  const anchors = anchorsOf[zone];
  if (!anchors) return;
  const ac = zone === 'acOut' || zone === 'acIn' || zone === 'inlet' || zone === 'loadPanel';
  const volts = touchVolts(scene.plant, anchors, scene.subject);
  if (volts > (ac ? touchLimitV.ac : touchLimitV.dc))
    scene.unsafe.push({ block, what: 'touched-live', size: volts });
}

/** Acts that an effect of a step means in the plant. Findings mean none. */
function actsOf(scene: Scene, effect: Effect): Act[] {
  const { spec, state } = scene.plant;
  const others = spec.runs.flatMap((_, run) => (run === scene.subject.run ? [] : [run]));
  const switched = (device: string, on: boolean): Act[] => {
    switch (device) {
      case 'pv':
        return [{ move: 'isolator', run: scene.subject.run, on }];
      case 'pvOther':
        return others.map((run) => ({ move: 'isolator', run, on }));
      case 'main':
        return [{ move: 'main', on }];
      case 'packs':
        return spec.packs.map((_, pack) => ({ move: 'pack', pack, on }));
      case 'acOut':
        return [{ move: 'output', on }];
      case 'acIn':
        return [{ move: 'acIn', on }];
      default:
        return [];
    }
  };
  if ('open' in effect) return switched(effect.open, false);
  if ('close' in effect) return switched(effect.close, true);
  if ('inverter' in effect) return [{ move: 'unit', on: effect.inverter === 'on' }];
  if ('source' in effect && spec.source.kind !== 'none')
    return [{ move: 'source', on: effect.source === 'running' }];
  // A utility supply is back as soon as nobody keeps it away.
  if ('autoStart' in effect && effect.autoStart === 'enabled' && spec.source.kind === 'utility')
    return [{ move: 'source', on: true }];
  if ('loads' in effect) {
    const loads: Act = { move: 'allLoads', on: effect.loads === 'on' };
    const tests = ([0, 1] as const).flatMap((leg): Act[] =>
      state.testW[leg] > 0 ? [{ move: 'test', leg, watts: 0 }] : [],
    );
    return effect.loads === 'on' ? [loads] : [loads, ...tests];
  }
  if ('plugs' in effect) return [{ move: 'plugs', run: scene.subject.run, on: effect.plugs === 'joined' }];
  if ('resistor' in effect) return [{ move: 'precharge', on: effect.resistor === 'on' }];
  if ('bleed' in effect && effect.bleed === 'invDC') return [{ move: 'bleed' }];
  return [];
}

/** Carries out what a step's outcome says was done. */
export function carryOut(scene: Scene, block: string, effects: readonly Effect[]): void {
  for (const effect of effects) {
    if ('touch' in effect) touch(scene, block, effect.touch);
    for (const act of actsOf(scene, effect)) doAct(scene, block, act);
  }
}
