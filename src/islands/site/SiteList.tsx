import { useEffect, useState } from 'preact/hooks';
import { formatQuantity } from '../../quantity/format.ts';
import { demoSites } from '../../site/demo.ts';
import { exportSites, type FileProblem, importSites, longestFile } from '../../site/exchange.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { siteWords } from '../../words/en/site.ts';
import { fileName, saveFile } from './file.ts';
import { ErrorSummary, type Fault, NotKept } from './Notices.tsx';
import { say, sayOf } from './say.ts';
import * as store from './store.ts';

interface Shown {
  sites: store.KeptSite[];
  current: string | null;
}

/** The sites kept on this phone: choose one, take a demo, move them to another phone, delete with undo. */
export default function SiteList({ editHref }: { editHref: string }) {
  const [shown, setShown] = useState<Shown | null>(null);
  const [kept, setKept] = useState<store.Kept>('kept');
  const [status, setStatus] = useState('');
  const [removed, setRemoved] = useState<{ site: store.KeptSite; wasCurrent: boolean } | null>(null);
  const [faults, setFaults] = useState<{ list: Fault[]; round: number }>({ list: [], round: 0 });

  const refresh = async () => {
    try {
      setShown({ sites: await store.listSites(), current: await store.currentSiteId() });
    } catch {
      setKept('blocked');
      setShown({ sites: [], current: null });
    }
  };
  useEffect(() => void refresh(), []);

  /** Runs the writes in order, stopping at the first that is not kept; then shows what stands. */
  const act = async (said: string, ...writes: (() => Promise<store.Kept>)[]) => {
    let became: store.Kept = 'kept';
    for (const write of writes) if (became === 'kept') became = await write();
    setKept(became);
    setStatus(became === 'kept' ? said : '');
    setRemoved(null);
    setFaults({ ...faults, list: [] });
    await refresh();
  };
  const remove = async (site: store.KeptSite) => {
    const wasCurrent = shown?.current === site.id;
    const forget = wasCurrent ? [() => store.setCurrentSite(null)] : [];
    await act(siteWords.removed(nameOf(site)), () => store.deleteSite(site.id), ...forget);
    setRemoved({ site, wasCurrent });
  };
  const restore = ({ site, wasCurrent }: { site: store.KeptSite; wasCurrent: boolean }) => {
    const back = () => (site.sheet ? store.putSite(site.sheet) : store.putBack(site.raw as { id: string }));
    return act(
      siteWords.restored(nameOf(site)),
      back,
      ...(wasCurrent ? [() => store.setCurrentSite(site.id)] : []),
    );
  };
  const takeDemo = (demo: SiteSheet) =>
    act(
      siteWords.takenDemo(demo.name),
      () => store.putSite(demo),
      () => store.setCurrentSite(demo.id),
    );
  const takeFile = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (!file) return;
    const read = await readFile(file);
    input.value = '';
    if (!read.ok) return setFaults({ list: read.problems.map(faultOf), round: faults.round + 1 });
    const { added, same } = newOnes(read.sites, shown?.sites ?? []);
    await act(siteWords.imported(added.length, same), ...added.map((sheet) => () => store.putSite(sheet)));
  };

  if (!shown) return <p>{siteWords.loading}</p>;
  return (
    <>
      {faults.list.length > 0 && (
        <ErrorSummary title={siteWords.importRefused} faults={faults.list} round={faults.round} />
      )}
      <NotKept kept={kept} />
      <div role="status">
        {status !== '' && (
          <p class="notice-line">
            {status}{' '}
            {removed && (
              <button type="button" class="btn" onClick={() => restore(removed)}>
                {siteWords.undo}
              </button>
            )}
          </p>
        )}
      </div>
      {shown.sites.length === 0 && <p>{siteWords.none}</p>}
      <ul class="card-list">
        {shown.sites.map((site) => (
          <li key={site.id}>
            <SiteCard
              site={site}
              current={shown.current === site.id}
              editHref={editHref}
              onUse={() => act(siteWords.inUse(nameOf(site)), () => store.setCurrentSite(site.id))}
              onRemove={() => remove(site)}
            />
          </li>
        ))}
      </ul>
      <p>
        <a class="btn btn-primary" href={editHref}>
          {siteWords.enter}
        </a>
      </p>
      <h2>{siteWords.demos}</h2>
      <p>{siteWords.demosLede}</p>
      <div class="btn-row">
        {demoSites.map((demo) => (
          <button type="button" class="btn" key={demo.id} onClick={() => takeDemo(demo)}>
            {siteWords.takeDemo(demo.name)}
          </button>
        ))}
      </div>
      <h2>{siteWords.move}</h2>
      {shown.sites.length > 0 && (
        <p>
          <button type="button" class="btn" onClick={() => setStatus(exportAll(shown.sites))}>
            {siteWords.exportAll}
          </button>
        </p>
      )}
      <div class="field">
        <label for="import-file">{siteWords.importLabel}</label>
        <p class="field-hint" id="import-hint">
          {siteWords.importHint}
        </p>
        <input
          type="file"
          id="import-file"
          accept="application/json,.json"
          aria-describedby="import-hint"
          onChange={(event) => void takeFile(event.currentTarget)}
        />
      </div>
    </>
  );
}

interface CardProps {
  site: store.KeptSite;
  current: boolean;
  editHref: string;
  onUse(): void;
  onRemove(): void;
}

function SiteCard({ site, current, editHref, onUse, onRemove }: CardProps) {
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

const nameOf = (site: store.KeptSite): string => site.sheet?.name ?? site.id;

function summaryOf({ battery, inverter, strings, units }: SiteSheet): string {
  const watts = formatQuantity(inverter.ratedW, 'power', { system: units });
  return siteWords.summary(battery.cellsInSeries, battery.packs, watts, strings.length);
}

/** Exports everything that is kept, what this version cannot read included. */
function exportAll(sites: readonly store.KeptSite[]): string {
  const name = fileName('sites', new Date());
  saveFile(name, exportSites(sites.map((site) => (site.sheet ?? site.raw) as SiteSheet)));
  return siteWords.exported(name);
}

function exportOne(site: store.KeptSite): void {
  saveFile(fileName(nameOf(site), new Date()), exportSites([(site.sheet ?? site.raw) as SiteSheet]));
}

async function readFile(
  file: File,
): Promise<{ ok: true; sites: SiteSheet[] } | { ok: false; problems: FileProblem[] }> {
  // Four bytes hold any character: a longer file need not even be read.
  if (file.size > 4 * longestFile) return importSites(' '.repeat(longestFile + 1));
  try {
    return importSites(await file.text());
  } catch {
    return { ok: false, problems: [{ factIds: [], reason: { id: 'site.file.unreadable' } }] };
  }
}

function faultOf({ site, factIds: [id], reason }: FileProblem): Fault {
  const sentence = id === undefined ? say(reason) : sayOf(reason, id);
  return { text: site === undefined ? sentence : `${site}: ${sentence}` };
}

/** Nothing kept is overwritten: a site whose id is taken by other facts comes in under an id of its own. */
function newOnes(
  sites: readonly SiteSheet[],
  there: readonly store.KeptSite[],
): { added: SiteSheet[]; same: number } {
  const keptById = new Map(there.map((site) => [site.id, JSON.stringify(site.sheet)]));
  const fresh = sites.filter((sheet) => keptById.get(sheet.id) !== JSON.stringify(sheet));
  const added = fresh.map((sheet) => (keptById.has(sheet.id) ? { ...sheet, id: store.newSiteId() } : sheet));
  return { added, same: sites.length - fresh.length };
}
