import { cardOf, type Standing } from './card.ts';
import { openDb, type VisitCard } from './db.ts';
import type { Entry } from './entries.ts';

/** What became of entries that should be written. */
export type Written =
  | { ok: true }
  /** Another tab has written to this visit: read the log again. Nothing of these entries was kept. */
  | { ok: false; why: 'otherTab' }
  /** The phone has no room, or the browser keeps nothing: the entries wait in memory. */
  | { ok: false; why: 'full' | 'blocked' };

const channelName = 'faultwright-visits';

const nameOf = (error: unknown) => (error instanceof DOMException ? error.name : '');

/** Writes entries in one transaction; resolves when it is committed, and not before. */
async function write(entries: readonly Entry[], card: VisitCard): Promise<Written> {
  try {
    const db = await openDb();
    const tx = db.transaction(['entries', 'visits'], 'readwrite');
    const lines = tx.objectStore('entries');
    // A line that is there already makes `add` fail, and with it the whole transaction: no tab overwrites another.
    const asked = [...entries.map((entry) => lines.add(entry)), tx.objectStore('visits').put(card), tx.done];
    const failed = (await Promise.allSettled(asked)).filter((each) => each.status === 'rejected');
    if (failed.length === 0) return { ok: true };
    const names = failed.map((each) => nameOf(each.reason));
    if (names.includes('ConstraintError')) return { ok: false, why: 'otherTab' };
    return { ok: false, why: names.includes('QuotaExceededError') ? 'full' : 'blocked' };
  } catch (error) {
    return { ok: false, why: nameOf(error) === 'QuotaExceededError' ? 'full' : 'blocked' };
  }
}

/**
 * The log of one visit as this tab holds it. What could not be written waits here and is tried again with the next
 * entries, so that a run goes on in memory while the phone refuses, and loses nothing when it relents.
 */
export class VisitLog {
  #entries: readonly Entry[];
  #waiting: readonly Entry[] = [];
  readonly #channel: BroadcastChannel | undefined;

  constructor(entries: readonly Entry[], onOtherTab: () => void) {
    this.#entries = entries;
    this.#channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(channelName) : undefined;
    this.#channel?.addEventListener(
      'message',
      ({ data }: MessageEvent<{ visit?: string; length?: number }>) => {
        if (
          data.visit !== undefined &&
          data.visit === this.visit &&
          (data.length ?? 0) > this.#entries.length
        )
          onOtherTab();
      },
    );
  }

  get visit(): string | undefined {
    return this.#entries[0]?.visit;
  }

  get entries(): readonly Entry[] {
    return this.#entries;
  }

  /** How many entries are in memory alone. */
  get waiting(): number {
    return this.#waiting.length;
  }

  /** Adds entries. Unless another tab was first, they are part of the log afterwards, written or waiting. */
  async append(entries: readonly Entry[], standing?: Standing): Promise<Written> {
    if (entries.length === 0) return { ok: true };
    const all = [...this.#entries, ...entries];
    const due = [...this.#waiting, ...entries];
    const written = await write(due, cardOf(all, standing));
    if (!written.ok && written.why === 'otherTab') return written;
    this.#entries = all;
    this.#waiting = written.ok ? [] : due;
    if (written.ok) this.#channel?.postMessage({ visit: this.visit, length: all.length });
    return written;
  }

  /** Takes over the log as another tab has written it. */
  replace(entries: readonly Entry[]): void {
    this.#entries = entries;
    this.#waiting = [];
  }
}

/** The log of a visit in order; empty when there is none. Rejects when nothing can be read. */
export async function readVisit(visit: string): Promise<Entry[]> {
  const entries = await (await openDb()).getAllFromIndex('entries', 'byVisit', visit);
  return entries.sort((a, b) => a.seq - b.seq);
}

/** Cards of all visits, the one last changed first. Rejects when nothing can be read. */
export async function listVisits(): Promise<VisitCard[]> {
  const cards = await (await openDb()).getAll('visits');
  return cards.sort((a, b) => b.changedAt.localeCompare(a.changedAt));
}

/** Keeps a log that was brought in, or its further entries. */
export const addEntries = (added: readonly Entry[], whole: readonly Entry[]): Promise<Written> =>
  write(added, cardOf(whole));

/** An id for a new visit. Not `randomUUID`, which a page served without https does not have. */
export function newVisitId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return `visit-${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
