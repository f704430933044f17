import type { WorkerScope } from './worker-scope.ts';

/**
 * The worker to publish in place of the real one when a release must be taken back: it saves nothing, deletes the saved
 * files and takes itself out, so that every page comes from the host again. Sites and visits are not in its reach.
 */
declare const __CACHE_START__: string;

const worker = globalThis as unknown as WorkerScope & {
  readonly registration: ServiceWorkerRegistration;
};

worker.addEventListener('install', (event) => event.waitUntil(worker.skipWaiting()));

worker.addEventListener('activate', (event) => {
  const out = async (): Promise<void> => {
    const names = await caches.keys();
    await Promise.all(
      names.filter((name) => name.startsWith(__CACHE_START__)).map((name) => caches.delete(name)),
    );
    await worker.registration.unregister();
  };
  event.waitUntil(out());
});
