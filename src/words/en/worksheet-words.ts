import type { WorksheetWords } from '../worksheet-words.ts';

/** The words of one worksheet by its id, fetched alone: a run says a remark of one and has no need of the others. */
export const worksheetWordsOf: Readonly<Record<string, () => Promise<WorksheetWords>>> = {
  'string-window': async () => (await import('./worksheets/string-window.ts')).stringWindow,
  'string-length': async () => (await import('./worksheets/string-length.ts')).stringLength,
  'cell-temperature': async () => (await import('./worksheets/cell-temperature.ts')).cellTemperature,
  'insulation-position': async () => (await import('./worksheets/insulation-position.ts')).insulationPosition,
  'pre-charge': async () => (await import('./worksheets/pre-charge.ts')).preCharge,
  'idle-draw': async () => (await import('./worksheets/idle-draw.ts')).idleDraw,
  runtime: async () => (await import('./worksheets/runtime.ts')).runtime,
  autonomy: async () => (await import('./worksheets/autonomy.ts')).autonomy,
  'packs-for-power': async () => (await import('./worksheets/packs-for-power.ts')).packsForPower,
  'clamp-zero': async () => (await import('./worksheets/clamp-zero.ts')).clampZero,
  'joint-millivolts': async () => (await import('./worksheets/joint-millivolts.ts')).jointMillivolts,
  'link-ends': async () => (await import('./worksheets/link-ends.ts')).linkEnds,
  'run-by-voltage': async () => (await import('./worksheets/run-by-voltage.ts')).runByVoltage,
  'dc-path': async () => (await import('./worksheets/dc-path.ts')).dcPath,
  'heat-rise': async () => (await import('./worksheets/heat-rise.ts')).heatRise,
  'leg-volts': async () => (await import('./worksheets/leg-volts.ts')).legVolts,
  'leg-angle': async () => (await import('./worksheets/leg-angle.ts')).legAngle,
  'neutral-current': async () => (await import('./worksheets/neutral-current.ts')).neutralCurrent,
};
