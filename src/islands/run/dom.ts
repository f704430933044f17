type Child = Node | string | false | undefined;

type Props<Tag extends keyof HTMLElementTagNameMap> = Partial<HTMLElementTagNameMap[Tag]> & {
  /** Attributes that are no properties: `aria-…`, `data-…`. */
  attrs?: Readonly<Record<string, string>>;
};

/** An element with its properties and what stands in it. Text is always text, never markup. */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  { attrs, ...props }: Props<Tag> = {},
  ...children: Child[]
): HTMLElementTagNameMap[Tag] {
  const element = Object.assign(document.createElement(tag), props);
  for (const [name, value] of Object.entries(attrs ?? {})) element.setAttribute(name, value);
  element.append(...children.filter((child) => child !== undefined && child !== false));
  return element;
}

/** A button that does something on this page. */
export const button = (text: string, className: string, onClick: () => void): HTMLButtonElement =>
  make('button', { type: 'button', className, textContent: text, onclick: onClick });

/** Marks an element as put there by the run, so that it can be taken away again and is never printed twice. */
export function ours<E extends HTMLElement>(element: E): E {
  element.dataset.runUi = '';
  return element;
}

/** An SVG that the drawing rooms made as text. */
export function svgElement(text: string): SVGElement {
  const parsed = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  return document.importNode(parsed, true) as unknown as SVGElement;
}

let count = 0;
/** An id that no other element of the page has. */
export function freshId(prefix: string): string {
  count += 1;
  return `${prefix}-${count}`;
}
