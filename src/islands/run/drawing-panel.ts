import type { StepView } from '../../visit/step.ts';
import { runWords } from '../../words/en/run-page.ts';
import { make, ours } from './dom.ts';
import type { Host } from './host.ts';
import type { Plate } from './plate.ts';

const key = 'faultwright-drawing';

/** Whether drawings were last left open on this phone. */
function leftOpen(): boolean {
  try {
    return localStorage.getItem(key) === 'open';
  } catch {
    return false; // Storage is blocked: drawings begin closed.
  }
}

function remember(open: boolean): void {
  try {
    localStorage.setItem(key, open ? 'open' : 'closed');
  } catch {
    // Blocked: it holds for this step alone.
  }
}

/**
 * The plant with the leads of this step on it, and what is live, open and locked as the run knows it. Drawn when it is
 * opened; once opened it stays so from step to step.
 */
export function drawingPanel(host: Host, plate: Plate, view: StepView): void {
  const { step } = view.node;
  if (view.readings.length === 0 && (step.at ?? []).length === 0) return;
  const place = make('div', { className: 'run-drawing' });
  const panel = ours(
    make('details', { className: 'run-leads' }, make('summary', { textContent: runWords.drawing }), place),
  );
  let reading = view.readings[0]?.id;
  const draw = () =>
    void import('./plant-drawing.ts').then(({ plantDrawing }) => {
      const asked = view.readings.find(({ id }) => id === reading)?.reading;
      place.replaceChildren(plantDrawing(host.state, plate.title, asked, step.at ?? []));
    });
  panel.addEventListener('toggle', () => {
    remember(panel.open);
    if (panel.open) draw();
  });
  for (const { id } of view.readings)
    plate.reading(id)?.addEventListener('focusin', () => {
      if (reading === id) return;
      reading = id;
      if (panel.open) draw();
    });
  panel.open = leftOpen();
  const home = plate.part('drawing');
  if (home) home.append(panel);
  else (plate.part('do') ?? plate.heading.nextElementSibling ?? plate.heading).before(panel);
}
