import type { Machine } from '../../guide/vocabulary.ts';

type Against = NonNullable<Machine['against']>;

/** Of each guide that has one, `machines/<guide>/against.ts`: fetched at a verdict or an end, which alone ask for it. */
const files = import.meta.glob<Against>('../../../machines/*/against.ts', { import: 'against' });

/** What rules causes out in a guide; nothing where it has no such list. */
export const againstOf = async (guide: string): Promise<Against> =>
  (await files[`../../../machines/${guide}/against.ts`]?.()) ?? {};
