import * as z from 'zod/mini';
import type { Effect } from '../safety/effects.ts';
import { devices, zones } from '../safety/plant.ts';

const device = z.enum(devices);
const zone = z.enum(zones);
const yes = z.literal(true);

/** What each effect may say, by its one key. */
const sayings = {
  open: device,
  close: device,
  lock: device,
  tagPlus: device,
  unlock: device,
  inverter: z.enum(['on', 'off']),
  source: z.enum(['stopped', 'running']),
  autoStart: z.enum(['disabled', 'enabled']),
  loads: z.enum(['off', 'on']),
  inlet: z.enum(['plugged', 'unplugged']),
  bleed: zone,
  waited: zone,
  touch: zone,
  handleLive: zone,
  plugs: z.enum(['parted', 'joined']),
  liftNeutral: yes,
  resistor: z.enum(['on', 'off']),
  insulationTest: zone,
  enableCharging: yes,
  lift: yes,
  zeroShown: device,
  currentFlows: device,
  testerProved: yes,
  measuredDead: zone,
  measuredLive: zone,
  polarityProved: device,
  bothSidesRead: z.enum(['alike', 'apart']),
  precharged: yes,
  packsAlike: yes,
  inStep: yes,
  neutral: z.enum(['legsInBand', 'proved']),
  cellsFitToCharge: yes,
  tripped: device,
  tripExplained: device,
  readyToRestore: yes,
  verified: yes,
  verifyFailed: yes,
  namedPerson: yes,
  guardedWork: yes,
  dangerFound: yes,
  dangerCleared: yes,
} satisfies Record<EffectKey, z.ZodMiniType>;

type EffectKey = Effect extends infer Each ? (Each extends Effect ? keyof Each : never) : never;

/** An effect as it stands in a log: one key that is known, with a value that it may have. */
export const effectSchema = z.custom<Effect>((input) => {
  if (typeof input !== 'object' || input === null) return false;
  const pairs = Object.entries(input);
  const [key, value] = pairs[0] ?? ['', undefined];
  return (
    pairs.length === 1 && Object.hasOwn(sayings, key) && sayings[key as EffectKey].safeParse(value).success
  );
});
