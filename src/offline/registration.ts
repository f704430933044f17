import type { Ask } from './messages.ts';
import { versionInUse } from './saved-files.ts';

/** The page's side of the worker: registering it, knowing whether a newer version is ready, going over to it. */

/** The worker's file name, under the base. */
export const workerFile = 'sw.js';

/** Register the worker once the page has loaded. `undefined` where the browser has none, or forbids it. */
export async function registerWorker(base: string): Promise<ServiceWorkerRegistration | undefined> {
  if (!('serviceWorker' in navigator)) return undefined;
  try {
    const registration = await navigator.serviceWorker.register(base + workerFile, {
      scope: base,
      updateViaCache: 'none',
    });
    document.addEventListener('visibilitychange', () => {
      // With no signal the question fails, and is asked again the next time.
      if (document.visibilityState === 'visible') registration.update().catch(() => undefined);
    });
    return registration;
  } catch {
    return undefined;
  }
}

/** How long a worker may take over an answer before it counts as none, in milliseconds. */
const patienceMs = 3000;

function ask(worker: ServiceWorker, question: Ask, waitMs = patienceMs): Promise<string | undefined> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }: MessageEvent<string>) => done(data);
    setTimeout(() => done(undefined), waitMs);
    worker.postMessage(question, [port2]);
  });
}

/** The worker that holds a version other than the one in use, all saved and ready; `undefined` when none does. */
export async function newerVersion(
  base: string,
  registration: ServiceWorkerRegistration,
): Promise<ServiceWorker | undefined> {
  const worker = registration.waiting ?? registration.active;
  const inUse = await versionInUse(base);
  if (!worker || inUse === undefined) return undefined;
  const version = await ask(worker, 'version');
  return version !== undefined && version !== inUse ? worker : undefined;
}

/**
 * Go over to a worker's version and load this page from it. Resolves to false, with nothing changed, when the worker
 * gives no answer. WebKit does not always tell an installed page of the change of worker, so the wait has an end.
 */
export async function goOver(worker: ServiceWorker): Promise<boolean> {
  const changed = new Promise((done) => {
    navigator.serviceWorker.addEventListener('controllerchange', done, { once: true });
    if (worker.state === 'activated') done(undefined);
    setTimeout(done, patienceMs);
  });
  if ((await ask(worker, 'use-your-version')) === undefined) return false;
  await changed;
  location.reload();
  return true;
}

/** A whole version over a poor line. */
const saveAgainMs = 10 * 60_000;

/** Have a worker save again what the browser has thrown out. Resolves to false when it could not. */
export async function saveAgain(worker: ServiceWorker): Promise<boolean> {
  return (await ask(worker, 'save-again', saveAgainMs)) !== undefined;
}

/** Resolves when a worker being installed has come to an end: true when it is ready, false when it failed. */
export function installed(worker: ServiceWorker): Promise<boolean> {
  return new Promise((done) => {
    const look = (): void => {
      if (worker.state === 'redundant') done(false);
      else if (worker.state !== 'installing') done(true);
    };
    worker.addEventListener('statechange', look);
    look();
  });
}
