import { z } from 'astro/zod';

/** What stands in the head of each content file. Strict: a key that nobody reads is a mistake. */

/** Head of a guide's or procedure's words. */
export const guideHead = z.strictObject({
  title: z.string().min(3),
  summary: z.string().min(10),
  /** How people say it on the phone; guides are found by these. */
  phrases: z.array(z.string()).default([]),
  /** What to have at hand, in plain words. */
  tools: z.array(z.string()).default([]),
  /** Rough minutes for the whole of it. */
  minutes: z.number().positive().optional(),
  /** Where a long guide turns to a new page: the first step of each further chapter, in the order of its words. */
  chapters: z
    .array(z.strictObject({ id: z.string().regex(/^[a-z-]+$/), title: z.string().min(3), from: z.string() }))
    .default([]),
  /** Sources of the limits in it, ids of `sources.yaml`. */
  source: z.array(z.string()).default([]),
});

/** Head of a cause. */
export const causeHead = z.strictObject({
  title: z.string().min(3),
  /** The guide whose verdict names it. */
  guide: z.string(),
  /** Other ways people say it. */
  also: z.array(z.string()).default([]),
  /** Within its own symptom. */
  frequency: z.enum(['common', 'occasional', 'rare']),
  /** Signal word of the worst hazard in finding or mending it. */
  word: z.enum(['danger', 'warning', 'caution', 'notice', 'none']),
  /** Rough minutes of the check that tells it apart. */
  minutes: z.number().positive(),
  /** Ids of `sources.yaml`. */
  source: z.array(z.string()).default([]),
});

/** Head of a worksheet's page. Everything else about it stands in `src/worksheets` and its words. */
export const worksheetHead = z.strictObject({
  title: z.string().min(3),
  /** What it answers, in a sentence. */
  summary: z.string().min(10),
});

/** Head of a library article: one idea that the guides lean on. */
export const libraryHead = z.strictObject({
  title: z.string().min(3),
  summary: z.string().min(10),
  /** How people ask for it. */
  phrases: z.array(z.string()).default([]),
  /** Ids of `sources.yaml`. */
  source: z.array(z.string()).default([]),
});

/** What the search knows beside the pages' own words. */
export const searchAliases = z.strictObject({
  /** Words that say nothing about what is looked for. */
  ignore: z.array(z.string()),
  /** What is said, and the words of the pages that it stands for. */
  means: z.array(z.strictObject({ said: z.array(z.string()).min(1), words: z.array(z.string()).min(1) })),
  /** More ways to say an entry, by its kind and id, as `guide/pv-no-start`. */
  said: z.record(z.string(), z.array(z.string())),
});

/** A term of the trade. */
export const glossaryEntry = z.strictObject({
  id: z.string(),
  term: z.string(),
  also: z.array(z.string()).default([]),
  text: z.string().min(20),
  /** Ids of terms that are explained with it. */
  see: z.array(z.string()).default([]),
});

/** A published source, or the honest lack of one. */
export const sourceEntry = z.strictObject({
  id: z.string(),
  title: z.string(),
  edition: z.string().optional(),
  clause: z.string().optional(),
  /** How the value came here. */
  how: z.enum(['read', 'from memory', 'common practice']),
  note: z.string().optional(),
});

export type GuideHead = z.infer<typeof guideHead>;
export type CauseHead = z.infer<typeof causeHead>;
export type WorksheetHead = z.infer<typeof worksheetHead>;
export type LibraryHead = z.infer<typeof libraryHead>;
export type GlossaryEntry = z.infer<typeof glossaryEntry>;
export type SourceEntry = z.infer<typeof sourceEntry>;
