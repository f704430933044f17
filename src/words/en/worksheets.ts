import type { WorksheetWords } from '../worksheet-words.ts';
import { autonomy } from './worksheets/autonomy.ts';
import { bondCurrents } from './worksheets/bond-currents.ts';
import { cellTemperature } from './worksheets/cell-temperature.ts';
import { clampZero } from './worksheets/clamp-zero.ts';
import { commonNeutral } from './worksheets/common-neutral.ts';
import { dcPath } from './worksheets/dc-path.ts';
import { heatRise } from './worksheets/heat-rise.ts';
import { idleDraw } from './worksheets/idle-draw.ts';
import { insulationPosition } from './worksheets/insulation-position.ts';
import { inverterCable } from './worksheets/inverter-cable.ts';
import { joinOutputs } from './worksheets/join-outputs.ts';
import { jointMillivolts } from './worksheets/joint-millivolts.ts';
import { legAngle } from './worksheets/leg-angle.ts';
import { legLimit } from './worksheets/leg-limit.ts';
import { legVolts } from './worksheets/leg-volts.ts';
import { linkEnds } from './worksheets/link-ends.ts';
import { motorStart } from './worksheets/motor-start.ts';
import { neutralCurrent } from './worksheets/neutral-current.ts';
import { packSharing } from './worksheets/pack-sharing.ts';
import { packsForPower } from './worksheets/packs-for-power.ts';
import { parallelStrings } from './worksheets/parallel-strings.ts';
import { preCharge } from './worksheets/pre-charge.ts';
import { pvNow } from './worksheets/pv-now.ts';
import { pvRun } from './worksheets/pv-run.ts';
import { restVoltage } from './worksheets/rest-voltage.ts';
import { runByVoltage } from './worksheets/run-by-voltage.ts';
import { runtime } from './worksheets/runtime.ts';
import { spreadLegs } from './worksheets/spread-legs.ts';
import { stringCurrent } from './worksheets/string-current.ts';
import { stringLength } from './worksheets/string-length.ts';
import { stringWindow } from './worksheets/string-window.ts';

/** The words of every worksheet, by its id. */
export const worksheetWords: Readonly<Record<string, WorksheetWords>> = {
  'string-window': stringWindow,
  'string-length': stringLength,
  'string-current': stringCurrent,
  'pv-run': pvRun,
  'parallel-strings': parallelStrings,
  'cell-temperature': cellTemperature,
  'pv-now': pvNow,
  'insulation-position': insulationPosition,
  'pre-charge': preCharge,
  'idle-draw': idleDraw,
  'dc-path': dcPath,
  runtime,
  autonomy,
  'packs-for-power': packsForPower,
  'clamp-zero': clampZero,
  'joint-millivolts': jointMillivolts,
  'rest-voltage': restVoltage,
  'pack-sharing': packSharing,
  'inverter-cable': inverterCable,
  'link-ends': linkEnds,
  'run-by-voltage': runByVoltage,
  'heat-rise': heatRise,
  'leg-volts': legVolts,
  'leg-angle': legAngle,
  'neutral-current': neutralCurrent,
  'common-neutral': commonNeutral,
  'leg-limit': legLimit,
  'spread-legs': spreadLegs,
  'motor-start': motorStart,
  'bond-currents': bondCurrents,
  'join-outputs': joinOutputs,
};
