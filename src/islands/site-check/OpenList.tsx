import { href } from '../../components/href.ts';
import type { NotChecked } from '../../sheet-check/check.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { sheetCheckWords as words } from '../../words/en/sheet-check.ts';
import { factLabel } from '../../words/en/site.ts';
import { boxId } from '../site/say.ts';
import { nameOfCheck } from './names.ts';

interface OpenProps {
  open: readonly NotChecked[];
  sheet: SiteSheet;
  /** The site is kept on this phone, so its facts can be entered. */
  kept: boolean;
}

/** What could not be checked, and why: never a silent pass. */
export function OpenList({ open, sheet, kept }: OpenProps) {
  if (open.length === 0) return <p>{words.allChecked}</p>;
  return (
    <>
      <p>{words.notCheckedLede}</p>
      <ul data-role="not-checked">
        {open.map((each) => (
          <li key={`${each.check}-${each.row}`}>
            <b>{nameOfCheck(each)}.</b> {words.why[each.why.kind]}{' '}
            {each.why.kind === 'missing' &&
              each.why.facts.map((fact, at) => (
                <span key={fact}>
                  {at > 0 && '; '}
                  {kept ? (
                    <a href={`${href('site/edit/')}?id=${sheet.id}#${boxId(fact)}`}>{factLabel(fact)}</a>
                  ) : (
                    factLabel(fact)
                  )}
                </span>
              ))}
          </li>
        ))}
      </ul>
    </>
  );
}
