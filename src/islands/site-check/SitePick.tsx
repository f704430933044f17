import { sheetCheckWords as words } from '../../words/en/sheet-check.ts';
import type { Sites } from './useSites.ts';

/** Which site the page is about, and a button to print it. */
export function SitePick({ sites }: { sites: Sites }) {
  const { all, chosen, keptIds } = sites;
  if (!chosen) return <p role="status">{words.reading}</p>;
  return (
    <>
      <div class="worksheet-from">
        <label class="worksheet-pick">
          {words.site}{' '}
          <select value={chosen.id} onChange={(event) => sites.choose(event.currentTarget.value)}>
            {all.map((sheet) => (
              <option key={sheet.id} value={sheet.id}>
                {keptIds.has(sheet.id) ? sheet.name : words.demo(sheet.name)}
              </option>
            ))}
          </select>
        </label>
        <button type="button" class="btn btn-quiet no-print" onClick={() => print()}>
          {words.print}
        </button>
      </div>
      {keptIds.size === 0 && <p class="notice-line">{words.noSites}</p>}
      {keptIds.size > 0 && chosen.invented && <p class="notice-line">{words.invented}</p>}
    </>
  );
}
