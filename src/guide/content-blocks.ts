/**
 * Reads the step blocks of a guide's or procedure's words: which steps there are, in which order, with which titles and
 * parts. A small tag reader, not a parser of the whole language: it knows capitalised tags with quoted attributes, which
 * is all that content files may use.
 */

/** A part inside a step: `<Do>`, `<Reading id="p1">`, `<Outcome id="ok">` and so on. */
export interface ContentPart {
  tag: string;
  attributes: Readonly<Record<string, string>>;
  /** What stands between the tags, as written; empty for a tag closed in itself. */
  text: string;
  /** Line in the file, from 1. */
  line: number;
}

/** One `<Step>`. */
export interface ContentBlock {
  /** The machine's id. */
  of: string;
  id: string;
  title: string;
  line: number;
  parts: readonly ContentPart[];
  /** The words of the block that stand in no part: they would have no place on the plate. */
  stray: string;
}

/** What is wrong with the tags of a file. */
export interface TagProblem {
  line: number;
  message: string;
}

const tagPattern = /<(\/?)([A-Z][A-Za-z]*)((?:\s+[A-Za-z-]+(?:\s*=\s*(?:"[^"]*"|\{[^}]*\}))?)*)\s*(\/?)>/g;
const attributePattern = /([A-Za-z-]+)\s*=\s*(?:"([^"]*)"|\{[^}]*\})/g;
const commentPattern = /\{\/\*[\s\S]*?\*\/\}|<!--[\s\S]*?-->/g;

interface Tag {
  closing: boolean;
  selfClosing: boolean;
  name: string;
  attributes: Record<string, string>;
  start: number;
  end: number;
}

function attributesOf(text: string): Record<string, string> {
  return Object.fromEntries([...text.matchAll(attributePattern)].map((match) => [match[1]!, match[2] ?? '']));
}

function tagsOf(source: string): Tag[] {
  return [...source.matchAll(tagPattern)].map((match) => ({
    closing: match[1] === '/',
    selfClosing: match[4] === '/',
    name: match[2]!,
    attributes: attributesOf(match[3] ?? ''),
    start: match.index,
    end: match.index + match[0].length,
  }));
}

/** A part of a step being read. */
interface OpenPart {
  tag: Tag;
}

/**
 * The step blocks of a content file, in order.
 * @param source the file's text, with or without its front matter
 */
export function readBlocks(source: string): { blocks: ContentBlock[]; problems: TagProblem[] } {
  const text = source.replace(commentPattern, (comment) => comment.replace(/[^\n]/g, ' '));
  const lineAt = lineCounter(text);
  const blocks: ContentBlock[] = [];
  const problems: TagProblem[] = [];
  const complain = (at: number, message: string) => problems.push({ line: lineAt(at), message });

  let step: { tag: Tag; parts: ContentPart[]; stray: string; from: number } | undefined;
  let part: OpenPart | undefined;
  let depth = 0;

  const endStep = (at: number) => {
    if (!step) return;
    const { of = '', id = '', title = '' } = step.tag.attributes;
    step.stray += text.slice(step.from, at);
    const line = lineAt(step.tag.start);
    blocks.push({ of, id, title, line, parts: step.parts, stray: step.stray.trim() });
    step = undefined;
  };
  const endPart = (open: Tag, to: number) => {
    step!.parts.push({
      tag: open.name,
      attributes: open.attributes,
      text: text.slice(open.end, to).trim(),
      line: lineAt(open.start),
    });
  };

  for (const tag of tagsOf(text)) {
    if (tag.name === 'Step') {
      if (tag.closing) {
        if (part) complain(part.tag.start, `<${part.tag.name}> is not closed`);
        if (!step) complain(tag.start, '</Step> without <Step>');
        part = undefined;
        endStep(tag.start);
      } else {
        if (step) complain(tag.start, `<Step id="${step.tag.attributes.id}"> is not closed before the next`);
        part = undefined;
        endStep(tag.start);
        step = { tag, parts: [], stray: '', from: tag.end };
        if (tag.selfClosing) endStep(tag.end);
      }
      continue;
    }
    if (!step) continue;
    if (part) {
      if (tag.selfClosing) continue;
      depth += tag.closing ? -1 : 1;
      if (depth > 0) continue;
      if (tag.name !== part.tag.name) complain(tag.start, `</${tag.name}> closes <${part.tag.name}>`);
      endPart(part.tag, tag.start);
      part = undefined;
      step.from = tag.end;
      continue;
    }
    if (tag.closing) {
      complain(tag.start, `</${tag.name}> without <${tag.name}>`);
      continue;
    }
    step.stray += text.slice(step.from, tag.start);
    step.from = tag.end;
    if (tag.selfClosing) endPart(tag, tag.end);
    else {
      part = { tag };
      depth = 1;
    }
  }
  if (step) complain(step.tag.start, `<Step id="${step.tag.attributes.id}"> is not closed`);
  endStep(text.length);
  return { blocks, problems };
}

function lineCounter(text: string): (at: number) => number {
  const starts = [0, ...[...text.matchAll(/\n/g)].map((match) => match.index + 1)];
  return (at) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= at) low = middle;
      else high = middle - 1;
    }
    return low + 1;
  };
}
