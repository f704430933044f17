import { registering } from '../../offline/register.ts';
import { installed, saveAgain } from '../../offline/registration.ts';
import { type Saved, savedNow } from '../../offline/saved-files.ts';

export type SavedState =
  | { kind: 'unsupported' | 'saving' | 'failed' }
  /** Everything is there, or what the browser left of it. */
  | { kind: 'saved'; saved: Saved };

/**
 * Tell `show` how the saving of the guide stands, now and when it changes. "Saved" is said only when every file of the
 * version in use lies in the browser.
 */
export async function watchSaved(base: string, show: (state: SavedState) => void): Promise<void> {
  const look = async (otherwise: 'saving' | 'failed'): Promise<boolean> => {
    const saved = await savedNow(base).catch(() => undefined);
    show(saved ? { kind: 'saved', saved } : { kind: otherwise });
    return saved !== undefined && saved.count === saved.expected;
  };
  const registration = await registering;
  if (!registration) {
    show({ kind: 'unsupported' });
    return;
  }
  const whole = await look('saving');
  const { installing, active } = registration;
  if (installing) await look((await installed(installing)) ? 'saving' : 'failed');
  else if (!whole && active) await look((await saveAgain(active)) ? 'saving' : 'failed');
}
