import { metricAreasMm2 } from '../../quantity/wire.ts';
import { defineWorksheet, type Plot, type ResultsOf, type ValuesOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { type AmpacityColumn, ampacitySizesMm2 } from '../tables/nec-310-16.ts';
import { conductorMetal, type RunLoss, runLoss, yearOfHeatJ } from './run-loss.ts';
import { codeAmps, conductorRules, editionOf, smallestSizes } from './string-amps.ts';

const joulesPerKwh = 3.6e6;

const inputs = {
  impAmps: { kind: 'current', min: 0.1, max: 200, from: ['derived.stringImpA'] },
  iscAmps: { kind: 'current', min: 0.1, max: 250, from: ['derived.stringIscA'] },
  volts: { kind: 'voltage', min: 10, max: 1500, from: ['derived.stringVmpRatedV'] },
  lengthM: { kind: 'length', min: 0.5, max: 1000, from: ['string.lengthM'] },
  areaMm2: { kind: 'wireSize', min: 2, max: 260, from: ['string.areaMm2'] },
  metal: { options: ['plain', 'tinned', 'aluminium'], default: 'plain' },
  insulation: { options: ['c75', 'c90'], default: 'c90' },
  termination: { options: ['c60', 'c75', 'c90'], default: 'c75' },
  earthC: { kind: 'temperature', min: -20, max: 60, default: 25, signed: true },
  conductors: { kind: 'count', min: 2, max: 60, default: 2 },
  basis: {
    options: ['nec-2023', 'nec-2020', 'nec-2017', 'other'],
    default: 'nec-2023',
    from: ['derived.necBasis'],
  },
  dropLimit: { kind: 'ratio', min: 0.002, max: 0.1, default: 0.02 },
  sunS: { kind: 'time', min: 100 * 3600, max: 3000 * 3600, default: 1500 * 3600, unit: 'h' },
  squareShare: { kind: 'ratio', min: 0.3, max: 1, default: 0.65 },
  price: { kind: 'money', min: 0, max: 100, optional: true },
} as const;

const outputs = {
  verdict: { verdicts: ['fits', 'tooSmall', 'dropHigh', 'dropHighNotChecked', 'notChecked'], headline: true },
  dropVolts: { kind: 'voltage', headline: true },
  dropShare: { kind: 'ratio', headline: true },
  conductorC: { kind: 'temperature' },
  ohms: { kind: 'resistance' },
  heatWatts: { kind: 'power' },
  heatYearJ: { kind: 'energy', headline: true },
  heatShare: { kind: 'ratio' },
  costYear: { kind: 'money' },
  correctedAmps: { kind: 'current' },
  plainAmps: { kind: 'current' },
  codeMm2: { kind: 'wireSize' },
  dropMm2: { kind: 'wireSize' },
  smallestMm2: { kind: 'wireSize', headline: true },
  nextMm2: { kind: 'wireSize' },
  savesYearJ: { kind: 'energy' },
  savesMoney: { kind: 'money' },
} as const;

type In = ValuesOf<typeof inputs>;
type Out = ResultsOf<typeof outputs>;

const columnOf = (choice: In['termination']): AmpacityColumn => Number(choice.slice(1)) as AmpacityColumn;

const runOf = (given: In) => ({
  amps: given.impAmps,
  lengthM: given.lengthM,
  areaMm2: given.areaMm2,
  metal: given.metal,
  insulation: columnOf(given.insulation),
  ambientC: given.earthC,
});

const placeOf = (given: In) => ({
  metal: conductorMetal(given.metal),
  insulation: columnOf(given.insulation),
  termination: columnOf(given.termination),
  ambientC: given.earthC,
  conductors: given.conductors,
});

/** The run as one source: its amps are already those of all strings on it. */
const codeAmpsOf = ({ iscAmps }: In) => codeAmps(iscAmps, 1);

const yearJ = (given: In, { heatWatts }: RunLoss): number =>
  yearOfHeatJ(heatWatts, given.sunS, given.squareShare);

export const pvRun = defineWorksheet({
  id: 'pv-run',
  group: 'pv',
  hazards: ['pv-live-in-light'],
  inputs,
  outputs,
  compute(given) {
    if (given.impAmps >= given.iscAmps) return refuse('worksheet.pv-run.impAboveIsc');
    const loss = runLoss(runOf(given));
    if (!loss) return refuse('worksheet.pv-run.noRow', { areaMm2: given.areaMm2 });
    if (loss.dropVolts >= given.volts) {
      return refuse('worksheet.pv-run.moreThanAll', { dropVolts: loss.dropVolts, volts: given.volts });
    }
    const nec = editionOf(given.basis) !== undefined;
    const sizes = nec ? ampacitySizesMm2(conductorMetal(given.metal)) : metricAreasMm2;
    const lossAt = (areaMm2: number): RunLoss | undefined => runLoss({ ...runOf(given), areaMm2 });
    const dropMm2 = sizes.find(
      (area) => (lossAt(area)?.dropVolts ?? Infinity) <= given.dropLimit * given.volts,
    );
    const nextMm2 = sizes.find((area) => area > 1.01 * given.areaMm2);
    const nextLoss = nextMm2 === undefined ? undefined : lossAt(nextMm2);
    const rules = nec
      ? conductorRules(codeAmpsOf(given), { ...placeOf(given), areaMm2: given.areaMm2 })
      : undefined;
    const codeMm2 = nec
      ? smallestSizes(codeAmpsOf(given), placeOf(given), undefined).protectedMm2
      : undefined;
    const heatYearJ = yearJ(given, loss);
    const savesYearJ = nextLoss && heatYearJ - yearJ(given, nextLoss);
    const dropShare = loss.dropVolts / given.volts;
    const high = dropShare > given.dropLimit;
    return give({
      verdict: nec
        ? !rules?.meetsPlain || !rules.meetsCorrected
          ? ('tooSmall' as const)
          : high
            ? ('dropHigh' as const)
            : ('fits' as const)
        : high
          ? ('dropHighNotChecked' as const)
          : ('notChecked' as const),
      dropVolts: loss.dropVolts,
      dropShare,
      conductorC: loss.conductorC,
      ohms: loss.ohms,
      heatWatts: loss.heatWatts,
      heatYearJ,
      heatShare: heatYearJ / (given.impAmps * given.volts * given.sunS),
      costYear: given.price === undefined ? undefined : (given.price * heatYearJ) / joulesPerKwh,
      correctedAmps: rules?.ampacity.correctedAmps,
      plainAmps: rules?.plainAmps,
      codeMm2,
      dropMm2,
      smallestMm2:
        dropMm2 === undefined || (nec && codeMm2 === undefined) ? undefined : Math.max(dropMm2, codeMm2 ?? 0),
      nextMm2,
      savesYearJ,
      savesMoney:
        given.price === undefined || savesYearJ === undefined
          ? undefined
          : (given.price * savesYearJ) / joulesPerKwh,
    });
  },
  working(given, out) {
    const { maximumAmps, ratedAmps } = codeAmpsOf(given);
    const loss = runLoss(runOf(given));
    return [
      ...(loss ? [say('ohms', given, out, loss)] : []),
      say('drop', given, out),
      say('share', given, out),
      say('heat', given, out),
      say('year', given, out),
      say('heatShare', given, out),
      ...(out.costYear === undefined ? [] : [say('cost', given, out)]),
      ...(out.plainAmps === undefined || out.correctedAmps === undefined
        ? []
        : [say('ampacity', given, out, { maximumAmps, ratedAmps })]),
      ...(out.smallestMm2 === undefined || out.dropMm2 === undefined ? [] : [smallestLine(given, out)]),
    ];
  },
  remarks(given, out) {
    const { maximumAmps, ratedAmps } = codeAmpsOf(given);
    const nextId = out.savesMoney === undefined ? 'next' : 'nextMoney';
    const ids = [
      out.verdict === 'tooSmall' && out.plainAmps === undefined ? 'tooHot' : out.verdict,
      ...(out.smallestMm2 === undefined
        ? ['noSize']
        : out.smallestMm2 > 1.01 * given.areaMm2
          ? ['larger']
          : []),
      ...(out.savesYearJ === undefined ? [] : [nextId]),
      ...(given.metal === 'aluminium' ? ['aluminium'] : []),
      'trench',
      ...(given.basis === 'other' ? [] : [given.basis]),
    ];
    return ids.map((id) => say(`worksheet.pv-run.${id}`, given, out, { maximumAmps, ratedAmps }));
  },
  plot(given, out): Plot | undefined {
    const most = Math.max(3 * given.dropLimit, 1.2 * (out.dropShare ?? 0));
    const curve = (id: string, metal: In['metal']) => {
      const points = ampacitySizesMm2(conductorMetal(metal)).flatMap((areaMm2) => {
        const loss = runLoss({ ...runOf(given), areaMm2, metal });
        const share = loss && loss.dropVolts / given.volts;
        return share !== undefined && share <= most ? [[areaMm2, share] as const] : [];
      });
      return points.length < 2 ? [] : [{ id, points }];
    };
    const curves = [
      ...curve('copper', given.metal === 'tinned' ? 'tinned' : 'plain'),
      ...curve('aluminium', 'aluminium'),
    ];
    if (curves.length === 0) return undefined;
    // Past a third of the limit more metal changes little: no need to draw it.
    const enough = curves.flatMap(({ points }) => points.filter(([, share]) => share >= given.dropLimit / 3));
    const high = Math.max(1.5 * given.areaMm2, ...enough.map(([area]) => area));
    return {
      x: { kind: 'area', low: 0, high },
      y: { kind: 'ratio', low: 0, high: most },
      curves: curves.map(({ id, points }) => ({ id, points: points.filter(([area]) => area <= high) })),
      levels: [{ id: 'limit', axis: 'y', at: given.dropLimit }],
      marks: [{ id: 'here', x: given.areaMm2, y: out.dropShare! }],
    };
  },
  sources: [
    { id: 'nec-2023', clause: 'Chapter 9 Table 8, Table 310.16, 690.8(B), 215.2 informational note (drop)' },
    { id: 'iec-60228-2004', clause: 'Tables 2 and 3' },
    { id: 'iec-60228-2004-al' },
    { id: 'kuphaldt-dc', clause: 'chapter 2' },
    { id: 'common-practice' },
  ],
});

const smallestLine = (given: In, out: Out) =>
  out.codeMm2 === undefined ? say('smallestDrop', given, out) : say('smallest', given, out);
