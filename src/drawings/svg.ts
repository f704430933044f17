/** SVG as text: elements with escaped words and short numbers. Class names only, since style attributes are barred. */

/** What an attribute may hold; an `undefined` one is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Make words safe inside markup and attribute values. */
export function escapeMarkup(words: string): string {
  return words
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

/** A number with at most one decimal, as coordinates need. */
export function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** One element. Children are markup already: pass words through `words` or `label`. */
export function el(name: string, attributes: Attributes, ...children: string[]): string {
  let open = name;
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined) continue;
    open += ` ${key}="${typeof value === 'number' ? short(value) : escapeMarkup(value)}"`;
  }
  return children.length === 0 ? `<${open}/>` : `<${open}>${children.join('')}</${name}>`;
}

/** A point of the drawing, in its own units. */
export interface Spot {
  x: number;
  y: number;
}

/** A path through spots given as x, y, x, y … */
export function line(className: string, ...xy: number[]): string {
  let d = '';
  for (let i = 0; i + 1 < xy.length; i += 2)
    d += `${i === 0 ? 'M' : 'L'}${short(xy[i]!)} ${short(xy[i + 1]!)}`;
  return el('path', { class: className, d });
}

/** Lines of words, the first with its baseline at `y`. */
export function label(
  className: string,
  x: number,
  y: number,
  lines: string | readonly string[],
  anchor: 'start' | 'middle' | 'end' = 'start',
  lineHeight = 16,
): string {
  const list = typeof lines === 'string' ? [lines] : lines;
  return list
    .map((text, i) =>
      el(
        'text',
        {
          class: className,
          x,
          y: y + i * lineHeight,
          'text-anchor': anchor === 'start' ? undefined : anchor,
        },
        escapeMarkup(text),
      ),
    )
    .join('');
}

/** The whole drawing, named for those who cannot see it. `interactive` drawings hold links, so they are a group. */
export function drawing(
  options: {
    className: string;
    viewBox: readonly [number, number, number, number];
    id: string;
    title: string;
    desc?: string;
    interactive?: boolean;
  },
  ...children: string[]
): string {
  const { className, viewBox, id, title, desc, interactive } = options;
  const named = desc ? `${id}-title ${id}-desc` : `${id}-title`;
  return el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: className,
      viewBox: viewBox.map(short).join(' '),
      role: interactive ? 'group' : 'img',
      'aria-labelledby': named,
    },
    el('title', { id: `${id}-title` }, escapeMarkup(title)),
    desc ? el('desc', { id: `${id}-desc` }, escapeMarkup(desc)) : '',
    ...children,
  );
}
