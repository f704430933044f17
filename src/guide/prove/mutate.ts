import { type Effect, isAct } from '../../safety/effects.ts';
import type { Machine, Outcome, Row, Step, StepId } from '../vocabulary.ts';

/** One small harm done to a guide, to see whether the prover notices. */
export interface Mutant {
  id: string;
  operator: string;
  machine: Machine;
  /** Another rule than the one it breaks first is meant to see it too: the whole plant is walked. */
  thorough?: boolean;
  /** Effects this mutant took away, as `step outcome index`: the mutant is equivalent if they never did anything. */
  removed?: { step: StepId; outcome: string; index: number };
}

type Arrow = { outcome: string; to: Outcome; row?: Row };
type Bare = { -readonly [K in keyof Step]: Step[K] } & Record<string, unknown>;

const plain = (target: StepId | Outcome): Outcome => (typeof target === 'string' ? { to: target } : target);

/** The outcomes an author wrote on a step. */
function arrows(step: Step): Arrow[] {
  if (step.kind === 'end') return [];
  if (step.kind === 'perform')
    return Object.entries(step.endings).map(([outcome, to]) => ({ outcome, to: plain(to) }));
  if ((step.kind === 'measure' || step.kind === 'display') && step.rows)
    return step.rows.map((row) => ({ outcome: row.id, to: row, row }));
  return Object.entries(step.outcomes ?? {}).map(([outcome, to]) => ({
    outcome,
    to: plain(to as StepId | Outcome),
  }));
}

/** The step with one outcome changed. */
function withArrow(step: Step, outcome: string, change: (to: Outcome) => Outcome): Step {
  const copy = { ...step } as unknown as Bare;
  if (step.kind === 'perform')
    copy.endings = { ...step.endings, [outcome]: change(plain(step.endings[outcome]!)) };
  else if ((step.kind === 'measure' || step.kind === 'display') && step.rows)
    copy.rows = step.rows.map((row) =>
      row.id === outcome ? { id: row.id, when: row.when, ...change(row) } : row,
    );
  else if (step.kind !== 'end')
    copy.outcomes = {
      ...step.outcomes,
      [outcome]: change(plain((step.outcomes as Record<string, StepId | Outcome>)[outcome]!)),
    };
  return copy as unknown as Step;
}

const withStep = (machine: Machine, id: StepId, step: Step): Machine => ({
  ...machine,
  steps: { ...machine.steps, [id]: step },
});

/** Every arrow of the machine that leads to one step leads to another instead. */
function redirect(machine: Machine, from: StepId, to: StepId, except: readonly StepId[] = []): Machine {
  const move = (target: StepId | Outcome | undefined) =>
    target === undefined ? undefined : plain(target).to === from ? { ...plain(target), to } : target;
  const steps = Object.fromEntries(
    Object.entries(machine.steps).map(([id, step]) => {
      if (except.includes(id) || step.kind === 'end') return [id, step];
      let copy: Step = step;
      for (const arrow of arrows(step)) {
        const { limit } = arrow.to;
        if (arrow.to.to === from) copy = withArrow(copy, arrow.outcome, (o) => ({ ...o, to }));
        if (limit?.otherwise === from)
          copy = withArrow(copy, arrow.outcome, (o) => ({ ...o, limit: { ...limit, otherwise: to } }));
      }
      const hands = copy as unknown as Bare;
      return [
        id,
        {
          ...hands,
          ...(hands.cant ? { cant: move(hands.cant as StepId) } : {}),
          ...(hands.unsure ? { unsure: move(hands.unsure as StepId) } : {}),
        },
      ];
    }),
  );
  return {
    ...machine,
    start: machine.start === from ? to : machine.start,
    steps: steps as Record<StepId, Step>,
  };
}

/** The outcome that carries the step's work: the first with effects, else the first. */
const main = (step: Step): Arrow | undefined =>
  arrows(step).find((arrow) => (arrow.to.does ?? []).length > 0) ?? arrows(step)[0];
const works = (step: Step) => arrows(step).some((arrow) => (arrow.to.does ?? []).length > 0);

