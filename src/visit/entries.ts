import * as z from 'zod/mini';
import { longestOption, mostOptions } from '../guide/pairing.ts';
import { quantityKinds } from '../quantity/kinds.ts';
import { sheetSchema } from '../site/sheet.ts';
import { effectSchema } from './effect-schema.ts';
import { logVersion, longestLabel, longestNote, longestTyped } from './log-limits.ts';

const visitId = z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{5,63}$/));
const id = z.string().check(z.regex(/^[A-Za-z0-9][A-Za-z0-9._/[\]-]{0,159}$/));
const time = z.string().check(z.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/));
const typed = z.string().check(z.maxLength(longestTyped));
const label = z.string().check(z.maxLength(longestLabel));
const seq = z.int().check(z.gte(0), z.lte(100_000));
const finite = z.number();
const factValue = z.union([z.string().check(z.maxLength(2000)), z.number(), z.boolean(), z.null()]);

const stamp = {
  visit: visitId,
  /** Place in the log: 0, 1, 2, … without a gap. */
  seq,
  /** When it was written, UTC. */
  at: time,
};

/** A stretch of a band as it stood when the reading was judged. */
const zone = z.strictObject({ id, min: z.nullable(finite), max: z.nullable(finite) });

const reading = z.strictObject({
  id,
  /** What was typed, as it was typed. */
  text: typed,
  /** Inside unit of its kind; a reading whose sign is not asked for is kept as a magnitude. */
  value: z.union([finite, z.literal('overRange')]),
  unit: z.string().check(z.maxLength(12)),
  /** Worth of one step of the last digit typed. */
  resolution: finite,
  /** The meter's expanded uncertainty, inside unit. */
  uncertaintyU: finite,
  meter: z.strictObject({
    percentOfReading: finite,
    counts: finite,
    resolution: z.optional(finite),
    assumed: z.boolean(),
  }),
  scale: z.strictObject({
    id,
    kind: z.enum(quantityKinds),
    zones: z.array(zone).check(z.minLength(1), z.maxLength(24)),
    expected: id,
    nominal: z.optional(finite),
    overRange: z.optional(id),
    /** Sheet facts and earlier readings the limits were made from. */
    uses: z.record(z.string().check(z.maxLength(160)), z.union([finite, label])),
  }),
  outcome: id,
  between: z.optional(z.tuple([id, id])),
  /** Time-stamped values: seconds from the start of the series, what was typed, the value. */
  series: z.optional(z.array(z.tuple([finite, typed, finite])).check(z.maxLength(200))),
});

/** Names of things as the page showed them, so that a log reads the same after the guide has changed. */
const asked = z.strictObject({
  title: label,
  answer: z.optional(label),
  readings: z.optional(z.record(id, label)),
  items: z.optional(z.record(id, label)),
});

const begin = z.strictObject({
  ...stamp,
  kind: z.literal('begin'),
  version: z.literal(logVersion),
  guide: id,
  guideKind: z.enum(['guide', 'procedure']),
  guideTitle: z.optional(label),
  guideVersion: z.int(),
  /** The plant state the run was begun from. */
  begins: id,
  /** The PV string the run is about, by its name on the sheet. */
  subject: z.optional(label),
  /** The whole sheet as it stood. */
  sheet: sheetSchema,
});

const option = z.string().check(z.minLength(1), z.maxLength(longestOption));
const options = z.array(option).check(z.minLength(1), z.maxLength(mostOptions));
const pair = z.strictObject({ inverter: option, pack: option });

/** A pairing grid as it stood when a pair of it was chosen, and that pair. */
const pairing = z.strictObject({
  inverter: options,
  pack: options,
  found: pair,
  named: z.strictObject({ inverter: z.optional(option), pack: z.optional(option) }),
  pair: z.optional(pair),
});

/** What was tried: the pair, and seconds from the plant standing ready with it to this answer. */
const tried = z.strictObject({ inverter: option, pack: option, waitedS: finite });

