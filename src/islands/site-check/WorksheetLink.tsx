import { useEffect, useState } from 'preact/hooks';
import { href } from '../../components/href.ts';
import type { WorksheetUse } from '../../expected/context.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import { sheetCheckWords as words } from '../../words/en/sheet-check.ts';
import { worksheetQuery } from '../worksheet/address.ts';

/** A link to a worksheet with the numbers of this site in it. Until they are there it opens the worksheet bare. */
export function WorksheetLink({
  use,
  units,
  about,
}: {
  use: WorksheetUse;
  units: UnitSystem;
  about: string;
}) {
  const [query, setQuery] = useState('');
  useEffect(() => {
    let here = true;
    worksheetQuery(use, units).then((found) => here && setQuery(`?${found}`));
    return () => {
      here = false;
    };
  }, [use, units]);
  return (
    <a href={`${href(`worksheets/${use.worksheet}/`)}${query}`} aria-label={`${words.worksheet}: ${about}`}>
      {words.worksheet}
    </a>
  );
}
