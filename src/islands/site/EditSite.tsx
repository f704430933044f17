import { useEffect, useRef, useState } from 'preact/hooks';
import type { SheetResult } from '../../site/check.ts';
import { emptyDraft } from '../../site/defaults.ts';
import { draftOfSheet, type SheetDraft, sheetOfDraft } from '../../site/draft.ts';
import { exportDraft } from '../../site/draft-exchange.ts';
import { exportSites } from '../../site/exchange.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { factGroups, siteWords } from '../../words/en/site.ts';
import { fileName, saveFile } from './file.ts';
import { ErrorSummary, type Fault, NotKept } from './Notices.tsx';
import { SheetForm } from './SheetForm.tsx';
import { say, sayOf } from './say.ts';
import * as store from './store.ts';

interface Loaded {
  /** Under which the draft is kept: the site's id, or `new`. */
  slot: string;
  /** The sheet as it was last saved. */
  base: SiteSheet | null;
  draft: SheetDraft;
}

/** Quiet time after a key before the draft is written, so that typing stays quick. */
const draftPauseMs = 300;

/** Enter or change one site. `?id=` names the site; without it a new one is begun. */
export default function EditSite({ listHref }: { listHref: string }) {
  const [loaded, setLoaded] = useState<Loaded | 'loading' | 'missing'>('loading');
  const [kept, setKept] = useState<store.Kept>('kept');
  const [draftFound, setDraftFound] = useState(false);

  useEffect(() => {
    load().then(
      (result) => {
        setLoaded(result.loaded);
        setDraftFound(result.fromDraft);
      },
      () => {
        setKept('blocked');
        setLoaded({ slot: 'new', base: null, draft: emptyDraft(store.newSiteId(), 'us') });
      },
    );
  }, []);

  if (loaded === 'loading') return <p>{siteWords.loading}</p>;
  if (loaded === 'missing') {
    return (
      <p class="notice-line">
        {siteWords.notFound} <a href={listHref}>{siteWords.toList}</a>
      </p>
    );
  }
  return <Editor {...{ loaded, setLoaded, kept, setKept, draftFound, setDraftFound, listHref }} />;
}

async function load(): Promise<{ loaded: Loaded | 'missing'; fromDraft: boolean }> {
  const id = new URLSearchParams(location.search).get('id');
  const slot = id ?? 'new';
  const draft = await store.getDraft(slot);
  const base = id === null ? null : await store.getSite(id);
  if (id !== null && base === null && draft === null) return { loaded: 'missing', fromDraft: false };
  const fresh = base ? draftOfSheet(base) : emptyDraft(store.newSiteId(), 'us');
  return { loaded: { slot, base, draft: draft ?? fresh }, fromDraft: draft !== null };
}

interface EditorProps {
  loaded: Loaded;
  setLoaded(loaded: Loaded): void;
  kept: store.Kept;
  setKept(kept: store.Kept): void;
  draftFound: boolean;
  setDraftFound(found: boolean): void;
  listHref: string;
}

