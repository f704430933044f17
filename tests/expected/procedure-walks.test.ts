import { describe, expect, it } from 'vitest';
import { proceduresById } from '../../machines/index.ts';
import { scales, waits, works } from '../../src/expected/index.ts';
import { compile } from '../../src/guide/compile.ts';
import { flatten } from '../../src/guide/flatten.ts';
import { questions } from '../../src/guide/questions.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { answersSchema, walk } from '../../src/visit/walk.ts';
import {
  type Answers,
  dcPairs,
  isolate,
  neutralProof,
  outputCheck,
  preCharge,
  restore,
  stalled,
  under,
} from '../support/procedure-answers.ts';

function go(id: string, answers: Answers, sheet = sallowCreek, subject?: string) {
  const know = {
    compiled: compile(flatten(proceduresById[id]!, proceduresById)),
    scales,
    works,
    waits,
    questions,
  };
  const result = walk(know, sheet, answersSchema.parse({ ...(subject ? { subject } : {}), answers }));
  return { ...result, last: result.path.at(-1) };
}

describe('isolate', () => {
  it('ends isolated and proved dead', () => {
    expect(go('isolate', isolate)).toMatchObject({
      last: 'isolated-dead',
      problems: [],
      end: { result: 'done', leaves: 'isolated' },
    });
  });

  it('needs no word of a generator where there is none', () => {
    const { path, last } = go('isolate', isolate, ternLedge);
    expect(last).toBe('isolated-dead');
    expect(path).not.toContain('source-stop');
    expect(path).not.toContain('prove-dead--in-dead');
  });

  it('moves no handle on a string that keeps flowing', () => {
    const flows = {
      ...isolate,
      'pv-amps': { largest: '10.9 A' },
      'pv-settle': 'done',
      'pv-flows': 'understood',
    };
    const { path, last } = go('isolate', flows);
    expect(last).toBe('left-guarded');
    expect(path).not.toContain('pv-open');
    expect(path).not.toContain('main-open');
  });

  it('asks for a finer clamp before it calls half an ampere nothing', () => {
    const coarse = {
      ...isolate,
      'pv-amps': [{ largest: '0.3 A' }, { largest: '0.03 A' }],
      'pv-finer': 'again',
    };
    expect(go('isolate', coarse)).toMatchObject({ last: 'isolated-dead', problems: [] });
  });

  it('calls nothing dead that climbs, nor with a tester that fails afterwards', () => {
    const climbs = { ...isolate, 'prove-dead--dc-rise': { later: '2.4' }, 'prove-dead--dc-live': 'steady' };
    expect(go('isolate', climbs).last).toBe('left-guarded');
    const fails = {
      ...isolate,
      'prove-dead--tester-after': { dc: '0.0', ac: '240.3' },
      'prove-dead--tester-failed': 'no-tester',
    };
    expect(go('isolate', fails)).toMatchObject({ last: 'left-isolated', end: { result: 'leftIsolated' } });
  });

  it('bleeds what will not fall, and gives up when it comes back', () => {
    const charged = {
      ...isolate,
      'prove-dead--dc-dead': { ...dcPairs, 'plus-minus-dc': '41.3' },
      'prove-dead--dc-live': 'falling',
      'prove-dead--bleed-ready': 'done',
      'prove-dead--bleed': 'done',
    };
    const { path, last } = go('isolate', charged);
    expect(last).toBe('left-guarded');
    expect(path.filter((step) => step === 'prove-dead--bleed')).not.toHaveLength(0);
  });
});

