import { describe, expect, it } from 'vitest';
import { flatten, MachineError } from '../../src/guide/flatten.ts';
import { mutantsOf } from '../../src/guide/prove/mutate.ts';
import { prove } from '../../src/guide/prove/prove.ts';
import { checkTotality } from '../../src/guide/prove/totality.ts';
import type { Machine, Step } from '../../src/guide/vocabulary.ts';
import { allVariants } from '../../src/safety/plant.ts';
import { openIsolator, withSteps } from '../support/small-machine.ts';

const breachesOf = (machine: Machine, procedures: Record<string, Machine> = {}) =>
  new Set(prove(machine, procedures, allVariants().slice(0, 2)).breaches.map((breach) => breach.rule));
const step = (id: string) => openIsolator.steps[id] as Step & Record<string, unknown>;

describe('the prover', () => {
  it('finds nothing in a sound procedure, over every plant variant', () => {
    const proof = prove(openIsolator, {});
    expect(proof.breaches).toEqual([]);
    expect(proof.unreached).toEqual([]);
    expect(proof.states).toBeGreaterThan(allVariants().length * 5);
  });

  it('prints the shortest way to a breach', () => {
    const bad = withSteps({
      'someone-knows': {
        ...step('someone-knows'),
        outcomes: { done: { to: 'open', does: [{ namedPerson: true }] } },
      } as Step,
    });
    const breach = prove(bad, {}, allVariants().slice(0, 1)).breaches.find(({ rule }) => rule === 'I6');
    expect(breach?.path).toEqual([{ step: 'someone-knows', outcome: 'done' }]);
    expect(breach?.step).toBe('open');
  });

  it.each<[string, Machine]>([
    ['I8', withSteps({ opened: { kind: 'end', result: 'fixed', leaves: ['restored'] } })],
    ['I12', withSteps({ 'someone-knows': { ...step('someone-knows'), items: [] } as Step })],
    ['I12', withSteps({ 'someone-knows': { ...step('someone-knows'), cant: 'clamp' } as Step })],
    ['I13', withSteps({ open: { ...step('open'), cant: { to: 'lock', does: [{ open: 'pv' }] } } as Step })],
    [
      'I16',
      withSteps({
        open: {
          ...step('open'),
          outcomes: { done: { to: 'opened', does: [{ open: 'pv' }, { lock: 'pv' }] } },
        } as Step,
      }),
    ],
    [
      'I18',
      withSteps({
        clamp: {
          ...step('clamp'),
          outcomes: {
            zero: { to: 'open', does: [{ zeroShown: 'pv' }] },
            flows: 'clamp',
            undetermined: 'leave',
          },
        } as Step,
      }),
    ],
    ['I28', withSteps({}, { stop: 'clamp' })],
    ['I17', withSteps({ lock: { ...step('lock'), state: 'running' } as Step })],
  ])('tells a breach of %s', (rule, machine) => {
    expect(breachesOf(machine)).toContain(rule);
  });

  it('walks going back, and a proof that grows old: the handle stays barred until the clamp is read again', () => {
    expect(breachesOf(openIsolator)).toEqual(new Set());
    const unfresh = withSteps({
      clamp: { ...step('clamp'), outcomes: { zero: 'open', flows: 'leave', undetermined: 'leave' } } as Step,
    });
    expect(breachesOf(unfresh)).toContain('I6');
  });

  it('refuses a verdict that some path reaches without the reading it rests on', () => {
    const guide = (because: { step: string; outcomes: string[] }[]): Machine =>
      withSteps({
        open: { kind: 'choose', outcomes: { left: 'cause', right: 'leave' } },
        cause: { kind: 'verdict', causes: ['x'], because, outcomes: { on: 'leave' } },
      });
    expect(breachesOf(guide([{ step: 'clamp', outcomes: ['zero'] }]))).not.toContain('verdict');
    expect(breachesOf(guide([{ step: 'clamp', outcomes: ['flows'] }]))).toContain('verdict');
    expect(breachesOf(guide([{ step: 'open', outcomes: ['right'] }]))).toContain('verdict');
    expect(breachesOf(guide([]))).toContain('verdict');
  });

  it('refuses what is said to speak against a cause and names none, or no step or outcome that there is', () => {
    const guide = (cause: string, step: string, outcome: string): Machine => ({
      ...withSteps({
        open: { kind: 'choose', outcomes: { left: 'cause', right: 'leave' } },
        cause: {
          kind: 'verdict',
          causes: ['x'],
          because: [{ step: 'clamp', outcomes: ['zero'] }],
          outcomes: { on: 'leave' },
        },
      }),
      against: { [cause]: [[{ step, outcomes: [outcome] }]] },
    });
    expect(breachesOf(guide('x', 'open', 'right'))).not.toContain('verdict');
    expect(breachesOf(guide('y', 'open', 'right'))).toContain('verdict');
    expect(breachesOf(guide('x', 'opened', 'right'))).toContain('verdict');
    expect(breachesOf(guide('x', 'open', 'wrong'))).toContain('verdict');
  });

  it('writes a performed procedure out in place and joins its endings to the caller', () => {
    const caller: Machine = {
      ...openIsolator,
      id: 'caller',
      start: 'make-safe',
      steps: {
        'make-safe': { kind: 'perform', procedure: 'small', endings: { opened: 'done' } },
        done: { kind: 'end', result: 'done', leaves: ['isolated'], items: [{ id: 'owner-told' }] },
        leave: openIsolator.steps.leave!,
        'get-away': openIsolator.steps['get-away']!,
      },
    };
    const flat = flatten(caller, { small: openIsolator });
    expect(flat.start).toBe('make-safe/someone-knows');
    expect(flat.nodes.get('make-safe/lock')?.edges.find((edge) => edge.outcome === 'done')?.to).toBe('done');
    expect(flat.nodes.get('make-safe/open')?.block).toBe('small--open');
    expect(flat.nodes.get('make-safe/open')?.edges.find((edge) => edge.outcome === 'cant')?.to).toBe('leave');
    expect(breachesOf(caller, { small: openIsolator })).toEqual(new Set());
    expect(() =>
      flatten(
        {
          ...caller,
          steps: { ...caller.steps, 'make-safe': { kind: 'perform', procedure: 'small', endings: {} } },
        },
        { small: openIsolator },
      ),
    ).toThrow(MachineError);
  });

  it('asks an outcome of every combination of zones, and a combination of every outcome', () => {
    const zones = () => ['zero', 'flows'];
    expect(() => checkTotality(flatten(openIsolator, {}), zones)).not.toThrow();
    expect(() => checkTotality(flatten(openIsolator, {}), () => ['zero', 'flows', 'huge'])).toThrow(/huge/);
    expect(() => checkTotality(flatten(openIsolator, {}), () => ['zero'])).toThrow(/flows/);
  });

  it('makes mutants that differ from the original, each with a name of its own', () => {
    const mutants = mutantsOf(openIsolator);
    expect(new Set(mutants.map((mutant) => mutant.id)).size).toBe(mutants.length);
    for (const mutant of mutants)
      expect(JSON.stringify(mutant.machine)).not.toBe(JSON.stringify(openIsolator));
  });
});
