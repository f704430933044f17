import { defineWorksheet, type ValuesOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { lastsS, nominalJoules, usableJoules } from './bank-energy.ts';
import { bankFields } from './bank-fields.ts';
import { drawnWatts } from './idle.ts';

/** Idle above this share of the draw is worth a remark. */
const heavyIdleShare = 0.2;
/** A draw that would empty the rated energy within two hours sags and warms the cells. Common practice. */
const fastPerHour = 0.5;
/** Below this the draw empties nothing in the life of a bank [W]. */
const leastWatts = 0.1;
/** The curve is drawn from a quarter of the load to twice the load, where that is worth drawing [W]. */
const drawn = { leastWatts: 20, from: 0.25, to: 2, steps: 48 };

const inputs = {
  ...bankFields,
  loadWatts: { kind: 'power', min: 0, max: 50_000 },
  efficiency: { kind: 'ratio', min: 0.7, max: 0.995, default: 0.93, from: ['inverter.efficiency'] },
  idleWatts: { kind: 'power', min: 0, max: 2000, from: ['derived.idleWatts'] },
} as const;
type In = ValuesOf<typeof inputs>;

/** How long the bank carries a steady load. */
export const runtime = defineWorksheet({
  id: 'runtime',
  group: 'battery-dc',
  hazards: [],
  inputs,
  outputs: {
    runtimeS: { kind: 'time', unit: 'h', headline: true },
    usableJoules: { kind: 'energy', unit: 'kWh', headline: true },
    acJoules: { kind: 'energy', unit: 'kWh', headline: true },
    nominalJoules: { kind: 'energy', unit: 'kWh' },
    drawnWatts: { kind: 'power' },
    idleShare: { kind: 'ratio' },
    sharePerHour: { kind: 'ratio' },
  },
  compute(given) {
    const watts = drawnOf(given, given.loadWatts);
    if (watts < leastWatts) return refuse('worksheet.runtime.nothingDrawn');
    const nominal = nominalJoules(given);
    const usable = usableJoules(nominal, given.healthShare, given.usableShare);
    const seconds = lastsS(usable, watts);
    return give({
      runtimeS: seconds,
      usableJoules: usable,
      acJoules: given.loadWatts * seconds,
      nominalJoules: nominal,
      drawnWatts: watts,
      idleShare: given.idleWatts / watts,
      sharePerHour: (watts * 3600) / nominal,
    });
  },
  working(given, out) {
    return ['nominal', 'usable', 'drawn', 'runtime', 'ac'].map((id) => say(id, given, out));
  },
  remarks(given, out) {
    const ids = [
      ...((out.idleShare ?? 0) > heavyIdleShare ? ['idleHeavy'] : []),
      ...((out.sharePerHour ?? 0) > fastPerHour ? ['fast'] : []),
      ...(given.healthShare === 1 ? ['asNew'] : []),
      'estimate',
    ];
    return ids.map((id) => say(`worksheet.runtime.${id}`, given, out));
  },
  plot(given, out) {
    if (given.loadWatts < drawn.leastWatts || out.usableJoules === undefined) return undefined;
    const usable = out.usableJoules;
    const secondsAt = (watts: number): number => lastsS(usable, drawnOf(given, watts));
    const [low, high] = [drawn.from * given.loadWatts, drawn.to * given.loadWatts];
    const loads = Array.from({ length: drawn.steps + 1 }, (_, at) => low + ((high - low) * at) / drawn.steps);
    return {
      x: { kind: 'power', low, high },
      y: { kind: 'time', unit: 'h', low: 0, high: 1.05 * secondsAt(low) },
      curves: [{ id: 'lasts', points: loads.map((watts) => [watts, secondsAt(watts)] as const) }],
      levels: [],
      marks: [{ id: 'load', x: given.loadWatts, y: secondsAt(given.loadWatts) }],
    };
  },
  sources: [{ id: 'si-brochure-9', clause: 'table 4' }, { id: 'common-practice' }],
});

const drawnOf = (given: In, loadWatts: number): number =>
  drawnWatts(loadWatts, given.efficiency, given.idleWatts);