describe('pre-charge', () => {
  it('closes the main switch on a full rise', () => {
    expect(go('pre-charge', preCharge)).toMatchObject({ last: 'closed', problems: [] });
  });

  it('never closes on a plateau: a load that is not found leaves the switch locked', () => {
    const result = go('pre-charge', { ...stalled, 'find-load': 'not-found', relock: 'locked' });
    expect(result.last).toBe('left-isolated');
    expect(result.path).not.toContain('close-main');
    expect(result.outcomes.find(({ block }) => block === 'fit-stalled')?.outcome).toBe('load');
  });

  it('lets the resistor cool and lock the switch between tries, and stops after two', () => {
    const result = go('pre-charge', {
      ...stalled,
      'find-load': 'found',
      cool: 'done',
      'lock-again': 'locked',
      relock: 'locked',
    });
    expect(result.last).toBe('left-isolated');
    expect(result.path.filter((step) => step === 'cool')).toHaveLength(2);
    expect(result.path.filter((step) => step === 'rise')).toHaveLength(3);
  });

  it('looks for a load where it filled and stopped just short: 50.2 V of 52.8 V is 95.1 %', () => {
    const short = {
      ...stalled,
      s1: { s1: '52.8' },
      sides: { s1: '52.8', s2: '0.1' },
      rise: {
        s2: [
          [1, '45.0'],
          [3, '49.9'],
          [5, '50.2'],
          [8, '50.2'],
        ],
      },
      'find-load': 'not-found',
      relock: 'locked',
    };
    const { path, last } = go('pre-charge', short);
    expect(path).toContain('find-load');
    expect(path).not.toContain('cool');
    expect(last).toBe('left-isolated');
  });

  it('knows a bus that came up and fell again from one that is still rising', () => {
    const fell = {
      ...stalled,
      rise: {
        s2: [
          [1, '45.7'],
          [2, '52.4'],
          [3, '52.7'],
          [4, '44.0'],
        ],
      },
      'find-load': 'not-found',
      relock: 'locked',
    };
    const result = go('pre-charge', fell);
    expect(result.outcomes.find(({ block }) => block === 'fit-stalled')?.outcome).toBe('fell');
    expect(result.path).toContain('find-load');
  });

  it('stops at a reversed battery before anything is clipped on', () => {
    const { path, last } = go('pre-charge', { ...preCharge, s1: { s1: '-53.2' } });
    expect(last).toBe('left-isolated');
    expect(path).not.toContain('unlock');
  });

  it('takes 0 V across for nothing: a bus that stands at battery volts is watched, and a welded switch guarded', () => {
    const welded = { ...preCharge, sides: { s1: '53.2', s2: '53.2' }, 's2-watch': { s2: '53.2' } };
    const { path, last } = go('pre-charge', welded);
    expect(last).toBe('left-guarded');
    expect(path).not.toContain('close-main');
  });

  it('joins no packs that differ by 0.3 V', () => {
    const apart = { ...preCharge, packs: 'off', 'pack-volts': { pack: '53.2', across: '0.30' } };
    const { path, last } = go('pre-charge', apart);
    expect(last).toBe('left-isolated');
    expect(path).not.toContain('pack-close');
  });

  it('opens the switch again when the pack shuts off at the close', () => {
    const gone = { ...preCharge, after: { s2: '0.4' }, 'trip-amps': { amps: '0.1' }, 'trip-open': 'done' };
    expect(go('pre-charge', gone).last).toBe('left-open');
  });
});

describe('restore', () => {
  it('brings everything back in order and shows it to work', () => {
    const result = go('restore', restore);
    expect(result).toMatchObject({
      last: 'restored',
      problems: [],
      end: { result: 'done', leaves: 'restored' },
    });
    const at = (step: string) => result.path.indexOf(step);
    expect(at('pre-charge--close-main')).toBeLessThan(at('pv-close'));
    expect(at('pv-close')).toBeLessThan(at('restore-ac--ac-in-close'));
    expect(at('restore-ac--ac-in-close')).toBeLessThan(at('restore-ac--inverter-on'));
    expect(at('neutral-proof--loaded')).toBeLessThan(at('restore-ac--loads-on'));
  });

  it('leaves PV locked open at night, and the house running', () => {
    const result = go('restore', { ...restore, p1: { lowest: '0.4' }, 'p1-amps': { largest: '0.02 A' } });
    expect(result).toMatchObject({ last: 'left-isolated', problems: [], end: { leaves: 'isolated' } });
    expect(result.path).not.toContain('pv-close');
    expect(result.path.indexOf('p1-amps')).toBeLessThan(result.path.indexOf('restore-ac--inverter-on'));
  });

  it.each([
    ['a shorted or reversed string through a contact that stayed behind', '-0.9', { largest: '9.4 A' }],
    ['a clamp that cannot tell', '0.0', { largest: '0.3 A' }],
    ['no clamp at hand', '0.4', 'cant'],
    ['volts too close to call, with current', '-5.1', { largest: '9.4 A' }],
  ])('closes nothing more on no volts and no proof of no current: %s', (_, lowest, amps) => {
    const result = go('restore', { ...restore, p1: { lowest }, 'p1-amps': amps });
    expect(result).toMatchObject({ last: 'left-guarded', problems: [], end: { result: 'leftGuarded' } });
    expect(result.path.at(-2)).toBe('p1-amps');
    expect(result.path.some((step) => step === 'pv-unlock' || step.startsWith('restore-ac'))).toBe(false);
  });

  it('closes nothing onto a reversed string', () => {
    const result = go('restore', { ...restore, p1: { lowest: '-329' } });
    expect(result.last).toBe('left-guarded');
    expect(result.path).not.toContain('pv-close');
  });

  it('puts no load on legs that see-saw', () => {
    const result = go('restore', {
      ...restore,
      'neutral-proof--loaded': { v12: '240.0', v1: '31.0', v2: '209.0' },
      'neutral-proof--unsound': 'done',
    });
    expect(result.end?.result).toBe('leftGuarded');
    expect(result.path).not.toContain('restore-ac--loads-on');
  });
});