const deadly: readonly (keyof never | string)[] = [
  'touch',
  'handleLive',
  'bleed',
  'plugs',
  'insulationTest',
  'close',
  'open',
];
const handlesPower = (step: Step) =>
  step.kind === 'touch' ||
  step.kind === 'handleLive' ||
  step.kind === 'discharge' ||
  (step.kind === 'measure' && step.energised === true) ||
  (step.kind === 'operate' &&
    arrows(step).some((arrow) =>
      (arrow.to.does ?? []).some(
        (effect) =>
          deadly.includes(Object.keys(effect)[0]!) &&
          !('close' in effect && effect.close === 'acOut') &&
          !('open' in effect && effect.open === 'acOut'),
      ),
    ));

const handsOn: readonly string[] = ['touch', 'handleLive', 'discharge'];

/** What somebody else may do while the hands are on their way to the conductor. */
const slipsBefore: readonly Effect[] = [{ unlock: 'main' }, { unlock: 'acIn' }, { close: 'pv' }];

/** The machine with one more deed on every way to a step. */
function before(machine: Machine, id: StepId, deed: Effect): Machine {
  const steps = Object.entries(machine.steps).map(([from, step]) => {
    const changed = arrows(step)
      .filter((arrow) => arrow.to.to === id)
      .reduce(
        (copy, arrow) =>
          withArrow(copy, arrow.outcome, (to) => ({ ...to, does: [...(to.does ?? []), deed] })),
        step,
      );
    return [from, changed] as const;
  });
  return { ...machine, steps: Object.fromEntries(steps) };
}

