import { defineWorksheet, type Plot } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { inverterAmps } from './idle.ts';
import { heldWatts, packsNeeded } from './packs-needed.ts';

/** Part of a pack's label amps to plan with, since packs never share evenly. Common practice. */
const usualPlanShare = 0.8;
/** The curve is drawn from the lowest volts to this many times them. */
const drawn = { times: 1.4, steps: 40 };

/** Packs for a given power at the lowest volts: continuous, surge, and with one pack gone. */
export const packsForPower = defineWorksheet({
  id: 'packs-for-power',
  group: 'battery-dc',
  hazards: ['parallel-packs'],
  inputs: {
    acWatts: { kind: 'power', min: 10, max: 200_000, from: ['derived.ratedWatts'] },
    surgeWatts: { kind: 'power', min: 10, max: 400_000, optional: true, from: ['derived.surgeWatts'] },
    efficiency: { kind: 'ratio', min: 0.7, max: 0.995, default: 0.93, from: ['inverter.efficiency'] },
    idleWatts: { kind: 'power', min: 0, max: 2000, from: ['derived.idleWatts'] },
    lowVolts: { kind: 'voltage', min: 10, max: 70, from: ['inverter.dcMinV'] },
    packAmps: { kind: 'current', min: 1, max: 1000, from: ['battery.packContinuousA'] },
    packPeakAmps: { kind: 'current', min: 1, max: 2000, optional: true, from: ['battery.packPeakA'] },
    planShare: { kind: 'ratio', min: 0.3, max: 1, default: usualPlanShare },
    packs: { kind: 'count', min: 1, max: 64, from: ['battery.packs'] },
  },
  outputs: {
    verdict: {
      verdicts: ['spare', 'enough', 'shortContinuous', 'shortSurge', 'surgeUnknown'],
      headline: true,
    },
    neededPacks: { kind: 'count', headline: true },
    neededContinuous: { kind: 'count' },
    neededSurge: { kind: 'count' },
    neededWithOneGone: { kind: 'count', headline: true },
    bankAmps: { kind: 'current', headline: true },
    surgeAmps: { kind: 'current' },
    ampsPerPack: { kind: 'current' },
    ampsPerPackOneGone: { kind: 'current' },
    heldWatts: { kind: 'power', headline: true },
    heldWattsOneGone: { kind: 'power' },
  },
  compute(given) {
    const { acWatts, surgeWatts, efficiency, idleWatts, lowVolts } = given;
    const { packAmps, packPeakAmps, planShare, packs } = given;
    if (packPeakAmps !== undefined && packPeakAmps < packAmps)
      return refuse('worksheet.packs-for-power.peakUnderContinuous', { packPeakAmps, packAmps });
    if (surgeWatts !== undefined && surgeWatts < acWatts)
      return refuse('worksheet.packs-for-power.surgeUnderRated', { surgeWatts, acWatts });
    const amps = inverterAmps(acWatts, efficiency, idleWatts, lowVolts);
    const surge =
      surgeWatts === undefined ? undefined : inverterAmps(surgeWatts, efficiency, idleWatts, lowVolts);
    const neededContinuous = packsNeeded(amps, packAmps * planShare);
    const neededSurge =
      surge === undefined || packPeakAmps === undefined ? undefined : packsNeeded(surge, packPeakAmps);
    const neededPacks = Math.max(neededContinuous, neededSurge ?? 0);
    const held = (count: number): number =>
      heldWatts(count * packAmps * planShare, lowVolts, efficiency, idleWatts);
    return give({
      verdict:
        packs < neededContinuous
          ? ('shortContinuous' as const)
          : neededSurge === undefined
            ? ('surgeUnknown' as const)
            : packs < neededSurge
              ? ('shortSurge' as const)
              : packs > neededPacks
                ? ('spare' as const)
                : ('enough' as const),
      neededPacks,
      neededContinuous,
      neededSurge,
      neededWithOneGone: neededPacks + 1,
      bankAmps: amps,
      surgeAmps: surge,
      ampsPerPack: amps / packs,
      ampsPerPackOneGone: packs > 1 ? amps / (packs - 1) : undefined,
      heldWatts: held(packs),
      heldWattsOneGone: packs > 1 ? held(packs - 1) : undefined,
    });
  },
  working(given, out) {
    return [
      say('amps', given, out),
      say('continuous', given, out),
      ...(out.neededSurge === undefined ? [] : [say('surgeAmps', given, out), say('surge', given, out)]),
      say('each', given, out),
      ...(out.ampsPerPackOneGone === undefined
        ? []
        : [say('oneGone', given, out, { packsLeft: given.packs - 1 })]),
      say('held', given, out),
    ];
  },
  remarks(given, out) {
    const overLabel = (out.ampsPerPackOneGone ?? 0) > given.packAmps;
    const ids = [
      out.verdict,
      ...(given.packs === 1 ? ['onlyOne'] : overLabel ? ['oneGoneTrips'] : []),
      'lowest',
      'peakSeconds',
    ];
    return ids.map((id) => say(`worksheet.packs-for-power.${id}`, given, out));
  },
  plot(given): Plot {
    const { acWatts, surgeWatts, efficiency, idleWatts, lowVolts, packs } = given;
    const high = drawn.times * lowVolts;
    const volts = Array.from(
      { length: drawn.steps + 1 },
      (_, at) => lowVolts + ((high - lowVolts) * at) / drawn.steps,
    );
    const curve = (id: string, watts: number) => ({
      id,
      points: volts.map((each) => [each, inverterAmps(watts, efficiency, idleWatts, each)] as const),
    });
    const levels = [
      { id: 'planned', axis: 'y' as const, at: packs * given.packAmps * given.planShare },
      ...(given.packPeakAmps === undefined
        ? []
        : [{ id: 'peak', axis: 'y' as const, at: packs * given.packPeakAmps }]),
    ];
    const most = inverterAmps(surgeWatts ?? acWatts, efficiency, idleWatts, lowVolts);
    return {
      x: { kind: 'voltage', low: lowVolts, high },
      y: { kind: 'current', low: 0, high: 1.1 * Math.max(most, ...levels.map((level) => level.at)) },
      curves: [
        curve('continuous', acWatts),
        ...(surgeWatts === undefined ? [] : [curve('surge', surgeWatts)]),
      ],
      levels,
      marks: [],
    };
  },
  sources: [
    { id: 'nec-2020', clause: '694.12(A)(3), the same principle' },
    { id: 'kuphaldt-dc', clause: 'chapter 2' },
    { id: 'common-practice' },
  ],
});
