/**
 * Where every worksheet's figures come from: formulas, sources, outside checks, and how far the worst of them is off.
 *   --json   one object instead of the table
 */
import { parseArgs } from 'node:util';
import { trace } from '../../tests/handbook/trace.ts';
import { worksheetWords } from '../words/en/worksheets.ts';
import { readSources } from './content-input.ts';

const { values } = parseArgs({ options: { json: { type: 'boolean', default: false } } });

const rows = trace(readSources());

const percent = (share: number): string => `${(100 * share).toPrecision(2)} %`;

function table(): string {
  const parts = rows.map((row) => {
    const formulas = Object.values(worksheetWords[row.id]?.working ?? {}).map(
      ({ what, formula }) => `    ${what}: ${formula}`,
    );
    const held =
      row.commonPractice === undefined
        ? `${row.outsideChecks} outside sources, ${row.figures} figures, worst ${percent(row.worstDeviation)} off`
        : `common practice: ${row.commonPractice}`;
    const sources = row.sources.map(
      (source) => `    ${source}${row.fromMemory.includes(source) ? ' [from memory]' : ''}`,
    );
    return [`${row.id}: ${held}`, '  formulas', ...formulas, '  sources', ...sources].join('\n');
  });
  const least = Math.min(...rows.map((row) => row.outsideChecks));
  return [...parts, `${rows.length} worksheets, each held to at least ${least} outside sources.`].join(
    '\n\n',
  );
}

console.log(values.json ? JSON.stringify({ worksheets: rows }, null, 2) : table());