/** Every mutant of a machine, in a fixed order. */
export function mutantsOf(machine: Machine): Mutant[] {
  const list: Mutant[] = [];
  const add = (operator: string, place: string, mutant: Machine, removed?: Mutant['removed']) =>
    list.push({
      id: `${machine.id}:${operator}:${place}`,
      operator,
      machine: mutant,
      ...(removed ? { removed } : {}),
    });

  for (const [id, step] of Object.entries(machine.steps)) {
    if (step.kind === 'end') continue;
    const first = main(step);
    if (first && first.to.to !== id && (step.kind === 'hold' || works(step)))
      add(step.kind === 'hold' ? 'bypass-hold' : 'bypass', id, redirect(machine, id, first.to.to, [id]));
    if (step.kind === 'perform' && first && first.to.to !== id)
      add('drop-procedure', id, redirect(machine, id, first.to.to, [id]));

    for (const arrow of arrows(step))
      (arrow.to.does ?? []).forEach((effect, index) => {
        add(
          'no-op',
          `${id}.${arrow.outcome}.${Object.keys(effect)[0]}-${String(Object.values(effect)[0])}`,
          withStep(
            machine,
            id,
            withArrow(step, arrow.outcome, (o) => ({
              ...o,
              does: (o.does ?? []).filter((_, i) => i !== index),
            })),
          ),
          { step: id, outcome: arrow.outcome, index },
        );
      });

    if (handsOn.includes(step.kind)) {
      add('understate-work', id, withStep(machine, id, { ...step, kind: 'operate' } as Step));
      for (const slip of slipsBefore) {
        const [verb, object] = Object.entries(slip)[0]!;
        add('slip-in', `${id}.${verb}-${object}`, before(machine, id, slip));
        list[list.length - 1]!.thorough = true;
      }
    }
    if (step.kind !== 'hold' && first?.to.does?.some(isAct))
      add(
        'cant-counts-as-done',
        id,
        withStep(machine, id, {
          ...step,
          cant: { ...plain(step.cant ?? machine.escape), does: first.to.does },
        } as Step),
      );

    if (handlesPower(step)) add('drop-hazard', id, withStep(machine, id, { ...step, hazards: [] } as Step));
    if (step.kind === 'handleLive')
      add('drop-equipment', id, withStep(machine, id, { ...step, ppe: [] } as Step));
    if (step.kind === 'measure' && step.energised) {
      add('drop-equipment', id, withStep(machine, id, { ...step, ppe: [] } as Step));
      add(
        'wrong-function',
        id,
        withStep(machine, id, {
          ...step,
          readings: Object.fromEntries(
            Object.entries(step.readings).map(([key, reading]) => [
              key,
              { ...reading, mode: 'ohms' as const },
            ]),
          ),
        } as Step),
      );
    }
    if (
      step.kind === 'measure' &&
      Object.values(step.readings).some((reading) => reading.signed) &&
      works(step)
    )
      add(
        'drop-sign',
        id,
        withStep(machine, id, {
          ...step,
          readings: Object.fromEntries(
            Object.entries(step.readings).map(([key, reading]) => [key, { ...reading, signed: false }]),
          ),
        } as Step),
      );
    if (step.state && step.state !== 'any') {
      const wrong =
        step.state === 'running' ||
        step.state === 'asFound' ||
        step.state === 'noLoad' ||
        step.state === 'batteryOnly'
          ? 'lockedOut'
          : 'running';
      add('wrong-state', id, withStep(machine, id, { ...step, state: wrong } as Step));
    }
    if (step.kind === 'hold') add('empty-hold', id, withStep(machine, id, { ...step, items: [] } as Step));
    if (first && (step.kind === 'hold' || works(step)))
      add('cant-goes-on', id, withStep(machine, id, { ...step, cant: first.to.to } as Step));
    for (const arrow of arrows(step))
      if (arrow.to.limit)
        add(
          'drop-limit',
          `${id}.${arrow.outcome}`,
          withStep(
            machine,
            id,
            withArrow(step, arrow.outcome, ({ limit: _, ...rest }) => rest),
          ),
        );

    if (first && works(step) && step.kind === 'measure')
      for (const arrow of arrows(step)) {
        if (arrow.outcome === first.outcome || arrow.to.to === first.to.to) continue;
        add(
          'earn-early',
          `${id}.${arrow.outcome}`,
          withStep(
            machine,
            id,
            withArrow(step, arrow.outcome, (o) => ({
              ...o,
              does: [...(first.to.does ?? [])],
              to: first.to.to,
            })),
          ),
        );
      }
    if (step.kind === 'operate' && first) {
      const next = machine.steps[first.to.to];
      const act = next && next.kind === 'operate' ? main(next) : undefined;
      if (next && act && (act.to.does ?? []).length > 0) {
        add(
          'two-actions',
          id,
          withStep(
            machine,
            id,
            withArrow(step, first.outcome, (o) => ({
              ...o,
              does: [...(o.does ?? []), ...(act.to.does ?? [])],
              to: act.to.to,
            })),
          ),
        );
        add('swap', `${id}~${first.to.to}`, swap(machine, id, first, act));
      }
    }
    if (step.kind === 'verdict')
      for (const basis of step.because) {
        const from = machine.steps[basis.step];
        if (!from) continue;
        const good = arrows(from).find((arrow) => basis.outcomes.includes(arrow.outcome));
        const other = arrows(from).find(
          (arrow) => !basis.outcomes.includes(arrow.outcome) && arrow.to.to !== good?.to.to,
        );
        if (good && other)
          add(
            'unsupported-verdict',
            `${id}.${basis.step}.${other.outcome}`,
            withStep(
              machine,
              basis.step,
              withArrow(from, other.outcome, (o) => ({ ...o, to: good.to.to })),
            ),
          );
      }
  }
  add('stop-goes-on', machine.stop, { ...machine, stop: machine.start });
  return unique(list);
}

/** Two neighbouring acts the other way round. */
function swap(machine: Machine, id: StepId, first: Arrow, act: Arrow): Machine {
  const next = first.to.to;
  const entered = redirect(machine, id, next, [id, next]);
  const a = withArrow(entered.steps[id]!, first.outcome, (o) => ({ ...o, to: act.to.to }));
  const b = withArrow(entered.steps[next]!, act.outcome, (o) => ({ ...o, to: id }));
  return { ...entered, steps: { ...entered.steps, [id]: a, [next]: b } };
}

function unique(list: Mutant[]): Mutant[] {
  const count = new Map<string, number>();
  return list.map((mutant) => {
    const n = (count.get(mutant.id) ?? 0) + 1;
    count.set(mutant.id, n);
    return n === 1 ? mutant : { ...mutant, id: `${mutant.id}#${n}` };
  });
}

/** Which effects an outcome of a step carries; used to say why a mutant is equivalent. */
export const effectsOf = (step: Step, outcome: string): readonly Effect[] =>
  arrows(step).find((arrow) => arrow.outcome === outcome)?.to.does ?? [];
