import { withoutRow, withRow } from '../../site/defaults.ts';
import { draftFactIds, type SheetDraft, type SheetList } from '../../site/draft.ts';
import { withUnits } from '../../site/draft-units.ts';
import { factGroups, siteWords } from '../../words/en/site.ts';
import { Box } from './Box.tsx';

interface FormProps {
  draft: SheetDraft;
  /** Sentences by concrete fact id. */
  errors: Readonly<Record<string, string>>;
  onChange(draft: SheetDraft): void;
}

/** Every question of the sheet in one column, grouped; the trackers and strings stand after the inverter. */
export function SheetForm(props: FormProps) {
  return (
    <>
      {factGroups.map(({ title, starts, note }, at) => (
        <>
          <fieldset class="sheet" id={`g-${at}`} key={title}>
            <legend>{title}</legend>
            {note && <p class="field-hint">{note}</p>}
            <Boxes {...props} wanted={(id) => starts.some((start) => belongs(id, start))} />
          </fieldset>
          {starts.includes('inverter.') && <Rows {...props} list="trackers" key="trackers" />}
          {starts.includes('inverter.') && <Rows {...props} list="strings" key="strings" />}
        </>
      ))}
    </>
  );
}

const belongs = (id: string, start: string): boolean =>
  start.endsWith('.') ? id.startsWith(start) : id === start;

function Boxes({ draft, errors, onChange, wanted }: FormProps & { wanted: (id: string) => boolean }) {
  const units = draft.typed.units === 'us' ? 'us' : 'metric';
  const names = Array.from({ length: draft.rows.trackers }, (_, row) =>
    draft.typed[`trackers[${row}].name`]?.trim(),
  );
  const landings = [...new Set(names.flatMap((name) => name || []))];
  return (
    <>
      {draftFactIds(draft)
        .filter(wanted)
        .map((id) => (
          <Box
            key={id}
            id={id}
            text={draft.typed[id] ?? ''}
            unknown={draft.unknown.includes(id)}
            units={units}
            error={errors[id]}
            options={
              /\.tracker$/.test(id) ? landings.map((name) => ({ value: name, label: name })) : undefined
            }
            onType={(which, text) => onChange(typed(draft, which, text))}
            onUnknown={(which, unknown) => onChange(marked(draft, which, unknown))}
          />
        ))}
    </>
  );
}

function Rows({ list, ...props }: FormProps & { list: SheetList }) {
  const { draft, onChange } = props;
  const isTracker = list === 'trackers';
  return (
    <section id={`g-${list}`}>
      <h2>{isTracker ? siteWords.trackersTitle : siteWords.stringsTitle}</h2>
      <p>{isTracker ? siteWords.trackersNote : siteWords.stringsNote}</p>
      {Array.from({ length: draft.rows[list] }, (_, row) => (
        <fieldset class="sheet" key={row}>
          <legend>{isTracker ? siteWords.tracker(row + 1) : siteWords.string(row + 1)}</legend>
          <Boxes {...props} wanted={(id) => id.startsWith(`${list}[${row}].`)} />
          <button type="button" class="btn" onClick={() => onChange(withoutRow(draft, list, row))}>
            {isTracker ? siteWords.dropTracker(row + 1) : siteWords.dropString(row + 1)}
          </button>
        </fieldset>
      ))}
      <p>
        <button type="button" class="btn" onClick={() => onChange(withRow(draft, list))}>
          {isTracker ? siteWords.addTracker : siteWords.addString}
        </button>
      </p>
    </section>
  );
}

/** Typing an answer means it is known; a tracker given another name keeps its strings. */
function typed(draft: SheetDraft, id: string, text: string): SheetDraft {
  if (id === 'units') return withUnits(draft, text === 'us' ? 'us' : 'metric');
  const before = draft.typed[id];
  const next = { ...draft.typed, [id]: text };
  if (/^trackers\[\d+\]\.name$/.test(id) && before) {
    for (const [other, value] of Object.entries(next)) {
      if (/^strings\[\d+\]\.tracker$/.test(other) && value === before.trim()) next[other] = text.trim();
    }
  }
  return { ...draft, typed: next, unknown: draft.unknown.filter((each) => each !== id) };
}

function marked(draft: SheetDraft, id: string, unknown: boolean): SheetDraft {
  const others = draft.unknown.filter((each) => each !== id);
  return { ...draft, unknown: unknown ? [...others, id] : others };
}
