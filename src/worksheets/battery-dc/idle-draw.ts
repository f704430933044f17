import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { arrayWatts, idleWatts, impliedEfficiency, joulesPerDay, usualChargePath } from './idle.ts';

/** Efficiencies at a load worth reading run from here to 1. Common practice. */
const lowestBelievable = 0.8;

/** Below this the draw empties nothing in the life of a bank. */
const leastWatts = 0.01;

export const idleDraw = defineWorksheet({
  id: 'idle-draw',
  group: 'battery-dc',
  hazards: ['live-metering'],
  inputs: {
    busVolts: { kind: 'voltage', min: 20, max: 100, from: ['derived.bankVolts'] },
    amps: { kind: 'current', min: 0, max: 50 },
    ampsError: { kind: 'current', min: 0, max: 10, default: 0.1 },
    windowS: { kind: 'time', min: 3600, max: 57_600, default: 14_400, unit: 'h' },
    chargePath: { kind: 'ratio', min: 0.3, max: 1, default: usualChargePath },
    nightS: { kind: 'time', min: 3600, max: 86_400, default: 50_400, unit: 'h' },
    bankJoules: { kind: 'energy', min: 3.6e5, max: 3.6e9, unit: 'kWh', from: ['derived.bankEnergyJ'] },
    loadWatts: { kind: 'power', min: 50, max: 50_000, optional: true },
    loadedAmps: { kind: 'current', min: 1, max: 2000, optional: true },
    loadedVolts: { kind: 'voltage', min: 20, max: 100, optional: true },
  },
  outputs: {
    idleWatts: { kind: 'power', headline: true },
    idleLowWatts: { kind: 'power' },
    idleHighWatts: { kind: 'power' },
    dayJoules: { kind: 'energy', headline: true },
    arrayWatts: { kind: 'power', headline: true },
    arrayLosslessWatts: { kind: 'power' },
    nightJoules: { kind: 'energy' },
    nightShare: { kind: 'ratio', headline: true },
    emptiesS: { kind: 'time', unit: 'h' },
    efficiency: { kind: 'ratio' },
  },
  compute(given) {
    const { busVolts, amps, ampsError, windowS, chargePath, nightS, bankJoules } = given;
    const { loadWatts, loadedAmps, loadedVolts } = given;
    const watts = idleWatts(busVolts, amps);
    const dayJoules = joulesPerDay(watts);
    const loaded =
      loadWatts === undefined || loadedAmps === undefined
        ? undefined
        : { loadWatts, loadedAmps, volts: loadedVolts ?? busVolts };
    const efficiency = loaded && impliedEfficiency(loaded.loadWatts, loaded.volts, loaded.loadedAmps, watts);
    if (loaded && (efficiency === undefined || efficiency > 1)) {
      const inWatts = loaded.volts * loaded.loadedAmps;
      return refuse('worksheet.idle-draw.moreOutThanIn', {
        loadWatts: loaded.loadWatts,
        inWatts,
        idleWatts: watts,
      });
    }
    return give({
      idleWatts: watts,
      idleLowWatts: idleWatts(busVolts, Math.max(0, amps - ampsError)),
      idleHighWatts: idleWatts(busVolts, amps + ampsError),
      dayJoules,
      arrayWatts: arrayWatts(dayJoules, windowS, chargePath),
      arrayLosslessWatts: arrayWatts(dayJoules, windowS, 1),
      nightJoules: watts * nightS,
      nightShare: (watts * nightS) / bankJoules,
      emptiesS: watts > leastWatts ? bankJoules / watts : undefined,
      efficiency,
    });
  },
  working(given, out) {
    return [
      say('idle', given, out),
      say('day', given, out),
      say('array', given, out),
      say('night', given, out),
      say('share', given, out),
      ...(out.efficiency === undefined
        ? []
        : [say('efficiency', { loadedVolts: given.busVolts }, definedOnly(given), out)]),
    ];
  },
  remarks(given, out) {
    const ids = [
      ...(given.ampsError > 0.25 * given.amps ? ['clampCoarse'] : []),
      ...(out.efficiency !== undefined && out.efficiency < lowestBelievable ? ['efficiencyLow'] : []),
      ...((out.nightShare ?? 0) > 0.1 ? ['nightHeavy'] : []),
      'lossesStand',
    ];
    return ids.map((id) => say(`worksheet.idle-draw.${id}`, given, out));
  },
  sources: [{ id: 'si-brochure-9' }, { id: 'common-practice' }],
});

/** An empty field must not overwrite the number that stands in for it. */
function definedOnly(values: object): object {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}
