import { describe, expect, it } from 'vitest';
import type { ExpectContext } from '../../src/expected/context.ts';
import { scales, works } from '../../src/expected/index.ts';
import { questions } from '../../src/guide/questions.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';

const context = (
  sheet: SiteSheet,
  readings: Record<string, number> = {},
  outcomes: Record<string, string> = {},
): ExpectContext => ({ sheet, readings, outcomes });

function bandOf(id: string, given: ExpectContext) {
  const built = scales[id]!.build(given);
  if (!built.ok) throw new Error(`${id} needs ${built.missing.join()}`);
  return built.scale;
}
/** Upper end of a zone. */
const top = (id: string, zone: string, given: ExpectContext) =>
  bandOf(id, given).zones.find((each) => each.id === zone)!.max!;
const worked = (id: string, given: ExpectContext) => {
  const result = works[id]!.work(given);
  if (!result.ok) throw new Error(`${id} needs ${result.missing.join()}`);
  return result;
};
const inverter = (sheet: SiteSheet, change: Partial<SiteSheet['inverter']>): SiteSheet => ({
  ...sheet,
  inverter: { ...sheet.inverter, ...change },
});

describe('air at the outlet', () => {
  // 3 kW at 93 % and 100 W idle: 325.8 W. Air at 1200 ft and 30 °C: 1.1148 kg/m³. 70 cfm: 0.03304 m³/s.
  const at = context(sallowCreek, { 'numbers.watts': 3000, 'numbers.charge': 0, 'inlet-air.air': 30 });

  it('stands where heat, airflow and height put it: 8.8 °C over the inlet', () => {
    expect(bandOf('heat-outlet', at).nominal).toBeCloseTo(30 + 325.8 / (1.1148 * 1006 * 0.033036), 1);
  });

  it('allows for fans and efficiency, and not for a third of the air', () => {
    const high = top('heat-outlet', 'ok', at);
    expect(high).toBeGreaterThan(30 + 8.8 * 1.6);
    expect(high).toBeLessThan(30 + 8.8 * 3 - 3);
  });

  it('expects half as much again at 3150 m, where a rule for sea level would cry dust', () => {
    const high = context({ ...sallowCreek, altitudeM: 3150 }, at.readings);
    const rise = (given: ExpectContext) => bandOf('heat-outlet', given).nominal! - 30;
    expect(rise(high) / rise(at)).toBeCloseTo(1.39, 1);
  });

  it('asks for the height where the sheet does not know it', () => {
    const built = scales['heat-outlet']!.build(context({ ...sallowCreek, altitudeM: null }, at.readings));
    expect(built).toEqual({ ok: false, missing: ['altitudeM'] });
  });

  it('does without the airflow, more coarsely, and never under 10 °C', () => {
    const light = context(ternLedge, { 'numbers.watts': 100, 'inlet-air.air': 30 });
    expect(top('heat-outlet', 'ok', light)).toBeCloseTo(43, 6);
    const full = context(ternLedge, { 'numbers.watts': 3000, 'inlet-air.air': 30 });
    expect(top('heat-outlet', 'ok', full)).toBeGreaterThan(50);
  });

  it('counts charge as work, and takes the latest load', () => {
    const charging = context(sallowCreek, { ...at.readings, 'numbers.charge': 60 });
    expect(bandOf('heat-outlet', charging).nominal!).toBeGreaterThan(bandOf('heat-outlet', at).nominal!);
    const rested = context(sallowCreek, { ...at.readings, 'eased.watts': 0, 'eased.charge': 0 });
    expect(bandOf('heat-outlet', rested).nominal!).toBeCloseTo(30 + (8.79 * 100) / 325.8, 1);
  });
});

describe('air at the inlet', () => {
  it('stands within 5 °C of the room where nothing blows on it', () => {
    expect(top('heat-inlet', 'as-room', context(sallowCreek, { 'room-air.air': 25 }))).toBe(30);
  });

  it('is judged in a stack against the exhaust below, and cannot be hotter than that', () => {
    const stacked = context(sallowCreek, { 'room-air.air': 25, 'below-outlet.air': 40 });
    expect(top('heat-inlet', 'as-room', stacked)).toBeCloseTo(30, 9);
    expect(top('heat-inlet', 'warmer', stacked)).toBe(45);
    const light = context(sallowCreek, { 'room-air.air': 25, 'below-outlet.air': 28 });
    expect(top('heat-inlet', 'as-room', light)).toBe(28);
  });

  it('is judged on the room of the re-test once that is read', () => {
    const again = context(sallowCreek, { 'room-air.air': 45, 'retest-room.air': 30 });
    expect(top('heat-inlet', 'as-room', again)).toBe(35);
  });
});

