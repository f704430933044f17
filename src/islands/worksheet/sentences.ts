import type { UnitSystem } from '../../quantity/kinds.ts';
import type { MessageRef } from '../../quantity/message.ts';
import { quantityMessages } from '../../words/en/quantity.ts';
import { worksheetPage } from '../../words/en/worksheets-page.ts';
import type { InputWords, WorksheetWords } from '../../words/worksheet-words.ts';
import { isNumber, isRows } from '../../worksheets/check-inputs.ts';
import type { Field } from '../../worksheets/define.ts';
import { fill, lastPart, show } from './say.ts';

/** What is wrong with what stands in a box, and what is expected there. */
export function fieldError(error: MessageRef, field: Field, words: InputWords, units: UnitSystem): string {
  const { row, column } = error.params ?? {};
  if (isRows(field) && row !== undefined) {
    const at = worksheetPage.rows.row(Number(row));
    const kind = field.rows[String(column)];
    const cell = words.columns?.[String(column)];
    if (!kind || 'text' in kind || !cell) return `${at}: ${worksheetPage.input.notText}`;
    const { row: _row, column: _column, ...params } = error.params ?? {};
    return `${at}, ${cell.label}: ${fieldError({ id: error.id, params }, kind, cell, units)}`;
  }
  const typed = quantityMessages[error.id];
  if (typed) return typed(error.params ?? {});
  const reason = worksheetPage.input[lastPart(error.id) as keyof typeof worksheetPage.input];
  if (!reason) throw new Error(`no words for ${error.id}`);
  return isNumber(field) && /too(Small|Large)$/.test(error.id)
    ? `${reason} ${limitSentence(field, words, units)}`
    : reason;
}

/** Between which numbers a field lies, and why. */
export function limitSentence(
  field: Extract<Field, { kind: unknown }>,
  words: InputWords,
  units: UnitSystem,
): string {
  const shown = (value: number): string => show(value, field.kind, units, { unit: field.unit });
  return `${worksheetPage.range(shown(field.min), shown(field.max))} ${words.limit ?? ''}`.trim();
}

/** A remark on a result, or the reason for having none. */
export function sentence(message: MessageRef, words: WorksheetWords, units: UnitSystem): string {
  const template = words.says[lastPart(message.id)];
  if (template === undefined) throw new Error(`no words for ${message.id}`);
  return fill(template, message.params ?? {}, units);
}
