import type { UnitSystem } from '../../quantity/kinds.ts';
import { findUnit, fromInside, type Unit, unitsOf, usualUnitOf } from '../../quantity/units.ts';
import type { PlotAxis } from '../../worksheets/define.ts';

/** An axis in the reader's unit, laid on the drawing. */
export interface Scale {
  readonly unit: Unit;
  /** Place on the drawing of a value in the inside unit. */
  readonly place: (inside: number) => number;
  /** Round values in the reader's unit, with their places. */
  readonly ticks: readonly { readonly label: string; readonly at: number }[];
}

/** Lays an axis from `from` to `to` on the drawing. */
export function scaleOf(axis: PlotAxis, units: UnitSystem, from: number, to: number, wanted: number): Scale {
  const symbol = axis.unit ?? usualUnitOf(axis.kind, units);
  const unit = unitsOf[axis.kind].find((each) => each.symbol === symbol) ?? findUnit(symbol, axis.kind);
  if (!unit) throw new Error(`${symbol} is no unit of ${axis.kind}`);
  const [low, high] = [fromInside(axis.low, unit), fromInside(axis.high, unit)];
  const placeShown = (shown: number): number => from + ((shown - low) / (high - low)) * (to - from);
  const step = roundStep((high - low) / wanted);
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return {
    unit,
    place: (inside) => placeShown(fromInside(inside, unit)),
    ticks: Array.from({ length: count }, (_, each) => {
      const shown = (first + each) * step;
      return { label: String(Number(shown.toPrecision(6))).replace('-', '−'), at: placeShown(shown) };
    }),
  };
}

/** The round step (1, 2 or 5 times a power of ten) nearest above a wanted one. */
export function roundStep(wanted: number): number {
  const power = 10 ** Math.floor(Math.log10(wanted));
  const lead = wanted / power;
  return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
}
