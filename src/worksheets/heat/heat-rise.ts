import { defineWorksheet } from '../define.ts';
import { give } from '../result.ts';
import { say } from '../say.ts';
import { airDensity, airflowForM3s, airRiseC, standardDensity } from './air.ts';
import { lossWatts } from './loss.ts';

/** From this share of standard air down, a rule made for sea level misleads by more than a thermometer does. */
const thinShare = 0.93;
/** Fans of a unit in good order keep the air under this rise at full load [°C]. Common practice. */
const usualMostC = 20;

export const heatRise = defineWorksheet({
  id: 'heat-rise',
  group: 'heat',
  hazards: ['hot-surface', 'moving-parts'],
  inputs: {
    acWatts: { kind: 'power', min: 0, max: 50_000 },
    efficiency: { kind: 'ratio', min: 0.7, max: 0.995, default: 0.93, from: ['inverter.efficiency'] },
    idleWatts: { kind: 'power', min: 0, max: 1000, from: ['inverter.idleW'] },
    chargeWatts: { kind: 'power', min: 0, max: 50_000, default: 0 },
    chargeEfficiency: { kind: 'ratio', min: 0.7, max: 0.995, default: 0.95 },
    altitudeM: {
      kind: 'altitude',
      min: -430,
      max: 6000,
      signed: true,
      default: 0,
      from: ['altitudeM'],
    },
    inletC: { kind: 'temperature', min: -30, max: 70, signed: true, default: 25 },
    airflowM3s: {
      kind: 'airflow',
      min: 0.002,
      max: 1,
      optional: true,
      from: ['inverter.fanAirflowM3s'],
    },
    allowedRiseC: { kind: 'temperatureDifference', min: 1, max: 50, default: 15 },
  },
  outputs: {
    lossWatts: { kind: 'power', headline: true },
    riseC: { kind: 'temperatureDifference', headline: true },
    outletC: { kind: 'temperature' },
    neededM3s: { kind: 'airflow', headline: true },
    airShare: { kind: 'ratio' },
    seaLevelRiseC: { kind: 'temperatureDifference' },
  },
  compute(given) {
    const { airflowM3s, altitudeM, inletC, allowedRiseC } = given;
    const loss = lossWatts(given);
    const density = airDensity(altitudeM, inletC);
    const riseC = airflowM3s === undefined ? undefined : airRiseC(loss, airflowM3s, density);
    return give({
      lossWatts: loss,
      riseC,
      outletC: riseC === undefined ? undefined : inletC + riseC,
      neededM3s: airflowForM3s(loss, allowedRiseC, density),
      airShare: density / standardDensity,
      seaLevelRiseC: airflowM3s === undefined ? undefined : airRiseC(loss, airflowM3s, standardDensity),
    });
  },
  working(given, out) {
    const density = airDensity(given.altitudeM, given.inletC);
    return [
      say('loss', given, out),
      say('density', given, out, { density }),
      ...(out.riseC === undefined ? [] : [say('rise', given, out, { density })]),
      say('needed', given, out, { density }),
    ];
  },
  remarks(given, out) {
    const ids = [
      ...((out.riseC ?? 0) > usualMostC ? ['riseLarge'] : []),
      ...((out.airShare ?? 1) < thinShare && out.riseC !== undefined ? ['thinAir'] : []),
      ...(given.acWatts === 0 && given.chargeWatts === 0 ? ['idleOnly'] : []),
      'bestFigure',
    ];
    return ids.map((id) => say(`worksheet.heat-rise.${id}`, given, out));
  },
  sources: [
    { id: 'ashrae-fundamentals-2017', clause: 'chapter 1, equation 3 and table 1' },
    { id: 'sensible-heat' },
    { id: 'common-practice' },
  ],
});