const answer = z.strictObject({
  ...stamp,
  kind: z.literal('answer'),
  path: id,
  block: id,
  outcome: id,
  /** What the answer did to the plant or showed of it, as the guide stood. */
  does: z.array(effectSchema).check(z.maxLength(40)),
  readings: z.optional(z.array(reading).check(z.maxLength(24))),
  /** Answered by the sheet or by a worksheet, not by the person. */
  by: z.optional(z.enum(['sheet', 'worksheet'])),
  /** A worksheet's inputs, where one decided. */
  inputs: z.optional(z.record(z.string().check(z.maxLength(160)), z.union([finite, label]))),
  /** The causes of a verdict, where one was answered. */
  found: z.optional(z.array(id).check(z.minLength(1), z.maxLength(12))),
  /** What a re-test showed of the remedy that was tried. */
  retest: z.optional(z.enum(['cured', 'failed'])),
  /** The items of a hold point that were met. */
  items: z.optional(z.array(id).check(z.maxLength(40))),
  pairing: z.optional(pairing),
  tried: z.optional(tried),
  asked: z.optional(asked),
});

/** One item of a hold point or of an end, ticked or unticked. */
const confirm = z.strictObject({
  ...stamp,
  kind: z.literal('confirm'),
  path: id,
  block: id,
  item: id,
  met: z.boolean(),
  asked: z.optional(asked),
});

/** Facts of the sheet changed while the visit was open. */
const fact = z.strictObject({
  ...stamp,
  kind: z.literal('fact'),
  changes: z
    .array(z.strictObject({ id: z.string().check(z.maxLength(160)), from: factValue, to: factValue }))
    .check(z.maxLength(400)),
  /** The whole sheet after them. */
  sheet: sheetSchema,
});

/** Back to an earlier answer, to read it again or to correct it. What was done stays done. */
const correct = z.strictObject({ ...stamp, kind: z.literal('correct'), toSeq: seq });

/** "I did not do that": the answer at `toSeq` claimed a deed that was not done. Voids every proof. */
const undoAct = z.strictObject({ ...stamp, kind: z.literal('undoAct'), toSeq: seq });

/** A proof had grown too old, or the clock could not be trusted. Voids every proof. */
const expiry = z.strictObject({
  ...stamp,
  kind: z.literal('expiry'),
  reason: z.enum(['age', 'clock', 'person']),
});

/** The guide had changed since an earlier answer: from here the run goes on by the new version. */
const changed = z.strictObject({ ...stamp, kind: z.literal('changed'), guideVersion: z.int(), path: id });

const note = z.strictObject({
  ...stamp,
  kind: z.literal('note'),
  text: z.string().check(z.minLength(1), z.maxLength(longestNote)),
});

const closed = z.strictObject({
  ...stamp,
  kind: z.literal('closed'),
  path: id,
  result: z.enum(['done', 'fixed', 'healthy', 'referred', 'leftIsolated', 'leftGuarded', 'unresolved']),
  leaves: z.enum(['untouched', 'restored', 'isolated', 'guarded']),
  /** Causes that were ruled out and the steps that speak against each, by their titles. */
  ruledOut: z.optional(
    z
      .array(z.strictObject({ cause: label, by: z.array(label).check(z.maxLength(20)) }))
      .check(z.maxLength(60)),
  ),
  asked: z.optional(asked),
});

/** One line of a visit's log. Lines are only ever added. */
export const entrySchema = z.discriminatedUnion('kind', [
  begin,
  answer,
  confirm,
  fact,
  correct,
  undoAct,
  expiry,
  changed,
  note,
  closed,
]);

export type Entry = z.infer<typeof entrySchema>;
export type EntryOf<Kind extends Entry['kind']> = Extract<Entry, { kind: Kind }>;
export type LoggedReading = z.infer<typeof reading>;
/** What the page showed, kept with an answer. */
export type Asked = z.infer<typeof asked>;

/** An entry before it has its place in the log. */
export type Body = Entry extends infer Each
  ? Each extends Entry
    ? Omit<Each, 'visit' | 'seq' | 'at'>
    : never
  : never;
