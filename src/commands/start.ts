/**
 * Build the site where it is not built yet, and serve it on this machine.
 *   PORT  where to begin looking for a free port (4321)
 *   HOST  the address to listen on (127.0.0.1: this machine only)
 */
import { BuildFailed, build } from './build.ts';
import { wantedBuild } from './build-options.ts';
import { isFresh } from './build-stamp.ts';
import { serve } from './static-server.ts';

const usualPort = 4321;
const portsToTry = 50;

function wantedPort(text = String(usualPort)): number {
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65535) return port;
  console.error(`PORT is "${text}"; it takes a whole number from 0 to 65535.`);
  process.exit(1);
}

const options = wantedBuild();
const port = wantedPort(process.env.PORT);
try {
  if (!(await isFresh(options))) await build(options);
  const { url } = await serve({
    ...options,
    port,
    host: process.env.HOST ?? '127.0.0.1',
    tries: port === 0 ? 0 : portsToTry,
  });
  console.log(`\nFaultwright is at ${url}\nStop it with Ctrl+C.`);
} catch (error) {
  if (!(error instanceof BuildFailed)) throw error;
  console.error(`\nThe site was not built, so there is nothing to serve. ${error.message}`);
  process.exitCode = 1;
}
