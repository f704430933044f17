import { useMemo } from 'preact/hooks';
import { checkSite } from '../../sheet-check/run.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { sheetCheckWords as words } from '../../words/en/sheet-check.ts';
import { BrokenCard } from './BrokenCard.tsx';
import { KeptTable } from './KeptTable.tsx';
import { OpenList } from './OpenList.tsx';
import { PartsList } from './PartsList.tsx';
import { PowerTable } from './PowerTable.tsx';
import { SitePick } from './SitePick.tsx';
import { useSites } from './useSites.ts';

/** The whole sheet check of one site. Nothing is judged while the page is built: there is no site then. */
export default function CheckApp() {
  const sites = useSites();
  return (
    <div class="sheet-check" data-ready={sites.chosen ? '' : undefined}>
      <SitePick sites={sites} />
      {sites.chosen && (
        <Checked sheet={sites.chosen} kept={sites.keptIds.has(sites.chosen.id)} key={sites.chosen.id} />
      )}
    </div>
  );
}

function Checked({ sheet, kept }: { sheet: SiteSheet; kept: boolean }) {
  const checked = useMemo(() => checkSite(sheet), [sheet]);
  return (
    <>
      <p role="status">
        <b>{words.counts(checked.broken.length, checked.kept.length, checked.notChecked.length)}</b>{' '}
        {words.basis[sheet.codeBasis]}
      </p>
      <PowerTable sheet={sheet} />
      <h2>{words.broken}</h2>
      {checked.broken.length === 0 && <p>{words.nothingBroken}</p>}
      {checked.broken.map((finding) => (
        <BrokenCard key={`${finding.check}-${finding.row}`} finding={finding} sheet={sheet} />
      ))}
      <h2>{words.notChecked}</h2>
      <OpenList open={checked.notChecked} sheet={sheet} kept={kept} />
      <h2>{words.kept}</h2>
      <KeptTable findings={checked.kept} units={sheet.units} />
      <PartsList sheet={sheet} />
    </>
  );
}
