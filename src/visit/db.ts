import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** Everything this browser keeps for the program: sites, small settings, visits and their entries. */
export interface FaultwrightDb extends DBSchema {
  /** Site sheets, each under its own id. Read as unknown: another version may have written one. */
  sites: { key: string; value: { id: string } };
  /** The site in use, drafts being typed, and the like, by name. */
  settings: { key: string; value: unknown };
  visits: { key: string; value: { id: string } };
  entries: {
    key: [string, number];
    value: { visit: string; seq: number };
    indexes: { byVisit: string };
  };
}

const name = 'faultwright';
const version = 1;

let opening: Promise<IDBPDatabase<FaultwrightDb>> | undefined;

/** The one connection of this page. Rejects where the browser lets the page keep nothing. */
export function openDb(): Promise<IDBPDatabase<FaultwrightDb>> {
  opening ??= openDB<FaultwrightDb>(name, version, {
    upgrade(db) {
      db.createObjectStore('sites', { keyPath: 'id' });
      db.createObjectStore('settings');
      db.createObjectStore('visits', { keyPath: 'id' });
      db.createObjectStore('entries', { keyPath: ['visit', 'seq'] }).createIndex('byVisit', 'visit');
    },
    // A newer page wants to change the stores: this one lets go, and opens again when it next needs them.
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
      opening = undefined;
    },
    terminated() {
      opening = undefined;
    },
  });
  // A refusal may pass (a locked profile, a full disk): the next call asks again.
  opening.catch(() => {
    opening = undefined;
  });
  return opening;
}
