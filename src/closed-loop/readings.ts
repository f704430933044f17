import { leadsOf } from '../drawings/plant/points.ts';
import {
  answerReading,
  busCurve,
  type Displays,
  type MeterFunction,
  type Shown,
  type Taken,
} from '../plant/index.ts';
import type { ReadingAsked } from '../visit/step.ts';
import { type Answers, type Place, type Scene, screen } from './scene.ts';

/** Which figure of the screens a display reading is, by its scale. */
const shownBy: Readonly<Record<string, keyof Displays>> = {
  'pv-running-volts': 'pvV',
  'pv-screen-volts': 'pvV',
  'pv-making': 'pvW',
  'pv-after-load': 'pvW',
  'battery-screen-volts': 'batteryV',
  'display-volts': 'batteryV',
  'charge-permit': 'permittedChargeA',
  'cell-coldest': 'coldestC',
  'cell-hottest': 'hottestC',
  'cell-highest': 'highestCellV',
  'lowest-cell-volts': 'lowestCellV',
};

const unitText: Readonly<Record<string, string>> = {
  temperature: ' °C',
  insulation: ' Ω',
  ohms: ' Ω',
};

/** Digits after the point that a screen of this resolution has. */
const digits = (resolution: number): number => Math.max(0, Math.round(-Math.log10(resolution)));

/** What a person types of a reading, with its sign where it is asked for; undefined: the meter has no such function. */
function typed(shown: Shown, mode: string, signed: boolean): string | undefined {
  if (shown.kind === 'noFunction') return undefined;
  if (shown.kind === 'overRange') return 'OL';
  const value = signed ? shown.value : Math.abs(shown.value);
  return `${value.toFixed(digits(shown.resolution))}${unitText[mode] ?? ''}`;
}

function take(
  scene: Scene,
  place: Place,
  mode: MeterFunction,
  run: number,
  start: boolean,
): Taken | undefined {
  const point = typeof place === 'string' ? place : '';
  const named = typeof place === 'string' ? leadsOf(place) : place;
  const probe = named && ('clamp' in named ? { clamp: named.clamp } : { red: named.red, black: named.black });
  return answerReading(
    scene.plant,
    { point, mode, ...(probe ? { probe } : {}), moment: start ? 'start' : 'steady' },
    {
      meter: scene.meter,
      subject: { ...scene.subject, run },
      sheetTracker: scene.sheetTracker,
      random: scene.random,
    },
  );
}

/** The one of several strings' readings that a step asks for. */
function outOf(all: readonly Taken[], which: 'largest' | 'lowest' | 'highest'): Taken | undefined {
  const rank = (value: number) =>
    which === 'largest' ? -Math.abs(value) : which === 'highest' ? -value : value;
  const size = ({ shown }: Taken) => (shown.kind === 'value' ? rank(shown.value) : Number.POSITIVE_INFINITY);
  return all.toSorted((a, b) => size(a) - size(b))[0];
}

/** Text of one reading, `cant` where nothing here shows it. A point that the plant does not know is an error of ours. */
export function readingText(
  scene: Scene,
  answers: Answers,
  block: string,
  { id, reading, kind }: ReadingAsked,
): string | readonly (readonly [number, string])[] | 'cant' {
  const { point, mode, scale } = reading;
  if (mode === 'display') {
    const field = shownBy[`${scale}`] ?? undefined;
    if (field === undefined) throw new Error(`no screen shows ${scale} (${block})`);
    const value = screen(answers.screens?.[`${block}.${id}`]?.(scene) ?? scene)[field];
    return typeof value === 'number'
      ? `${value.toFixed(kind === 'voltage' ? 3 : 1)}${kind === 'temperature' ? ' °C' : ''}`
      : 'cant';
  }
  if ((reading.series ?? 1) > 1) {
    const { spec } = scene.plant;
    const tau = spec.path.prechargeOhm * spec.unit.busF;
    const times = [1, 2, 3, 4, 5].map((k) => Math.round(k * tau * 10) / 10);
    const curve = busCurve(scene.plant, times.at(-1)!);
    return times.map((atS) => {
      const near = curve.reduce((best, each) =>
        Math.abs(each.atS - atS) < Math.abs(best.atS - atS) ? each : best,
      );
      return [atS, near.volts.toFixed(1)] as const;
    });
  }
  const key = `${block}.${id}`;
  const named = answers.points?.[key];
  const place = typeof named === 'function' ? named(scene) : (named ?? point);
  const which = answers.ofStrings?.[key];
  const held = answers.throughStart?.[key];
  const takenBy = (run: number): Taken | undefined => {
    const steady = take(scene, place, mode as MeterFunction, run, false);
    if (!held || !steady) return steady;
    const start = take(scene, place, mode as MeterFunction, run, true);
    return outOf([steady, ...(start ? [start] : [])], held);
  };
  const taken = which
    ? outOf(
        scene.plant.spec.runs.flatMap((_, run) => takenBy(run) ?? []),
        which,
      )
    : takenBy(scene.subject.run);
  if (!taken) throw new Error(`nothing answers ${point} in ${mode} (${block})`);
  if (taken.harm) scene.unsafe.push({ block, what: 'meter-harm', size: 0 });
  return typed(taken.shown, mode, reading.signed === true) ?? 'cant';
}
