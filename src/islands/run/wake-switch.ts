import { runWords } from '../../words/en/run-page.ts';
import { make } from './dom.ts';
import { WakeLock } from './wake-lock.ts';

/** The switch that keeps the screen on during a run; none where the browser cannot. */
export function wakeSwitch(announce: (text: string) => void): HTMLElement | false {
  if (!WakeLock.possible) return false;
  const box = make('input', { type: 'checkbox', attrs: { role: 'switch' } });
  const lock = new WakeLock((held) => {
    box.checked = held || (lock.wanted && document.visibilityState === 'hidden');
  });
  box.addEventListener('change', () => {
    void lock.want(box.checked).then(() => {
      if (lock.wanted && !box.checked) announce(runWords.wakeFailed);
    });
  });
  void lock.want(true);
  return make('label', { className: 'tick' }, box, runWords.wake);
}