describe('what the fans are asked', () => {
  const asked = (sheet: SiteSheet, watts: number, charge = 0) =>
    worked('heat-normal', context(sheet, { 'numbers.watts': watts, 'numbers.charge': charge })).outcome;

  it('follows the rule of the sheet', () => {
    const byLoad = inverter(sallowCreek, { fanRule: 'load' });
    expect(asked(byLoad, 3000)).toBe('load-asks');
    expect(asked(byLoad, 1200)).toBe('should-rest');
    expect(asked(byLoad, 1200, 40)).toBe('charge-asks');
    expect(asked(sallowCreek, 1200)).toBe('heat-decides');
    expect(asked(ternLedge, 3000)).toBe('heat-decides');
    expect(asked(inverter(sallowCreek, { fanRule: 'always' }), 0)).toBe('by-design');
  });

  it('calls nothing at the threshold or without a rule', () => {
    expect(asked(inverter(sallowCreek, { fanRule: 'load' }), 2400)).toBe('not-known');
    expect(asked(inverter(sallowCreek, { fanRule: 'load', fanStartLoad: null }), 5000)).toBe('not-known');
    expect(asked(inverter(sallowCreek, { fanRule: null }), 5000)).toBe('not-known');
  });
});

describe('what silent fans are asked', () => {
  const asked = (sheet: SiteSheet, watts: number, charge = 0, outcomes: Record<string, string> = {}) =>
    worked('heat-silent', context(sheet, { 'numbers.watts': watts, 'numbers.charge': charge }, outcomes))
      .outcome;

  it('are due by the load, whatever the heatsink reads', () => {
    expect(asked(sallowCreek, 3600)).toBe('due');
    expect(asked(sallowCreek, 1200)).toBe('heat-decides');
    expect(asked(inverter(sallowCreek, { fanRule: 'always' }), 0)).toBe('due');
    expect(asked(ternLedge, 3000)).toBe('heat-decides');
  });

  it('are not condemned at the threshold, below it, or without a rule', () => {
    const byLoad = inverter(sallowCreek, { fanRule: 'load' });
    expect(asked(byLoad, 2400)).toBe('not-asked');
    expect(asked(byLoad, 1200)).toBe('not-asked');
    expect(asked(inverter(sallowCreek, { fanRule: null }), 5000)).toBe('heat-decides');
  });

  it('are not asked by loads that a generator may carry', () => {
    expect(asked(sallowCreek, 3600, 10, { 'charge-from': 'ac-source' })).toBe('heat-decides');
    expect(asked(sallowCreek, 0, 60, { 'charge-from': 'ac-source' })).toBe('due');
  });
});

describe('height', () => {
  const at = (altitudeM: number, watts: number, fullPowerToM: number | null) =>
    worked(
      'heat-height',
      context({ ...inverter(sallowCreek, { fullPowerToM }), altitudeM }, { 'numbers.watts': watts }),
    ).outcome;

  it('takes 1 % for each 100 m over the label’s height', () => {
    expect(at(2600, 5800, 2000)).toBe('over-derated');
    expect(at(2600, 5500, 2000)).toBe('within');
    expect(at(1900, 6000, 2000)).toBe('within');
  });

  it('condemns nothing where the label is not known', () => {
    expect(at(2600, 6000, null)).toBe('not-known');
    expect(at(900, 6000, null)).toBe('within');
  });
});

