import type { Machine, Step, StepId } from './vocabulary.ts';

/**
 * A guide as a browser that runs it needs it: itself without what only its page and the prover read, and an outline of
 * every procedure it performs. A procedure itself is fetched when the run comes to it.
 */
export interface LeanGuide {
  machine: Machine;
  /** Outlines by id: where each procedure begins and how it may end. */
  outlines: Readonly<Record<string, Machine>>;
  /** Which part of the expectations each of its steps needs: by `scale:`, `work:` or `wait:` and an id. */
  families: Readonly<Record<string, string>>;
}

/** What the plate shows and the run does not read. */
const onPage = ['hazards', 'ppe', 'tools', 'minutes', 'energised', 'proves'];

/** A machine without what only its page and the prover read, and without what only its verdicts and ends ask for. */
export function leanMachine(machine: Machine): Machine {
  const steps = Object.entries(machine.steps).map(([id, step]) => {
    const kept = Object.entries(step).filter(([key]) => !onPage.includes(key));
    return [id, Object.fromEntries(kept) as unknown as Step] as const;
  });
  const { against: _, ...rest } = machine;
  return { ...rest, steps: Object.fromEntries(steps) };
}

const hollow: Step = { kind: 'look', outcomes: {} };

/**
 * A machine with its first step, its ways out and its endings alone: enough to say where the step that performs it leads.
 * A first step that itself performs a procedure is kept whole, with hollow steps for where that leads.
 */
export function outlineOf(machine: Machine): Machine {
  const steps: Record<StepId, Step> = {};
  const keep = (id: StepId) => {
    const step = machine.steps[id];
    if (!step || steps[id]) return;
    steps[id] = step.kind === 'end' ? step : hollow;
  };
  const first = machine.steps[machine.start];
  if (first?.kind === 'perform') {
    steps[machine.start] = first;
    for (const target of Object.values(first.endings)) keep(typeof target === 'string' ? target : target.to);
  }
  for (const id of [machine.start, machine.escape, machine.stop]) keep(id);
  for (const [id, step] of Object.entries(machine.steps)) if (step.kind === 'end') keep(id);
  return leanMachine({ ...machine, steps });
}

/** Every procedure a machine performs, and those they perform in turn. */
export function performedBy(
  machine: Machine,
  procedures: Readonly<Record<string, Machine>>,
): readonly Machine[] {
  const found = new Set<Machine>();
  const visit = (each: Machine) => {
    for (const step of Object.values(each.steps)) {
      const procedure = step.kind === 'perform' ? procedures[step.procedure] : undefined;
      if (!procedure || found.has(procedure)) continue;
      found.add(procedure);
      visit(procedure);
    }
  };
  visit(machine);
  return [...found];
}

/** Keys of the expectations that a machine's own steps ask for. */
function expectations(machine: Machine): string[] {
  return Object.values(machine.steps).flatMap((step) => {
    if (step.kind === 'measure' || step.kind === 'display')
      return Object.values(step.readings).map((reading) => `scale:${reading.scale}`);
    if (step.kind === 'workOut' && step.ask) return [`work:${step.ask}`];
    return step.kind === 'wait' && step.wait ? [`wait:${step.wait}`] : [];
  });
}

/**
 * What the browser is given of a guide or procedure.
 * @param familyOf the family of each expectation, from `src/expected/families.ts`
 */
export function leanGuide(
  machine: Machine,
  procedures: Readonly<Record<string, Machine>>,
  familyOf: Readonly<Record<string, string>>,
): LeanGuide {
  const families = expectations(machine).map((key) => {
    const family = familyOf[key];
    if (!family) throw new Error(`${machine.id}: nothing holds the expectation ${key}`);
    return [key, family] as const;
  });
  const outlines = performedBy(machine, procedures).map((each) => [each.id, outlineOf(each)] as const);
  return {
    machine: leanMachine(machine),
    outlines: Object.fromEntries(outlines),
    families: Object.fromEntries(families),
  };
}
