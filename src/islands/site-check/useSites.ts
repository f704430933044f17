import { useEffect, useState } from 'preact/hooks';
import { demoSites } from '../../site/demo.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import * as store from '../site/store.ts';

export interface Sites {
  /** Sites to choose from: those kept here, then the made-up ones that are not kept. Empty while they are looked for. */
  readonly all: readonly SiteSheet[];
  readonly chosen: SiteSheet | undefined;
  readonly keptIds: ReadonlySet<string>;
  choose(id: string): void;
}

/** The sites of this phone and the demonstration ones; at first the one in use, or the one that the address names. */
export function useSites(): Sites {
  const [kept, setKept] = useState<readonly SiteSheet[] | undefined>();
  const [id, setId] = useState<string | null>(null);
  useEffect(() => {
    const named = new URLSearchParams(location.search).get('site');
    // Without storage the made-up sites still show what the page does.
    Promise.all([store.listSites(), store.currentSiteId()])
      .then(([sites, current]) => {
        setKept(sites.flatMap(({ sheet }) => (sheet ? [sheet] : [])));
        setId(named ?? current);
      })
      .catch(() => {
        setKept([]);
        setId(named);
      });
  }, []);
  const keptIds = new Set(kept?.map((sheet) => sheet.id));
  const all = kept ? [...kept, ...demoSites.filter((demo) => !keptIds.has(demo.id))] : [];
  return { all, keptIds, chosen: all.find((sheet) => sheet.id === id) ?? all[0], choose: setId };
}
