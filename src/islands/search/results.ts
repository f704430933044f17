import { href } from '../../components/href.ts';
import type { Found, Hit } from '../../search/finder.ts';
import type { Why } from '../../search/why.ts';
import { search as words } from '../../words/en/search.ts';
import { make } from '../run/dom.ts';

/** What was found, as it stands under the box; where nothing fits it says so first. */
export function resultList(found: Found): HTMLElement[] {
  const { verdict, hits, unknown } = found;
  const list = make('ol', { className: 'search-hits' }, ...hits.map(hit));
  const notKnown =
    unknown.length > 0 && make('p', { className: 'small', textContent: words.unknown(unknown) });
  if (verdict === 'fits')
    return [make('h2', { textContent: words.count(hits.length) }), ...(notKnown ? [notKnown] : []), list];
  const title = make('h2', { textContent: verdict === 'empty' ? words.empty : words.nothing });
  const next = make('p', { textContent: words.nothingNext });
  const plate = make('div', { className: 'plate search-nothing' }, title, notKnown, next);
  if (hits.length === 0) return [plate];
  return [plate, make('h3', { textContent: words.near }), list];
}

function hit({ kind, url, title, under, why }: Hit): HTMLLIElement {
  const kindText = [words.kinds[kind] ?? kind, under && words.under(under)].filter(Boolean).join(', ');
  // Where its name is the reason, the name is marked, and not said again.
  const named = why.field === 'title';
  return make(
    'li',
    { attrs: { 'data-kind': kind } },
    make('a', { href: href(url) }, make('span', {}, ...(named ? marked(why) : [title]))),
    make('p', { className: 'search-kind', textContent: kindText }),
    !named && make('p', { className: 'search-why' }, `${words.why[why.field]}: “`, ...marked(why), '”'),
    why.taken.length > 0 && make('p', { className: 'search-why', textContent: readings(why) }),
  );
}

const marked = ({ pieces }: Why): (string | HTMLElement)[] =>
  pieces.map(({ text, met }) => (met ? make('mark', { textContent: text }) : text));

/** How the typed words were read, where they are not the page's own. */
const readings = ({ taken }: Why): string =>
  `${taken.map(({ typed, as, how }) => words.taken[how]!(typed, as)).join('; ')}.`;
