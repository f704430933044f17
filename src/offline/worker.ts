import { answer, isOurs } from './answer.ts';
import type { FileList } from './cache-names.ts';
import type { Ask } from './messages.ts';
import { saveFiles } from './save-files.ts';
import { setVersionInUse } from './saved-files.ts';
import type { WorkerScope } from './worker-scope.ts';

/**
 * The service worker. It saves all files of its version when it is installed, and answers from the version *in use*,
 * which is the one it found there: being started, or taking over after every tab was closed, changes nothing that a
 * person sees. Only the message `use-your-version` does, and a page sends that only when its reader said so.
 */

/** Written in by the build. */
declare const __BASE__: string;
declare const __FILES__: FileList;

const worker = globalThis as unknown as WorkerScope;

worker.addEventListener('install', (event) => {
  event.waitUntil(saveFiles(__BASE__, __FILES__));
});

worker.addEventListener('fetch', (event) => {
  if (isOurs(__BASE__, event.request, worker.location.origin))
    event.respondWith(answer(__BASE__, event.request));
});

worker.addEventListener('message', (event) => {
  const reply = () => event.ports[0]?.postMessage(__FILES__.version);
  const ask = event.data as Ask;
  if (ask === 'version') reply();
  if (ask === 'save-again') event.waitUntil(saveFiles(__BASE__, __FILES__).then(reply));
  if (ask === 'use-your-version') {
    const used = setVersionInUse(__BASE__, __FILES__.version).then(() => {
      reply();
      return worker.skipWaiting();
    });
    event.waitUntil(used);
  }
});
