import {
  type Act,
  meterOf,
  type Plant,
  advance as passTime,
  randomFrom,
  type Sampled,
  type Subject,
} from '../plant/index.ts';
import type { SiteSheet } from '../site/sheet.ts';
import { answer } from '../visit/answer.ts';
import type { Entry } from '../visit/entries.ts';
import type { Input } from '../visit/input.ts';
import type { Knowledge } from '../visit/knowledge.ts';
import { advance, beginVisit } from '../visit/run.ts';
import { type StepView, stepView } from '../visit/step.ts';
import { carryOut, doAct } from './acts.ts';
import { readingText } from './readings.ts';
import type { Answers, Scene, Unsafe } from './scene.ts';

export interface VisitInput {
  know: Knowledge;
  sheet: SiteSheet;
  subject: Subject;
  sampled: Sampled;
  /** The same plant without its fault. */
  twin: Plant;
  answers: Answers;
  noise: boolean;
  seed: number;
}

/** A verdict as it was come to. */
export interface Found {
  block: string;
  causes: readonly string[];
}

export interface Visited {
  verdicts: Found[];
  /** How the guide ended; undefined where it stands still, with the reason in `stuck`. */
  end: string | undefined;
  endBlock: string;
  stuck: string | undefined;
  path: string[];
  /** Rough minutes to the last verdict, or of all of it where there is none. */
  minutes: number;
  unsafe: Unsafe[];
  /** Times the person had to come back under another sky. */
  returns: number;
}

/** Steps in a visit before it is given up. */
const mostSteps = 600;
const answerMs = 5000;
/** Ends that send the person away until the light is better. */
const comeBack: readonly string[] = ['noon-come-back', 'come-back-in-light'];
const noonWm2 = 950;

/** Ways on from a verdict, the one that goes furthest toward the remedy first. */
const preferred: readonly string[] = [
  'mend',
  'open-it',
  'set-it',
  'release',
  'link-mended',
  'close-it',
  'put-right',
  'clear',
  'explained',
  'guard',
  'plan',
  'refer',
  'leave',
  'leave-it',
];

/** The time a step takes, in the plant; the plant itself where time moves nothing in it. */
function later(plant: Plant, seconds: number): Plant {
  const { readyS, inputV } = plant.state;
  const held = plant.spec.runs.every((_, i) => plant.state.isolators[i]) && plant.state.mainOn;
  const still = readyS.every((s) => s === Number.POSITIVE_INFINITY) && inputV.every((v) => v === 0) && held;
  return still || seconds <= 0 ? plant : passTime(plant, seconds);
}

/** What the plant answers at a step. */
function inputsOf(scene: Scene, answers: Answers, view: StepView): Input[] {
  const { block, step } = view.node;
  if (view.missing.length > 0 && view.readings.some(({ scale }) => !scale)) return [{ type: 'cant' }];
  switch (step.kind) {
    case 'hold':
    case 'end':
      return [
        ...view.items
          .filter(({ by }) => by === 'person')
          .map(({ id }): Input => ({ type: 'confirm', item: id, met: true })),
        { type: step.kind === 'hold' ? 'goOn' : 'close' },
      ];
    case 'wait':
      return [{ type: 'goOn' }];
    case 'workOut':
      return [{ type: view.work ? 'goOn' : 'cant' }];
    case 'measure':
    case 'display': {
      const texts: Record<string, string | readonly (readonly [number, string])[]> = {};
      for (const asked of view.readings) {
        const text = readingText(scene, answers, block, asked);
        if (text === 'cant') return [{ type: 'cant' }];
        texts[asked.id] = text;
      }
      return [{ type: 'readings', texts }];
    }
    default: {
      const tell = answers.tells[block];
      const told = tell?.(scene);
      if (told === 'cant' || told === 'unsure') return [{ type: told }];
      if (told !== undefined) return [{ type: 'choice', outcome: told }];
      const { options } = view;
      const likely = options.length === 1 ? options[0] : preferredOf(step.kind, options);
      if (likely === undefined) throw new Error(`no answer for ${block} (${options.join(', ')})`);
      return [{ type: 'choice', outcome: likely }];
    }
  }
}

