/**
 * The author writes a step's parts in the order that reads best in a file; the plate shows them in one fixed order. So
 * each part renders itself between markers, and the step takes them apart and sets them in place.
 */

export type PartKind = 'do' | 'reading' | 'expect' | 'sign' | 'outcome' | 'item' | 'cant' | 'unsure';

export interface Part {
  kind: PartKind;
  id: string;
  label: string;
  html: string;
}

/** Element that carries a part from its component to its step; it never reaches the page. */
export const partElement = 'fw-part';

const partPattern = new RegExp(
  `<${partElement} data-kind="(\\w+)"(?: data-id(?:="([^"]*)")?)?(?: data-label(?:="([^"]*)")?)?>([\\s\\S]*?)</${partElement}>`,
  'g',
);

/** Takes the parts out of a step's rendered inside; `rest` is what stood in none of them. */
export function takeParts(html: string): { parts: Part[]; rest: string } {
  const parts: Part[] = [];
  const rest = html.replace(partPattern, (_all, kind: PartKind, id = '', label = '', inner: string) => {
    parts.push({ kind, id, label: unescapeHtml(label), html: inner.trim() });
    return '';
  });
  return { parts, rest: rest.replace(/<p>\s*<\/p>/g, '').trim() };
}

function unescapeHtml(text: string): string {
  return text
    .replace(/&quot;|&#34;/g, '"')
    .replace(/&#39;|&#x27;/g, "'")
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;|&#38;/g, '&');
}
