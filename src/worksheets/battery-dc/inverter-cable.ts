import { defineWorksheet, type Plot, type ResultsOf, type ValuesOf } from '../define.ts';
import { codeBases, editionOf } from '../pv/string-amps.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import type { AmpacityColumn } from '../tables/nec-310-16.ts';
import { ratingAtLeast } from '../tables/standard-ratings.ts';
import {
  cableRules,
  mayRunParallel,
  nec706,
  packDeviceAmps,
  prospectiveAmps,
  ratedCircuitAmps,
  smallestCableMm2,
} from './battery-circuit.ts';
import { cableResistance, dropVolts } from './cable-resistance.ts';
import { inverterAmps } from './idle.ts';

/** A drop above this share at the lowest volts asks for a shorter or thicker cable. Common practice. */
const mostDropShare = 0.02;
/** Conductor at which the drop is worked out [°C]: warm under full load. */
const warmC = 75;
/** The curve is drawn from the lowest volts to this many times them. */
const drawn = { times: 1.4, steps: 40 };
/**
 * A device must break this many times a short worked out from the packs’ resistance, which a data sheet may print too
 * high. This project’s choice.
 */
const breakTimes = 1.25;
/** Beyond this it is bars and an engineer, not one cable [A]. Common practice. */
const mostAmps = 2000;
const hair = 1e-9;

const inputs = {
  basis: { options: codeBases, default: 'nec-2023', from: ['derived.necBasis'] },
  acWatts: { kind: 'power', min: 10, max: 60_000, from: ['derived.ratedWatts'] },
  efficiency: { kind: 'ratio', min: 0.7, max: 0.995, default: 0.93, from: ['inverter.efficiency'] },
  idleWatts: { kind: 'power', min: 0, max: 2000, from: ['derived.idleWatts'] },
  lowVolts: { kind: 'voltage', min: 10, max: 70, from: ['inverter.dcMinV'] },
  areaMm2: { kind: 'wireSize', min: 2.08, max: 260, from: ['batteryCable.areaMm2'] },
  runs: { kind: 'count', min: 1, max: 4, default: 1 },
  lengthM: { kind: 'length', min: 0.1, max: 50, from: ['batteryCable.lengthM'] },
  insulation: { options: ['c75', 'c90'], default: 'c90' },
  termination: { options: ['c60', 'c75'], default: 'c75' },
  ambientC: { kind: 'temperature', min: -40, max: 90, default: 40, signed: true },
  conductors: { kind: 'count', min: 2, max: 40, default: 2 },
  fuseAmps: { kind: 'current', min: 10, max: 2000, optional: true, from: ['derived.mainDeviceA'] },
  interruptingAmps: {
    kind: 'current',
    min: 100,
    max: 200_000,
    optional: true,
    from: ['derived.mainDeviceBreaksA'],
  },
  fullVolts: { kind: 'voltage', min: 10, max: 90, from: ['derived.fullVolts'] },
  packs: { kind: 'count', min: 1, max: 64, from: ['battery.packs'] },
  packOhms: {
    kind: 'resistance',
    min: 0.0005,
    max: 0.5,
    optional: true,
    unit: 'mΩ',
    from: ['battery.packResistanceOhm'],
  },
  packShortAmps: { kind: 'current', min: 100, max: 50_000, optional: true },
} as const;

const outputs = {
  cable: { verdicts: ['fits', 'thin', 'tooHot', 'noParallel', 'notChecked'], headline: true },
  fuse: { verdicts: ['fits', 'tooSmall', 'tooLarge', 'toChoose', 'notChecked'], headline: true },
  breaking: { verdicts: ['breaks', 'close', 'cannot', 'notChecked'], headline: true },
  amps: { kind: 'current', headline: true },
  ratedAmps: { kind: 'current', headline: true },
  plainAmps: { kind: 'current' },
  correctedAmps: { kind: 'current' },
  leastFuseAmps: { kind: 'current', headline: true },
  mostFuseAmps: { kind: 'current' },
  smallestMm2: { kind: 'wireSize', headline: true },
  shortAmps: { kind: 'current', headline: true },
  packBreakAmps: { kind: 'current' },
  dropVolts: { kind: 'voltage' },
  dropShare: { kind: 'ratio' },
} as const;
type In = ValuesOf<typeof inputs>;
type Out = ResultsOf<typeof outputs>;

