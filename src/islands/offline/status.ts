import { registering } from '../../offline/register.ts';
import { goOver, installed, newerVersion } from '../../offline/registration.ts';
import { offline as words } from '../../words/en/offline.ts';
import { type SavedState, watchSaved } from './saved-state.ts';
import { visitIsOpen } from './visit-open.ts';

export function sayState(state: SavedState): string {
  if (state.kind !== 'saved') return words.state[state.kind];
  const { count, expected, bytes } = state.saved;
  return count === expected ? words.state.saved(count, bytes) : words.state.partly(count, expected);
}

/**
 * `<fw-offline>`: one line that says whether the guide is saved, and, when a newer version lies ready, the offer to use
 * it. With a visit open it offers nothing: a run ends on the version that it began with.
 */
class OfflineStatus extends HTMLElement {
  connectedCallback(): void {
    const base = this.dataset.base ?? '/';
    const saved = this.piece('saved');
    watchSaved(base, (state) => {
      saved.textContent = sayState(state);
      saved.hidden = false;
    });
    this.watchUpdates(base);
  }

  private piece<Type extends HTMLElement>(role: string): Type {
    const found = this.querySelector<Type>(`[data-role="${role}"]`);
    if (!found) throw new Error(`fw-offline has no part "${role}"`);
    return found;
  }

  private async watchUpdates(base: string): Promise<void> {
    const registration = await registering;
    if (!registration) return;
    const look = (): Promise<void> => this.offer(base, registration);
    registration.addEventListener('updatefound', async () => {
      if (registration.installing && (await installed(registration.installing))) await look();
    });
    if (registration.installing) await installed(registration.installing);
    await look();
  }

  private async offer(base: string, registration: ServiceWorkerRegistration): Promise<void> {
    const worker = await newerVersion(base, registration);
    if (!worker) return;
    const text = this.piece('update-text');
    const button = this.piece<HTMLButtonElement>('use');
    button.textContent = words.update.use;
    const show = async (): Promise<boolean> => {
      const open = await visitIsOpen();
      text.textContent = open ? words.update.waits : words.update.ready;
      button.hidden = open;
      this.piece('update').hidden = false;
      return open;
    };
    await show();
    button.onclick = async () => {
      // Another tab may have begun a visit since the offer was made.
      if (await show()) return;
      button.disabled = true;
      if (await goOver(worker)) return;
      button.disabled = false;
      text.textContent = words.update.failed;
    };
  }
}

customElements.define('fw-offline', OfflineStatus);