function preferredOf(kind: string, options: readonly string[]): string | undefined {
  if (kind === 'verdict') return preferred.find((each) => options.includes(each));
  // A lock goes on where there is one; hands finish what they begin.
  if (kind === 'operate' || kind === 'touch')
    return options.find((each) => each === 'locked' || each === 'done');
  return undefined;
}

function sceneOf(input: VisitInput): Scene {
  const { sheet, subject, sampled, twin, noise, seed } = input;
  const random = randomFrom(seed).fork(noise ? 'noise' : 'exact');
  const string = sheet.strings[subject.run];
  const scene: Scene = {
    sheet,
    subject,
    sheetTracker: Math.max(
      0,
      sheet.trackers.findIndex(({ name }) => name === string?.tracker),
    ),
    meter: meterOf(sheet, random.fork('meter'), noise),
    random: random.fork('readings'),
    fault: sampled.fault,
    twin,
    plant: sampled.plant,
    sky: sampled.plant.spec.sky,
    verdict: [],
    outcomes: new Map(),
    unsafe: [],
    act: () => {},
  };
  return scene;
}

/** One run of the guide from its first step to an end. */
function run(input: VisitInput, scene: Scene, visited: Visited): void {
  const { know, sheet, answers, subject } = input;
  let nowMs = Date.parse('2030-01-01T08:00:00.000Z');
  const begun = beginVisit(
    know,
    { visit: 'loop-000001', sheet, subject: sheet.strings[subject.run]?.name ?? '' },
    nowMs,
  );
  let { state } = begun;
  let minutes = 0;
  for (let count = 0; count < mostSteps; count++) {
    const view = stepView(know, state);
    const { block, step } = view.node;
    visited.path.push(block);
    visited.endBlock = block;
    if (view.barred) {
      visited.stuck = `${block} barred: ${view.barred}`;
      return;
    }
    scene.act = (act: Act) => doAct(scene, block, act);
    answers.deeds?.[block]?.(scene);
    const seconds = view.waitSeconds ?? (step.minutes ?? 0) * 60;
    const isSeries = view.readings.some(({ reading }) => (reading.series ?? 1) > 1);
    if (!isSeries) scene.plant = later(scene.plant, seconds);
    nowMs += answerMs + (view.waitSeconds ?? 0) * 1000;
    minutes += step.minutes ?? 0;
    if (step.kind === 'verdict') {
      visited.verdicts.push({ block, causes: step.causes });
      scene.verdict = step.causes;
      visited.minutes = minutes;
    }
    for (const each of inputsOf(scene, answers, view)) {
      const answered = answer(know, state, each, nowMs);
      state = advance(know, state, answered.entries);
      note(scene, answered.entries);
      if (!answered.ok) {
        visited.stuck = `${block}: ${answered.problems.map(({ message }) => message.id).join(', ')}`;
        return;
      }
    }
    if (isSeries) scene.plant = later(scene.plant, seconds);
    if (step.kind === 'end') {
      visited.end = step.result;
      if (visited.verdicts.length === 0) visited.minutes = minutes;
      return;
    }
  }
  visited.stuck = `more than ${mostSteps} steps`;
}

/** Outcomes taken, and what hands did in them. */
function note(scene: Scene, entries: readonly Entry[]): void {
  for (const entry of entries) {
    if (entry.kind !== 'answer') continue;
    scene.outcomes.set(entry.block, entry.outcome);
    carryOut(scene, entry.block, entry.does);
  }
}

/** Drives a guide with a plant answering every step; comes back once at noon where the guide sends the person away. */
export function visit(input: VisitInput): Visited {
  const scene = sceneOf(input);
  const visited: Visited = {
    verdicts: [],
    end: undefined,
    endBlock: '',
    stuck: undefined,
    path: [],
    minutes: 0,
    unsafe: scene.unsafe,
    returns: 0,
  };
  run(input, scene, visited);
  if (comeBack.includes(visited.endBlock)) {
    visited.returns++;
    scene.sky = { ...scene.sky, lightWm2: Math.max(noonWm2, scene.sky.lightWm2) };
    scene.plant = { spec: { ...scene.plant.spec, sky: scene.sky }, state: scene.plant.state };
    scene.outcomes.clear();
    run(input, scene, visited);
  }
  return visited;
}
