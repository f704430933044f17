import { eventsOf, underSky } from '../../plant/index.ts';
import type { PlantEvent } from '../../plant/spec.ts';
import { type Answers, eyes, type Scene, screen, startsUnder } from '../scene.ts';

/** Full sun on every module of a clear day [W/m²]. */
const noonWm2 = 950;

const runOf = ({ plant, subject }: Scene) => plant.spec.runs[subject.run]!;

/** The unit's list of the last days: what it would have written under the skies of a cold dawn and of rain as well. */
function events(scene: Scene): PlantEvent[] {
  const { plant, sheet } = scene;
  const dawnC = Math.min(plant.spec.sky.airC, sheet.climate.usualLowC ?? sheet.climate.recordLowC + 15);
  const skies = [plant, underSky(plant, { airC: dawnC, lightWm2: 700 })];
  return skies.flatMap(eventsOf);
}

/** Gravest first, as the step asks. */
const gravest: readonly (readonly [PlantEvent, string])[] = [
  ['ground-latched', 'ground-latched'],
  ['insulation', 'insulation'],
  ['arc-latched', 'arc-latched'],
  ['over-volts', 'over-volts'],
  ['battery-link', 'battery-link'],
];

const hotSky = ({ sheet }: Scene) => ({ airC: sheet.climate.usualHighC, lightWm2: noonWm2 });
const coolSky = ({ sheet }: Scene) => ({
  airC: sheet.climate.usualLowC ?? sheet.climate.recordLowC + 15,
  lightWm2: 600,
});

/** A conductor from a pole to ground, as against a leak: eyes find a bond, not a damp plug. */
const bondOhm = 60;

/** Full sun is waited for; it changes the sky and nothing else. */
const waitForSun = (scene: Scene): void => {
  const { lightWm2 } = scene.plant.spec.sky;
  if (lightWm2 < noonWm2) scene.plant = underSky(scene.plant, { lightWm2: noonWm2 });
};

/** The right remedy at the right place makes the plant what it was; a wrong one changes nothing. */
const remedy = (scene: Scene): void => {
  const { fault, verdict, twin, plant } = scene;
  if (!fault || !verdict.includes(fault.cause)) return;
  scene.plant = { spec: { ...twin.spec, sky: plant.spec.sky }, state: plant.state };
};

const swapping = ({ outcomes, verdict }: Scene): boolean =>
  outcomes.get('swap-fits') === 'fits' && verdict.length === 0;

/** The two runs change trackers, at the unit. */
function swapRuns(scene: Scene): void {
  const { runs } = scene.plant.spec;
  const own = runOf(scene);
  const other = runs.find((run) => run !== own && run.plusTo.tracker !== own.plusTo.tracker);
  if (!other) return;
  const swapped = runs.map((run) =>
    run === own
      ? { ...run, plusTo: other.plusTo, minusTo: other.minusTo }
      : run === other
        ? { ...run, plusTo: own.plusTo, minusTo: own.minusTo }
        : run,
  );
  scene.plant = { ...scene.plant, spec: { ...scene.plant.spec, runs: swapped } };
}

const atUnit: readonly string[] = ['wrong-tracker-input', 'isolator-open'];

function workPlace(scene: Scene): string {
  if (swapping(scene)) return 'swap';
  if (scene.verdict.includes('battery-not-live')) return 'battery';
  const crossed =
    scene.outcomes.has('v-crossed-at-unit') ||
    scene.outcomes.has('v-crossed-at-isolator') ||
    scene.outcomes.has('v-reversed-beyond');
  return crossed || scene.verdict.some((cause) => atUnit.includes(cause)) ? 'landing' : 'string';
}

/** P1 of the string of another tracker, by index. */
const otherString = ({ plant, subject }: Scene): number => {
  const own = plant.spec.runs[subject.run]!.plusTo.tracker;
  const other = plant.spec.runs.findIndex((run, i) => i !== subject.run && run.plusTo.tracker !== own);
  return other < 0 ? subject.run : other;
};

