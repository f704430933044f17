import { Driver } from '../../../src/commands/drive-run.ts';
import { sallowCreek } from '../../../src/site/demo.ts';
import type { WalkAnswers } from '../../../src/visit/walk.ts';
import { states } from '../../../src/words/en/states.ts';
import type { Visitor } from './visitor.ts';

/** Volts of the demo site's battery in these runs. */
const batteryVolts = 52.4;

/**
 * What a meter shows over the bus while it charges through the demo site's resistor, at some seconds, with a load on the
 * bus that takes a share of it: V(t) = Vf (1 − e^(−t/τ)), Vf = V·Rload/(R + Rload), τ = C·(R ∥ Rload).
 */
export function rise(seconds: readonly number[], loadOhm = Number.POSITIVE_INFINITY): [number, string][] {
  const r = sallowCreek.precharge!.resistorOhm!;
  const c = sallowCreek.inverter.busCapacitanceF!;
  const share = loadOhm === Number.POSITIVE_INFINITY ? 1 : loadOhm / (r + loadOhm);
  const tau = c * r * share;
  return seconds.map((at) => [at, (batteryVolts * share * (1 - Math.exp(-at / tau))).toFixed(1)]);
}

/** Answers that pre-charge the demo site from lock-out to a closed main switch. */
export const preCharged: WalkAnswers = {
  begins: 'lockedOut',
  answers: {
    ready: 'done',
    packs: 'all-on',
    s1: { s1: '52.4' },
    sides: { s1: '52.4', s2: '0.3' },
    unlock: 'done',
    'clip-on': 'done',
    'resistor-on': 'done',
    rise: { s2: rise([0.5, 1, 1.5, 3]) },
    across: { across: '0.1' },
    'close-ready': 'done',
    'close-main': 'done',
    'resistor-off': 'done',
    after: { s2: '52.3' },
    closed: 'done',
  },
};

/** The same as far as a bus that stays at part of the battery's volts, because something on it draws. */
export const plateau = (loadOhm: number): WalkAnswers => ({
  ...preCharged,
  answers: {
    ...preCharged.answers,
    rise: { s2: rise([0.5, 1, 2, 4, 6], loadOhm) },
    'resistor-off-stalled': 'done',
    'find-load': 'not-found',
    relock: 'locked',
    'left-isolated': 'done',
  },
});

/** How the demo site's pre-charge is begun on the page. */
export const beginning = {
  page: 'procedures/pre-charge',
  site: sallowCreek.name,
  begins: states.lockedOut!.label,
};

/** A visitor in a pre-charge that has just begun. */
export async function started(visitor: Visitor): Promise<Driver> {
  const page = await visitor.context.newPage();
  await page.clock.install();
  const driver = new Driver(page);
  await driver.begin(visitor.site.url, beginning);
  return driver;
}

/** The answers up to a block, not including it. */
export function upTo(file: WalkAnswers, block: string): WalkAnswers {
  const answers = Object.entries(file.answers);
  const at = answers.findIndex(([each]) => each === block);
  if (at < 0) throw new Error(`no answer for ${block}`);
  return { ...file, answers: Object.fromEntries(answers.slice(0, at)) };
}
