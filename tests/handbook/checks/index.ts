import type { OutsideCheck } from '../outside-check.ts';
import { autonomyChecks, runtimeChecks } from './bank-energy.ts';
import { cellTemperatureChecks } from './cell-temperature.ts';
import { clampZeroChecks } from './clamp-zero.ts';
import { dcPathChecks } from './dc-path.ts';
import { heatChecks } from './heat-rise.ts';
import { idleChecks } from './idle-draw.ts';
import { insulationChecks } from './insulation-position.ts';
import { jointChecks } from './joint-millivolts.ts';
import { legAngleChecks, legVoltsChecks, neutralCurrentChecks } from './legs.ts';
import { linkEndsChecks } from './link-ends.ts';
import { packsForPowerChecks } from './packs-for-power.ts';
import { preChargeChecks } from './pre-charge.ts';
import { runByVoltageChecks } from './run-by-voltage.ts';
import { stringLengthChecks } from './string-length.ts';
import { stringWindowChecks } from './string-window.ts';

/** Every published figure that a worksheet is held to. */
export const outsideChecks: readonly OutsideCheck[] = [
  ...stringWindowChecks,
  ...stringLengthChecks,
  ...cellTemperatureChecks,
  ...preChargeChecks,
  ...insulationChecks,
  ...idleChecks,
  ...dcPathChecks,
  ...runtimeChecks,
  ...autonomyChecks,
  ...packsForPowerChecks,
  ...clampZeroChecks,
  ...jointChecks,
  ...linkEndsChecks,
  ...runByVoltageChecks,
  ...heatChecks,
  ...legVoltsChecks,
  ...legAngleChecks,
  ...neutralCurrentChecks,
];
