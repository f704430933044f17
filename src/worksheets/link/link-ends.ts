import { defineWorksheet } from '../define.ts';
import { give } from '../result.ts';
import { say } from '../say.ts';
import { idleVolts, pairOhms, pairZone, pairZones, serialThresholdVolts, usualEndOhms } from './pair-ohms.ts';

/** What the meter reads between the two data wires, both plugs in and one out, and what bias leaves there at idle. */
export const linkEnds = defineWorksheet({
  id: 'link-ends',
  group: 'battery-dc',
  hazards: ['equipment-damage'],
  inputs: {
    resistors: { kind: 'count', min: 0, max: 8, default: 2 },
    endOhms: { kind: 'resistance', min: 50, max: 1000, default: usualEndOhms },
    place: { options: ['inside', 'outside'], default: 'inside' },
    biasOhms: { kind: 'resistance', min: 100, max: 20_000, optional: true },
    supplyVolts: { kind: 'voltage', min: 1, max: 15, default: 5 },
    loadOhms: { kind: 'resistance', min: 300, max: 1e6, optional: true },
    measuredOhms: { kind: 'resistance', min: 0, max: 1e6, optional: true },
  },
  outputs: {
    bothInOhms: { kind: 'resistance', headline: true },
    cableOhms: { kind: 'resistance', headline: true },
    socketOhms: { kind: 'resistance' },
    oneOhms: { kind: 'resistance' },
    twoOhms: { kind: 'resistance' },
    threeOhms: { kind: 'resistance' },
    noneOhms: { kind: 'resistance' },
    idleVolts: { kind: 'voltage', headline: true },
    measured: { verdicts: [...pairZones, 'notRead'] },
    idle: { verdicts: ['enough', 'tooLittle', 'noBias'] },
  },
  compute({ resistors, endOhms, place, biasOhms, supplyVolts, loadOhms, measuredOhms }) {
    const parts = { endOhms, biasOhms, loadOhms };
    const count = Math.round(resistors);
    const withCount = (each: number) => pairOhms({ ...parts, resistors: each });
    const inside = place === 'inside' && count > 0 ? 1 : 0;
    const volts =
      biasOhms === undefined
        ? undefined
        : idleVolts({ resistors: count, endOhms, biasOhms, loadOhms }, supplyVolts);
    return give({
      bothInOhms: withCount(count),
      cableOhms: withCount(count - inside),
      socketOhms: inside > 0 ? endOhms : undefined,
      noneOhms: withCount(0),
      oneOhms: withCount(1),
      twoOhms: withCount(2),
      threeOhms: withCount(3),
      idleVolts: volts,
      measured: measuredOhms === undefined ? 'notRead' : pairZone(measuredOhms),
      idle: volts === undefined ? 'noBias' : volts >= serialThresholdVolts ? 'enough' : 'tooLittle',
    });
  },
  working(given, out) {
    return [
      ...(out.bothInOhms === undefined ? [] : [say('bothIn', given, out)]),
      ...(out.cableOhms === undefined ? [] : [say('cable', given, out)]),
      say('table', given, out),
      ...(out.idleVolts === undefined ? [] : [say('idle', given, out)]),
    ];
  },
  remarks(given, out) {
    const ids = [
      ...(given.measuredOhms === undefined ? [] : [`measured-${out.measured}`]),
      ...(out.bothInOhms === undefined ? ['open'] : []),
      ...(out.idle === 'tooLittle' ? ['idleLittle'] : out.idle === 'enough' ? ['idleEnough'] : []),
      given.place === 'inside' ? 'inside' : 'outside',
      'powerOff',
    ];
    return ids.map((id) => say(`worksheet.link-ends.${id}`, { threshold: serialThresholdVolts }, given, out));
  },
  sources: [{ id: 'tia-485-a' }, { id: 'iso-11898-2' }, { id: 'kuphaldt-dc' }],
});
