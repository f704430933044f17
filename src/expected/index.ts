import { acScales } from './ac.ts';
import { batteryScales } from './battery.ts';
import type { ScaleDef, WaitDef, WorkDef } from './context.ts';
import { currentScales, currentWorks } from './currents.ts';
import { deadScales } from './dead.ts';
import { heatScales, heatWaits, heatWorks } from './heat/index.ts';
import { legScales, legWorks } from './legs/index.ts';
import { byVoltageScales, linkWorks } from './link/by-voltage.ts';
import { pairScales } from './link/pair.ts';
import { linkWaits, proofScales } from './link/proof.ts';
import { preChargeScales } from './pre-charge.ts';
import { preChargeWorks } from './pre-charge-works.ts';
import { pvScales, pvWorks } from './pv/index.ts';
import { stringScales } from './strings.ts';
import { waitList } from './waits.ts';

/** A registry by id; two of one id would hide each other, so that is refused. */
function byId<T extends { id: string }>(list: readonly T[]): Readonly<Record<string, T>> {
  const map = Object.fromEntries(list.map((each) => [each.id, each]));
  const twice = list.find((each) => map[each.id] !== each);
  if (twice) throw new Error(`two expectations are called "${twice.id}"`);
  return map;
}

/** Every family of expected bands, by the id that a reading names. */
export const scales: Readonly<Record<string, ScaleDef>> = byId([
  ...deadScales,
  ...currentScales,
  ...batteryScales,
  ...preChargeScales,
  ...acScales,
  ...stringScales,
  ...pvScales,
  ...legScales,
  ...pairScales,
  ...proofScales,
  ...byVoltageScales,
  ...heatScales,
]);

/** Every piece of arithmetic that decides a step, by the id that it asks. */
export const works: Readonly<Record<string, WorkDef>> = byId([
  ...preChargeWorks,
  ...currentWorks,
  ...pvWorks,
  ...legWorks,
  ...linkWorks,
  ...heatWorks,
]);

/** Every wait, by its id. */
export const waits: Readonly<Record<string, WaitDef>> = byId([...waitList, ...linkWaits, ...heatWaits]);
