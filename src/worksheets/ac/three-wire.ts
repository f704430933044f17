import { lagDegrees, magnitude, minus, over, type Phasor, phasor, plus, solve, times } from './phasor.ts';

/** Two legs and a neutral from a stiff source through a feeder to a panel with a load on each leg and one across both. */
export interface ThreeWire {
  /** Volts of each leg at the source [V], > 0. */
  legVolts: number;
  /** Degrees from leg 1 to leg 2: 180, 120 or 0. */
  angle: number;
  /** Whole resistance of each conductor, joints included [Ω]. */
  hot1Ohms: number;
  hot2Ohms: number;
  /** `undefined`: open. */
  neutralOhms: number | undefined;
  load1: Load;
  load2: Load;
  /** Between the legs. */
  across: Load;
}

/** A load that keeps its impedance: nameplate watts at `volts`, lagging. */
export interface Load {
  watts: number;
  powerFactor: number;
  volts: number;
}

export interface LegReadings {
  v1: number;
  v2: number;
  v12: number;
  /** Panel neutral to the source's neutral, which is ground where the bond is there [V]. */
  neutralVolts: number;
  i1: number;
  i2: number;
  neutralAmps: number;
}

/** Input of an ordinary meter on each leg [S]: without a load it is what holds a lost neutral in the middle. */
const meterSiemens = 1e-7;
/** A conductor of no resistance at all has no place in a nodal sum [Ω]. */
const leastOhms = 1e-6;
/** Less than this draws nothing that a meter sees [W]. */
const leastWatts = 1e-3;

/** Nodal solution for the panel's three terminals. */
export function threeWire(network: ThreeWire): LegReadings {
  const e1 = phasor(network.legVolts, 0);
  const e2 = phasor(network.legVolts, network.angle);
  const siemens = (ohms: number): Phasor => [1 / Math.max(leastOhms, ohms), 0];
  const [h1, h2] = [siemens(network.hot1Ohms), siemens(network.hot2Ohms)];
  const n: Phasor = network.neutralOhms === undefined ? [0, 0] : siemens(network.neutralOhms);
  const y1 = plus(admittance(network.load1), [meterSiemens, 0]);
  const y2 = plus(admittance(network.load2), [meterSiemens, 0]);
  const y12 = admittance(network.across);
  const less = (y: Phasor): Phasor => [-y[0], -y[1]];
  const [a, b, zero] = solve(
    [
      [plus(plus(h1, y1), y12), less(y12), less(y1)],
      [less(y12), plus(plus(h2, y2), y12), less(y2)],
      [less(y1), less(y2), plus(plus(n, y1), y2)],
    ],
    [times(h1, e1), times(h2, e2), [0, 0]],
  ) as [Phasor, Phasor, Phasor];
  return {
    v1: magnitude(minus(a, zero)),
    v2: magnitude(minus(b, zero)),
    v12: magnitude(minus(a, b)),
    neutralVolts: magnitude(zero),
    i1: magnitude(times(h1, minus(e1, a))),
    i2: magnitude(times(h2, minus(e2, b))),
    neutralAmps: magnitude(times(n, zero)),
  };
}

function admittance({ watts, powerFactor, volts }: Load): Phasor {
  if (watts < leastWatts) return [0, 0];
  const impedance = phasor((volts ** 2 * powerFactor) / watts, lagDegrees(powerFactor));
  return over([1, 0], impedance);
}
