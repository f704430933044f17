import type { SheetDraft } from '../../site/draft.ts';
import { draftName, exportDraft } from '../../site/draft-exchange.ts';
import { siteWords } from '../../words/en/site.ts';
import { fileName, saveFile } from './file.ts';

/** What was typed for a new site, and the slot it is kept in. */
export interface Unfinished {
  slot: string;
  draft: SheetDraft;
}

export const unfinishedName = ({ draft }: Unfinished): string => draftName(draft) || siteWords.unnamed;

/** Address of the form that shows it again. */
export const unfinishedHref = (editHref: string, slot: string): string =>
  slot === 'new' ? editHref : `${editHref}?id=${slot}`;

interface Props {
  drafts: readonly Unfinished[];
  editHref: string;
  onThrowAway(draft: Unfinished): void;
}

/** Sites that were begun and never saved: go on with one, take it along, or throw it away. */
export function UnfinishedList({ drafts, editHref, onThrowAway }: Props) {
  if (drafts.length === 0) return null;
  return (
    <>
      <h2>{siteWords.unfinished}</h2>
      <p>{siteWords.unfinishedLede}</p>
      <ul class="card-list">
        {drafts.map((each) => {
          const name = unfinishedName(each);
          const save = () =>
            saveFile(fileName(`${draftName(each.draft)} unfinished`, new Date()), exportDraft(each.draft));
          return (
            <li key={each.slot}>
              <h3>{name}</h3>
              <div class="btn-row">
                <a
                  class="btn"
                  href={unfinishedHref(editHref, each.slot)}
                  aria-label={`${siteWords.goOnTyping}: ${name}`}
                >
                  {siteWords.goOnTyping}
                </a>
                <button
                  type="button"
                  class="btn"
                  onClick={save}
                  aria-label={`${siteWords.exportOne} ${name}`}
                >
                  {siteWords.exportOne}
                </button>
                <button
                  type="button"
                  class="btn"
                  onClick={() => onThrowAway(each)}
                  aria-label={`${siteWords.throwAway}: ${name}`}
                >
                  {siteWords.throwAway}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
    </>
  );
}
