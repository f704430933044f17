import { pointAtVolts } from '../pv/single-diode.ts';
import type { Part } from './netlist.ts';

/** A part's current at given volts and its slope there: what Newton puts in place of the part. */
export interface Tangent {
  amps: number;
  /** [S] */
  slope: number;
}

type Nonlinear = Extract<Part, { kind: 'diode' | 'power' | 'cells' }>;

/** No junction of a plant stands at an exponent above this; past it the exponential goes on as its tangent. */
const steepest = 80;

function junction(satA: number, slopeV: number, volts: number): Tangent {
  const exponent = volts / slopeV;
  const top = Math.min(exponent, steepest);
  const value = Math.exp(top);
  return { amps: satA * (value * (1 + exponent - top) - 1), slope: (satA * value) / slopeV };
}

/** Current from `a` through the part to `b`, and its slope, at `volts` across it. */
export function tangentOf(part: Nonlinear, volts: number): Tangent {
  switch (part.kind) {
    case 'diode':
      return junction(part.satA, part.slopeV, volts);
    case 'power': {
      if (volts >= part.foldV) return { amps: part.watts / volts, slope: -part.watts / volts ** 2 };
      const conductance = part.watts / part.foldV ** 2;
      return { amps: conductance * volts, slope: conductance };
    }
    case 'cells': {
      const each = volts / part.count;
      const cell = pointAtVolts(part.each, each);
      const bypass = part.bypass
        ? junction(part.bypass.satA, part.bypass.slopeV, -each)
        : { amps: 0, slope: 0 };
      // The cell's current leaves at plus: counted from plus through the part it is negative.
      return { amps: -cell.amps - bypass.amps, slope: (-cell.slope + bypass.slope) / part.count };
    }
  }
}

/** Volts where a junction begins to be steep: SPICE's critical voltage (Nagel, ERL-M520, 1975). */
const critical = (satA: number, slopeV: number): number => slopeV * Math.log(slopeV / (Math.SQRT2 * satA));

/** Holds back a step that would run up an exponential (Nagel, ERL-M520, 1975, junction limiting). */
function limited(next: number, last: number, satA: number, slopeV: number): number {
  if (next <= critical(satA, slopeV) || Math.abs(next - last) <= 2 * slopeV) return next;
  if (last <= 0) return slopeV * Math.log(Math.max(next / slopeV, Math.E));
  const grows = 1 + (next - last) / slopeV;
  return grows > 0 ? last + slopeV * Math.log(grows) : critical(satA, slopeV);
}

/** The volts to put the next tangent at, given where Newton wants to go and where the last one was. */
export function nextVolts(part: Nonlinear, wanted: number, last: number): number {
  switch (part.kind) {
    case 'diode':
      return limited(wanted, last, part.satA, part.slopeV);
    case 'power':
      // Never past the fold in one step from above it, nor below nothing.
      return last >= part.foldV && wanted < part.foldV ? Math.max(wanted, 0.5 * part.foldV) : wanted;
    case 'cells':
      return part.bypass
        ? -part.count *
            limited(-wanted / part.count, -last / part.count, part.bypass.satA, part.bypass.slopeV)
        : wanted;
  }
}
