import { answerReading, operate, type Plant, randomFrom, settle } from '../../plant/index.ts';
import { type Answers, eyes, type Scene } from '../scene.ts';

/** Volts as eyes and appliances have them: no meter's error, no meter's load to speak of. */
function volts(scene: Scene, plant: Plant, red: string, black: string, start = false): number {
  const taken = answerReading(
    plant,
    { point: '', probe: { red, black }, mode: 'acVolts', moment: start ? 'start' : 'steady' },
    {
      meter: { ...scene.meter, errs: false, inputOhm: 1e7 },
      subject: scene.subject,
      sheetTracker: scene.sheetTracker,
      random: randomFrom(1),
    },
  );
  return taken?.shown.kind === 'value' ? taken.shown.value : 0;
}

const twoLegs = ({ plant }: Scene): boolean => plant.spec.ac.legs === 2;

/** Each leg to neutral at the panel, as a share of nominal. */
function shares(scene: Scene, plant = scene.plant, start = false): number[] {
  const legs = twoLegs(scene) ? ['D-L1', 'D-L2'] : ['D-L1'];
  return legs.map((leg) => volts(scene, plant, leg, 'D-N', start) / nominal(scene));
}

/** What a leg of this house is meant to have. */
const nominal = ({ sheet }: Scene): number => (sheet.inverter.topology === 'single-230' ? 230 : 120);

/** What people notice of lamps and appliances, as shares of nominal volts. Common practice. */
const noticed = { bright: 1.08, dim: 0.93, dead: 0.6, blink: 0.02 } as const;

/** Volts that a shared neutral leaves to its two circuits, as shares of nominal. */
const pairShares = (scene: Scene): number[] =>
  ['D-L1', 'D-L2'].map((leg) => volts(scene, scene.plant, leg, 'pair-N') / nominal(scene));

/** Watts that the loads on a leg ask for. */
const legWatts = ({ plant: { spec, state } }: Scene, leg: '1' | '2'): number =>
  spec.ac.loads.reduce(
    (sum, load, i) =>
      !state.loadsOn[i]
        ? sum
        : load.at === leg || (load.at === 'pair1' && leg === '1') || (load.at === 'pair2' && leg === '2')
          ? sum + load.watts
          : load.at === 'far' && leg === '1'
            ? sum + load.watts
            : load.at === '12'
              ? sum + load.watts / 2
              : sum,
    0,
  );

/** The gravest thing that whoever lives there has seen. */
function symptom(scene: Scene): string {
  const { spec, state } = scene.plant;
  const { lamps } = eyes(scene);
  if (lamps === 'pulsing') return 'pulses';
  if (lamps === 'blinking-with-relay') return 'source-blinks';
  const legs = shares(scene);
  const starting = shares(scene, scene.plant, true);
  const high = (list: readonly number[]) => list.some((share) => share > noticed.bright);
  if (twoLegs(scene) && (high(legs) || high(starting))) return 'see-saw';
  const settled = settle(scene.plant);
  const limit = spec.unit.legLimitW * spec.ac.units.length;
  const over = (['1', '2'] as const).some((leg) => twoLegs(scene) && legWatts(scene, leg) > limit);
  if (settled.unit === 'overload' || over) return twoLegs(scene) ? 'trips-leg' : 'nothing-now';
  if (twoLegs(scene)) {
    const between = volts(scene, scene.plant, 'D-L1', 'D-L2') / nominal(scene);
    const opposed = scene.sheet.inverter.topology === 'opposed-120-240';
    if (legs.some((share) => share < noticed.dead) || (opposed && between < noticed.dead)) return 'side-dead';
    if (pairShares(scene).some((share) => share > noticed.bright || share < noticed.dead)) return 'one-pair';
    const dim = legs.filter((share) => share < noticed.dim).length;
    if (dim === 2) return 'dims-together';
    if (dim === 1) return 'side-dims';
  } else if (legs[0]! < noticed.dim) return 'dims';
  if (legs.some((share, i) => share - starting[i]! > noticed.blink)) return 'blinks-at-start';
  return state.outputOn && volts(scene, scene.plant, 'O-N', 'G') > 5 ? 'odd-to-ground' : 'nothing-now';
}

/** The beat of a search against a larger load, by the unit's own state. */
function pulse(scene: Scene): string {
  const loaded = operate(scene.plant, { move: 'test', leg: 0, watts: 100 }).plant;
  if (shares(scene, loaded).some((share) => share > noticed.bright)) return 'brighter';
  return settle(scene.plant).unit === 'searching' && settle(loaded).unit === 'running' ? 'stops' : 'goes-on';
}

