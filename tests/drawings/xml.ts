/** A small strict reader of markup: enough to say that a drawing is well formed and what stands in it. */

export interface Node {
  name: string;
  attributes: Record<string, string>;
  children: Node[];
  /** Words directly inside, entities undone. */
  text: string;
}

/** Read one element. Throws on any tag that is not closed, any stray `<` or `&`, any attribute said twice. */
export function readXml(markup: string): Node {
  const root: Node = { name: '', attributes: {}, children: [], text: '' };
  const open: Node[] = [root];
  let at = 0;
  while (at < markup.length) {
    const here = open.at(-1)!;
    if (markup[at] !== '<') {
      const end = markup.indexOf('<', at) < 0 ? markup.length : markup.indexOf('<', at);
      here.text += undo(markup.slice(at, end));
      at = end;
      continue;
    }
    const close = /^<\/([a-zA-Z-]+)>/.exec(markup.slice(at));
    if (close) {
      if (close[1] !== here.name) throw new Error(`</${close[1]}> closes <${here.name}>`);
      open.pop();
      at += close[0].length;
      continue;
    }
    const tag = /^<([a-zA-Z][a-zA-Z-]*)((?:\s+[a-zA-Z-]+="[^"<]*")*)\s*(\/?)>/.exec(markup.slice(at));
    if (!tag) throw new Error(`not a tag: ${markup.slice(at, at + 60)}`);
    const node: Node = { name: tag[1]!, attributes: readAttributes(tag[2]!), children: [], text: '' };
    here.children.push(node);
    if (!tag[3]) open.push(node);
    at += tag[0].length;
  }
  if (open.length !== 1) throw new Error(`<${open.at(-1)!.name}> is not closed`);
  if (root.children.length !== 1) throw new Error('not one element');
  return root.children[0]!;
}

function readAttributes(text: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, key, value] of text.matchAll(/([a-zA-Z-]+)="([^"]*)"/g)) {
    if (key! in found) throw new Error(`${key} said twice`);
    found[key!] = undo(value!);
  }
  return found;
}

function undo(text: string): string {
  const bare = text.replaceAll(/&(lt|gt|quot|amp);/g, '');
  if (bare.includes('&') || bare.includes('>')) throw new Error(`stray mark in: ${text}`);
  return text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
}

/** Every element below and including this one. */
export function everyNode(node: Node): Node[] {
  return [node, ...node.children.flatMap(everyNode)];
}

/** Elements that bear a class. */
export function withClass(node: Node, name: string): Node[] {
  return everyNode(node).filter(({ attributes }) => (attributes.class ?? '').split(' ').includes(name));
}
