import type { CauseHead, GlossaryEntry, GuideHead, LibraryHead, WorksheetHead } from '../content-schemas.ts';
import { readBlocks } from '../guide/content-blocks.ts';
import type { Machine } from '../guide/vocabulary.ts';
import type { Entry, Phrase } from './search-index.ts';

/** A content file: its head, and its text where that is looked at. */
interface Written<Head> {
  id: string;
  data: Head;
}

/** Everything written that can be found. */
export interface SearchContent {
  guides: readonly (Written<GuideHead> & { body: string })[];
  procedures: readonly (Written<GuideHead> & { body: string })[];
  causes: readonly Written<CauseHead>[];
  worksheets: readonly Written<WorksheetHead>[];
  library: readonly Written<LibraryHead>[];
  glossary: readonly GlossaryEntry[];
  machines: readonly Machine[];
}

const title = (text: string): Phrase => ({ field: 'title', text });
const said = (texts: readonly string[]): Phrase[] => texts.map((text) => ({ field: 'said', text }));
const summary = (text: string): Phrase => ({ field: 'summary', text });

const byId = <Item extends { id: string }>(items: readonly Item[]): Item[] =>
  items.toSorted((a, b) => (a.id < b.id ? -1 : 1));

/** What to find, from all that is written; the same whatever order it is handed over in. */
export function entriesOf(content: SearchContent): Entry[] {
  return [
    ...byId(content.guides).map((each) => books('guide', each)),
    ...byId(content.causes).map(({ id, data }) => ({
      kind: 'cause' as const,
      id: `cause/${id}`,
      url: `causes/${id}/`,
      under: `guide/${data.guide}`,
      phrases: [title(data.title), ...said(data.also)],
    })),
    ...byId(content.procedures).map((each) => books('procedure', each)),
    ...byId(content.worksheets).map(({ id, data }) => ({
      kind: 'worksheet' as const,
      id: `worksheet/${id}`,
      url: `worksheets/${id}/`,
      phrases: [title(data.title), summary(data.summary)],
    })),
    ...byId(content.library).map(({ id, data }) => ({
      kind: 'library' as const,
      id: `library/${id}`,
      url: `library/${id}/`,
      phrases: [title(data.title), ...said(data.phrases), summary(data.summary)],
    })),
    ...byId(content.glossary).map(({ id, term, also }) => ({
      kind: 'glossary' as const,
      id: `glossary/${id}`,
      url: `glossary/#${id}`,
      phrases: [title(term), ...said(also)],
    })),
    ...byId(content.guides).flatMap((each) => stepsOf('guide', each, content.machines)),
    ...byId(content.procedures).flatMap((each) => stepsOf('procedure', each, content.machines)),
  ];
}

const books = (kind: 'guide' | 'procedure', { id, data }: Written<GuideHead>): Entry => ({
  kind,
  id: `${kind}/${id}`,
  url: `${kind}s/${id}/`,
  phrases: [title(data.title), ...said(data.phrases), summary(data.summary)],
});

/** Steps that nobody looks for by name: a verdict's words stand on its cause's page, an ending's mean nothing alone. */
const unsought = ['verdict', 'end', 'perform'];

function stepsOf(
  kind: 'guide' | 'procedure',
  { id, data, body }: Written<GuideHead> & { body: string },
  machines: readonly Machine[],
): Entry[] {
  const machine = machines.find((each) => each.id === id);
  let chapter = '';
  return readBlocks(body).blocks.flatMap((block) => {
    chapter = data.chapters.find(({ from }) => from === block.id)?.id ?? chapter;
    const step = block.of === id ? machine?.steps[block.id] : undefined;
    if (!step || unsought.includes(step.kind) || block.title === '') return [];
    return [
      {
        kind: 'step' as const,
        id: `step/${id}/${block.id}`,
        url: `${kind}s/${id}/${chapter && `${chapter}/`}#${block.id}`,
        under: `${kind}/${id}`,
        phrases: [title(block.title)],
      },
    ];
  });
}
