import type { ContentBlock } from '../../guide/content-blocks.ts';
import type { Machine, Outcome, PerformStep, Step, StepId } from '../../guide/vocabulary.ts';

/**
 * What a guide's page needs to know of the machines at build time: each step's number and title, and where every outcome
 * leads. Each guide and each procedure is one page. A guide sends its reader to a procedure's page, and the procedure's
 * endings say where everyone who was sent there goes on.
 */

/** A further page of a long guide. */
export interface Chapter {
  id: string;
  title: string;
  /** Its first step; it goes on to the next chapter's. */
  from: StepId;
}

/** Asked for instead of a chapter: every step on one page, for paper and for a browser without a script. */
export const wholeBook = 'whole';

/** A step's place in the book. */
export interface Place {
  /** Address of its page; empty on the page itself. */
  url: string;
  /** The anchor on that page. */
  block: string;
  /** Its number on that page, for paper. */
  no: string;
  title: string;
  /** The title of its page; empty on the page itself. */
  page: string;
}

/** One outcome of a step and where it leads. */
export interface Exit {
  outcome: string;
  label: string;
  to: Place;
  /** Taken at most so often, then `otherwise`. */
  limit?: { max: number; otherwise: Place };
}

/** A reading or answer that a verdict rests on. */
export interface Because {
  place: Place;
  labels: readonly string[];
}

/** Where one caller of a procedure goes on when it ends. */
export interface GoesOn {
  caller: Place;
  to: Place;
}

export interface PageStep extends Place {
  stepId: StepId;
  step: Step;
  exits: readonly Exit[];
  /** `perform`: the procedure's first step. */
  first?: Place;
  /** An ending of a procedure: where each caller goes on. */
  goesOn: readonly GoesOn[];
  because: readonly Because[];
  /** Hold items met by a reading elsewhere: that step, by item id. */
  itemReadings: Readonly<Record<string, Place>>;
}

/** A guide's or procedure's page. */
export interface GuidePage {
  machine: Machine;
  steps: readonly PageStep[];
  first: Place;
  /** The place that smoke, smell and water lead to from every step. */
  stop: Place;
  /** Its pages, where it has more than one; the first is the one that a run begins on. */
  chapters: readonly { url: string; title: string; here: boolean }[];
  /** The procedures it has done, in the order they are met. */
  performs: readonly { url: string; title: string }[];
  /** The steps, here and elsewhere, that have this procedure done. */
  callers: readonly Place[];
  /** A step of this page by its id; `undefined` when it has none such. */
  step(stepId: StepId): PageStep | undefined;
}

/** Every machine with its words: what a page links to. */
export interface Book {
  machines: readonly Machine[];
  /** Title and blocks by machine id. A step without words keeps its id as title and comes last. */
  contents: Readonly<
    Record<string, { title: string; blocks: readonly ContentBlock[]; chapters?: readonly Chapter[] }>
  >;
  /** Address of a machine's page. */
  urlOf(machine: Machine): string;
}

/** Outcomes that every step has beside those an author writes. */
export const alwaysOutcomes: readonly string[] = ['cant', 'unsure', 'stop'];

const asOutcome = (target: StepId | Outcome): Outcome =>
  typeof target === 'string' ? { to: target } : target;

/** The outcomes an author wrote for a step, in order. */
export function ownExits(step: Step): readonly (Outcome & { id: string })[] {
  if (step.kind === 'end') return [];
  if (step.kind === 'perform')
    return Object.entries(step.endings).map(([id, target]) => ({ id, ...asOutcome(target) }));
  if ((step.kind === 'measure' || step.kind === 'display') && step.rows)
    return step.rows.map((row) => ({ ...row }));
  return Object.entries(step.outcomes ?? {}).map(([id, target]) => ({ id, ...asOutcome(target) }));
}

