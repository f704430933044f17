import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { bankLimits } from './voltage-limits.ts';

/** A label's charge volts belong to this many cells when each cell gets from here to here [V]. Common practice. */
const labelCell = { low: 3.4, high: 3.7 };

/** Charge, float, low cut and restart volts, and charge amps, for a bank whose link is down. */
export const runByVoltage = defineWorksheet({
  id: 'run-by-voltage',
  group: 'battery-dc',
  hazards: ['wrong-charge-profile', 'cold-charge'],
  inputs: {
    cells: { kind: 'count', min: 12, max: 20, from: ['battery.cellsInSeries'] },
    chargeCellV: { kind: 'voltage', min: 3.2, max: 4.2, default: 3.45, from: ['battery.cellChargeV'] },
    cellMaxV: { kind: 'voltage', min: 3.3, max: 4.3, default: 3.65, from: ['battery.cellMaxV'] },
    cellMinV: { kind: 'voltage', min: 1.5, max: 3.3, default: 2.5, from: ['battery.cellMinV'] },
    floatCellV: { kind: 'voltage', min: 3.2, max: 3.6, default: 3.35 },
    cutCellV: { kind: 'voltage', min: 2.5, max: 3.3, default: 3.05 },
    restartCellV: { kind: 'voltage', min: 2.6, max: 3.5, default: 3.25 },
    labelChargeVolts: { kind: 'voltage', min: 30, max: 90, optional: true },
    packs: { kind: 'count', min: 1, max: 32, from: ['battery.packs'] },
    packAmps: { kind: 'current', min: 1, max: 1000, from: ['battery.packContinuousA'] },
    chargeShare: { kind: 'ratio', min: 0.05, max: 1, default: 0.5 },
    unitMinVolts: { kind: 'voltage', min: 20, max: 60, from: ['inverter.dcMinV'] },
    unitMaxVolts: { kind: 'voltage', min: 40, max: 100, from: ['inverter.dcMaxV'] },
  },
  outputs: {
    chargeVolts: { kind: 'voltage', headline: true },
    floatVolts: { kind: 'voltage', headline: true },
    cutVolts: { kind: 'voltage', headline: true },
    restartVolts: { kind: 'voltage', headline: true },
    topVolts: { kind: 'voltage' },
    bottomVolts: { kind: 'voltage' },
    chargeAmps: { kind: 'current', headline: true },
    labelCellVolts: { kind: 'voltage' },
    verdict: { verdicts: ['fits', 'unitCutsFirst', 'unitTooLow', 'otherCount'] },
  },
  compute(given) {
    const { cells, chargeCellV, cellMaxV, cellMinV, cutCellV, restartCellV } = given;
    const { labelChargeVolts, packs, packAmps, chargeShare, unitMinVolts, unitMaxVolts } = given;
    if (cellMaxV <= cellMinV) return refuse('worksheet.run-by-voltage.cellsTurned', { cellMaxV, cellMinV });
    if (chargeCellV > cellMaxV)
      return refuse('worksheet.run-by-voltage.chargeOverCutOff', { chargeCellV, cellMaxV });
    if (cutCellV <= cellMinV) return refuse('worksheet.run-by-voltage.cutUnderPack', { cutCellV, cellMinV });
    if (restartCellV <= cutCellV)
      return refuse('worksheet.run-by-voltage.restartUnderCut', { restartCellV, cutCellV });
    const limits = bankLimits(given);
    if (limits.restartVolts >= limits.chargeVolts)
      return refuse('worksheet.run-by-voltage.restartOverCharge', {
        restartVolts: limits.restartVolts,
        chargeVolts: limits.chargeVolts,
      });
    const labelCellVolts = labelChargeVolts === undefined ? undefined : labelChargeVolts / cells;
    const strange =
      labelCellVolts !== undefined && (labelCellVolts < labelCell.low || labelCellVolts > labelCell.high);
    return give({
      ...limits,
      bottomVolts: cells * cellMinV,
      chargeAmps: packs * packAmps * chargeShare,
      labelCellVolts,
      verdict: strange
        ? 'otherCount'
        : limits.chargeVolts > unitMaxVolts
          ? 'unitTooLow'
          : limits.cutVolts < unitMinVolts
            ? 'unitCutsFirst'
            : 'fits',
    });
  },
  working(given, out) {
    // What was asked for may have been brought down: the line shows the volts that were used.
    const used = (volts: number | undefined): number => (volts ?? 0) / given.cells;
    return [
      say('charge', given, out, { chargeCellV: used(out.chargeVolts) }),
      say('float', given, out, { floatCellV: used(out.floatVolts) }),
      say('cut', given, out),
      say('restart', given, out),
      say('amps', given, out),
      ...(out.labelCellVolts === undefined ? [] : [say('label', given, out)]),
    ];
  },
  remarks(given, out) {
    const ids = [
      ...(out.verdict === 'fits' ? [] : [`verdict-${out.verdict}`]),
      'neverAbove',
      'cold',
      'noSoc',
      'labelWins',
    ];
    return ids.map((id) => say(`worksheet.run-by-voltage.${id}`, given, out));
  },
  sources: [{ id: 'common-practice' }],
});
