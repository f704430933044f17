import type { UnitSystem } from '../../quantity/kinds.ts';
import { worksheetPage } from '../../words/en/worksheets-page.ts';
import type { WorksheetWords } from '../../words/worksheet-words.ts';
import type { AnyWorksheet, Output } from '../../worksheets/define.ts';
import type { Said } from '../../worksheets/say.ts';
import { PlotFigure } from './PlotFigure.tsx';
import { fill, show } from './say.ts';
import { sentence } from './sentences.ts';

interface ResultProps {
  worksheet: AnyWorksheet;
  words: WorksheetWords;
  /** Checked inputs, inside units. */
  inputs: Readonly<Record<string, unknown>>;
  units: UnitSystem;
}

/** What a worksheet gives for these inputs: headline, remarks, all results, plot and working. Also for a guide's step. */
export function ResultPlate({ worksheet, words, inputs, units }: ResultProps) {
  const result = worksheet.compute(inputs);
  if (!result.ok) {
    return (
      <div class="plate" role="status">
        <h2 class="plate-title">{worksheetPage.noResult}</h2>
        <p>{sentence(result.reason, words, units)}</p>
      </div>
    );
  }
  const { out } = result;
  const outputs = Object.entries(worksheet.outputs as Record<string, Output>);
  const remarks = worksheet.remarks?.(inputs, out) ?? [];
  const plot = worksheet.plot?.(inputs, out);
  const rows = outputs.filter(([name]) => out[name] !== undefined);
  return (
    <>
      <section class="plate" aria-labelledby="result-title">
        <h2 class="plate-title" id="result-title">
          {worksheetPage.result}
        </h2>
        <div role="status" class="headline">
          <dl class="cells">
            {rows
              .filter(([, output]) => output.headline)
              .map(([name, output]) => (
                <div key={name}>
                  <dt>{words.outputs[name]?.label}</dt>
                  <dd>{shown(out[name], name, output, words, units)}</dd>
                </div>
              ))}
          </dl>
        </div>
        {remarks.length > 0 && (
          <div>
            <h3 class="plate-label">{worksheetPage.remarks}</h3>
            <ul class="remarks">
              {remarks.map((remark) => (
                <li key={remark.id} data-remark={remark.id}>
                  {sentence(remark, words, units)}
                </li>
              ))}
            </ul>
          </div>
        )}
        <table class="working">
          <tbody>
            {rows
              .filter(([, output]) => !output.headline)
              .map(([name, output]) => (
                <tr key={name}>
                  <th scope="row">{words.outputs[name]?.label}</th>
                  <td>{shown(out[name], name, output, words, units)}</td>
                </tr>
              ))}
          </tbody>
        </table>
      </section>
      {plot && words.plot && <PlotFigure plot={plot} words={words.plot} units={units} />}
      <h2>{worksheetPage.working}</h2>
      <WorkingTable lines={worksheet.working(inputs, out)} words={words} units={units} />
    </>
  );
}

/** The working with these numbers, line by line. */
export function WorkingTable({
  lines,
  words,
  units,
}: {
  lines: readonly Said[];
  words: WorksheetWords;
  units: UnitSystem;
}) {
  return (
    <ol class="working-lines">
      {lines.map(({ id, params }) => {
        const line = words.working[id];
        if (!line) throw new Error(`no words for the working line ${id}`);
        return (
          <li key={id}>
            <p class="working-what">
              {line.what}: <span class="formula">{line.formula}</span>
            </p>
            <p class="working-sum">
              {fill(line.numbers, params, units)} = <b>{fill(line.result, params, units)}</b>
            </p>
          </li>
        );
      })}
    </ol>
  );
}

function shown(
  value: unknown,
  name: string,
  output: Output,
  words: WorksheetWords,
  units: UnitSystem,
): string {
  if ('names' in output) return (value as readonly string[]).join(', ') || '–';
  if ('verdicts' in output) return words.outputs[name]?.verdicts?.[String(value)] ?? String(value);
  return show(value as number, output.kind, units, { unit: output.unit, decimals: output.decimals });
}
