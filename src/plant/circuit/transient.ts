/**
 * The volts of one capacitance over time, with anything behind it whose current follows its volts: an autonomous
 * equation C·dv/dt = i(v). Backward differences of second order with a step that its own error sets (TR-BDF2, Bank et
 * al., IEEE Trans. ED 32, 1985): stable however small the resistance is through which it is charged.
 */
export interface CapacitorRun {
  /** [F] */
  farads: number;
  /** Volts at the start. */
  startV: number;
  /** Current into the capacitance at given volts [A]. */
  into(volts: number): number;
  /** How long [s]. */
  seconds: number;
}

export interface Sample {
  atS: number;
  volts: number;
}

const tolerance = { share: 1e-7, volts: 1e-7 };
const maxSteps = 20_000;

/** Solves v = base + weight·i(v)/C by Newton with a numeric slope, safeguarded by halving. */
function implicit(run: CapacitorRun, base: number, weight: number, start: number): number {
  let v = start;
  for (let round = 0; round < 60; round++) {
    const residual = v - base - (weight * run.into(v)) / run.farads;
    const nudge = 1e-6 * (1 + Math.abs(v));
    const slope = (run.into(v + nudge) - run.into(v - nudge)) / (2 * nudge);
    const step = residual / Math.max(1 - (weight * slope) / run.farads, 0.05);
    v -= step;
    if (Math.abs(step) < 1e-10 * (1 + Math.abs(v))) break;
  }
  return v;
}

/** Divides a step into a trapezoid and a second-order backward difference. */
const gamma = 2 - Math.SQRT2;

function step(run: CapacitorRun, v: number, h: number): number {
  const rate = run.into(v) / run.farads;
  const middle = implicit(run, v + (gamma * h * rate) / 2, (gamma * h) / 2, v);
  const base = middle / (gamma * (2 - gamma)) - (v * (1 - gamma) ** 2) / (gamma * (2 - gamma));
  return implicit(run, base, (h * (1 - gamma)) / (2 - gamma), middle);
}

/** The volts along the way, first and last included. Ends early, at the last step reached, when steps run out. */
export function charge(run: CapacitorRun): Sample[] {
  const samples: Sample[] = [{ atS: 0, volts: run.startV }];
  let [t, v] = [0, run.startV];
  let h = run.seconds / 1000;
  for (let taken = 0; taken < maxSteps && t < run.seconds; taken++) {
    h = Math.min(h, run.seconds - t);
    const whole = step(run, v, h);
    const halves = step(run, step(run, v, h / 2), h / 2);
    const error = Math.abs(halves - whole) / (tolerance.volts + tolerance.share * Math.abs(halves));
    if (error <= 1 || h < 1e-12 * run.seconds) {
      t += h;
      v = halves;
      samples.push({ atS: t, volts: v });
    }
    h *= Math.min(4, Math.max(0.2, 0.85 * (error + 1e-10) ** (-1 / 3)));
  }
  return samples;
}

/** Volts at a moment, on a straight line between two samples. */
export function voltsAt(samples: readonly Sample[], atS: number): number {
  const after = samples.findIndex((sample) => sample.atS >= atS);
  if (after < 0) return samples.at(-1)!.volts;
  if (after === 0) return samples[0]!.volts;
  const [from, to] = [samples[after - 1]!, samples[after]!];
  return from.volts + ((atS - from.atS) / (to.atS - from.atS)) * (to.volts - from.volts);
}