export const pvNoStartAnswers: Answers = {
  tells: {
    // The plant's bad joints are at the array: nothing of them reaches two steps from the wall.
    'first-look': () => 'quiet',
    events: (scene) => {
      if (!screen(scene).lit) return 'cant';
      const listed = events(scene);
      const found = gravest.find(([event]) => listed.includes(event));
      return found ? found[1] : listed.length > 0 ? 'other' : 'none';
    },
    'short-history': (scene) => {
      const [cool, hot] = [startsUnder(scene, coolSky(scene)), startsUnder(scene, hotSky(scene))];
      if (cool && !hot) return 'heat-or-never';
      return startsUnder(scene, hotSky(scene), scene.twin) ? 'used-to-start' : 'heat-or-never';
    },
    symptom: (scene) => {
      const { lit, pvV = 0, pvW = 0, tracker } = screen(scene);
      if (!lit) return 'unit-dark';
      if (pvW > 0) return 'working-now';
      if (tracker === 'retrying') return 'drops-out';
      return pvV < 20 ? 'no-volts' : 'volts-no-watts';
    },
    light: (scene) => eyes(scene).light,
    'light-then': (scene) => eyes(scene).light,
    'light-no-try': (scene) => eyes(scene).light,
    'shutdown-first': (scene) => (eyes(scene).shutdown === 'none' ? 'none' : 'fitted'),
    'shutdown-fitted': (scene) => (eyes(scene).shutdown === 'none' ? 'none' : 'fitted'),
    'held-possible': (scene) => (eyes(scene).shutdown === 'none' ? 'none' : 'fitted'),
    'shutdown-told': (scene) => (eyes(scene).shutdown === 'pressed' ? 'off' : 'on'),
    'shutdown-button': (scene) => (eyes(scene).shutdown === 'pressed' ? 'off' : 'on'),
    'shutdown-look': (scene) => {
      const { shutdown } = eyes(scene);
      return shutdown === 'none' ? 'none-fitted' : shutdown === 'pressed' ? 'no-signal' : 'fitted';
    },
    'isolator-handle': (scene) => eyes(scene).isolatorHandle,
    'module-count': (scene) =>
      eyes(scene).modules < scene.sheet.strings[scene.subject.run]!.modulesInSeries ? 'fewer' : 'as-sheet',
    'when-it-fails': (scene) =>
      startsUnder(scene, coolSky(scene)) && !startsUnder(scene, hotSky(scene)) ? 'hot-only' : 'any-time',
    awake: (scene) => (screen(scene).lit ? 'steady' : 'dark'),
    'battery-found': (scene) =>
      screen(scene).lowestCellV < (scene.sheet.battery.cellRecoverMinV ?? 0) ? 'not-recoverable' : 'awake',
    settings: (scene) => {
      const { spec } = scene.plant;
      if (!spec.trackers[scene.sheetTracker]!.enabled) return 'pv-not-used';
      const lost = events(scene).includes('battery-link');
      return spec.unit.linkRequired && lost ? 'link-required' : 'all-right';
    },
    'load-on': (scene) => (screen(scene).lit && screen(scene).outputW !== 0 ? 'done' : 'unit-dropped'),
    sister: (scene) => {
      const other = otherString(scene);
      if (other === scene.subject.run) return 'none';
      const { pvW = 0 } = screen({ ...scene, sheetTracker: scene.plant.spec.runs[other]!.plusTo.tracker });
      return pvW > 0 ? 'normal' : 'same';
    },
    'minus-common': () => 'separate',
    'bond-look': (scene) => {
      const run = runOf(scene);
      const modules = eyes(scene).modules;
      return run.leaks.some(({ at, ohms }) => (at === 0 || at === modules) && ohms <= bondOhm)
        ? 'bond'
        : 'neither';
    },
    'poles-both': () => 'both',
    'wet-history': (scene) => {
      if (scene.plant.spec.unit.latched.length > 0) return 'latched';
      const leaks = (wet: boolean) => {
        const { spec, state } = scene.plant;
        // As it was while the isolator stood closed.
        const closed = {
          spec,
          state: { ...state, unitOn: true, isolators: state.isolators.map(() => true) },
        };
        return eventsOf(underSky(closed, { wet })).includes('insulation');
      };
      return leaks(true) && !leaks(false) ? 'wet-alarm' : 'neither';
    },
    inspect: (scene) => (eyes(scene).jointW > 10 ? 'damage' : 'nothing'),
    'inspect-open': (scene) => (eyes(scene).jointW > 10 ? 'damage' : 'nothing'),
    'fuse-fitted': (scene) => eyes(scene).stringFuse,
    'light-again': () => 'light-now',
    'trace-beyond': (scene) => (runOf(scene).crossedAt === 'nowhere' ? 'straight' : 'crossed'),
    'repair-or-leave': () => 'mend',
    'which-work': workPlace,
    'array-side-too': (scene) => {
      const { crossedAt, poles } = runOf(scene);
      const isolator = !Number.isFinite(poles.plus + poles.minus) || crossedAt === 'isolator';
      return isolator && !swapping(scene) ? 'yes' : 'no';
    },
    'which-retest': (scene) => (swapping(scene) ? 'swap' : 'repair'),
    'swap-light': (scene) => (eyes(scene).light === 'bright' ? 'bright' : 'weak'),
    mend: () => 'done',
    'land-again': () => 'done',
    // Which of the ways on from a verdict is taken: the one that leads to the remedy, in the dark where that is safe.
    'v-reversed-or-shorted': () => 'dark-now',
    'v-shorted-run': () => 'dark-now',
  },
  deeds: {
    'load-on': (scene) => scene.act({ move: 'test', leg: 0, watts: 1000 }),
    'full-sun': waitForSun,
    'swap-light': waitForSun,
    'dark-clamp': (scene) => {
      scene.plant = underSky(scene.plant, { lightWm2: 0 });
    },
    'dark-array-clamp': (scene) => {
      scene.plant = underSky(scene.plant, { lightWm2: 0 });
    },
    'light-again': (scene) => {
      scene.plant = underSky(scene.plant, scene.sky);
    },
    'cell-again': (scene) => {
      scene.plant = underSky(scene.plant, scene.sky);
    },
    mend: remedy,
    'land-again': (scene) => (swapping(scene) ? swapRuns(scene) : remedy(scene)),
    'change-setting': remedy,
    'clear-once': remedy,
    'clear-open': remedy,
    'battery-found': remedy,
    release: remedy,
  },
  points: {
    'cross-terminals.across': 'tracker-across',
    'cross-terminals.back': 'tracker-back',
    'cross-strings.across': (scene) => ({ red: 'P1+', black: `P1@${otherString(scene)}-` }),
    'cross-strings.back': (scene) => ({ red: `P1@${otherString(scene)}+`, black: 'P1-' }),
    'run-dead.plus': 'run-plus',
    'run-dead.minus': 'run-minus',
    'run-dead.plus-ac': 'run-plus',
    'run-dead.minus-ac': 'run-minus',
  },
  screens: {
    'swap-result.there': (scene) => ({
      ...scene,
      sheetTracker: (scene.sheetTracker + 1) % scene.plant.spec.trackers.length,
    }),
  },
  throughStart: {
    'start-watch.volts': 'lowest',
    'start-watch.amps': 'highest',
    'full-sun.volts': 'lowest',
    'full-sun.amps': 'highest',
  },
};
