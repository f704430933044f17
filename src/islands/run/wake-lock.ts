/** Keeps the screen on while asked to. The browser takes the lock away when the page is hidden: it is asked for again. */
export class WakeLock {
  #wanted = false;
  #held: WakeLockSentinel | undefined;
  readonly #onChange: (held: boolean) => void;

  constructor(onChange: (held: boolean) => void) {
    this.#onChange = onChange;
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') void this.#ask();
    });
  }

  /** Whether this browser can keep the screen on at all. */
  static get possible(): boolean {
    return 'wakeLock' in navigator;
  }

  get wanted(): boolean {
    return this.#wanted;
  }

  async want(wanted: boolean): Promise<void> {
    this.#wanted = wanted;
    if (wanted) return this.#ask();
    await this.#held?.release();
    this.#held = undefined;
    this.#onChange(false);
  }

  async #ask(): Promise<void> {
    if (!this.#wanted || (this.#held && !this.#held.released)) return;
    try {
      this.#held = await navigator.wakeLock.request('screen');
      this.#held.addEventListener('release', () => this.#onChange(false));
      this.#onChange(true);
    } catch {
      // Low battery or a setting forbids it: the switch shows that the screen may go dark.
      this.#onChange(false);
    }
  }
}
