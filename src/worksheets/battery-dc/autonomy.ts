import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { neededJoules, nominalJoules, usableJoules } from './bank-energy.ts';
import { bankFields } from './bank-fields.ts';
import { drawnWatts, joulesPerDay } from './idle.ts';

/** Less than this a day empties nothing in the life of a bank [J]. */
const leastDayJoules = 3600;
/** Idle above this share of the day's draw is worth a remark. */
const heavyIdleShare = 0.2;

/** Days the bank carries the place with little or no sun, and the packs that the days wanted ask for. */
export const autonomy = defineWorksheet({
  id: 'autonomy',
  group: 'battery-dc',
  hazards: [],
  inputs: {
    dayJoules: { kind: 'energy', min: 0, max: 7.2e8, unit: 'kWh' },
    efficiency: { kind: 'ratio', min: 0.7, max: 0.995, default: 0.93, from: ['inverter.efficiency'] },
    idleWatts: { kind: 'power', min: 0, max: 2000, from: ['derived.idleWatts'] },
    poorDayJoules: { kind: 'energy', min: 0, max: 7.2e8, default: 0, unit: 'kWh' },
    wantedDays: { kind: 'count', min: 1, max: 14, default: 2 },
    ...bankFields,
  },
  outputs: {
    verdict: { verdicts: ['holds', 'short', 'sunCarries'], headline: true },
    heldDays: { kind: 'count', decimals: 1, headline: true },
    neededPacks: { kind: 'count', headline: true },
    neededJoules: { kind: 'energy', unit: 'kWh', headline: true },
    dayDrawnJoules: { kind: 'energy', unit: 'kWh' },
    netJoules: { kind: 'energy', unit: 'kWh' },
    idleJoules: { kind: 'energy', unit: 'kWh' },
    nominalJoules: { kind: 'energy', unit: 'kWh' },
    usableJoules: { kind: 'energy', unit: 'kWh' },
  },
  compute(given) {
    const { healthShare, usableShare, wantedDays } = given;
    const idleJoules = joulesPerDay(given.idleWatts);
    const dayDrawnJoules = drawnWatts(given.dayJoules, given.efficiency, idleJoules);
    if (dayDrawnJoules < leastDayJoules) return refuse('worksheet.autonomy.nothingDrawn');
    const nominal = nominalJoules(given);
    const usable = usableJoules(nominal, healthShare, usableShare);
    const always = { dayDrawnJoules, idleJoules, nominalJoules: nominal, usableJoules: usable };
    const netJoules = dayDrawnJoules - given.poorDayJoules;
    if (netJoules < leastDayJoules) {
      return give({
        ...always,
        verdict: 'sunCarries' as const,
        netJoules: Math.max(0, netJoules),
        heldDays: undefined,
        neededPacks: undefined,
        neededJoules: undefined,
      });
    }
    const heldDays = usable / netJoules;
    const needed = neededJoules(wantedDays, netJoules, healthShare, usableShare);
    return give({
      ...always,
      verdict: heldDays >= wantedDays ? ('holds' as const) : ('short' as const),
      netJoules,
      heldDays,
      neededJoules: needed,
      // A hair of rounding error does not cost a pack.
      neededPacks: Math.max(1, Math.ceil(needed / (nominal / given.packs) - 1e-9)),
    });
  },
  working(given, out) {
    return [
      say('drawn', given, out),
      say('net', given, out),
      say('nominal', given, out),
      say('usable', given, out),
      ...(out.heldDays === undefined
        ? []
        : [
            say('held', given, out),
            say('needed', given, out),
            say('packs', given, out, { packJoules: (out.nominalJoules ?? 0) / given.packs }),
          ]),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...((out.idleJoules ?? 0) > heavyIdleShare * (out.dayDrawnJoules ?? 0) ? ['idleHeavy'] : []),
      ...(given.poorDayJoules === 0 ? ['noSun'] : []),
      'refill',
    ];
    return ids.map((id) => say(`worksheet.autonomy.${id}`, given, out));
  },
  sources: [{ id: 'si-brochure-9', clause: 'table 4' }, { id: 'common-practice' }],
});