/** Cable, fuse and its breaking power between battery and inverter. */
export const inverterCable = defineWorksheet({
  id: 'inverter-cable',
  group: 'battery-dc',
  hazards: ['battery-short', 'battery-arc'],
  inputs,
  outputs,
  compute(given) {
    const { acWatts, lowVolts, fullVolts, areaMm2, runs, fuseAmps } = given;
    if (fullVolts < lowVolts) return refuse('worksheet.inverter-cable.voltsTurned', { fullVolts, lowVolts });
    const amps = inverterAmps(acWatts, given.efficiency, given.idleWatts, lowVolts);
    if (amps > mostAmps) return refuse('worksheet.inverter-cable.tooManyAmps', { amps, mostAmps });
    const ratedAmps = ratedCircuitAmps(amps);
    const drop = dropVolts(amps / runs, cableResistance(areaMm2, warmC).ohmsPerM, given.lengthM);
    const edition = editionOf(given.basis);
    const noParallel = runs > 1 && !mayRunParallel(areaMm2);
    const rules = edition && !noParallel ? cableRules(amps, cableOf(given), edition) : undefined;
    const leastFuseAmps = edition && ratingAtLeast(ratedAmps, edition, 'fuse');
    const shortAmps = shortOf(given);
    return give({
      cable:
        edition === undefined
          ? ('notChecked' as const)
          : noParallel
            ? ('noParallel' as const)
            : rules === undefined
              ? ('tooHot' as const)
              : rules.fits
                ? ('fits' as const)
                : ('thin' as const),
      fuse:
        edition === undefined
          ? ('notChecked' as const)
          : fuseAmps === undefined
            ? ('toChoose' as const)
            : fuseAmps < ratedAmps - hair
              ? ('tooSmall' as const)
              : rules === undefined
                ? ('notChecked' as const)
                : fuseAmps > (rules.mostDeviceAmps ?? 0) + hair
                  ? ('tooLarge' as const)
                  : ('fits' as const),
      breaking: breakingOf(given, shortAmps),
      amps,
      ratedAmps: edition === undefined ? undefined : ratedAmps,
      plainAmps: rules?.plainAmps,
      correctedAmps: rules?.correctedAmps,
      leastFuseAmps,
      mostFuseAmps: rules?.mostDeviceAmps,
      smallestMm2:
        edition === undefined || leastFuseAmps === undefined
          ? undefined
          : smallestCableMm2(amps, cableOf(given), fuseAmps ?? leastFuseAmps, edition),
      shortAmps,
      packBreakAmps:
        shortAmps === undefined ? undefined : packDeviceAmps(shortAmps / given.packs, given.packs),
      dropVolts: drop,
      dropShare: drop / lowVolts,
    });
  },
  working(given, out) {
    const edition = editionOf(given.basis);
    const rules =
      edition && out.plainAmps !== undefined ? cableRules(out.amps ?? 0, cableOf(given), edition) : undefined;
    return [
      say('amps', given, out),
      ...(out.ratedAmps === undefined ? [] : [say('rated', given, out, { factor: nec706.continuousFactor })]),
      ...(rules ? [say('plain', given, out), say('corrected', given, out, rules)] : []),
      ...(out.leastFuseAmps === undefined ? [] : [say('least', given, out)]),
      ...(out.mostFuseAmps === undefined
        ? []
        : [say('most', given, out, { usableAmps: Math.min(out.plainAmps ?? 0, out.correctedAmps ?? 0) })]),
      ...(out.shortAmps === undefined
        ? []
        : [say(given.packShortAmps === undefined ? 'short' : 'shortLabel', given, out)]),
      say('drop', given, out, {
        oneWayOhms: given.lengthM * cableResistance(given.areaMm2, warmC).ohmsPerM,
      }),
    ];
  },
  remarks(given, out) {
    const onlyByHeat = (out.plainAmps ?? 0) >= (out.ratedAmps ?? 0) && out.cable === 'thin';
    const ids = [
      ...(out.cable === 'fits' ? [] : [`cable-${out.cable}`]),
      ...(onlyByHeat ? ['byHeat'] : []),
      ...(out.fuse === 'fits' ? [] : [`fuse-${out.fuse}`]),
      `breaking-${out.breaking}`,
      ...(out.cable === 'thin' || out.fuse === 'tooLarge'
        ? [out.smallestMm2 === undefined ? 'noSize' : 'nextSize']
        : []),
      ...(given.packs > 1 && out.packBreakAmps !== undefined ? ['eachPack'] : []),
      ...((out.dropShare ?? 0) > mostDropShare ? ['drop'] : []),
      'surge',
      'local',
    ];
    return ids.map((id) => say(`worksheet.inverter-cable.${id}`, given, out));
  },
  plot(given, out): Plot {
    const { acWatts, efficiency, idleWatts, lowVolts } = given;
    const high = drawn.times * lowVolts;
    const volts = Array.from(
      { length: drawn.steps + 1 },
      (_, at) => lowVolts + ((high - lowVolts) * at) / drawn.steps,
    );
    const curve = (id: string, factor: number) => ({
      id,
      points: volts.map((at) => [at, factor * inverterAmps(acWatts, efficiency, idleWatts, at)] as const),
    });
    const levels = (
      [
        ['cable', out.plainAmps],
        ['corrected', out.correctedAmps],
        ['fuse', given.fuseAmps],
      ] as const
    ).flatMap(([id, at]) => (at === undefined ? [] : [{ id, axis: 'y' as const, at }]));
    const most = Math.max(ratedCircuitAmps(out.amps ?? 0), ...levels.map((level) => level.at));
    return {
      x: { kind: 'voltage', low: lowVolts, high },
      y: { kind: 'current', low: 0, high: 1.1 * most },
      curves: [
        curve('flows', 1),
        ...(out.ratedAmps === undefined ? [] : [curve('rated', nec706.continuousFactor)]),
      ],
      levels,
      marks: [],
    };
  },
  sources: [
    { id: 'nec-706', clause: '706.30, 706.31' },
    {
      id: 'nec-2023',
      clause: 'Table 310.16, Table 310.15(B)(1)(1), Table 310.15(C)(1), 110.14(C), 240.4, 240.6(A)',
    },
    { id: 'nec-2020', clause: '694.12(A)(3), the same rule for the input of a stand-alone inverter' },
    { id: 'nec-2017', clause: 'the same rules under their older numbers' },
    { id: 'kuphaldt-dc', clause: 'chapter 10' },
    { id: 'nec-240-4-d-aluminium', clause: '240.4(D), aluminium rows' },
    { id: 'common-practice' },
  ],
});

const columnOf = (choice: In['insulation'] | In['termination']): AmpacityColumn =>
  Number(choice.slice(1)) as AmpacityColumn;

const cableOf = (given: In) => ({
  areaMm2: given.areaMm2,
  runs: given.runs,
  insulation: columnOf(given.insulation),
  termination: columnOf(given.termination),
  ambientC: given.ambientC,
  conductors: given.conductors,
});

/** A label's short-circuit current stands before the one worked out; with neither, nothing is known. */
function shortOf({ packs, packOhms, packShortAmps, fullVolts }: In): Out['shortAmps'] {
  if (packShortAmps !== undefined) return packs * packShortAmps;
  return packOhms === undefined ? undefined : prospectiveAmps(fullVolts, packOhms, packs);
}

function breakingOf({ interruptingAmps, packShortAmps }: In, shortAmps: number | undefined): Out['breaking'] {
  if (shortAmps === undefined || interruptingAmps === undefined) return 'notChecked';
  if (interruptingAmps < shortAmps) return 'cannot';
  return packShortAmps === undefined && interruptingAmps < breakTimes * shortAmps ? 'close' : 'breaks';
}
