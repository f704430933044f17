import { useMemo } from 'preact/hooks';
import { powerCeilings } from '../../sheet-check/power.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { sheetCheckWords } from '../../words/en/sheet-check.ts';
import { shown } from './show.ts';

const words = sheetCheckWords.power;

/** The most power for good, and which part sets it. */
export function PowerTable({ sheet }: { sheet: SiteSheet }) {
  const ceilings = useMemo(() => powerCeilings(sheet), [sheet]);
  const rated = sheet.inverter.ratedW * sheet.parallelUnits;
  const [least] = ceilings;
  const watts = (value: number): string => shown(value, 'power', sheet.units);
  return (
    <section class="plate">
      <h2 class="plate-title">{words.title}</h2>
      {least?.watts !== undefined && (
        <p class="headline" data-limited-by={least.watts < rated ? least.by : 'inverter'}>
          {least.watts < rated
            ? words.less(watts(least.watts), words.parts[least.by])
            : words.all(watts(rated))}
        </p>
      )}
      {ceilings.some((ceiling) => ceiling.watts === undefined) && <p>{words.open}</p>}
      <p>{words.sound}</p>
      <table class="working">
        <thead>
          <tr>
            <th scope="col">{words.part}</th>
            <th scope="col">{words.watts}</th>
          </tr>
        </thead>
        <tbody>
          {ceilings.map((ceiling) => (
            <tr key={ceiling.by}>
              <th scope="row">{words.parts[ceiling.by]}</th>
              <td>{ceiling.watts === undefined ? words.unknown : watts(ceiling.watts)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
