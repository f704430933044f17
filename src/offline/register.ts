import { registerWorker } from './registration.ts';

/** The path that the site is served under, with its last slash. */
export const base = `${import.meta.env.BASE_URL.replace(/\/$/, '')}/`;

/** Every page's part in working offline: it registers the worker, once the page itself has loaded. */
export const registering: Promise<ServiceWorkerRegistration | undefined> = new Promise((done) => {
  const register = (): void => done(registerWorker(base));
  if (document.readyState === 'complete') register();
  else addEventListener('load', register, { once: true });
});
