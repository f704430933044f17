import type { SeriesText } from '../../visit/input.ts';
import { runWords } from '../../words/en/run-page.ts';
import { make, ours } from './dom.ts';
import type { BuildControls, ReadingField } from './host.ts';
import { meterWindow } from './meter-window.ts';
import { part } from './parts.ts';
import { forgetTyped, keepTyped, typedAt } from './typed-draft.ts';

/** A meter window, or a field of timed values, for each reading of the step, and one button to hand them in. */
export const readings: BuildControls = (host, plate, view) => {
  const { state } = host;
  const draft = typedAt(`${state.visit} ${state.position.path} ${state.trail.length}`);
  const isSeries = new Map(view.readings.map(({ id, reading }) => [id, (reading.series ?? 1) > 1]));
  const fields = view.readings.map((asked): ReadingField => {
    const label = plate.readingLabel(asked.id);
    if (!isSeries.get(asked.id))
      return meterWindow(asked, state.sheet, draft.texts[asked.id] ?? '', label, (text) => {
        draft.texts[asked.id] = text;
        keepTyped(draft);
      });
    const startedMs = draft.clocks[asked.id];
    const rows = draft.rows[asked.id] ?? [];
    return part('series').seriesField(
      asked,
      state.sheet,
      { rows, ...(startedMs === undefined ? {} : { startedMs }) },
      label,
      (typed) => {
        draft.rows[asked.id] = typed.rows;
        if (typed.startedMs !== undefined) draft.clocks[asked.id] = typed.startedMs;
        keepTyped(draft);
      },
    );
  });
  const text = fields.length > 1 ? runWords.meter.handInAll : runWords.meter.handIn;
  const form = ours(
    make(
      'form',
      { className: 'run-readings', noValidate: true },
      make('button', { type: 'submit', className: 'btn btn-primary', textContent: text }),
    ),
  );
  // Each window stands with the words that say where its leads go; the form is what they all belong to.
  form.id = 'run-readings';
  for (const field of fields) {
    const place = plate.reading(field.id);
    for (const input of field.element.querySelectorAll('input')) input.setAttribute('form', form.id);
    if (place) place.append(field.element);
    else form.prepend(field.element);
  }
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const texts = Object.fromEntries(
      view.readings.map(({ id }): [string, string | SeriesText] => [
        id,
        isSeries.get(id)
          ? (draft.rows[id] ?? []).filter((row) => row.some((cell) => cell.trim() !== ''))
          : (draft.texts[id] ?? ''),
      ]),
    );
    void host.give({ type: 'readings', texts }).then((taken) => {
      if (taken) forgetTyped();
    });
  });
  return {
    elements: [form],
    showProblems(problems, say) {
      for (const field of fields) field.showProblem('');
      return problems.flatMap(({ field: id, message }) => {
        const field = fields.find((each) => each.id === id);
        if (!field) return [];
        const said = say(message);
        field.showProblem(said);
        return [{ text: `${plate.readingLabel(field.id)}: ${said}`, go: () => field.focus() }];
      });
    },
  };
};
