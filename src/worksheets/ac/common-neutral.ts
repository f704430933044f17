import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { ampacityOf, usableAmps } from '../tables/ampacity.ts';
import { type AmpacityColumn, ampacitySizesMm2, type ConductorMetal } from '../tables/nec-310-16.ts';
import { ratingAtMost, smallConductorCap } from '../tables/standard-ratings.ts';

export interface NeutralInPlace {
  areaMm2: number;
  metal: ConductorMetal;
  insulation: AmpacityColumn;
  termination: AmpacityColumn;
  ambientC: number;
  conductors: number;
}

/**
 * What a neutral may carry for good [A]: its ampacity, and on 14 to 10 AWG no more than the protection those may have,
 * since nothing stands in it that would trip. `undefined` where the table has no row or the place is too hot.
 */
export function neutralGoodFor(place: NeutralInPlace): number | undefined {
  const found = ampacityOf(place);
  if (!found) return undefined;
  return Math.min(
    usableAmps(found),
    smallConductorCap(place.areaMm2, place.metal) ?? Number.POSITIVE_INFINITY,
  );
}

/**
 * The most that a neutral shared by two hots in step can be asked for [A]: both breakers full, since neither trips
 * before its own rating; a source that gives less sets the end.
 */
export const commonNeutralAmps = (
  breaker1Amps: number,
  breaker2Amps: number,
  sourceAmps: number | undefined,
): number => Math.min(breaker1Amps + breaker2Amps, sourceAmps ?? Number.POSITIVE_INFINITY);

export const commonNeutral = defineWorksheet({
  id: 'common-neutral',
  group: 'ac',
  hazards: ['neutral-open', 'ac-shock'],
  inputs: {
    breaker1Amps: { kind: 'current', min: 1, max: 400 },
    breaker2Amps: { kind: 'current', min: 1, max: 400 },
    sourceAmps: { kind: 'current', min: 1, max: 1000, optional: true, from: ['derived.commonAmps'] },
    areaMm2: { kind: 'wireSize', min: 1, max: 260, from: ['outputFeeder.areaMm2'] },
    metal: { options: ['copper', 'aluminium'], default: 'copper' },
    insulation: { options: ['60', '75', '90'], default: '75' },
    termination: { options: ['60', '75'], default: '60' },
    ambientC: {
      kind: 'temperature',
      min: -40,
      max: 80,
      default: 30,
      signed: true,
      from: ['climate.usualHighC'],
    },
    conductors: { kind: 'count', min: 3, max: 60, default: 3 },
    codeBasis: { options: ['us-nec', 'iec', 'other'], default: 'us-nec', from: ['codeBasis'] },
  },
  outputs: {
    verdict: { verdicts: ['within', 'over', 'notChecked'], headline: true },
    neutralAmps: { kind: 'current', headline: true },
    goodForAmps: { kind: 'current', headline: true },
    opposedAmps: { kind: 'current' },
    needMm2: { kind: 'wireSize' },
    mostEachAmps: { kind: 'current' },
    heatTimes: { kind: 'count', decimals: 1 },
  },
  compute(given) {
    const { areaMm2, metal, ambientC, conductors } = given;
    const columns = {
      insulation: Number(given.insulation) as AmpacityColumn,
      termination: Number(given.termination) as AmpacityColumn,
    };
    const neutralAmps = commonNeutralAmps(given.breaker1Amps, given.breaker2Amps, given.sourceAmps);
    const opposedAmps = Math.min(
      Math.max(given.breaker1Amps, given.breaker2Amps),
      given.sourceAmps ?? Number.POSITIVE_INFINITY,
    );
    if (given.codeBasis !== 'us-nec') {
      return give({
        verdict: 'notChecked' as const,
        neutralAmps,
        opposedAmps,
        goodForAmps: undefined,
        needMm2: undefined,
        mostEachAmps: undefined,
        heatTimes: (neutralAmps / opposedAmps) ** 2,
      });
    }
    const goodFor = (size: number) =>
      neutralGoodFor({ areaMm2: size, metal, ambientC, conductors, ...columns });
    const goodForAmps = goodFor(areaMm2);
    if (goodForAmps === undefined) return refuse('worksheet.common-neutral.noRow', { areaMm2, ambientC });
    return give({
      verdict: neutralAmps > goodForAmps ? ('over' as const) : ('within' as const),
      neutralAmps,
      opposedAmps,
      goodForAmps,
      needMm2: ampacitySizesMm2(metal).find((size) => (goodFor(size) ?? 0) >= neutralAmps),
      mostEachAmps: ratingAtMost(goodForAmps / 2, '2023', 'breaker'),
      heatTimes: (neutralAmps / opposedAmps) ** 2,
    });
  },
  working(given, out) {
    return [
      say(
        given.sourceAmps !== undefined && given.sourceAmps <= out.neutralAmps! ? 'source' : 'sum',
        given,
        out,
      ),
      say('opposed', given, out),
      say('heat', given, out),
      ...(out.goodForAmps === undefined
        ? []
        : [say('good', given, out), say('half', given, out, { halfAmps: out.goodForAmps / 2 })]),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...(out.verdict === 'over' && out.needMm2 !== undefined ? ['resize'] : []),
      ...(out.verdict === 'over' && out.needMm2 === undefined ? ['noSize'] : []),
      ...(out.verdict === 'over' && out.mostEachAmps !== undefined ? ['smaller'] : []),
      'nothingTrips',
    ];
    return ids.map((id) => say(`worksheet.common-neutral.${id}`, given, out));
  },
  sources: [
    {
      id: 'nec-2023',
      clause: 'Table 310.16, Table 310.15(B)(1)(1), Table 310.15(C)(1), 110.14(C), 240.4(D), 240.6(A)',
    },
    { id: 'nec-240-4-d-aluminium', clause: '240.4(D), aluminium rows' },
    { id: 'common-practice' },
  ],
});