describe('AC output check', () => {
  it('ends sound, with idle worked out', () => {
    const result = go('ac-output-check', { ...outputCheck, ...under('neutral-proof', neutralProof) });
    expect(result).toMatchObject({ last: 'sound', problems: [], end: { leaves: 'restored' } });
    expect(result.outcomes.find(({ block }) => block === 'idle-work')?.outcome).toBe('as-sheet');
  });

  it('reads legs in step at a site where they are in step', () => {
    const result = go(
      'ac-output-check',
      {
        ...outputCheck,
        'out-two': { v12: '0.4', v1: '120.2', v2: '120.1' },
        ...under('neutral-proof', {
          ...neutralProof,
          unloaded: { v12: '0.3', v1: '120.2', v2: '120.2' },
          loaded: { v12: '0.6', v1: '119.4', v2: '119.9' },
        }),
      },
      ternLedge,
    );
    expect(result).toMatchObject({ last: 'sound', problems: [] });
  });

  it('joins nothing to legs that stand the wrong way to each other', () => {
    const result = go('ac-output-check', {
      ...outputCheck,
      'out-two': { v12: '0.3', v1: '120.1', v2: '120.2' },
      'off-unloaded': 'done',
    });
    expect(result.outcomes.find(({ block }) => block === 'out-two')?.outcome).toBe('wrong-angle');
    expect(result.path).not.toContain('out-close');
  });
});

describe('AC output check, what could stand in for the inverter', () => {
  const all = { ...outputCheck, ...under('neutral-proof', neutralProof) };

  it('locks a connected second source off before a leg is read, and brings it back before the loads', () => {
    const { path, last } = go('ac-output-check', all);
    expect(last).toBe('sound');
    const at = (step: string) => path.indexOf(step);
    expect(at('ac-in-lock')).toBeGreaterThan(0);
    expect(at('ac-in-lock')).toBeLessThan(at('out-two'));
    expect(at('ac-in-close')).toBeLessThan(at('loads-on'));
  });

  it('reads no idle draw while PV feeds the battery', () => {
    const { path, last } = go('ac-output-check', { ...all, 'idle-feeds': 'fed' });
    expect(last).toBe('sound');
    expect(path).not.toContain('idle');
  });

  it('sees leg 2 sag under the house loads', () => {
    const sag = {
      ...all,
      'verify-two': { v1: '121.0', v2: '110.2', ng: '0.4' },
      'loads-back-off': 'done',
      'off-running': 'done',
    };
    expect(go('ac-output-check', sag).last).toBe('left-off');
  });

  it('lets the neutral of a long feeder drop 2.6 V under load, not 3.4 V', () => {
    const drop = (ng: string) => ({
      ...all,
      'verify-two': { v1: '118.1', v2: '120.4', ng },
      'loads-back-off': 'done',
      'off-running': 'done',
    });
    expect(go('ac-output-check', drop('2.6')).last).toBe('sound');
    expect(go('ac-output-check', drop('3.4')).last).toBe('left-off');
  });

  it('takes a ground that no clamp gets round for a check not made', () => {
    expect(go('ac-output-check', { ...all, 'neutral-proof--egc': 'cant' }).last).toBe('sound');
    expect(
      go('ac-output-check', { ...all, 'neutral-proof--egc': 'unsure', 'neutral-proof--unsound': 'done' })
        .last,
    ).toBe('left-off');
  });
});