describe('the load of a re-test', () => {
  const least = (sheet: SiteSheet, readings: Record<string, number>) =>
    top('heat-output-again', 'lighter', context(sheet, readings));

  it('is nine tenths of what was there when it failed', () => {
    expect(least(sallowCreek, { 'numbers.watts': 3000 })).toBeCloseTo(2700, 9);
    expect(least(sallowCreek, { 'numbers.watts': 0 })).toBeLessThan(0);
  });

  it('is never over what the height leaves: 6 kW at 3150 m, full to 2000 m, leaves 5310 W', () => {
    const high = { ...inverter(sallowCreek, { fullPowerToM: 2000 }), altitudeM: 3150 };
    expect(least(high, { 'numbers.watts': 6000 })).toBeCloseTo(0.9 * 5310, 6);
    expect(least(high, { 'numbers.watts': 3000 })).toBeCloseTo(2700, 9);
  });

  it('is milder for no height whose label is not known', () => {
    const high = { ...inverter(sallowCreek, { fullPowerToM: null }), altitudeM: 3150 };
    expect(least(high, { 'numbers.watts': 6000 })).toBeCloseTo(5400, 9);
  });

  it('is what label and height allow where it was never read', () => {
    expect(least(sallowCreek, {})).toBeCloseTo(5400, 9);
    const built = bandOf('heat-output-again', context(sallowCreek));
    expect(built.why[0]!.id).toBe('expected.heat.outputAgainNotRead');
  });
});

describe('what idle costs', () => {
  it('is 2.4 kWh a day for 100 W: 600 W of array at 4 h of sun, 480 W at 5, no losses', () => {
    const { outcome, says } = worked('heat-idle', context(sallowCreek));
    const params = says[1]!.params!;
    expect(outcome).toBe('counted');
    expect(Number(params.dayJoules) / 3.6e6).toBeCloseTo(2.4, 9);
    expect(params.lossless4).toBeCloseTo(600, 9);
    expect(params.lossless5).toBeCloseTo(480, 9);
    expect(params.eaten4).toBeCloseTo(750, 9);
    expect(params.eaten5).toBeCloseTo(600, 9);
  });

  it('counts every unit, and says so when the figure is only usual', () => {
    const { outcome, says } = worked(
      'heat-idle',
      context({ ...inverter(sallowCreek, { idleW: null }), parallelUnits: 2 }),
    );
    expect(outcome).toBe('assumed');
    expect(says[0]!.params!.watts).toBeCloseTo(180, 9);
  });
});

describe('amps between units', () => {
  it('cancel to a third of one unit’s, and to an ampere at least', () => {
    expect(top('heat-together', 'cancels', context(sallowCreek, { 'clamp-one.largest': 6 }))).toBe(2);
    expect(top('heat-together', 'cancels', context(sallowCreek, { 'clamp-one.largest': 1.5 }))).toBe(1);
  });
});

describe('“all in band”', () => {
  const answer = (id: string, outcomes: Record<string, string>) =>
    questions[id]!.decide(context(sallowCreek, {}, outcomes));
  const all = {
    'room-air': 'ok',
    'inlet-air': 'as-room',
    'outlet-air': 'ok',
    'fans-turn': 'all-blow',
    'twin-heat': 'cool-enough',
    'joint-heat': 'alike',
  };

  it('asks for every reading', () => {
    expect(answer('heat-all-read', all)).toBe('all-in-band');
    for (const id of Object.keys(all)) {
      const { [id as keyof typeof all]: _, ...less } = all;
      expect(answer('heat-all-read', less), id).toBe('not-all');
    }
  });

  it('takes the strip of tissue for an inlet too close to call', () => {
    const seen = { ...all, 'inlet-air': 'undetermined' };
    expect(answer('heat-air-read', seen)).toBe('not-all');
    expect(answer('heat-air-read', { ...seen, 'air-path': 'free' })).toBe('all-in-band');
  });

  it('takes the strip for no inlet that was read hot, or not read', () => {
    const { 'inlet-air': _, ...unread } = all;
    for (const inlet of ['warmer', 'hotter-than-exhaust', 'cant', 'unsure'])
      expect(answer('heat-all-read', { ...all, 'inlet-air': inlet, 'air-path': 'free' }), inlet).toBe(
        'not-all',
      );
    expect(answer('heat-all-read', { ...unread, 'air-path': 'free' })).toBe('not-all');
  });

  it('calls an inlet at the label’s limit from the latest reading', () => {
    const limit = (readings: Record<string, number>) =>
      questions['heat-inlet-limit']!.decide(context(sallowCreek, readings));
    expect(limit({})).toBe('not-read');
    expect(limit({ 'inlet-air.air': 44.9 })).toBe('below');
    expect(limit({ 'inlet-air.air': 45 })).toBe('at-limit');
    expect(limit({ 'inlet-air.air': 47, 'retest-inlet.air': 38 })).toBe('below');
  });
});
