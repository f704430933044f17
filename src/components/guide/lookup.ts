import type { ContentBlock } from '../../guide/content-blocks.ts';
import type { Machine, Outcome, PerformStep, Step, StepId } from '../../guide/vocabulary.ts';

/**
 * What a guide's page needs to know of its machines at build time: each step's number and title, and where every outcome
 * leads on this page. Procedures stand on the page once, however often they are performed, so an outcome that ends a
 * procedure may lead to several places, one for each caller.
 */

/** A step's place on the page. */
export interface Place {
  /** The anchor: `string-volts`, or `isolate--open-main`. */
  block: string;
  /** Its number on paper: `7`, or `B3` in the page's second procedure. */
  no: string;
  title: string;
}

/** Where an outcome leads; `from` names the callers for whom this way holds, and is empty when it holds for all. */
export interface Way {
  from: readonly Place[];
  to: Place;
}

/** One outcome of a step. */
export interface Exit {
  outcome: string;
  label: string;
  ways: readonly Way[];
  /** The ending of the procedure that this outcome is. */
  ending?: Place;
  limit?: { max: number; ways: readonly Way[] };
}

/** A reading or answer that a verdict rests on. */
export interface Because {
  place: Place;
  labels: readonly string[];
}

export interface PageStep extends Place {
  machineId: string;
  stepId: StepId;
  step: Step;
  exits: readonly Exit[];
  /** `perform`: the procedure's heading and first step. */
  performs?: { id: string; section: Place; first: Place };
  /** An ending of a performed procedure: where each caller goes on. */
  goesOn: readonly Way[];
  because: readonly Because[];
  /** Hold items met by a reading elsewhere: that step, by item id. */
  itemReadings: Readonly<Record<string, Place>>;
}

export interface PageSection {
  machine: Machine;
  /** Empty for the page's own machine. */
  letter: string;
  title: string;
  steps: readonly PageStep[];
  first: Place;
  callers: readonly Place[];
}

/** A guide's or procedure's page. */
export interface GuidePage {
  machine: Machine;
  sections: readonly PageSection[];
  /** The place that smoke, smell and water lead to from every step. */
  stop: Place;
  /** A step's part of the page; `undefined` for one that is not there. */
  step(machineId: string, stepId: StepId): PageStep | undefined;
  /** Endings of a performed procedure that nothing on this page leads to: they are left off it. */
  leftOut(machineId: string, stepId: StepId): boolean;
}

/** A content file as far as this needs it. */
export interface GuideContent {
  title: string;
  blocks: readonly ContentBlock[];
}

/** Every exit beside those an author writes. */
export const alwaysOutcomes = ['cant', 'unsure', 'stop'] as const;

interface Caller {
  machine: Machine;
  stepId: StepId;
  step: PerformStep;
}

const asOutcome = (target: StepId | Outcome): Outcome =>
  typeof target === 'string' ? { to: target } : target;

/** The anchor of a procedure's heading. */
export const sectionBlock = (machineId: string): string => `${machineId}--procedure`;

/** The outcomes an author wrote for a step, in order. */
export function ownExits(step: Step): readonly (Outcome & { id: string })[] {
  if (step.kind === 'end') return [];
  if (step.kind === 'perform')
    return Object.entries(step.endings).map(([id, target]) => ({ id, ...asOutcome(target) }));
  if ((step.kind === 'measure' || step.kind === 'display') && step.rows)
    return step.rows.map((row) => ({ ...row }));
  return Object.entries(step.outcomes ?? {}).map(([id, target]) => ({ id, ...asOutcome(target) }));
}

/** The machine and every procedure it performs, in the order they are first met. */
export function machinesOf(machine: Machine, procedures: Readonly<Record<string, Machine>>): Machine[] {
  const found: Machine[] = [machine];
  for (let at = 0; at < found.length; at += 1)
    for (const step of Object.values(found[at]!.steps)) {
      if (step.kind !== 'perform') continue;
      const procedure = procedures[step.procedure];
      if (!procedure) throw new Error(`${found[at]!.id}: there is no procedure ${step.procedure}`);
      if (!found.includes(procedure)) found.push(procedure);
    }
  return found;
}

/**
 * Lays a guide or procedure out as one page.
 * @param machine what the page is about
 * @param procedures every procedure by id
 * @param contents the words of each, by machine id; a step without words keeps its id as title and comes last
 */
