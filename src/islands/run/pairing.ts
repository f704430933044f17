import { type Grid, mostOptions, type Pair, readOptions, untried } from '../../guide/pairing.ts';
import { pairingWords as words } from '../../words/en/run-pairing.ts';
import { button, freshId, make, ours } from './dom.ts';
import type { BuildControls } from './host.ts';

type Side = 'inverter' | 'pack';
const sides: readonly Side[] = ['inverter', 'pack'];

function field(label: string, hint: string, input: HTMLElement): HTMLElement {
  input.id = freshId('pair');
  const hintId = `${input.id}-hint`;
  if (hint) input.setAttribute('aria-describedby', hintId);
  return make(
    'div',
    { className: 'field' },
    make('label', { htmlFor: input.id, textContent: label }),
    hint ? make('p', { id: hintId, className: 'field-hint', textContent: hint }) : undefined,
    input,
  );
}

function fill(select: HTMLSelectElement, options: readonly string[], first?: string): void {
  const { value } = select;
  const list = first === undefined ? options : ['', ...options];
  select.replaceChildren(
    ...list.map((each) => make('option', { value: each, textContent: each === '' ? (first ?? '') : each })),
  );
  if (list.includes(value)) select.value = value;
}

/** What was tried so far: one row each, with its wait and what came of it. */
function triesTable(
  tries: readonly { inverter: string; pack: string; result?: string; waitedS?: number }[],
): HTMLElement | undefined {
  if (tries.length === 0) return undefined;
  const cells = (tag: 'th' | 'td', texts: readonly string[]) =>
    make('tr', {}, ...texts.map((textContent) => make(tag, { textContent })));
  return make(
    'table',
    {},
    make('caption', { textContent: words.tried }),
    cells('th', [words.inverter, words.pack, words.came, words.waited]),
    ...tries.map(({ inverter, pack, result, waitedS }) =>
      cells('td', [
        inverter,
        pack,
        result === undefined ? words.open : words.noLink,
        waitedS === undefined ? '' : words.waitedFor(waitedS),
      ]),
    ),
  );
}

/** The pairing grid: both lists typed once, then the next pair, the suggested one first. */
export const pairing: BuildControls = (host, plate, { pairing: shown }) => {
  if (!shown) return { elements: [] };
  const { grid, tries, next } = shown;
  const table = triesTable(tries);
  if (grid && next.length === 0) {
    const done = button(plate.outcomeLabel('all-tried'), 'btn btn-primary', () => {
      void host.give({ type: 'choice', outcome: 'all-tried' });
    });
    const all = make('p', { textContent: words.allTried });
    return { elements: [ours(make('div', { className: 'run-go' }, all, table, done))] };
  }

  const lists = Object.fromEntries(
    sides.map((side) => [side, make('textarea', { rows: 3, value: grid?.[side].join('\n') ?? '' })]),
  ) as Record<Side, HTMLTextAreaElement>;
  const found = { inverter: make('select'), pack: make('select') };
  const named = { inverter: make('select'), pack: make('select') };
  const pick = make('select');
  let offered: readonly Pair[] = [];

  const typed = (): Grid => ({
    inverter: readOptions(lists.inverter.value),
    pack: readOptions(lists.pack.value),
    found: { inverter: found.inverter.value, pack: found.pack.value },
    named: {
      ...(named.inverter.value ? { inverter: named.inverter.value } : {}),
      ...(named.pack.value ? { pack: named.pack.value } : {}),
    },
  });
  const refresh = () => {
    for (const side of sides) {
      const options = readOptions(lists[side].value);
      fill(found[side], options);
      fill(named[side], options, words.notNamed);
    }
    const now = typed();
    offered = now.inverter.length > mostOptions || now.pack.length > mostOptions ? [] : untried(now, tries);
    pick.replaceChildren(
      ...offered.map(({ inverter, pack }, place) =>
        make('option', {
          value: String(place),
          textContent: `${inverter} × ${pack}${place === 0 ? ` (${words.likeliest})` : ''}`,
        }),
      ),
    );
  };
  refresh();
  if (grid)
    for (const side of sides) {
      found[side].value = grid.found[side];
      named[side].value = grid.named[side] ?? '';
    }
  refresh();
  for (const input of [...Object.values(lists), ...Object.values(found), ...Object.values(named)])
    input.addEventListener('input', refresh);

  const fieldOf: Record<string, HTMLElement> = {
    inverter: lists.inverter,
    pack: lists.pack,
    'found-inverter': found.inverter,
    'found-pack': found.pack,
    'named-inverter': named.inverter,
    'named-pack': named.pack,
    pair: pick,
  };
  const go = button(words.go, 'btn btn-primary', () => {
    const pair = offered[Number(pick.value)];
    void host.give({ type: 'pair', grid: typed(), ...(pair ? { pair } : {}) });
  });
  const setUp = make(
    'details',
    { open: !grid },
    make('summary', { textContent: words.lists }),
    field(words.inverterOptions, words.oneALine, lists.inverter),
    field(words.packOptions, words.oneALine, lists.pack),
    field(words.foundInverter, '', found.inverter),
    field(words.foundPack, '', found.pack),
    field(words.namedInverter, words.namedHint, named.inverter),
    field(words.namedPack, words.namedHint, named.pack),
  );
  const box = make('div', { className: 'run-go' }, setUp, table, field(words.next, words.nextHint, pick), go);
  return {
    elements: [ours(box)],
    showProblems: (problems, say) =>
      problems.flatMap(({ field: id, message }) => {
        const input = fieldOf[id ?? ''];
        if (!input) return [];
        setUp.open ||= input !== pick;
        return [{ text: say(message), go: () => input.focus() }];
      }),
  };
};
