import { describe, expect, it } from 'vitest';
import { proceduresById } from '../../machines/index.ts';
import { prove } from '../../src/guide/prove/prove.ts';
import type { Machine } from '../../src/guide/vocabulary.ts';
import type { Effect } from '../../src/safety/effects.ts';
import { applyEffect, initialEnergy } from '../../src/safety/energy.ts';
import { allVariants, type Variant } from '../../src/safety/plant.ts';
import { kept, type Promised } from '../../src/safety/promises.ts';

const richest: Variant = allVariants()[0]!;
const plain: Variant = { ...richest, source: 'none', inverters: 'one' };
const after = (effects: Effect[], variant = richest) =>
  effects.reduce(applyEffect, initialEnergy(variant, 'asFound'));

describe('what an ending promises', () => {
  const cases: [promise: Promised, effects: Effect[], variant: Variant, kept: boolean][] = [
    [{ closed: 'pv' }, [], richest, true],
    [{ closed: 'pv' }, [{ open: 'pv' }], richest, false],
    [{ opened: 'pv' }, [{ open: 'pv' }], richest, true],
    [{ held: 'pv' }, [{ open: 'pv' }], richest, false],
    [{ held: 'pv' }, [{ open: 'pv' }, { lock: 'pv' }], richest, true],
    [{ unlocked: 'pv' }, [{ open: 'pv' }, { lock: 'pv' }], richest, false],
    [{ held: 'acIn' }, [], plain, true],
    [{ held: 'others' }, [], plain, true],
    [{ provedDead: 'acIn' }, [], plain, true],
    [{ provedDead: 'acIn' }, [], richest, false],
    ['loadsOn', [{ loads: 'off' }], richest, false],
    ['autoStart', [{ autoStart: 'disabled' }], richest, false],
    ['autoStart', [{ autoStart: 'disabled' }], plain, true],
    ['neutralSound', [{ touch: 'acOut' }], richest, false],
    ['resistorOff', [{ open: 'main' }, { resistor: 'on' }], richest, false],
  ];
  it.each(cases)('%o after %o', (promise, effects, variant, isKept) => {
    expect(kept(promise, after(effects, variant), variant)).toBe(isKept);
  });

  it('is held against the procedure: one that forgets its lock is found out', () => {
    const open = proceduresById['open-string'] as Machine;
    const forgetful: Machine = {
      ...open,
      steps: { ...open.steps, 'lock-pv': { kind: 'look', outcomes: { locked: 'open' } } },
    };
    const { breaches } = prove(forgetful, proceduresById, [richest], 'first');
    expect(breaches.map(({ reason }) => reason)).toContain('promises held pv, and it is not so');
  });
});