function Editor({ loaded, setLoaded, kept, setKept, draftFound, setDraftFound, listHref }: EditorProps) {
  const { slot, base, draft } = loaded;
  const [result, setResult] = useState<SheetResult | null>(null);
  const [round, setRound] = useState(0);
  const [asking, setAsking] = useState(false);
  const saving = useDraftKeeper(slot, draft, base, setKept);
  const outcome = useRef<HTMLDivElement>(null);

  const faults = result && !result.ok ? faultsOf(result) : [];
  useTitle(base, faults.length > 0);
  useEffect(() => {
    if (result?.ok) outcome.current?.focus();
  }, [result]);

  const change = (next: SheetDraft) => {
    setDraftFound(false);
    if (result?.ok) setResult(null);
    setLoaded({ ...loaded, draft: next });
  };
  const save = async (event: Event) => {
    event.preventDefault();
    const next = sheetOfDraft(draft, base ?? undefined);
    setRound(round + 1);
    if (!next.ok) return setResult(next);
    saving.stop();
    const became = await store.putSite(next.sheet);
    setKept(became);
    if (became !== 'kept') return;
    await store.setCurrentSite(next.sheet.id);
    await store.deleteDraft(slot);
    history.replaceState(null, '', `?id=${next.sheet.id}`);
    setDraftFound(false);
    setResult(next);
    setLoaded({ slot: next.sheet.id, base: next.sheet, draft: draftOfSheet(next.sheet) });
  };
  const discard = async () => {
    saving.stop();
    await store.deleteDraft(slot);
    setAsking(false);
    setResult(null);
    setDraftFound(false);
    setLoaded({ ...loaded, draft: base ? draftOfSheet(base) : emptyDraft(store.newSiteId(), 'us') });
  };

  return (
    <form onSubmit={save} noValidate>
      {faults.length > 0 && (
        <ErrorSummary title={siteWords.errorTitle(faults.length)} faults={faults} round={round} />
      )}
      <NotKept kept={kept} onExport={() => saveDraft(draft, base)} />
      {result?.ok && (
        <div class="notice-line" role="status" tabIndex={-1} ref={outcome}>
          <p>
            <b>{siteWords.saved}</b> <a href={listHref}>{siteWords.toList}</a>
          </p>
          {result.warnings.length > 0 && (
            <>
              <p>{siteWords.warningTitle}</p>
              <ul>
                {result.warnings.map(({ reason }) => (
                  <li key={reason.id}>{say(reason)}</li>
                ))}
              </ul>
            </>
          )}
        </div>
      )}
      {draftFound && <p class="notice-line">{siteWords.draftBack}</p>}
      <p>{siteWords.formLede}</p>
      <nav aria-label={siteWords.jump}>
        <ul class="jump">
          {factGroups.map(({ title }, at) => (
            <li key={title}>
              <a href={`#g-${at}`}>{title}</a>
            </li>
          ))}
          <li>
            <a href="#g-trackers">{siteWords.trackersTitle}</a>
          </li>
          <li>
            <a href="#g-strings">{siteWords.stringsTitle}</a>
          </li>
        </ul>
      </nav>
      <SheetForm draft={draft} errors={errorsOf(faults)} onChange={change} />
      <div class="btn-row">
        <button type="submit" class="btn btn-primary">
          {siteWords.save}
        </button>
        {!asking && (
          <button type="button" class="btn" onClick={() => setAsking(true)}>
            {siteWords.discard}
          </button>
        )}
      </div>
      {asking && (
        <div class="notice-line" role="alert">
          <p>{siteWords.discardSure}</p>
          <div class="btn-row">
            <button type="button" class="btn" onClick={discard}>
              {siteWords.discardYes}
            </button>
            <button type="button" class="btn" onClick={() => setAsking(false)}>
              {siteWords.keepTyping}
            </button>
          </div>
        </div>
      )}
    </form>
  );
}

/** A whole sheet as a file of sites, one with gaps as it was typed: both can be imported. */
function saveDraft(draft: SheetDraft, base: SiteSheet | null): void {
  const result = sheetOfDraft(draft, base ?? undefined);
  const name = draft.typed.name ?? '';
  if (result.ok) saveFile(fileName(name, new Date()), exportSites([result.sheet]));
  else saveFile(fileName(`${name} unfinished`, new Date()), exportDraft(draft));
}

function faultsOf(result: Extract<SheetResult, { ok: false }>): Fault[] {
  return result.problems.map(({ factIds: [id], reason }) =>
    id === undefined ? { text: say(reason) } : { id, text: sayOf(reason, id) },
  );
}

const errorsOf = (faults: readonly Fault[]): Record<string, string> =>
  Object.fromEntries(faults.flatMap(({ id, text }) => (id === undefined ? [] : [[id, text]])));

/** Writes the draft a moment after each change, and at once when the page is put away. */
function useDraftKeeper(
  slot: string,
  draft: SheetDraft,
  base: SiteSheet | null,
  onKept: (kept: store.Kept) => void,
) {
  const pending = useRef<{ timer: number; write: () => void } | null>(null);
  const first = useRef(draft);
  const stop = () => {
    if (pending.current) clearTimeout(pending.current.timer);
    pending.current = null;
  };
  useEffect(() => {
    const asSaved = base !== null && sameDraft(draft, draftOfSheet(base));
    if (draft === first.current || asSaved) return;
    const write = () => {
      stop();
      void store.putDraft(slot, draft).then(onKept);
    };
    stop();
    pending.current = { timer: window.setTimeout(write, draftPauseMs), write };
  }, [draft]);
  useEffect(() => {
    const now = () => pending.current?.write();
    addEventListener('pagehide', now);
    document.addEventListener('visibilitychange', now);
    return () => {
      removeEventListener('pagehide', now);
      document.removeEventListener('visibilitychange', now);
    };
  }, []);
  return { stop };
}

const sameDraft = (one: SheetDraft, other: SheetDraft): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

function useTitle(base: SiteSheet | null, wrong: boolean): void {
  useEffect(() => {
    const title = base ? siteWords.editTitle(base.name) : siteWords.newTitle;
    const program = document.title.split(' – ').at(-1);
    document.title = `${wrong ? siteWords.errorPrefix : ''}${title} – ${program}`;
    const heading = document.querySelector('h1');
    if (heading) heading.textContent = title;
  }, [base, wrong]);
}
