import { alwaysLiveZones, everySource, invalidation, people, touch } from './hands.ts';
import { instrumentMode, insulationTest, order, proofOrder } from './proof.ts';
import type { Rule } from './rule.ts';
import { boundedLoops, holdPoint, oneAction, stopAlways, wayOut } from './shape.ts';
import {
  joiningOutputs,
  packsInParallel,
  polarity,
  precharge,
  pvNoLoad,
  reclose,
  switchingOrder,
  underLoad,
} from './switching.ts';
import {
  chargingEnable,
  energisedMeasurement,
  generatorInlet,
  neutralProof,
  precondition,
  restore,
} from './work.ts';

/** Every rule, in the order of its number. */
export const rules: readonly Rule[] = [
  touch,
  proofOrder,
  order,
  invalidation,
  precharge,
  pvNoLoad,
  switchingOrder,
  restore,
  everySource,
  polarity,
  energisedMeasurement,
  holdPoint,
  wayOut,
  insulationTest,
  chargingEnable,
  oneAction,
  precondition,
  boundedLoops,
  alwaysLiveZones,
  underLoad,
  instrumentMode,
  people,
  packsInParallel,
  generatorInlet,
  joiningOutputs,
  neutralProof,
  reclose,
  stopAlways,
];
