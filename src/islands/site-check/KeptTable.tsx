import type { UnitSystem } from '../../quantity/kinds.ts';
import type { Finding } from '../../sheet-check/check.ts';
import { sheetCheckWords as words } from '../../words/en/sheet-check.ts';
import { nameOfCheck } from './names.ts';
import { shown, shownShare } from './show.ts';
import { WorksheetLink } from './WorksheetLink.tsx';

/** What was checked and is in order, the tightest first. */
export function KeptTable({ findings, units }: { findings: readonly Finding[]; units: UnitSystem }) {
  return (
    <ul class="kept-list">
      {findings.map((finding) => {
        const title = nameOfCheck(finding);
        return (
          <li key={`${finding.check}-${finding.row}`}>
            <b>{title}</b>: {shown(finding.amount, finding.kind, units)},{' '}
            {words[finding.side](shown(finding.limit, finding.kind, units))}
            {finding.margin !== undefined && `; ${words.left(shownShare(finding.margin))}`}.{' '}
            <span class="no-print">
              <WorksheetLink use={finding.use} units={units} about={title} />
            </span>
          </li>
        );
      })}
    </ul>
  );
}
