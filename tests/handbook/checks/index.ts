import type { OutsideCheck } from '../outside-check.ts';
import { autonomyChecks, runtimeChecks } from './bank-energy.ts';
import { bondCurrentsChecks } from './bond-currents.ts';
import { cellTemperatureChecks } from './cell-temperature.ts';
import { clampZeroChecks } from './clamp-zero.ts';
import { commonNeutralChecks } from './common-neutral.ts';
import { dcPathChecks } from './dc-path.ts';
import { heatChecks } from './heat-rise.ts';
import { idleChecks } from './idle-draw.ts';
import { insulationChecks } from './insulation-position.ts';
import { inverterCableChecks } from './inverter-cable.ts';
import { joinOutputsChecks } from './join-outputs.ts';
import { jointChecks } from './joint-millivolts.ts';
import { legLimitChecks } from './leg-limit.ts';
import { legAngleChecks, legVoltsChecks, neutralCurrentChecks } from './legs.ts';
import { linkEndsChecks } from './link-ends.ts';
import { motorStartChecks } from './motor-start.ts';
import { packSharingChecks } from './pack-sharing.ts';
import { packsForPowerChecks } from './packs-for-power.ts';
import { parallelStringsChecks } from './parallel-strings.ts';
import { preChargeChecks } from './pre-charge.ts';
import { pvNowChecks } from './pv-now.ts';
import { pvRunChecks } from './pv-run.ts';
import { restVoltageChecks } from './rest-voltage.ts';
import { runByVoltageChecks } from './run-by-voltage.ts';
import { spreadLegsChecks } from './spread-legs.ts';
import { stringCurrentChecks } from './string-current.ts';
import { stringLengthChecks } from './string-length.ts';
import { stringWindowChecks } from './string-window.ts';

/** Every published figure that a worksheet is held to. */
export const outsideChecks: readonly OutsideCheck[] = [
  ...stringWindowChecks,
  ...parallelStringsChecks,
  ...pvNowChecks,
  ...pvRunChecks,
  ...stringCurrentChecks,
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
  ...restVoltageChecks,
  ...packSharingChecks,
  ...inverterCableChecks,
  ...linkEndsChecks,
  ...runByVoltageChecks,
  ...heatChecks,
  ...legVoltsChecks,
  ...legAngleChecks,
  ...neutralCurrentChecks,
  ...commonNeutralChecks,
  ...legLimitChecks,
  ...spreadLegsChecks,
  ...motorStartChecks,
  ...bondCurrentsChecks,
  ...joinOutputsChecks,
];
