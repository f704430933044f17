import { useEffect, useRef } from 'preact/hooks';
import { siteWords } from '../../words/en/site.ts';
import { boxId } from './say.ts';
import type { Kept } from './store.ts';

export interface Fault {
  /** Concrete id of the fact to go to; nothing when no box is at fault. */
  id?: string;
  text: string;
}

/** The list of what must change, in the words that stand at the boxes. It takes the focus each time `round` changes. */
export function ErrorSummary({
  title,
  faults,
  round,
}: {
  title: string;
  faults: readonly Fault[];
  round: number;
}) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.focus();
  }, [round]);
  return (
    <div class="error-summary" role="alert" tabIndex={-1} ref={box}>
      <h2>{title}</h2>
      <ul>
        {faults.map(({ id, text }) => (
          <li key={`${id} ${text}`}>
            {id === undefined ? (
              text
            ) : (
              <a href={`#${boxId(id)}`} onClick={(event) => goToBox(event, id)}>
                {text}
              </a>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Brings the label into view before the box takes the focus, so that the question is seen with the answer. */
function goToBox(event: Event, id: string): void {
  const box = document.getElementById(boxId(id));
  if (!box) return;
  event.preventDefault();
  const field = box.closest('.field') ?? box;
  field.scrollIntoView({ block: 'start' });
  box.focus({ preventScroll: true });
}

/** Says at once that nothing is being kept, and offers to save it as a file. */
export function NotKept({ kept, onExport }: { kept: Kept; onExport?: () => void }) {
  if (kept === 'kept') return null;
  return (
    <div class="error-summary" role="alert">
      <p>{kept === 'full' ? siteWords.full : siteWords.blocked}</p>
      {onExport && (
        <button type="button" class="btn" onClick={onExport}>
          {siteWords.exportDraft}
        </button>
      )}
    </div>
  );
}
