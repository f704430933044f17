import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Entry } from './entries.ts';

/** A visit's card: what the list of visits shows without reading its log. Made anew from the log whenever that grows. */
export interface VisitCard {
  id: string;
  guide: string;
  guideKind: 'guide' | 'procedure';
  guideTitle: string;
  siteId: string;
  siteName: string;
  subject?: string;
  begunAt: string;
  changedAt: string;
  entries: number;
  /** The step it stands at, by its place and its title. */
  path: string;
  stepTitle: string;
  /** Devices that the visit has left open, where its run said so. */
  open?: string[];
  /** Verdicts that were acted on and whose re-test failed, by their titles. */
  notCured?: string[];
  /** How it was closed; missing while it is open. */
  result?: string;
}

/** Everything kept on this phone. */
export interface FaultwrightDb extends DBSchema {
  /** Site sheets by their id; any version's, so that none is lost to an update. */
  sites: { key: string; value: { id: string } };
  /** Single values by name. */
  settings: { key: string; value: unknown };
  visits: { key: string; value: VisitCard };
  entries: { key: [string, number]; value: Entry; indexes: { byVisit: string } };
}

const name = 'faultwright';
const version = 1;

let opening: Promise<IDBPDatabase<FaultwrightDb>> | undefined;

/**
 * The one database of this site. Opened at first use and kept; opened again after the browser closed it.
 * Rejects where the browser refuses storage (private windows, blocked cookies), and when another tab holds an older
 * version open for longer than a moment.
 */
export function openDb(): Promise<IDBPDatabase<FaultwrightDb>> {
  opening ??= open().catch((error: unknown) => {
    opening = undefined;
    throw error;
  });
  return opening;
}

function open(): Promise<IDBPDatabase<FaultwrightDb>> {
  return new Promise((resolve, reject) => {
    if (!('indexedDB' in globalThis)) throw new Error('this browser keeps nothing');
    openDB<FaultwrightDb>(name, version, {
      upgrade(db) {
        db.createObjectStore('sites', { keyPath: 'id' });
        db.createObjectStore('settings');
        db.createObjectStore('visits', { keyPath: 'id' });
        db.createObjectStore('entries', { keyPath: ['visit', 'seq'] }).createIndex('byVisit', 'visit');
      },
      blocked: () => reject(new Error('another tab holds an older version open')),
      blocking(_from, _to, event) {
        // A newer version waits in another tab: make way, and open again at the next use.
        (event.target as IDBDatabase).close();
        opening = undefined;
      },
      terminated: () => {
        opening = undefined;
      },
    }).then(resolve, reject);
  });
}
