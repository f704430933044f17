import { describe, expect, it } from 'vitest';
import { heatRise } from '../../src/worksheets/heat/heat-rise.ts';

type In = Parameters<typeof heatRise.compute>[0];

const usual: In = {
  acWatts: 3000,
  efficiency: 0.93,
  idleWatts: 100,
  chargeWatts: 0,
  chargeEfficiency: 0.95,
  altitudeM: 0,
  inletC: 20,
  airflowM3s: 0.033,
  allowedRiseC: 15,
};

function outOf(change: Partial<In>) {
  const result = heatRise.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('heat and the air that carries it off', () => {
  it('turns idle draw whole into heat, and conversion in part', () => {
    expect(outOf({ acWatts: 0 }).lossWatts).toBe(100);
    expect(outOf({}).lossWatts).toBeCloseTo(325.8, 1);
    expect(outOf({ chargeWatts: 1900 }).lossWatts).toBeCloseTo(425.8, 1);
  });

  it('lets the needed air make the allowed rise', () => {
    const { neededM3s } = outOf({});
    expect(outOf({ airflowM3s: neededM3s! }).riseC).toBeCloseTo(15, 9);
  });

  it('expects more rise in thin air: 14 Q in place of 20 Q at 3150 m', () => {
    const sea = outOf({});
    const high = outOf({ altitudeM: 3150 });
    expect(sea.riseC! / high.riseC!).toBeCloseTo(0.68, 1);
    expect(325.8 / (high.riseC! * 0.033 * 60)).toBeCloseTo(13.7, 0);
    expect(high.seaLevelRiseC).toBeCloseTo(sea.riseC!, 1);
  });

  it('gives no rise where the airflow is not known, and still the air it needs', () => {
    const out = outOf({ airflowM3s: undefined });
    expect(out.riseC).toBeUndefined();
    expect(out.outletC).toBeUndefined();
    expect(out.neededM3s).toBeGreaterThan(0);
  });

  it('says that a rule made for sea level misleads up here, and only here', () => {
    const ids = (altitudeM: number) =>
      heatRise.remarks!({ ...usual, altitudeM }, outOf({ altitudeM })).map(({ id }) => id);
    expect(ids(3150)).toContain('worksheet.heat-rise.thinAir');
    expect(ids(40)).not.toContain('worksheet.heat-rise.thinAir');
  });
});
