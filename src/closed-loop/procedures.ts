import type { Answers, Scene } from './scene.ts';

/** Watts of the test load that procedures ask for. */
const testW = 1000;
const testLoad = (watts: number) => (scene: Scene) => scene.act({ move: 'test', leg: 0, watts });
const fixedSource = ({ sheet }: Scene): boolean => sheet.secondSource.kind === 'utility';

/** Volts still there a minute after they were read: what falls is a capacitor, what stays is fed. */
const fed = ({ plant }: Scene): boolean => plant.spec.path.mainWelded;

/** How a plant answers the procedures that guides perform. */
export const procedureAnswers: Answers = {
  tells: {
    'open-string--finer': () => 'no-finer',
    'isolate--pv-finer': () => 'no-finer',
    'isolate--battery-draw': () => 'not-found',
    'isolate--others-draw': () => 'not-found',
    'isolate--inlet': (scene) => (fixedSource(scene) ? 'fixed' : 'plug'),
    'restore--inlet': (scene) => (fixedSource(scene) ? 'in-place' : 'unplugged'),
    // The tester reads right on its proving source: what it did not find is not there.
    'prove-dead--tester-mend': () => 'no-tester',
    'prove-dead--tester-failed': () => 'no-tester',
    'prove-dead--dc-live': (scene) => (fed(scene) ? 'steady' : 'falling'),
    'prove-dead--pv-live': ({ plant, subject }) => {
      const { plus, minus } = plant.spec.runs[subject.run]!.poles;
      return plant.state.isolators[subject.run] && Number.isFinite(plus) && Number.isFinite(minus)
        ? 'steady'
        : 'falling';
    },
    'prove-dead--ac-live': ({ plant }) =>
      plant.state.sourceRunning && plant.state.acInOn ? 'steady' : 'wandering',
    'prove-dead--neighbour': () => 'not-found',
    'pre-charge--packs': (scene) =>
      scene.plant.spec.packs.every(({ awake }, i) => awake && scene.plant.state.packOn[i]) ? 'all-on' : 'off',
    'pre-charge--trip-cause': () => 'unexplained',
    'pre-charge--pack-charge': ({ plant: { spec } }) =>
      Math.max(...spec.packs.map(({ charge }) => charge)) -
        Math.min(...spec.packs.map(({ charge }) => charge)) <
      0.05
        ? 'alike'
        : 'not-known',
    'pre-charge--find-load': () => 'not-found',
    'string-check--p1-again': () => 'ready',
    'string-check--test-choice': () => 'skip',
    'string-check--sister-choice': () => 'no-sister',
  },
  deeds: {
    'neutral-proof--test-load': testLoad(testW),
    'neutral-proof--test-load-one': testLoad(testW),
    'neutral-proof--test-load-off': testLoad(0),
    'string-check--add-load': testLoad(testW),
  },
  points: {
    'prove-dead--ghost.lowz': 'ghost',
  },
  ofStrings: {
    'isolate--pv-amps.largest': 'largest',
    'restore--p1-amps.largest': 'largest',
    'restore--p1.lowest': 'lowest',
  },
};
