import type { Random } from '../numeric/random.ts';
import { countsOfScale, type MeterSpec, ranges } from './spec.ts';

/** What a meter shows. */
export type Shown =
  | { kind: 'value'; value: number /** One count. */; resolution: number }
  /** "OL": beyond the largest range, or an open circuit to an ohmmeter. */
  | { kind: 'overRange' }
  /** No such function on this meter. */
  | { kind: 'noFunction' };

type Scaled = keyof typeof ranges;

/** Turns a physical value into what stands on the screen: range, error inside the data sheet, rounding to a count. */
export function show(meter: MeterSpec, scale: Scaled, value: number, random: Random): Shown {
  if (!Number.isFinite(value)) return { kind: 'overRange' };
  const full = ranges[scale].find((range) => Math.abs(value) <= range);
  if (full === undefined) return { kind: 'overRange' };
  const resolution = full / countsOfScale;
  if (!meter.errs) return { kind: 'value', value, resolution };
  const { ofReading, counts } = meter.accuracy[scale];
  const bias = meter.bias[scale] * (ofReading * Math.abs(value) + counts * resolution);
  const noise = random.normal() * meter.noiseCounts * resolution;
  const steps = Math.round((value + bias + noise) / resolution);
  // A volts function of magnitude only has no sign to show.
  return { kind: 'value', value: steps * resolution + 0, resolution };
}
