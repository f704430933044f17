import { versionInUse } from '../../offline/saved-files.ts';
import { openDb } from '../../visit/db.ts';
import { size, offline as words } from '../../words/en/offline.ts';
import { openVisits } from './visit-open.ts';

/** Fills the table of what is stored; each row is found by its `data-row`. */
class Stored extends HTMLElement {
  connectedCallback(): void {
    const keep = this.querySelector<HTMLButtonElement>('[data-role="keep"]');
    if (keep) {
      keep.hidden = !navigator.storage?.persist;
      keep.onclick = async () => {
        const promised = await navigator.storage.persist();
        await this.showSpace();
        this.say(promised ? words.kept : words.keepRefused);
      };
    }
    this.showVersion();
    this.showYours();
    this.showSpace();
  }

  private put(row: string, text: string): void {
    const cell = this.querySelector(`[data-row="${row}"]`);
    if (cell) cell.textContent = text;
  }

  private say(text: string): void {
    const line = this.querySelector('[data-role="said"]');
    if (line) line.textContent = text;
  }

  private async showVersion(): Promise<void> {
    const version = await versionInUse(this.dataset.base ?? '/').catch(() => undefined);
    this.put('version', version ?? '–');
  }

  private async showYours(): Promise<void> {
    try {
      const db = await openDb();
      this.put('sites', String(await db.count('sites')));
      this.put('visits', String(await db.count('visits')));
      this.put('entries', String(await db.count('entries')));
      this.put('open', String((await openVisits()).length));
    } catch {
      this.say(words.cannotRead);
    }
  }

  private async showSpace(): Promise<void> {
    const space = await navigator.storage?.estimate?.().catch(() => undefined);
    this.put('used', space?.usage === undefined ? words.unknown : size(space.usage));
    this.put('free', space?.quota === undefined ? words.unknown : size(space.quota));
    const kept = await navigator.storage?.persisted?.().catch(() => undefined);
    this.put('kept', kept === undefined ? words.unknown : kept ? words.kept : words.notKept);
  }
}

customElements.define('fw-stored', Stored);