/** Every step that some answer within a machine leads to. Its stop is none: a run's stop is that of the whole run. */
function targetsOf(machine: Machine): ReadonlySet<StepId> {
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

/** The ids of a machine's steps in the order of its words. */
function orderOf(machine: Machine, book: Book): readonly StepId[] {
  const worded = blocksOf(machine, book).map(({ id }) => id);
  return [...new Set([...worded, ...Object.keys(machine.steps)])];
}

const blocksOf = (machine: Machine, book: Book): readonly ContentBlock[] =>
  (book.contents[machine.id]?.blocks ?? []).filter(
    (block) => block.of === machine.id && machine.steps[block.id],
  );

/** The chapter that a step stands in; empty for the guide's first page. */
function chapterOf(machine: Machine, stepId: StepId, book: Book): string {
  const order = orderOf(machine, book);
  const at = order.indexOf(stepId);
  const starts = (book.contents[machine.id]?.chapters ?? []).filter(({ from }) => order.indexOf(from) <= at);
  return starts.at(-1)?.id ?? '';
}

/** Finds places and words in the book, as seen from one page. */
function reader(from: Machine, chapter: string, book: Book) {
  const find = (id: string): Machine => {
    const found = book.machines.find((each) => each.id === id);
    if (!found) throw new Error(`${from.id}: there is no procedure ${id}`);
    return found;
  };
  const place = (machine: Machine, stepId: StepId): Place => {
    if (!machine.steps[stepId]) throw new Error(`${machine.id}: there is no step ${stepId}`);
    const at = chapterOf(machine, stepId, book);
    const here = machine === from && (chapter === wholeBook || chapter === at);
    return {
      url: here ? '' : `${book.urlOf(machine)}${at && `${at}/`}`,
      block: stepId,
      no: String(orderOf(machine, book).indexOf(stepId) + 1),
      title: blocksOf(machine, book).find(({ id }) => id === stepId)?.title || stepId,
      page: here || machine === from ? '' : (book.contents[machine.id]?.title ?? machine.id),
    };
  };
  const label = (machine: Machine, stepId: StepId, outcome: string): string =>
    blocksOf(machine, book)
      .find(({ id }) => id === stepId)
      ?.parts.find((part) => part.tag === 'Outcome' && part.attributes.id === outcome)?.attributes.label ??
    '';
  /** A step named from within a machine: its own, or `perform/step` inside a procedure. */
  const named = (machine: Machine, path: string): { machine: Machine; stepId: StepId } => {
    const [head = '', ...rest] = path.split('/');
    const step = machine.steps[head];
    if (rest.length === 0 || step?.kind !== 'perform') return { machine, stepId: head };
    return named(find(step.procedure), rest.join('/'));
  };
  return { find, place, label, named };
}

/**
 * Lays a guide or procedure out as a page of the book.
 * @param chapter a chapter's id, empty for the first page, or `wholeBook`
 * @throws Error when a target, a procedure or an ending is not there
 */
export function layPage(machine: Machine, book: Book, chapter: string = wholeBook): GuidePage {
  const { find, place, label, named } = reader(machine, chapter, book);
  const here = (stepId: StepId) => place(machine, stepId);
  const stop = here(machine.stop);
  const callers = book.machines.flatMap((caller) =>
    Object.entries(caller.steps).flatMap(([stepId, step]) =>
      step.kind === 'perform' && step.procedure === machine.id ? [{ caller, stepId, step }] : [],
    ),
  );
  const ledTo = targetsOf(machine);

  const exit = (stepId: StepId, own: Outcome & { id: string }): Exit => ({
    outcome: own.id,
    label: label(machine, stepId, own.id),
    to: here(own.to),
    ...(own.limit ? { limit: { max: own.limit.max, otherwise: here(own.limit.otherwise) } } : {}),
  });

  /** The endings of a performed procedure. One that leaves the plant safe need not be named: it leads to the way out. */
  const endings = (stepId: StepId, step: PerformStep): Exit[] => {
    const procedure = find(step.procedure);
    const led = targetsOf(procedure);
    const unnamed = Object.entries(procedure.steps).flatMap(([id, inner]) =>
      inner.kind === 'end' && !step.endings[id] && led.has(id) ? [{ id, to: machine.escape }] : [],
    );
    return [...ownExits(step), ...unnamed].map((own) => {
      const made = exit(stepId, own);
      return { ...made, label: made.label || place(procedure, own.id).title };
    });
  };

  const exitsOf = (stepId: StepId, step: Step): Exit[] => {
    if (step.kind === 'end') return [];
    if (step.kind === 'perform') return endings(stepId, step);
    return [
      ...ownExits(step).map((own) => exit(stepId, own)),
      exit(stepId, { id: 'cant', ...asOutcome(step.cant ?? machine.escape) }),
      exit(stepId, { id: 'unsure', ...asOutcome(step.unsure ?? machine.escape) }),
      { outcome: 'stop', label: '', to: stop },
    ];
  };

  const pageStep = (stepId: StepId): PageStep => {
    const step = machine.steps[stepId]!;
    const items = step.kind === 'hold' ? step.items : step.kind === 'end' ? (step.items ?? []) : [];
    const procedure = step.kind === 'perform' ? find(step.procedure) : undefined;
    return {
      ...here(stepId),
      stepId,
      step,
      exits: exitsOf(stepId, step),
      goesOn:
        step.kind === 'end' && ledTo.has(stepId)
          ? callers.map(({ caller, stepId: at, step: performing }) => ({
              caller: place(caller, at),
              to: place(caller, asOutcome(performing.endings[stepId] ?? caller.escape).to),
            }))
          : [],
      because:
        step.kind === 'verdict'
          ? step.because.map((reason) => {
              const at = named(machine, reason.step);
              return {
                place: place(at.machine, at.stepId),
                labels: reason.outcomes.map((outcome) => label(at.machine, at.stepId, outcome) || outcome),
              };
            })
          : [],
      itemReadings: Object.fromEntries(
        items.flatMap((item) => {
          if (!item.reading) return [];
          const at = named(machine, item.reading.step);
          return [[item.id, place(at.machine, at.stepId)]];
        }),
      ),
      ...(procedure ? { first: place(procedure, procedure.start) } : {}),
    };
  };

  const steps = orderOf(machine, book)
    .filter((stepId) => chapter === wholeBook || chapterOf(machine, stepId, book) === chapter)
    .map(pageStep);
  const { title = machine.id, chapters = [] } = book.contents[machine.id] ?? {};
  const pages = [{ id: '', title }, ...chapters];
  const performed = new Set(
    Object.values(machine.steps).flatMap((step) => (step.kind === 'perform' ? [find(step.procedure)] : [])),
  );
  return {
    machine,
    steps,
    first: here(machine.start),
    stop,
    chapters:
      chapters.length === 0
        ? []
        : pages.map((each) => ({
            url: `${book.urlOf(machine)}${each.id && `${each.id}/`}`,
            title: each.title,
            here: each.id === chapter,
          })),
    performs: [...performed].map((procedure) => ({
      url: book.urlOf(procedure),
      title: book.contents[procedure.id]?.title ?? procedure.id,
    })),
    callers: callers.map(({ caller, stepId }) => place(caller, stepId)),
    step: (stepId) => steps.find((each) => each.stepId === stepId),
  };
}
