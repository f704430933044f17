import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { type QuantityKind, quantityKinds } from '../../src/quantity/kinds.ts';
import { unitsOf } from '../../src/quantity/units.ts';
import { hazards } from '../../src/words/en/hazards.ts';
import { worksheetWords } from '../../src/words/en/worksheets.ts';
import { worksheetPage } from '../../src/words/en/worksheets-page.ts';
import type { Field, Output, Plot } from '../../src/worksheets/define.ts';
import { worksheets } from '../../src/worksheets/index.ts';
import type { Said } from '../../src/worksheets/say.ts';
import { anyInputs } from './any-inputs.ts';

const root = new URL('../../', import.meta.url);
const sources: { id: string }[] = parse(readFileSync(new URL('content/en/sources.yaml', root), 'utf8'));

/** The gaps of a template: name, kind and unit. */
const gapsOf = (template: string) =>
  [...template.matchAll(/\{([^}]*)\}/g)].map((match) => {
    const [name, kind, unit] = match[1]!.split(':');
    return { name: name!, kind, unit };
  });

const templatesOf = (id: string): string[] => {
  const words = worksheetWords[id]!;
  const working = Object.values(words.working).flatMap(({ numbers, result, formula, what }) => [
    numbers,
    result,
    formula,
    what,
  ]);
  return [...working, ...Object.values(words.says)];
};

describe('words of the worksheets', () => {
  it('stand for every worksheet and for nothing else', () => {
    expect(Object.keys(worksheetWords).sort()).toEqual(worksheets.map((worksheet) => worksheet.id).sort());
  });

  describe.each(worksheets.map((worksheet) => ({ id: worksheet.id, worksheet })))(
    '$id',
    ({ id, worksheet }) => {
      const words = worksheetWords[id]!;
      const inputs = Object.entries(worksheet.inputs as Record<string, Field>);
      const outputs = Object.entries(worksheet.outputs as Record<string, Output>);

      it('names every field and result, says why a bound stands where it does, and names nothing else', () => {
        expect(Object.keys(words.inputs).sort()).toEqual(inputs.map(([name]) => name).sort());
        expect(Object.keys(words.outputs).sort()).toEqual(outputs.map(([name]) => name).sort());
        for (const [name, field] of inputs) {
          if ('kind' in field) expect(words.inputs[name]!.limit, name).toBeTruthy();
          if ('rows' in field) {
            const columns = words.inputs[name]!.columns ?? {};
            expect(Object.keys(columns).sort()).toEqual(Object.keys(field.rows).sort());
            for (const [column, kind] of Object.entries(field.rows))
              if ('kind' in kind) expect(columns[column]!.limit, column).toBeTruthy();
          }
          if ('options' in field)
            expect(Object.keys(words.inputs[name]!.options ?? {}).sort()).toEqual([...field.options].sort());
        }
        for (const [name, output] of outputs) {
          if ('verdicts' in output)
            expect(Object.keys(words.outputs[name]!.verdicts ?? {}).sort()).toEqual(
              [...output.verdicts].sort(),
            );
        }
      });

      it('fills gaps only with kinds and units that exist', () => {
        for (const template of templatesOf(id)) {
          for (const { name, kind, unit } of gapsOf(template)) {
            expect(name).toMatch(/^[a-zA-Z0-9]+$/);
            if (kind === 'plain') {
              if (unit !== undefined) expect(unit).toMatch(/^\d$/);
              continue;
            }
            expect(quantityKinds, `${template}`).toContain(kind);
            if (unit !== undefined) {
              expect(
                unitsOf[kind as QuantityKind].map((each) => each.symbol),
                template,
              ).toContain(unit);
            }
          }
        }
      });

      it('has words, and a number for every gap in them, for whatever it can say', () => {
        const said = new Set<string>();
        const holds = (
          what: Said | { id: string; params?: Record<string, unknown> },
          templates: string[],
        ): void => {
          for (const { name } of templates.flatMap(gapsOf)) {
            expect(what.params?.[name], `${what.id} needs ${name}`).toBeTypeOf('number');
          }
        };
        const saysOf = (messageId: string): string => {
          const key = messageId.replace(`worksheet.${id}.`, '');
          said.add(key);
          expect(words.says[key], messageId).toBeTruthy();
          return words.says[key]!;
        };
        fc.assert(
          fc.property(anyInputs(worksheet), (given) => {
            const result = worksheet.compute(given);
            if (!result.ok) {
              holds(result.reason as Said, [saysOf(result.reason.id)]);
              return;
            }
            for (const line of worksheet.working(given, result.out)) {
              const lineWords = words.working[line.id];
              expect(lineWords, line.id).toBeTruthy();
              holds(line, [lineWords!.numbers, lineWords!.result]);
            }
            for (const remark of worksheet.remarks?.(given, result.out) ?? [])
              holds(remark, [saysOf(remark.id)]);
            const plot: Plot | undefined = worksheet.plot?.(given, result.out);
            for (const part of plot ? [...plot.curves, ...plot.levels, ...plot.marks] : []) {
              expect(words.plot?.lines[part.id], part.id).toBeTruthy();
            }
          }),
          { numRuns: 1500, seed: 99 },
        );
        expect(said.size).toBeGreaterThan(0);
      });

      it('cites sources that are on the list and hazards that have a statement', () => {
        const known = sources.map((source) => source.id);
        expect(worksheet.sources.length).toBeGreaterThan(0);
        for (const source of worksheet.sources) expect(known).toContain(source.id);
        for (const hazard of worksheet.hazards) expect(Object.keys(hazards)).toContain(hazard);
      });

      it('says what it leaves out and what people call it', () => {
        expect(words.leavesOut.length).toBeGreaterThan(0);
        expect(words.search.length).toBeGreaterThan(2);
        expect(worksheetPage.groups[worksheet.group]).toBeTruthy();
      });
    },
  );
});
