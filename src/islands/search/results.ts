import { href } from '../../components/href.ts';
import type { Found, Hit } from '../../search/finder.ts';
import type { Why } from '../../search/why.ts';
import { search as words } from '../../words/en/search.ts';
import { make } from '../run/dom.ts';

/**
 * What was found, as it stands under the box; where nothing fits it says so first. Only what a further letter changes is
 * made anew: on a slow phone that is most of the work.
 */
export class ResultList {
  readonly #head = make('div');
  readonly #list = make('ol', { className: 'search-hits' });
  #headSaid = '';
  #hits: readonly string[] = [];

  constructor(place: HTMLElement) {
    place.replaceChildren(this.#head, this.#list);
  }

  /** @param found undefined while nothing is typed */
  show(found: Found | undefined): void {
    this.#showHead(found);
    const hits = found?.hits ?? [];
    const said = hits.map((each) => JSON.stringify([each.id, each.why]));
    hits.forEach((each, at) => {
      if (said[at] === this.#hits[at]) return;
      const made = hit(each);
      const before = this.#list.children[at];
      if (before) before.replaceWith(made);
      else this.#list.append(made);
    });
    while (this.#list.children.length > hits.length) this.#list.lastElementChild!.remove();
    this.#hits = said;
  }

  #showHead(found: Found | undefined): void {
    const said = found ? JSON.stringify([found.verdict, found.hits.length, found.unknown]) : '';
    if (said === this.#headSaid) return;
    this.#headSaid = said;
    this.#head.replaceChildren(...(found ? head(found) : []));
  }
}

function head({ verdict, hits, unknown }: Found): HTMLElement[] {
  const notKnown =
    unknown.length > 0 && make('p', { className: 'small', textContent: words.unknown(unknown) });
  if (verdict === 'fits')
    return [make('h2', { textContent: words.count(hits.length) }), ...(notKnown ? [notKnown] : [])];
  const title = make('h2', { textContent: verdict === 'empty' ? words.empty : words.nothing });
  const next = make(
    'p',
    {},
    words.nothingNext,
    make('a', { href: '#search-symptoms', textContent: words.nothingLink }),
    '.',
  );
  const plate = make('div', { className: 'plate search-nothing' }, title, notKnown, next);
  return hits.length > 0 ? [plate, make('h3', { textContent: words.near })] : [plate];
}

function hit({ kind, url, title, under, why }: Hit): HTMLLIElement {
  const kindText = [words.kinds[kind] ?? kind, under && words.under(under)].filter(Boolean).join(', ');
  // Where its own name is the reason, the name is marked, and not said again.
  const named = why.field === 'title' && why.finds === undefined;
  const field = why.finds === undefined ? words.why[why.field]! : words.finds(why);
  return make(
    'li',
    { attrs: { 'data-kind': kind } },
    make('a', { href: href(url) }, make('span', {}, ...(named ? marked(why) : [title]))),
    make('p', { className: 'search-kind', textContent: kindText }),
    !named && make('p', { className: 'search-why' }, `${field}: “`, ...marked(why), '”'),
    why.taken.length > 0 && make('p', { className: 'search-why', textContent: readings(why) }),
  );
}

const marked = ({ pieces }: Why): (string | HTMLElement)[] =>
  pieces.map(({ text, met }) => (met ? make('mark', { textContent: text }) : text));

/** How the typed words were read, where they are not the page's own. */
const readings = ({ taken }: Why): string =>
  `${taken.map(({ typed, as, how }) => words.taken[how]!(typed, as)).join('; ')}.`;
