import type { WorksheetWords } from '../../words/worksheet-words.ts';
import type { AnyWorksheet } from '../../worksheets/define.ts';

export interface LoadedWorksheet {
  readonly worksheet: AnyWorksheet;
  readonly words: WorksheetWords;
}

/** One worksheet with its words, loaded alone: a page carries no other worksheet's code. In the order of the shelf. */
export const loadWorksheet: Readonly<Record<string, () => Promise<LoadedWorksheet>>> = {
  'string-window': async () => ({
    worksheet: (await import('../../worksheets/pv/string-window.ts')).stringWindow,
    words: (await import('../../words/en/worksheets/string-window.ts')).stringWindow,
  }),
  'string-length': async () => ({
    worksheet: (await import('../../worksheets/pv/string-length.ts')).stringLength,
    words: (await import('../../words/en/worksheets/string-length.ts')).stringLength,
  }),
  'string-current': async () => ({
    worksheet: (await import('../../worksheets/pv/string-current.ts')).stringCurrent,
    words: (await import('../../words/en/worksheets/string-current.ts')).stringCurrent,
  }),
  'pv-run': async () => ({
    worksheet: (await import('../../worksheets/pv/pv-run.ts')).pvRun,
    words: (await import('../../words/en/worksheets/pv-run.ts')).pvRun,
  }),
  'parallel-strings': async () => ({
    worksheet: (await import('../../worksheets/pv/parallel-strings.ts')).parallelStrings,
    words: (await import('../../words/en/worksheets/parallel-strings.ts')).parallelStrings,
  }),
  'cell-temperature': async () => ({
    worksheet: (await import('../../worksheets/pv/cell-temperature.ts')).cellTemperature,
    words: (await import('../../words/en/worksheets/cell-temperature.ts')).cellTemperature,
  }),
  'pv-now': async () => ({
    worksheet: (await import('../../worksheets/pv/pv-now.ts')).pvNow,
    words: (await import('../../words/en/worksheets/pv-now.ts')).pvNow,
  }),
  'insulation-position': async () => ({
    worksheet: (await import('../../worksheets/pv/insulation-position.ts')).insulationPosition,
    words: (await import('../../words/en/worksheets/insulation-position.ts')).insulationPosition,
  }),
  'pre-charge': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/pre-charge.ts')).preCharge,
    words: (await import('../../words/en/worksheets/pre-charge.ts')).preCharge,
  }),
  'idle-draw': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/idle-draw.ts')).idleDraw,
    words: (await import('../../words/en/worksheets/idle-draw.ts')).idleDraw,
  }),
  'dc-path': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/dc-path.ts')).dcPath,
    words: (await import('../../words/en/worksheets/dc-path.ts')).dcPath,
  }),
  runtime: async () => ({
    worksheet: (await import('../../worksheets/battery-dc/runtime.ts')).runtime,
    words: (await import('../../words/en/worksheets/runtime.ts')).runtime,
  }),
  autonomy: async () => ({
    worksheet: (await import('../../worksheets/battery-dc/autonomy.ts')).autonomy,
    words: (await import('../../words/en/worksheets/autonomy.ts')).autonomy,
  }),
  'packs-for-power': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/packs-for-power.ts')).packsForPower,
    words: (await import('../../words/en/worksheets/packs-for-power.ts')).packsForPower,
  }),
  'clamp-zero': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/clamp-zero.ts')).clampZero,
    words: (await import('../../words/en/worksheets/clamp-zero.ts')).clampZero,
  }),
  'joint-millivolts': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/joint-millivolts.ts')).jointMillivolts,
    words: (await import('../../words/en/worksheets/joint-millivolts.ts')).jointMillivolts,
  }),
  'rest-voltage': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/rest-voltage.ts')).restVoltage,
    words: (await import('../../words/en/worksheets/rest-voltage.ts')).restVoltage,
  }),
  'pack-sharing': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/pack-sharing.ts')).packSharing,
    words: (await import('../../words/en/worksheets/pack-sharing.ts')).packSharing,
  }),
  'inverter-cable': async () => ({
    worksheet: (await import('../../worksheets/battery-dc/inverter-cable.ts')).inverterCable,
    words: (await import('../../words/en/worksheets/inverter-cable.ts')).inverterCable,
  }),
  'link-ends': async () => ({
    worksheet: (await import('../../worksheets/link/link-ends.ts')).linkEnds,
    words: (await import('../../words/en/worksheets/link-ends.ts')).linkEnds,
  }),
  'run-by-voltage': async () => ({
    worksheet: (await import('../../worksheets/link/run-by-voltage.ts')).runByVoltage,
    words: (await import('../../words/en/worksheets/run-by-voltage.ts')).runByVoltage,
  }),
  'heat-rise': async () => ({
    worksheet: (await import('../../worksheets/heat/heat-rise.ts')).heatRise,
    words: (await import('../../words/en/worksheets/heat-rise.ts')).heatRise,
  }),
  'leg-volts': async () => ({
    worksheet: (await import('../../worksheets/ac/leg-volts.ts')).legVolts,
    words: (await import('../../words/en/worksheets/leg-volts.ts')).legVolts,
  }),
  'leg-angle': async () => ({
    worksheet: (await import('../../worksheets/ac/leg-angle.ts')).legAngle,
    words: (await import('../../words/en/worksheets/leg-angle.ts')).legAngle,
  }),
  'neutral-current': async () => ({
    worksheet: (await import('../../worksheets/ac/neutral-current.ts')).neutralCurrent,
    words: (await import('../../words/en/worksheets/neutral-current.ts')).neutralCurrent,
  }),
  'common-neutral': async () => ({
    worksheet: (await import('../../worksheets/ac/common-neutral.ts')).commonNeutral,
    words: (await import('../../words/en/worksheets/common-neutral.ts')).commonNeutral,
  }),
  'leg-limit': async () => ({
    worksheet: (await import('../../worksheets/ac/leg-limit.ts')).legLimit,
    words: (await import('../../words/en/worksheets/leg-limit.ts')).legLimit,
  }),
  'spread-legs': async () => ({
    worksheet: (await import('../../worksheets/ac/spread-legs.ts')).spreadLegs,
    words: (await import('../../words/en/worksheets/spread-legs.ts')).spreadLegs,
  }),
  'motor-start': async () => ({
    worksheet: (await import('../../worksheets/ac/motor-start.ts')).motorStart,
    words: (await import('../../words/en/worksheets/motor-start.ts')).motorStart,
  }),
  'bond-currents': async () => ({
    worksheet: (await import('../../worksheets/ac/bond-currents.ts')).bondCurrents,
    words: (await import('../../words/en/worksheets/bond-currents.ts')).bondCurrents,
  }),
  'join-outputs': async () => ({
    worksheet: (await import('../../worksheets/ac/join-outputs.ts')).joinOutputs,
    words: (await import('../../words/en/worksheets/join-outputs.ts')).joinOutputs,
  }),
};