export function layPage(
  machine: Machine,
  procedures: Readonly<Record<string, Machine>>,
  contents: Readonly<Record<string, GuideContent>>,
): GuidePage {
  const machines = machinesOf(machine, procedures);
  const callers = new Map<string, Caller[]>();
  for (const each of machines)
    for (const [stepId, step] of Object.entries(each.steps))
      if (step.kind === 'perform')
        callers.set(step.procedure, [
          ...(callers.get(step.procedure) ?? []),
          { machine: each, stepId, step },
        ]);

  const places = new Map<string, Place>();
  const blocks = new Map<string, ContentBlock>();
  const key = (machineId: string, stepId: StepId) => `${machineId} ${stepId}`;
  const letterOf = (index: number) => (index === 0 ? '' : String.fromCharCode(64 + index));
  const sections = machines.map((each, index) => {
    const content = contents[each.id];
    const worded = (content?.blocks ?? []).filter((block) => block.of === each.id && each.steps[block.id]);
    for (const block of worded) blocks.set(key(each.id, block.id), block);
    const led = index === 0 ? undefined : targetsOf(each);
    const ids = new Set(
      [...worded.map((block) => block.id), ...Object.keys(each.steps)].filter(
        (id) => each.steps[id]!.kind !== 'end' || !led || led.has(id),
      ),
    );
    [...ids].forEach((id, at) => {
      places.set(key(each.id, id), {
        block: each === machine ? id : `${each.id}--${id}`,
        no: `${letterOf(index)}${at + 1}`,
        title: blocks.get(key(each.id, id))?.title || id,
      });
    });
    return { machine: each, letter: letterOf(index), title: content?.title ?? each.id, ids: [...ids] };
  });

  const place = (each: Machine, stepId: StepId): Place => {
    const found = places.get(key(each.id, stepId));
    if (!found) throw new Error(`${each.id}: there is no step ${stepId}`);
    return found;
  };

  /** Every way from a target of `each`: onward past the endings of procedures to where their callers go on. */
  const waysTo = (each: Machine, stepId: StepId, seen: readonly string[] = []): Way[] => {
    const step = each.steps[stepId];
    if (step?.kind !== 'end' || each === machine) return [{ from: [], to: place(each, stepId) }];
    if (seen.includes(each.id)) throw new Error(`${each.id} performs itself`);
    const ways = (callers.get(each.id) ?? []).flatMap((caller) => {
      const target = asOutcome(caller.step.endings[stepId] ?? caller.machine.escape).to;
      const from = place(caller.machine, caller.stepId);
      return waysTo(caller.machine, target, [...seen, each.id]).map((way) => ({
        from: way.from.length > 0 ? way.from : [from],
        to: way.to,
      }));
    });
    return mergeWays(ways);
  };

  const labelOf = (each: Machine, stepId: StepId, outcome: string): string =>
    blocks
      .get(key(each.id, stepId))
      ?.parts.find((part) => part.tag === 'Outcome' && part.attributes['id'] === outcome)?.attributes[
      'label'
    ] ?? '';

  /** A step named from within `each`: its own, or `perform/step` inside a procedure. */
  const named = (each: Machine, path: string): { machine: Machine; stepId: StepId } => {
    const [head = '', ...rest] = path.split('/');
    const step = each.steps[head];
    if (rest.length === 0 || step?.kind !== 'perform') return { machine: each, stepId: head };
    return named(procedures[step.procedure]!, rest.join('/'));
  };

  const exit = (each: Machine, stepId: StepId, { id, ...target }: Outcome & { id: string }): Exit => {
    const step = each.steps[target.to];
    const performed = each.steps[stepId];
    const ending =
      performed?.kind === 'perform'
        ? place(procedures[performed.procedure]!, id)
        : step?.kind === 'end' && each !== machine
          ? place(each, target.to)
          : undefined;
    return {
      outcome: id,
      label: labelOf(each, stepId, id) || (performed?.kind === 'perform' ? ending!.title : ''),
      ways: waysTo(each, target.to),
      ...(ending ? { ending } : {}),
      ...(target.limit
        ? { limit: { max: target.limit.max, ways: waysTo(each, target.limit.otherwise) } }
        : {}),
    };
  };

  const stop = place(machine, machine.stop);
  const pageStep = (each: Machine, stepId: StepId): PageStep => {
    const step = each.steps[stepId]!;
    const exits = ownExits(step).map((own) => exit(each, stepId, own));
    if (step.kind === 'perform') exits.push(...safeEndings(each, step).map((own) => exit(each, stepId, own)));
    if (step.kind !== 'end' && step.kind !== 'perform') {
      exits.push(exit(each, stepId, { id: 'cant', ...asOutcome(step.cant ?? each.escape) }));
      exits.push(exit(each, stepId, { id: 'unsure', ...asOutcome(step.unsure ?? each.escape) }));
      exits.push({ outcome: 'stop', label: '', ways: [{ from: [], to: stop }] });
    }
    const items = step.kind === 'hold' ? step.items : step.kind === 'end' ? (step.items ?? []) : [];
    return {
      ...place(each, stepId),
      machineId: each.id,
      stepId,
      step,
      exits,
      goesOn: step.kind === 'end' && each !== machine ? waysTo(each, stepId) : [],
      because:
        step.kind === 'verdict'
          ? step.because.map((reason) => {
              const at = named(each, reason.step);
              return {
                place: place(at.machine, at.stepId),
                labels: reason.outcomes.map((outcome) => labelOf(at.machine, at.stepId, outcome) || outcome),
              };
            })
          : [],
      itemReadings: Object.fromEntries(
        items.flatMap((item) => {
          if (!item.reading) return [];
          const at = named(each, item.reading.step);
          return [[item.id, place(at.machine, at.stepId)]];
        }),
      ),
      ...(step.kind === 'perform' ? { performs: performance(step) } : {}),
    };
  };

  /** Endings that a caller need not name, since they leave the plant safe: they lead to the caller's own way out. */
  const safeEndings = (each: Machine, step: PerformStep) =>
    Object.entries(procedures[step.procedure]!.steps).flatMap(([id, inner]) =>
      inner.kind === 'end' && !step.endings[id] && targetsOf(procedures[step.procedure]!).has(id)
        ? [{ id, to: each.escape }]
        : [],
    );

  const performance = (step: PerformStep) => {
    const section = sections.find(({ machine: each }) => each.id === step.procedure)!;
    return {
      id: step.procedure,
      section: { block: sectionBlock(step.procedure), no: section.letter, title: section.title },
      first: place(section.machine, section.machine.start),
    };
  };

  const laid = sections.map(
    ({ machine: each, letter, title, ids }): PageSection => ({
      machine: each,
      letter,
      title,
      steps: ids.map((id) => pageStep(each, id)),
      first: place(each, each.start),
      callers: (callers.get(each.id) ?? []).map((caller) => place(caller.machine, caller.stepId)),
    }),
  );
  const byKey = new Map(
    laid.flatMap(({ steps }) => steps.map((step) => [key(step.machineId, step.stepId), step])),
  );
  return {
    machine,
    sections: laid,
    stop,
    step: (machineId, stepId) => byKey.get(key(machineId, stepId)),
    leftOut: (machineId, stepId) =>
      !byKey.has(key(machineId, stepId)) &&
      machines.find(({ id }) => id === machineId)?.steps[stepId]?.kind === 'end',
  };
}

/** Every step that some answer within a machine leads to. Its stop is none: a run's stop is that of the whole run. */
function targetsOf(machine: Machine): Set<StepId> {
  const targets = new Set<StepId>();
  for (const step of Object.values(machine.steps)) {
    for (const own of ownExits(step)) {
      targets.add(own.to);
      if (own.limit) targets.add(own.limit.otherwise);
    }
    if (step.kind === 'end' || step.kind === 'perform') continue;
    targets.add(asOutcome(step.cant ?? machine.escape).to);
    targets.add(asOutcome(step.unsure ?? machine.escape).to);
  }
  return targets;
}

/** One way for each destination; when every caller goes to the same place the callers need no naming. */
function mergeWays(ways: readonly Way[]): Way[] {
  const merged = new Map<string, { from: Place[]; to: Place }>();
  for (const { from, to } of ways) {
    const way = merged.get(to.block) ?? { from: [], to };
    for (const caller of from) if (!way.from.includes(caller)) way.from.push(caller);
    merged.set(to.block, way);
  }
  return merged.size === 1 ? [{ from: [], to: [...merged.values()][0]!.to }] : [...merged.values()];
}
