import { defineWorksheet, type Plot, type ResultsOf, type ValuesOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { cellFromBackC, cellTempsOf, spreadOf } from './cell-temp.ts';
import { moduleNow, thermalVolts } from './module-now.ts';

/** Strings agree with each other and with what is expected within this share. IEC 62446-1 practice. */
const agreeShare = 0.05;
/** A guess of the light by eye is no better than this. Common practice. */
const byEyeShare = 0.3;
/** An irradiance meter or a reference module in the same plane. Common practice. */
const byMeterShare = 0.05;

const inputs = {
  vocVolts: { kind: 'voltage', min: 5, max: 200, from: ['string.vocV'] },
  vmpVolts: { kind: 'voltage', min: 5, max: 200, from: ['string.vmpV'] },
  iscAmps: { kind: 'current', min: 0.1, max: 30, from: ['string.iscA'] },
  impAmps: { kind: 'current', min: 0.1, max: 30, from: ['string.impA'] },
  vocPerC: {
    kind: 'temperatureCoefficient',
    min: -0.006,
    max: -0.0005,
    signed: true,
    from: ['string.vocPerC'],
  },
  vmpPerC: {
    kind: 'temperatureCoefficient',
    min: -0.008,
    max: -0.0005,
    signed: true,
    from: ['string.vmpPerC', 'string.pmaxPerC'],
  },
  iscPerC: {
    kind: 'temperatureCoefficient',
    min: -0.001,
    max: 0.002,
    default: 0.0005,
    signed: true,
    from: ['string.iscPerC'],
  },
  cells: { kind: 'count', min: 8, max: 240, default: 60 },
  modules: { kind: 'count', min: 1, max: 40, from: ['string.modulesInSeries'] },
  strings: { kind: 'count', min: 1, max: 12, default: 1, from: ['string.parallel'] },
  irradiance: { kind: 'irradiance', min: 100, max: 1500, default: 800 },
  lightBy: { options: ['meter', 'eye'], default: 'eye' },
  airC: { kind: 'temperature', min: -50, max: 55, signed: true, from: ['climate.usualHighC'] },
  windMs: { kind: 'speed', min: 0, max: 30, default: 1 },
  mounting: {
    options: ['open-rack', 'roof-gap', 'roof-flush'],
    default: 'roof-gap',
    from: ['string.mounting'],
  },
  backC: { kind: 'temperature', min: -50, max: 110, signed: true, optional: true },
  readOpenVolts: { kind: 'voltage', min: 0, max: 1500, optional: true },
  readVolts: { kind: 'voltage', min: 0, max: 1500, optional: true },
  readAmps: { kind: 'current', min: 0, max: 400, optional: true },
} as const;

const outputs = {
  verdict: {
    verdicts: [
      'noReading',
      'asExpected',
      'openLow',
      'openHigh',
      'heldBack',
      'workingLow',
      'workingHigh',
      'ampsLow',
      'ampsHigh',
    ],
    headline: true,
  },
  openVolts: { kind: 'voltage', headline: true },
  openLowVolts: { kind: 'voltage' },
  openHighVolts: { kind: 'voltage' },
  workVolts: { kind: 'voltage', headline: true },
  workLowVolts: { kind: 'voltage' },
  workHighVolts: { kind: 'voltage' },
  workAmps: { kind: 'current', headline: true },
  workLowAmps: { kind: 'current' },
  workHighAmps: { kind: 'current' },
  shortAmps: { kind: 'current' },
  watts: { kind: 'power', headline: true },
  cellC: { kind: 'temperature' },
  cellLowC: { kind: 'temperature' },
  cellHighC: { kind: 'temperature' },
  missingModules: { kind: 'count', decimals: 1 },
} as const;

type In = ValuesOf<typeof inputs>;
type Out = ResultsOf<typeof outputs>;

/** The usual module, whose NOCT the models that ask for it are given: the label rarely prints it on the back. */
const usualModule = { noctC: 45, efficiency: 0.2 };
/** A probe taped to the back of one module against the mean of the string's cells. Common practice. */
const backErrorC = 4;

function cellsNow(given: In): { coolestC: number; likelyC: number; hottestC: number } {
  if (given.backC !== undefined) {
    const likelyC = cellFromBackC(given.backC, given.irradiance, given.mounting);
    return { coolestC: likelyC - backErrorC, likelyC, hottestC: likelyC + backErrorC };
  }
  return spreadOf(cellTempsOf(given, { ...usualModule, mounting: given.mounting }));
}

export const pvNow = defineWorksheet({
  id: 'pv-now',
  group: 'pv',
  hazards: ['pv-shock', 'pv-arc'],
  inputs,
  outputs,
  compute(given) {
    if (given.vmpVolts >= given.vocVolts) return refuse('worksheet.pv-now.vmpAboveVoc');
    if (given.impAmps >= given.iscAmps) return refuse('worksheet.pv-now.impAboveIsc');
    const { coolestC, likelyC, hottestC } = cellsNow(given);
    const lightShare = given.lightBy === 'meter' ? byMeterShare : byEyeShare;
    const at = (irradiance: number, cellC: number) => moduleNow(given, irradiance, cellC);
    const likely = at(given.irradiance, likelyC);
    const brightest = at(given.irradiance * (1 + lightShare), coolestC);
    const dimmest = at(given.irradiance * (1 - lightShare), hottestC);
    const { modules, strings } = given;
    if (dimmest.vocVolts <= 0 || dimmest.vmpVolts <= 0) return refuse('worksheet.pv-now.noVolts');
    const bands = {
      openVolts: modules * likely.vocVolts,
      openLowVolts: (1 - agreeShare) * modules * dimmest.vocVolts,
      openHighVolts: (1 + agreeShare) * modules * brightest.vocVolts,
      workVolts: modules * likely.vmpVolts,
      workLowVolts: (1 - agreeShare) * modules * dimmest.vmpVolts,
      workHighVolts: (1 + agreeShare) * modules * brightest.vmpVolts,
      workAmps: strings * likely.impAmps,
      workLowAmps: (1 - agreeShare) * strings * dimmest.impAmps,
      workHighAmps: (1 + agreeShare) * strings * brightest.impAmps,
    };
    return give({
      ...bands,
      verdict: verdictOf(given, bands),
      shortAmps: strings * likely.iscAmps,
      watts: bands.workVolts * bands.workAmps,
      cellC: likelyC,
      cellLowC: coolestC,
      cellHighC: hottestC,
      missingModules:
        given.readOpenVolts === undefined ? undefined : modules - given.readOpenVolts / likely.vocVolts,
    });
  },
  working(given, out) {
    const suns = given.irradiance / 1000;
    const cellC = out.cellC ?? 25;
    return [
      given.backC === undefined
        ? say('cellModels', given, out)
        : say('cellBack', given, out, { deltaC: cellC - given.backC }),
      say('open', given, out, { suns, thermalVolts: thermalVolts(given.cells, cellC) }),
      say('work', given, out),
      say('amps', given, out, { suns }),
      say('watts', given, out),
      say('bands', given, out, {
        agreeShare,
        lightShare: given.lightBy === 'meter' ? byMeterShare : byEyeShare,
      }),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...(out.verdict === 'openLow'
        ? [(out.missingModules ?? 0) > 0.6 ? 'wholeModules' : 'lessThanOne']
        : []),
      ...(given.lightBy === 'eye' ? ['byEye'] : []),
      'sameMinute',
    ];
    return ids.map((id) => say(`worksheet.pv-now.${id}`, given, out));
  },
  plot(given, out): Plot {
    const cellC = out.cellC ?? 25;
    const steps = Array.from({ length: 29 }, (_, step) => 100 + step * 50);
    const top = Math.max(1200, given.irradiance);
    const drawn = steps.filter((each) => each <= top);
    const line = (pick: (now: ReturnType<typeof moduleNow>) => number) =>
      drawn.map((irradiance) => [irradiance, pick(moduleNow(given, irradiance, cellC))] as const);
    const open = line((now) => given.modules * now.vocVolts);
    return {
      x: { kind: 'irradiance', low: 0, high: top },
      y: {
        kind: 'voltage',
        low: 0,
        high: 1.05 * Math.max(...open.map(([, volts]) => volts), out.openHighVolts!),
      },
      curves: [
        { id: 'open', points: open },
        { id: 'work', points: line((now) => given.modules * now.vmpVolts) },
      ],
      levels: [],
      marks: [
        { id: 'openNow', x: given.irradiance, y: out.openVolts! },
        { id: 'workNow', x: given.irradiance, y: out.workVolts! },
      ],
    };
  },
  sources: [
    { id: 'sandia-2004-3535', clause: 'amps with the light, volts with its logarithm' },
    { id: 'de-soto-2006' },
    { id: 'iec-62446-1-2016', clause: 'strings within 5 %' },
    { id: 'common-practice' },
  ],
});

/**
 * What the readings say, dead tests first. A working string above its best volts with too few amps is a tracker that
 * holds it back, which is no fault; low volts are judged before low amps, because a low light meter excuses only amps.
 */
function verdictOf(
  given: In,
  bands: Pick<
    Out,
    'openLowVolts' | 'openHighVolts' | 'workLowVolts' | 'workHighVolts' | 'workLowAmps' | 'workHighAmps'
  >,
): Out['verdict'] {
  const { readOpenVolts: open, readVolts: volts, readAmps: amps } = given;
  if (open !== undefined && open < bands.openLowVolts!) return 'openLow';
  if (open !== undefined && open > bands.openHighVolts!) return 'openHigh';
  const ampsLow = amps !== undefined && amps < bands.workLowAmps!;
  if (volts !== undefined && volts > bands.workHighVolts!) return ampsLow ? 'heldBack' : 'workingHigh';
  if (volts !== undefined && volts < bands.workLowVolts!) return 'workingLow';
  if (ampsLow) return 'ampsLow';
  if (amps !== undefined && amps > bands.workHighAmps!) return 'ampsHigh';
  return open === undefined && volts === undefined && amps === undefined ? 'noReading' : 'asExpected';
}