const remedy = (scene: Scene): void => {
  const { fault, verdict, twin, plant } = scene;
  if (!fault || !verdict.includes(fault.cause)) return;
  const loadsOn = twin.spec.ac.loads.map((_, i) => plant.state.loadsOn[i] ?? true);
  scene.plant = { spec: { ...twin.spec, sky: plant.spec.sky }, state: { ...plant.state, loadsOn } };
};

/** A setting or a label, changed only where the verdict before it was right. */
const steadyNow = (scene: Scene): string => (eyes(scene).lamps === 'steady' ? 'steady' : 'still');

const heater =
  (leg1: number, leg2: number) =>
  (scene: Scene): void => {
    if (scene.plant.state.testW[0] !== leg1) scene.act({ move: 'test', leg: 0, watts: leg1 });
    if (scene.plant.state.testW[1] !== leg2) scene.act({ move: 'test', leg: 1, watts: leg2 });
  };

/** Every breaker of the panel off: only the heater draws. */
const onlyHeater = (scene: Scene): void => {
  scene.plant.spec.ac.loads.forEach((_, load) => {
    scene.act({ move: 'load', load, on: false });
  });
};

/** Both circuits of the pair off, or back on as they were. */
const pairLoads =
  (on: boolean) =>
  (scene: Scene): void => {
    scene.plant.spec.ac.loads.forEach(({ at }, load) => {
      if (at === 'pair1' || at === 'pair2') scene.act({ move: 'load', load, on });
    });
  };

/** Everything of the pair unplugged but one heater on its first circuit. */
function pairHeater(scene: Scene): void {
  const { spec, state } = scene.plant;
  const loads = spec.ac.loads.map((load) =>
    load.at === 'pair1' ? { ...load, watts: 1000, powerFactor: 1, startTimes: 1 } : load,
  );
  scene.plant = { spec: { ...spec, ac: { ...spec.ac, loads } }, state };
  loads.forEach(({ at }, load) => {
    if (at === 'pair1') scene.act({ move: 'load', load, on: true });
  });
}

const atOutput: readonly string[] = ['neutral-open-at-source', 'neutral-not-grounded', 'source-sags'];

export const unevenLegsAnswers: Answers = {
  tells: {
    'first-look': () => 'quiet',
    'common-scope': () => 'understood',
    'single-scope': () => 'understood',
    symptom,
    'symptom-one': symptom,
    'pulse-look': pulse,
    'search-watch': (scene) => (steadyNow(scene) === 'steady' ? 'steady' : 'still-blinks'),
    'source-watch': (scene) => (eyes(scene).lamps === 'blinking-with-relay' ? 'with-relay' : 'alone'),
    'source-settled': (scene) => (steadyNow(scene) === 'steady' ? 'steady' : 'still-flips'),
    'dip-length': (scene) =>
      shares(scene).every((share) => share > noticed.dim) ? 'start-only' : 'stays-low',
    'line-dip-length': (scene) =>
      shares(scene).every((share) => share > noticed.dim) ? 'start-only' : 'stays-low',
    'test-wanted': () => 'now',
    'set-jumper': () => 'none-there',
    'where-work': (scene) =>
      scene.verdict.some((cause) => atOutput.includes(cause)) || scene.outcomes.has('v-leg-lost-unit')
        ? 'output'
        : 'panel',
    'panel-too': () => 'no',
    'mend-output': () => 'done',
    'mend-panel': () => 'done',
  },
  deeds: {
    'search-watch': remedy,
    'source-settled': remedy,
    'set-legs': remedy,
    'mend-output': remedy,
    'mend-panel': remedy,
    'pair-off': pairLoads(false),
    'pair-on': pairHeater,
    'pair-off-again': pairLoads(false),
    'pair-off-unclear': pairLoads(false),
    'pair-then-loads': pairLoads(false),
    'test-load-on': heater(1000, 0),
    'test-load-on-out': heater(1000, 0),
    'line-load-on': heater(1000, 0),
    'line-load-on-out': heater(1000, 0),
    'load-moves': heater(0, 1000),
    'test-load-off': heater(0, 0),
    'test-load-off-watch': heater(0, 0),
    'line-load-off': heater(0, 0),
    'retest-ready': onlyHeater,
    'retest-ready-one': onlyHeater,
    retest: heater(1000, 0),
    'retest-one': heater(1000, 0),
  },
  points: {
    'pair-legs.loaded': { red: 'D-L1', black: 'pair-N' },
    'pair-legs.other': { red: 'D-L2', black: 'pair-N' },
  },
  throughStart: {
    'dip-watch.min-1': 'lowest',
    'dip-watch.max-1': 'highest',
    'dip-watch.min-2': 'lowest',
    'dip-watch.max-2': 'highest',
    'start-sag.min-1': 'lowest',
    'start-sag.min-2': 'lowest',
    'line-dip.min': 'lowest',
    'line-start.min': 'lowest',
  },
};