describe('another unit on the bus', () => {
  const join: Answers = {
    ready: 'done',
    bus: { volts: '50.0' },
    unit: { volts: '0.2' },
    unlock: 'done',
    'resistor-on': 'done',
    across: { across: '0.6' },
    'close-ready': 'done',
    'close-dc': 'done',
    'resistor-off': 'done',
    after: { volts: '49.9' },
  };

  it('is joined on volts read here, and read once more after the close', () => {
    expect(go('join-unit-dc', join)).toMatchObject({ last: 'joined', problems: [] });
    expect(go('join-unit-dc', { ...join, after: { volts: '0.3' } }).last).toBe('left-guarded');
  });

  it('judges the volts across by the bus as it stands: 5 % of 50.0 V', () => {
    const locked = { 'resistor-off-leave': 'done', relock: 'locked' };
    expect(go('join-unit-dc', { ...join, ...locked, across: { across: '2.40' } }).last).toBe('joined');
    // Less than 5 % of a bank at rest, 2.64 V, and too much here.
    expect(go('join-unit-dc', { ...join, ...locked, across: { across: '2.55' } }).last).toBe('left-locked');
  });

  it('puts its lock on an open handle only', () => {
    const half = {
      ...join,
      'close-dc': 'unsure',
      'open-dc': 'done',
      'resistor-off-leave': 'done',
      relock: 'locked',
    };
    const { path, last } = go('join-unit-dc', half);
    expect(last).toBe('left-locked');
    expect(path.indexOf('open-dc')).toBeLessThan(path.indexOf('relock'));
    const slipped = { ...join, 'resistor-on': 'cant', 'resistor-off-leave': 'done', relock: 'locked' };
    expect(go('join-unit-dc', slipped).last).toBe('left-locked');
  });
});

describe('first power-up', () => {
  const firstPowerUp: Answers = {
    ready: 'done',
    ...under('pre-charge', preCharge),
    'at-i': { volts: '53.1' },
    'inverter-on': 'done',
    screen: { volts: '53.0' },
    settings: 'done',
    cells: { 'coldest-cell': '61', 'warmest-cell': '64', 'lowest-cell': '3.31' },
    'charging-on': 'done',
    'output-unlock': 'done',
    ...under('ac-output-check', {
      ...outputCheck,
      'source-there': 'locked-off',
      'source-was': 'stays-locked',
    }),
    ...under('neutral-proof', neutralProof),
  };

  it('ends powered, with PV and second source still locked', () => {
    expect(go('first-power-up', firstPowerUp)).toMatchObject({
      last: 'powered',
      problems: [],
      end: { leaves: 'isolated' },
    });
  });

  it('allows no charging below the label’s minimum: 5 °C is 41 °F here', () => {
    const cold = {
      ...firstPowerUp,
      cells: { 'coldest-cell': '38', 'warmest-cell': '45', 'lowest-cell': '3.31' },
      'charging-stays-off': 'tagged',
    };
    const result = go('first-power-up', cold);
    expect(result.last).toBe('powered');
    expect(result.path).not.toContain('charging-on');
  });

  it('takes a deeply discharged cell out of service', () => {
    const deep = {
      ...firstPowerUp,
      cells: { 'coldest-cell': '61', 'warmest-cell': '64', 'lowest-cell': '1.6' },
    };
    const { last, path } = go('first-power-up', { ...deep, 'unit-off': 'done' });
    expect(last).toBe('left-off');
    expect(path).not.toContain('charging-on');
  });

  it('wakes the unit before its screen is read, and reads the posts again when the two disagree', () => {
    const slip = {
      ...firstPowerUp,
      'at-i': { volts: '54.9' },
      'screen-off': 'meter-slip',
      'at-i-again': { volts: '53.1' },
      'screen-again': { volts: '53.0' },
    };
    const { path, last } = go('first-power-up', slip);
    expect(last).toBe('powered');
    expect(path.slice(path.indexOf('at-i'), path.indexOf('settings'))).toEqual([
      'at-i',
      'inverter-on',
      'screen',
      'screen-off',
      'at-i-again',
      'screen-again',
    ]);
  });
});

