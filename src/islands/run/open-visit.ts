import { href } from '../../components/href.ts';
import { listVisits } from '../../visit/store.ts';
import { deviceNames } from '../../words/en/devices.ts';
import { runWords } from '../../words/en/run-page.ts';
import { make } from './dom.ts';

/** Shows the open visits of this phone on the front page, each a way back into its run. */
class FwOpenVisit extends HTMLElement {
  async connectedCallback(): Promise<void> {
    const cards = await listVisits().catch(() => []);
    const open = cards.filter((card) => card.result === undefined);
    if (open.length === 0) return;
    const items = open.slice(0, 5).map((card) => {
      const folder = card.guideKind === 'guide' ? 'guides' : 'procedures';
      const where = [card.siteName, card.subject].filter(Boolean).join(', ');
      const note = make('span', {
        className: 'choice-note',
        textContent: [
          `${where}.`,
          `${runWords.start.standsAt(card.stepTitle)}.`,
          card.open ? runWords.openVisit.open(card.open.map((each) => deviceNames[each] ?? each)) : '',
        ].join(' '),
      });
      const text = make('span', {}, `${runWords.openVisit.goOn}: ${card.guideTitle}`, note);
      return make('li', {}, make('a', { href: href(`${folder}/${card.guide}/?visit=${card.id}`) }, text));
    });
    const more = make('a', { href: href('visits/'), textContent: runWords.openVisit.more });
    this.replaceChildren(make('ul', { className: 'choice' }, ...items), make('p', {}, more));
  }
}

customElements.define('fw-open-visit', FwOpenVisit);
