import { formatQuantity } from '../../quantity/format.ts';
import { exportSites } from '../../site/exchange.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { siteWords } from '../../words/en/site.ts';
import { fileName, saveFile } from './file.ts';
import type * as store from './store.ts';

interface CardProps {
  site: store.KeptSite;
  current: boolean;
  editHref: string;
  onUse(): void;
  onRemove(): void;
}

/** One kept site in the list: use, edit, export, delete. */
export function SiteCard({ site, current, editHref, onUse, onRemove }: CardProps) {
  const { sheet } = site;
  const name = nameOf(site);
  return (
    <>
      <h2>
        {name} {current && <span class="tag">{siteWords.current}</span>}
      </h2>
      {sheet?.invented && <p>{siteWords.invented}</p>}
      <p>{sheet ? summaryOf(sheet) : siteWords.summaryStrange}</p>
      <div class="btn-row">
        {sheet && !current && (
          <button type="button" class="btn" onClick={onUse} aria-label={`${siteWords.use}: ${name}`}>
            {siteWords.use}
          </button>
        )}
        {sheet && (
          <a class="btn" href={`${editHref}?id=${site.id}`} aria-label={`${siteWords.edit} ${name}`}>
            {siteWords.edit}
          </a>
        )}
        <button
          type="button"
          class="btn"
          onClick={() => exportOne(site)}
          aria-label={`${siteWords.exportOne} ${name}`}
        >
          {siteWords.exportOne}
        </button>
        <button type="button" class="btn" onClick={onRemove} aria-label={`${siteWords.remove} ${name}`}>
          {siteWords.remove}
        </button>
      </div>
    </>
  );
}

export const nameOf = (site: store.KeptSite): string => site.sheet?.name ?? site.id;

function summaryOf({ battery, inverter, strings, units }: SiteSheet): string {
  const watts = formatQuantity(inverter.ratedW, 'power', { system: units });
  return siteWords.summary(battery.cellsInSeries, battery.packs, watts, strings.length);
}

function exportOne(site: store.KeptSite): void {
  saveFile(fileName(nameOf(site), new Date()), exportSites([(site.sheet ?? site.raw) as SiteSheet]));
}
