import { useEffect, useState } from 'preact/hooks';
import type { Finding, Lift } from '../../sheet-check/check.ts';
import { liftsOf } from '../../sheet-check/lift.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { checkWords, sheetCheckWords as words } from '../../words/en/sheet-check.ts';
import { factLabel } from '../../words/en/site.ts';
import { loadWorksheet } from '../worksheet/load.ts';
import { fill } from '../worksheet/say.ts';
import { nameOfCheck } from './names.ts';
import { shown, shownFact, shownShare } from './show.ts';
import { WorksheetLink } from './WorksheetLink.tsx';

/** One broken limit: what it means, its figures, what lifts it and the worksheet behind it. */
export function BrokenCard({ finding, sheet }: { finding: Finding; sheet: SiteSheet }) {
  const { units } = sheet;
  const title = nameOfCheck(finding);
  const [lifts, setLifts] = useState<readonly Lift[] | undefined>();
  const [assumed, setAssumed] = useState('');
  useEffect(() => {
    // The finding stands on the page first; what lifts it takes longer to find.
    const later = setTimeout(() => setLifts(liftsOf(finding, sheet)), 0);
    loadWorksheet[finding.use.worksheet]?.().then(({ words: of }) =>
      setAssumed(finding.assumed.map((field) => of.inputs[field]?.label ?? field).join(', ')),
    );
    return () => clearTimeout(later);
  }, [finding, sheet]);
  const limit = shown(finding.limit, finding.kind, units);
  const params = { ...finding.use.inputs, amount: finding.amount, limit: finding.limit };
  return (
    <section class="plate" data-finding={finding.check} data-severity={finding.severity}>
      <h3 class="plate-title">
        <span class="tag">{words.severities[finding.severity]}</span> {title}
      </h3>
      <p>{fill(checkWords[finding.check]!.broken, params, units)}</p>
      <dl class="cells">
        <div>
          <dt>{words.figure}</dt>
          <dd>{shown(finding.amount, finding.kind, units)}</dd>
        </div>
        <div>
          <dt>{words.limit}</dt>
          <dd>{words[finding.side](limit)}</dd>
        </div>
        {finding.margin !== undefined && (
          <div>
            <dt>{words.margin}</dt>
            <dd>{words.over(shownShare(finding.margin))}</dd>
          </div>
        )}
      </dl>
      {lifts && lifts.length === 0 && <p>{words.noLift}</p>}
      {lifts && lifts.length > 0 && (
        <div>
          <p>{words.lifts}</p>
          <ul>
            {lifts.map(({ fact, from, to }) => (
              <li key={fact}>
                {words.change(factLabel(fact), shownFact(fact, from, units), shownFact(fact, to, units))}
              </li>
            ))}
          </ul>
        </div>
      )}
      {assumed !== '' && <p class="small">{words.assumed(assumed)}</p>}
      <p class="no-print">
        <WorksheetLink use={finding.use} units={units} about={title} />
      </p>
    </section>
  );
}
