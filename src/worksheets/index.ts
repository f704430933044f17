import { bondCurrents } from './ac/bond-currents.ts';
import { commonNeutral } from './ac/common-neutral.ts';
import { joinOutputs } from './ac/join-outputs.ts';
import { legAngle } from './ac/leg-angle.ts';
import { legLimit } from './ac/leg-limit.ts';
import { legVolts } from './ac/leg-volts.ts';
import { motorStart } from './ac/motor-start.ts';
import { neutralCurrent } from './ac/neutral-current.ts';
import { spreadLegs } from './ac/spread-legs.ts';
import { autonomy } from './battery-dc/autonomy.ts';
import { clampZero } from './battery-dc/clamp-zero.ts';
import { dcPath } from './battery-dc/dc-path.ts';
import { idleDraw } from './battery-dc/idle-draw.ts';
import { inverterCable } from './battery-dc/inverter-cable.ts';
import { jointMillivolts } from './battery-dc/joint-millivolts.ts';
import { packSharing } from './battery-dc/pack-sharing.ts';
import { packsForPower } from './battery-dc/packs-for-power.ts';
import { preCharge } from './battery-dc/pre-charge.ts';
import { restVoltage } from './battery-dc/rest-voltage.ts';
import { runtime } from './battery-dc/runtime.ts';
import type { AnyWorksheet } from './define.ts';
import { heatRise } from './heat/heat-rise.ts';
import { linkEnds } from './link/link-ends.ts';
import { runByVoltage } from './link/run-by-voltage.ts';
import { cellTemperature } from './pv/cell-temperature.ts';
import { insulationPosition } from './pv/insulation-position.ts';
import { parallelStrings } from './pv/parallel-strings.ts';
import { pvNow } from './pv/pv-now.ts';
import { pvRun } from './pv/pv-run.ts';
import { stringCurrent } from './pv/string-current.ts';
import { stringLength } from './pv/string-length.ts';
import { stringWindow } from './pv/string-window.ts';

/** Every worksheet, in the order of the shelf. A new one is a file, its words, its page text, and a line here. */
export const worksheets: readonly AnyWorksheet[] = [
  stringWindow,
  stringLength,
  stringCurrent,
  pvRun,
  parallelStrings,
  cellTemperature,
  pvNow,
  insulationPosition,
  preCharge,
  idleDraw,
  dcPath,
  runtime,
  autonomy,
  packsForPower,
  clampZero,
  jointMillivolts,
  restVoltage,
  packSharing,
  inverterCable,
  linkEnds,
  runByVoltage,
  heatRise,
  legVolts,
  legAngle,
  neutralCurrent,
  commonNeutral,
  legLimit,
  spreadLegs,
  motorStart,
  bondCurrents,
  joinOutputs,
];

/** The worksheet of an id; throws on an id that names none, which is a slip in our own files. */
export function worksheetById(id: string): AnyWorksheet {
  const found = worksheets.find((worksheet) => worksheet.id === id);
  if (!found)
    throw new Error(`No worksheet is called "${id}". Known: ${worksheets.map((each) => each.id).join(', ')}`);
  return found;
}
