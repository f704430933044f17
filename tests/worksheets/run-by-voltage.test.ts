import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runByVoltage } from '../../src/worksheets/link/run-by-voltage.ts';

type In = Parameters<typeof runByVoltage.compute>[0];
const usual: In = {
  cells: 16,
  chargeCellV: 3.45,
  cellMaxV: 3.65,
  cellMinV: 2.5,
  floatCellV: 3.35,
  cutCellV: 3.05,
  restartCellV: 3.25,
  labelChargeVolts: undefined,
  packs: 2,
  packAmps: 100,
  chargeShare: 0.5,
  unitMinVolts: 42,
  unitMaxVolts: 60,
};

function outOf(change: Partial<In>) {
  const result = runByVoltage.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}
const refusal = (change: Partial<In>) => {
  const result = runByVoltage.compute({ ...usual, ...change });
  return !result.ok && result.reason.id.split('.').at(-1);
};

describe('limits for running by voltage', () => {
  it.each<[string, Partial<In>, string]>([
    ['limits that the inverter can hold', {}, 'fits'],
    ['an inverter that stops earlier', { unitMinVolts: 50 }, 'unitCutsFirst'],
    ['an inverter that does not take the charge volts', { unitMaxVolts: 54 }, 'unitTooLow'],
    ['a label for fifteen cells on sixteen', { labelChargeVolts: 52.5 }, 'otherCount'],
    ['a label for sixteen cells', { labelChargeVolts: 56 }, 'fits'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it.each<[string, Partial<In>, string]>([
    ['a charge over the pack’s cut-off', { chargeCellV: 3.7 }, 'chargeOverCutOff'],
    ['a cut at the pack’s own', { cutCellV: 2.5 }, 'cutUnderPack'],
    ['a restart under the cut', { restartCellV: 3.0 }, 'restartUnderCut'],
    ['a restart over the charge', { restartCellV: 3.5 }, 'restartOverCharge'],
    ['limits of the pack turned', { cellMaxV: 3.3, cellMinV: 3.3 }, 'cellsTurned'],
  ])('refuses %s', (_, change, reason) => {
    expect(refusal(change)).toBe(reason);
  });

  it('keeps the order of the limits, and a distance to the pack’s own cut-off, whatever is typed', () => {
    const cell = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: 20 }),
        cell(3.2, 4.2),
        cell(3.3, 4.3),
        cell(3.2, 3.6),
        cell(2.5, 3.3),
        cell(2.6, 3.5),
        (cells, chargeCellV, cellMaxV, floatCellV, cutCellV, restartCellV) => {
          const given = { cells, chargeCellV, cellMaxV, floatCellV, cutCellV, restartCellV };
          const result = runByVoltage.compute({ ...usual, ...given });
          if (!result.ok) return;
          const out = result.out;
          expect(out.chargeVolts).toBeLessThanOrEqual(out.topVolts! - 0.1 * cells + 1e-9);
          expect(out.floatVolts).toBeLessThanOrEqual(out.chargeVolts! + 1e-9);
          expect(out.restartVolts).toBeLessThan(out.chargeVolts!);
          expect(out.cutVolts).toBeLessThan(out.restartVolts!);
          expect(out.bottomVolts).toBeLessThan(out.cutVolts!);
        },
      ),
    );
  });

  it('grows with the cells in series, each limit in step', () => {
    const [fifteen, sixteen] = [outOf({ cells: 15 }), outOf({ cells: 16 })];
    for (const key of ['chargeVolts', 'floatVolts', 'cutVolts', 'restartVolts'] as const)
      expect(sixteen[key]! / fifteen[key]!).toBeCloseTo(16 / 15, 9);
  });

  it('shows in the working the cell volts that were used, not the higher ones that were asked for', () => {
    const given = { ...usual, chargeCellV: 3.65, floatCellV: 3.6 };
    const [charge, float] = runByVoltage.working(given, outOf(given));
    expect(charge!.params.chargeCellV).toBeCloseTo(3.55, 9);
    expect(charge!.params.chargeCellV! * 16).toBeCloseTo(charge!.params.chargeVolts!, 9);
    expect(float!.params.floatCellV! * 16).toBeCloseTo(float!.params.floatVolts!, 9);
  });
});
