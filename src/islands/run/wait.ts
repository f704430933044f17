import { runStep } from '../../words/en/run-step.ts';
import { button, make, ours } from './dom.ts';
import type { BuildControls } from './host.ts';

const words = runStep.wait;

/** `4:05` */
const clock = (seconds: number) => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;

/** A wait, counted from the log: neither a reload nor a sleeping screen shortens or restarts it. */
export const wait: BuildControls = (host, _plate, view) => {
  const left = make('output', { className: 'wait-clock' });
  const go = button(words.goOn, 'btn btn-primary', () => void host.give({ type: 'goOn' }));
  let over = false;
  const tick = (nowMs: number) => {
    const seconds = Math.max(0, Math.ceil(((view.waitEndsMs ?? 0) - nowMs) / 1000));
    left.textContent = seconds > 0 ? words.left(clock(seconds)) : words.over;
    go.setAttribute('aria-disabled', String(seconds > 0));
    if (seconds === 0 && !over) host.announce(words.over);
    over = seconds === 0;
  };
  tick(Date.now());
  const note = make('p', { className: 'small', textContent: words.note });
  return { elements: [ours(make('div', { className: 'run-go' }, left, note, go))], tick };
};