describe('strings', () => {
  const stringCheck: Answers = {
    ready: 'done',
    'cell-temp': { cell: '77' },
    p1: { p1: '326.9' },
    poles: { plus: '12.1', minus: '-11.8' },
    'test-choice': 'skip',
    'sister-choice': 'no-sister',
    'unit-off': 'done',
    'close-ready': 'done',
    unlock: 'done',
    'pv-ready': 'done',
    'pv-close': 'done',
    p2: { p2: '326.5' },
    'unit-on': 'done',
    'start-wait': 'done',
    making: { volts: '271', watts: '1850' },
  };

  it('connects a sound string with the unit off', () => {
    const result = go('string-check', stringCheck, sallowCreek, 'East');
    expect(result).toMatchObject({ last: 'connected', problems: [], end: { leaves: 'restored' } });
    expect(result.path.indexOf('unit-off')).toBeLessThan(result.path.indexOf('pv-close'));
  });

  it('clamps a string that shows no volts behind an open handle before it calls it isolated', () => {
    const dead = { ...stringCheck, p1: { p1: '0.3' } };
    const check = (amps: string) =>
      go('string-check', { ...dead, 'p1-amps': amps }, sallowCreek, 'East').last;
    expect(check('0.02')).toBe('no-volts');
    expect(check('9.8')).toBe('left-guarded');
    const welded = { ...stringCheck, p1: { p1: '-1.1' }, 'p1-amps': '9.8' };
    expect(go('string-check', welded, sallowCreek, 'East').last).toBe('left-guarded');
  });

  it('judges a sister by this string a minute ago, not by its first reading', () => {
    const twin = { ...stringCheck, 'sister-choice': 'sister-open', own: '319.0', sister: '318.2' };
    expect(go('string-check', twin, sallowCreek, 'East').last).toBe('connected');
    expect(go('string-check', { ...twin, sister: '329.0' }, sallowCreek, 'East').last).toBe('left-isolated');
  });

  it('leaves the insulation test out where it cannot be prepared', () => {
    const left = { ...stringCheck, 'test-choice': 'test', 'test-ready': 'cant' };
    expect(go('string-check', left, sallowCreek, 'East').last).toBe('connected');
  });

  it('opens a handle that may be half closed at no current, and never locks it there', () => {
    const half = {
      ...stringCheck,
      'pv-close': 'unsure',
      ...under('open-string', { ready: 'done', amps: '0.02', 'open-pv': 'done', 'lock-pv': 'locked' }),
    };
    const { path, last } = go('string-check', half, sallowCreek, 'East');
    expect(last).toBe('left-isolated');
    expect(path).not.toContain('relock');
  });

  it('leaves a reversed string locked, and one whose poles hold their volts', () => {
    expect(go('string-check', { ...stringCheck, p1: { p1: '-327' } }, sallowCreek, 'East').last).toBe(
      'left-isolated',
    );
    const leak = { ...stringCheck, poles: { plus: '0.3', minus: '-298' } };
    expect(go('string-check', leak, sallowCreek, 'East').last).toBe('left-isolated');
  });

  it('stops the unit before it opens a string under current', () => {
    const open: Answers = {
      ready: 'done',
      amps: [{ amps: '7.4 A' }, { amps: '0.01 A' }],
      'stop-unit': 'done',
      settle: 'done',
      'open-pv': 'done',
      'lock-pv': 'locked',
    };
    const result = go('open-string', open, sallowCreek, 'East');
    expect(result).toMatchObject({ last: 'open', problems: [] });
    expect(result.path.indexOf('stop-unit')).toBeLessThan(result.path.indexOf('open-pv'));
  });
});
