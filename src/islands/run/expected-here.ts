import type { Scale } from '../../expected/scale.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import type { StepView } from '../../visit/step.ts';
import { runWords } from '../../words/en/run-page.ts';
import { bandText } from './band.ts';
import { make, ours } from './dom.ts';
import type { Plate } from './plate.ts';

/** Writes on the plate what the meter should show on this site, and why. */
export function expectedHere(plate: Plate, view: StepView, units: UnitSystem): void {
  const known = view.readings.flatMap(({ id, scale }) => (scale ? [{ id, scale }] : []));
  if (known.length === 0) return;
  const lines = known.map(({ id, scale }) => {
    const about =
      scale.nominal === undefined
        ? ''
        : ` (${runWords.band.nominal(formatQuantity(scale.nominal, scale.kind, { system: units }))})`;
    const figure = make('span', { className: 'reading', textContent: `${bandText(scale, units)}${about}` });
    const label = known.length > 1 ? `${plate.readingLabel(id)}: ` : '';
    return make('p', {}, label, figure);
  });
  const why = whyPanel(
    known.flatMap(({ scale }) => scale.why),
    units,
  );
  const heading = make('p', { className: 'plate-label', textContent: runWords.band.here });
  const box = ours(make('div', { className: 'site-band' }, heading, ...lines, why));
  const expect = plate.part('expect');
  if (expect) {
    expect.append(box);
    return;
  }
  box.classList.add('plate-expect');
  (plate.part('readings') ?? plate.section.lastElementChild)?.before(box);
}

/** Where the limits come from, told when it is asked for: on the wall the figure is wanted first. */
function whyPanel(why: Scale['why'], units: UnitSystem): HTMLElement | undefined {
  if (why.length === 0) return undefined;
  const place = make('div', { className: 'small' });
  const panel = make('details', {}, make('summary', { textContent: runWords.band.why }), place);
  const tell = async () => {
    const { sayExpected } = await import('./say-expected.ts');
    const said = await Promise.all(why.map((each) => sayExpected(each, units)));
    place.replaceChildren(...[...new Set(said)].map((text) => make('p', { textContent: text })));
  };
  panel.addEventListener('toggle', () => void (panel.open && tell()), { once: true });
  return panel;
}
