import { useMemo } from 'preact/hooks';
import type { UnitSystem } from '../../quantity/kinds.ts';
import type { Part } from '../../sheet-check/part.ts';
import { partsOf } from '../../sheet-check/parts.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { sheetCheckWords } from '../../words/en/sheet-check.ts';
import { factLabel } from '../../words/en/site.ts';
import { shown } from './show.ts';

const words = sheetCheckWords.parts;

/** The parts that a job like this needs, with a column to write prices in. */
export function PartsList({ sheet }: { sheet: SiteSheet }) {
  const parts = useMemo(() => partsOf(sheet), [sheet]);
  return (
    <section class="parts-list">
      <h2>{words.title}</h2>
      <p>{words.lede}</p>
      {parts.some(({ trade }) => trade !== undefined) && <p>{words.conduit}</p>}
      <table class="trace">
        <thead>
          <tr>
            <th scope="col">{words.columns.part}</th>
            <th scope="col">{words.columns.quantity}</th>
            <th scope="col">{words.columns.ratings}</th>
            <th scope="col" class="price">
              {words.columns.price}
            </th>
          </tr>
        </thead>
        <tbody>
          {parts.map((part) => (
            <tr key={`${part.id}-${part.of ?? ''}`} data-part={part.id}>
              <th scope="row">
                {words.names[part.id]}
                {part.of !== undefined && `, ${sheetCheckWords.of.string(part.of)}`}
              </th>
              <td data-column={words.columns.quantity}>{quantityOf(part, sheet.units)}</td>
              <td data-column={words.columns.ratings}>{ratingsOf(part, sheet.units)}</td>
              <td class="price" />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function quantityOf({ quantity, inLengths }: Part, units: UnitSystem): string {
  if (quantity === undefined) return sheetCheckWords.unknown;
  return shown(quantity, inLengths ? 'length' : 'count', units);
}

function ratingsOf(part: Part, units: UnitSystem): string {
  return [
    ...part.ratings.map(({ id, value, kind }) => words.ratings[id](shown(value, kind, units))),
    ...(part.trade === undefined ? [] : [words.emt(part.trade)]),
    ...(part.codeOpen ? [words.codeOpen] : []),
    ...(part.missing.length === 0 ? [] : [`${words.missing} ${part.missing.map(factLabel).join(', ')}`]),
  ].join('; ');
}
