import type { WorksheetUse } from '../../expected/context.ts';
import { showQuantity } from '../../quantity/format.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import { isTimed } from '../../worksheets/check-inputs.ts';
import { toQuery } from './link.ts';
import { loadWorksheet } from './load.ts';
import { fieldsOf, textOf } from './typed.ts';

/**
 * The query that opens a worksheet on the numbers a run gave it, as a link copied there would carry them.
 * Throws on a worksheet that does not exist: a slip in our own files.
 */
export async function worksheetQuery(
  { worksheet: id, inputs, rows }: WorksheetUse,
  units: UnitSystem,
): Promise<string> {
  const load = loadWorksheet[id];
  if (!load) throw new Error(`no worksheet is called ${id}`);
  const { worksheet } = await load();
  const fields = fieldsOf(worksheet);
  const texts = fields.flatMap(([name, field]) =>
    inputs[name] === undefined ? [] : [[name, textOf(field, inputs[name], units)] as const],
  );
  const timed = fields.flatMap(([name, field]) => {
    if (!isTimed(field)) return [];
    const shown = (value: number) => showQuantity(value, field.timed, { system: units, digits: 6 }).number;
    return [
      [name, (rows?.[name] ?? []).map(([at, value]) => ({ at: `${at} s`, value: shown(value) }))] as const,
    ];
  });
  return toQuery(worksheet, { units, texts: Object.fromEntries(texts), rows: Object.fromEntries(timed) });
}
