import { useMemo } from 'preact/hooks';
import { leadsOf } from '../../components/guide/leads.ts';
import { type CardLine, cardOf, cardVisits } from '../../expected/card.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { cardWords as words } from '../../words/en/card.ts';
import { anchorNames } from '../../words/en/points.ts';
import { runWords } from '../../words/en/run-page.ts';
import { factLabel } from '../../words/en/site.ts';
import { states } from '../../words/en/states.ts';
import { bandText } from '../run/band.ts';
import { SitePick } from './SitePick.tsx';
import { useSites } from './useSites.ts';

/** The card of expected readings of one site. */
export default function CardApp() {
  const sites = useSites();
  return (
    <div class="sheet-check" data-ready={sites.chosen ? '' : undefined}>
      <SitePick sites={sites} />
      {sites.chosen && <Card sheet={sites.chosen} />}
    </div>
  );
}

function Card({ sheet }: { sheet: SiteSheet }) {
  const lines = useMemo(() => cardOf(sheet), [sheet]);
  return (
    <>
      {cardVisits.map((visit) => (
        <section key={visit}>
          <h2>
            {words.visits[visit]} – {sheet.name}
          </h2>
          <CardTable lines={lines.filter(({ row }) => row.visit === visit)} units={sheet.units} />
        </section>
      ))}
    </>
  );
}

function CardTable({ lines, units }: { lines: readonly CardLine[]; units: UnitSystem }) {
  // Rows of one state stand under one heading, in the order in which they are read.
  const groups = lines.reduce<{ state: string; lines: CardLine[] }[]>((all, line) => {
    const last = all.at(-1);
    if (last?.state === line.row.state) last.lines.push(line);
    else all.push({ state: line.row.state, lines: [line] });
    return all;
  }, []);
  return (
    <table class="trace readings-card">
      <thead>
        <tr>
          <th scope="col">{words.columns.what}</th>
          <th scope="col">{words.columns.leads}</th>
          <th scope="col">{words.columns.band}</th>
          <th scope="col" class="price">
            {words.columns.found}
          </th>
        </tr>
      </thead>
      {groups.map(({ state, lines: rows }) => (
        <tbody key={`${state}-${rows[0]?.row.of}`}>
          <tr>
            <th colSpan={4} scope="rowgroup" class="state-row">
              {states[state]?.label}
            </th>
          </tr>
          {rows.map((line) => (
            <tr key={`${line.row.of}-${line.string ?? ''}`} data-row={line.row.of}>
              <th scope="row">
                {words.what[line.row.of]}
                {line.string !== undefined && `, ${words.string(line.string)}`}
              </th>
              <td data-column={words.columns.leads}>{leadsText(line)}</td>
              <td data-column={words.columns.band}>{band(line, units)}</td>
              <td class="price" />
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}

function leadsText({ row }: CardLine): string {
  const leads = leadsOf({ point: row.point, mode: row.mode, scale: row.scale });
  const named = words.places[row.point];
  const places = leads
    ? [
        leads.red && words.red(anchorNames[leads.red]),
        leads.black && words.black(anchorNames[leads.black]),
        leads.clamp && words.clamp(anchorNames[leads.clamp]),
      ]
    : [named && `${named}.`];
  return [`${words.modes[row.mode]}.`, ...places].filter(Boolean).join(' ');
}

function band({ scale, missing }: CardLine, units: UnitSystem): string {
  if (!scale) return `${words.missing} ${missing.map(factLabel).join(', ')}`;
  const about =
    scale.nominal === undefined
      ? ''
      : ` (${runWords.band.nominal(formatQuantity(scale.nominal, scale.kind, { system: units }))})`;
  return `${bandText(scale, units)}${about}`;
}
