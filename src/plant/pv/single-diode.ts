/**
 * The single-diode model of a solar cell, module or run of equal modules:
 * I = IL − I0·(exp((V + I·Rs)/a) − 1) − (V + I·Rs)/Rsh. Everything is solved in the diode's own volts Vd = V + I·Rs,
 * where the current is explicit and the terminal volts rise without a turn, so that no case overflows or has two roots.
 */
export interface DiodeParams {
  /** IL [A]: the light's current. */
  photoA: number;
  /** I0 [A]: saturation current. */
  satA: number;
  /** Rs [Ω]. */
  seriesOhm: number;
  /** Rsh [Ω]; `Infinity` for none. */
  shuntOhm: number;
  /** a = n·Ns·k·T/q [V]. */
  slopeV: number;
}

/** A point of the curve, with the slope of current against terminal volts. */
export interface CurvePoint {
  volts: number;
  amps: number;
  /** dI/dV [S], never positive. */
  slope: number;
}

/** Beyond this exponent the exponential goes on as its tangent: no real operating point is there. */
const steepest = 200;

function grown(exponent: number): { value: number; slope: number } {
  if (exponent <= steepest) {
    const value = Math.exp(exponent);
    return { value, slope: value };
  }
  const value = Math.exp(steepest);
  return { value: value * (1 + exponent - steepest), slope: value };
}

/** Current and its slope at the diode's own volts. */
function atDiode(p: DiodeParams, diodeV: number): { amps: number; slope: number } {
  const { value, slope } = grown(diodeV / p.slopeV);
  return {
    amps: p.photoA - p.satA * (value - 1) - diodeV / p.shuntOhm,
    slope: (-p.satA * slope) / p.slopeV - 1 / p.shuntOhm,
  };
}

/** The curve at given diode volts: each value of `diodeV` is one point, from reverse bias to beyond open circuit. */
export function pointAtDiode(p: DiodeParams, diodeV: number): CurvePoint {
  const { amps, slope } = atDiode(p, diodeV);
  return { volts: diodeV - amps * p.seriesOhm, amps, slope: slope / (1 - slope * p.seriesOhm) };
}

const maxRounds = 100;

/** Finds x where a rising function is 0, by Newton kept inside a bracket that it narrows itself. */
function risingRoot(f: (x: number) => { value: number; slope: number }, low: number, high: number): number {
  let [left, right] = [low, high];
  let x = high;
  for (let round = 0; round < maxRounds; round++) {
    const { value, slope } = f(x);
    if (value === 0) return x;
    if (value > 0) right = x;
    else left = x;
    const step = x - value / slope;
    const next = step > left && step < right ? step : (left + right) / 2;
    if (Math.abs(next - x) <= 1e-15 * (Math.abs(x) + 1e-3)) return next;
    x = next;
  }
  return x;
}

/** Diode volts above which the current is at least this far below the light's. */
function diodeTop(p: DiodeParams, amps: number): number {
  const through = p.photoA - Math.min(amps, p.photoA) + p.satA;
  return p.slopeV * (Math.log(through / p.satA) + 1);
}

/** The point at given terminal volts, of either sign. */
export function pointAtVolts(p: DiodeParams, volts: number): CurvePoint {
  if (p.seriesOhm === 0) return pointAtDiode(p, volts);
  // The diode never takes more than the light's current and what the terminals push through the series resistance.
  const top = diodeTop(p, -Math.max(0, volts) / p.seriesOhm) + p.slopeV;
  // Below open circuit the diode stands above the terminals, above it between the open-circuit volts and theirs.
  const bottom = Math.min(volts, 0) - p.slopeV;
  const diodeV = risingRoot(
    (x) => {
      const { amps, slope } = atDiode(p, x);
      return { value: x - amps * p.seriesOhm - volts, slope: 1 - slope * p.seriesOhm };
    },
    bottom,
    top,
  );
  const point = pointAtDiode(p, diodeV);
  return { ...point, volts };
}

/** The point at given current; more than the light gives drives the cell into reverse, as far as its shunt lets it. */
export function pointAtAmps(p: DiodeParams, amps: number): CurvePoint {
  const top = diodeTop(p, amps) + p.slopeV;
  const excess = Math.max(0, amps - p.photoA);
  const bottom = Number.isFinite(p.shuntOhm) ? -(excess + p.satA) * p.shuntOhm - p.slopeV : -1e6;
  const diodeV = risingRoot(
    (x) => {
      const { amps: here, slope } = atDiode(p, x);
      return { value: amps - here, slope: -slope };
    },
    bottom,
    top,
  );
  return { ...pointAtDiode(p, diodeV), amps };
}

/** The point of maximum power, found where the power no longer rises. */
export function maximumPower(p: DiodeParams): CurvePoint {
  if (p.photoA <= 0) return { volts: 0, amps: 0, slope: -1 / p.shuntOhm };
  // dP/dVd falls through 0 once between short circuit and open circuit.
  const rising = (x: number): number => {
    const { amps, slope } = atDiode(p, x);
    return amps * (1 - slope * p.seriesOhm) + (x - amps * p.seriesOhm) * slope;
  };
  let [left, right] = [0, pointAtAmps(p, 0).volts];
  for (let round = 0; round < 200 && right - left > 1e-14 * right; round++) {
    const middle = (left + right) / 2;
    if (rising(middle) > 0) left = middle;
    else right = middle;
  }
  return pointAtDiode(p, (left + right) / 2);
}

export const openVolts = (p: DiodeParams): number => pointAtAmps(p, 0).volts;
export const shortAmps = (p: DiodeParams): number => pointAtVolts(p, 0).amps;

/** `count` equal runs in series as one: volts and resistances add, currents are shared. Exact. */
export const inSeries = (p: DiodeParams, count: number): DiodeParams => ({
  photoA: p.photoA,
  satA: p.satA,
  seriesOhm: p.seriesOhm * count,
  shuntOhm: p.shuntOhm * count,
  slopeV: p.slopeV * count,
});
