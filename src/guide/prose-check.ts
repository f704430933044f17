import { readBlocks } from './content-blocks.ts';
import type { ContentFinding } from './content-finding.ts';

/** Rules for the words themselves: one action a line, nothing unfinished, nothing that names a make. */

interface Banned {
  pattern: RegExp;
  why: string;
}

/** Standards and measures look like model numbers; these do not count. */
const allowedCodes =
  /^(?:IEC|ISO|UL|NEC|NFPA|OSHA|ANSI|IEEE|EN|CFR|WAC|AWG|CAT|RS|ST|VOC|TIA|EIA)-?\d|^[MWPSTVLIBCDOARE]\d{1,3}$|^(?:IP|PV)\d{1,2}$/;

const banned: readonly Banned[] = [
  { pattern: /\b(?:TODO|FIXME|TBD|XXX|lorem)\b/i, why: 'is unfinished' },
  { pattern: /[®™]/, why: 'names a make' },
  { pattern: /\b(?:fault|error|alarm|warning) code[s]? \d+/i, why: 'is a maker’s fault code' },
  { pattern: /\bmenu (?:item |number |setting )?\d+/i, why: 'is a maker’s menu number' },
  { pattern: /\b(?:setting|program|parameter) \d{2,}\b/i, why: 'is a maker’s menu number' },
  { pattern: /\bstyle=/, why: 'is a style attribute, which the content policy blocks' },
  { pattern: /^\s*(?:import|export)\s/m, why: 'is code; content holds none' },
];

const codeLike = /\b[A-Z]{1,5}-?\d{2,}[A-Z0-9-]*\b/g;

/** A second order in one line of a list of instructions. */
const secondAction = /\b(?:and|,|;)\s*then\s|;\s+(?!otherwise)/i;
const mostWords = 32;

/** What is wrong with the prose of a content file. */
export function proseFindings(file: string, source: string): ContentFinding[] {
  return [...bannedFindings(file, source), ...instructionFindings(file, source)];
}

/** Banned words in a text, with their line. */
export function bannedFindings(file: string, source: string): ContentFinding[] {
  const findings: ContentFinding[] = [];
  source.split('\n').forEach((line, at) => {
    const id = `line ${at + 1}`;
    for (const { pattern, why } of banned) {
      const hit = pattern.exec(line);
      if (hit) findings.push({ file, id, message: `“${hit[0].trim()}” ${why}` });
    }
    const words = line.replace(/\b(?:id|of|href)="[^"]*"/g, '').replace(/\]\([^)]*\)/g, ']');
    for (const [code] of words.matchAll(codeLike))
      if (!allowedCodes.test(code))
        findings.push({ file, id, message: `“${code}” looks like a model number` });
  });
  return findings;
}

/** Instruction lines that hold more than one action or run too long to read with a meter in one hand. */
function instructionFindings(file: string, source: string): ContentFinding[] {
  const findings: ContentFinding[] = [];
  for (const block of readBlocks(source).blocks)
    for (const part of block.parts.filter(({ tag }) => tag === 'Do'))
      for (const line of part.text.split('\n')) {
        const action = /^\s*(?:\d+\.|[-*])\s+(.*)$/.exec(line)?.[1];
        if (!action) continue;
        if (secondAction.test(action))
          findings.push({ file, id: block.id, message: `more than one action in a line: “${action}”` });
        if (action.split(/\s+/).length > mostWords)
          findings.push({
            file,
            id: block.id,
            message: `more than ${mostWords} words in a line: “${action}”`,
          });
      }
  return findings;
}
