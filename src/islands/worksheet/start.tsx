import { hydrate } from 'preact';
import { currentSheet } from '../site/store.ts';
import { loadWorksheet } from './load.ts';
import { WorksheetApp } from './WorksheetApp.tsx';

/** Takes over the form that stands in the page; `data-worksheet` names it. */
for (const place of document.querySelectorAll<HTMLElement>('[data-worksheet]')) {
  loadWorksheet[place.dataset.worksheet ?? '']?.().then((loaded) => {
    hydrate(<WorksheetApp {...loaded} currentSheet={currentSheet} />, place);
    place.dataset.ready = '';
  });
}
