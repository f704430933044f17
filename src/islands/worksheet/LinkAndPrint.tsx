import { useState } from 'preact/hooks';
import { worksheetPage } from '../../words/en/worksheets-page.ts';

/** Copy an address that carries the numbers, or print the page. */
export function LinkAndPrint({ query }: { query(): string }) {
  const [said, setSaid] = useState('');
  const copy = async (): Promise<void> => {
    const address = new URL(`?${query()}`, location.href);
    address.hash = '';
    history.replaceState(history.state, '', address);
    try {
      await navigator.clipboard.writeText(address.href);
      setSaid(worksheetPage.copied);
    } catch {
      setSaid(worksheetPage.copyFailed);
    }
  };
  return (
    <div class="btn-row no-print">
      <button type="button" class="btn" onClick={copy}>
        {worksheetPage.copyLink}
      </button>
      <button type="button" class="btn" onClick={() => print()}>
        {worksheetPage.print}
      </button>
      <p role="status" class="small">
        {said}
      </p>
    </div>
  );
}
