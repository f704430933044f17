import { useEffect, useState } from 'preact/hooks';
import { demoSites } from '../../site/demo.ts';
import type { SheetDraft } from '../../site/draft.ts';
import {
  exportSites,
  type FileProblem,
  type ImportResult,
  importSites,
  longestFile,
} from '../../site/exchange.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { siteWords } from '../../words/en/site.ts';
import { fileName, saveFile } from './file.ts';
import { ErrorSummary, type Fault, NotKept } from './Notices.tsx';
import { nameOf, SiteCard } from './SiteCard.tsx';
import { say, sayOf } from './say.ts';
import * as store from './store.ts';
import { type Unfinished, UnfinishedList, unfinishedHref, unfinishedName } from './Unfinished.tsx';

interface Shown {
  sites: store.KeptSite[];
  current: string | null;
  drafts: Unfinished[];
}

/** The sites kept on this phone: choose one, take a demo, move them to another phone, delete with undo. */
export default function SiteList({ editHref }: { editHref: string }) {
  const [shown, setShown] = useState<Shown | null>(null);
  const [kept, setKept] = useState<store.Kept>('kept');
  const [status, setStatus] = useState('');
  /** Puts back what was deleted last. */
  const [undo, setUndo] = useState<{ run(): void } | null>(null);
  const [goOn, setGoOn] = useState<string | null>(null);
  const [faults, setFaults] = useState<{ list: Fault[]; round: number }>({ list: [], round: 0 });

  const refresh = async () => {
    try {
      const [sites, current, drafts] = await Promise.all([
        store.listSites(),
        store.currentSiteId(),
        store.listDrafts(),
      ]);
      setShown({ sites, current, drafts });
    } catch {
      setKept('blocked');
      setShown({ sites: [], current: null, drafts: [] });
    }
  };
  useEffect(() => void refresh(), []);

  /** Runs the writes in order, stopping at the first that is not kept; then shows what stands. */
  const act = async (said: string, ...writes: (() => Promise<store.Kept>)[]) => {
    let became: store.Kept = 'kept';
    for (const write of writes) if (became === 'kept') became = await write();
    setKept(became);
    setStatus(became === 'kept' ? said : '');
    setUndo(null);
    setGoOn(null);
    setFaults({ ...faults, list: [] });
    await refresh();
    return became === 'kept';
  };
  const remove = async (site: store.KeptSite) => {
    const wasCurrent = shown?.current === site.id;
    const forget = wasCurrent ? [() => store.setCurrentSite(null)] : [];
    await act(siteWords.removed(nameOf(site)), () => store.deleteSite(site.id), ...forget);
    setUndo({ run: () => void restore({ site, wasCurrent }) });
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
    if (read.draft) return takeDraft(read.draft);
    const { added, same } = newOnes(read.sites, shown?.sites ?? []);
    await act(siteWords.imported(added.length, same), ...added.map((sheet) => () => store.putSite(sheet)));
  };

  const throwAway = async (each: Unfinished) => {
    const name = unfinishedName(each);
    if (!(await act(siteWords.removed(name), () => store.deleteDraft(each.slot)))) return;
    const back = () => store.putDraft(each.slot, each.draft);
    setUndo({ run: () => void act(siteWords.restored(name), back) });
  };
  /** What was typed comes in beside what is typed here, never over it. */
  const takeDraft = async (given: SheetDraft) => {
    const there = await store.getDraft(given.id).catch(() => null);
    const free = there === null || JSON.stringify(there) === JSON.stringify(given);
    const draft = free ? given : { ...given, id: store.newSiteId() };
    const name = unfinishedName({ slot: draft.id, draft });
    if (await act(siteWords.importedDraft(name), () => store.putDraft(draft.id, draft))) setGoOn(draft.id);
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
            {undo && (
              <button type="button" class="btn" onClick={undo.run}>
                {siteWords.undo}
              </button>
            )}
            {goOn !== null && (
              <a class="btn" href={unfinishedHref(editHref, goOn)}>
                {siteWords.goOnTyping}
              </a>
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
      <UnfinishedList drafts={shown.drafts} editHref={editHref} onThrowAway={throwAway} />
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

/** Exports everything that is kept, what this version cannot read included. */
function exportAll(sites: readonly store.KeptSite[]): string {
  const name = fileName('sites', new Date());
  saveFile(name, exportSites(sites.map((site) => (site.sheet ?? site.raw) as SiteSheet)));
  return siteWords.exported(name);
}

async function readFile(file: File): Promise<ImportResult> {
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
