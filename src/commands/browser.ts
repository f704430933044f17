/** Find a Chromium-family browser for the browser tests, the bench and the pictures, and start it. */
import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

/** What the search needs to know of the machine; handed in so that it can be tested without one. */
export interface Machine {
  platform: NodeJS.Platform;
  env: Readonly<Record<string, string | undefined>>;
  /** Is there a file that may be run? */
  runnable: (path: string) => boolean;
}

const thisMachine: Machine = {
  platform: process.platform,
  env: process.env,
  runnable(path) {
    try {
      accessSync(path, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  },
};

/** The one without windows first: it is the same engine, and takes a third less of the machine. */
const names = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'chrome',
  'microsoft-edge-stable',
  'microsoft-edge',
  'brave-browser',
];

/** Where installers put it when it is not on the PATH. `%X%` stands for an environment variable. */
const usualPlaces: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: [
    '/usr/bin/chromium',
    '/usr/lib/chromium/chromium',
    '/snap/bin/chromium',
    '/opt/google/chrome/chrome',
  ],
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    '/Applications/Brave Browser.app/Contents/MacOS/Brave Browser',
  ],
  win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((folder) => [
    `%${folder}%\\Chromium\\Application\\chrome.exe`,
    `%${folder}%\\Google\\Chrome\\Application\\chrome.exe`,
    `%${folder}%\\Microsoft\\Edge\\Application\\msedge.exe`,
  ]),
};

export class NoBrowser extends Error {}

/**
 * The path of a browser: the one named in CHROMIUM_PATH, else the first on the PATH, else the first in a usual place.
 * Throws `NoBrowser` where CHROMIUM_PATH names a file that cannot be run: a wish is never silently passed over.
 */
export function findBrowser({ platform, env, runnable }: Machine = thisMachine): string | undefined {
  const wished = env.CHROMIUM_PATH;
  if (wished) {
    if (runnable(wished)) return wished;
    throw new NoBrowser(`CHROMIUM_PATH is ${wished}, and no program that can be run is there.`);
  }
  const ending = platform === 'win32' ? '.exe' : '';
  const onPath = (env.PATH ?? '')
    .split(platform === 'win32' ? ';' : delimiter)
    .filter(Boolean)
    .flatMap((folder) => names.map((name) => join(folder, name + ending)));
  const usual = (usualPlaces[platform] ?? []).map((place) =>
    place.replace(/%(.+?)%/, (_, name: string) => env[name] ?? name),
  );
  return [...onPath, ...usual].find(runnable);
}

const howToGetOne = `No Chromium-family browser was found. The browser tests, the bench and the pictures need one.
  Debian, Ubuntu   sudo apt-get install chromium
  Fedora           sudo dnf install chromium
  macOS            brew install --cask chromium
  Windows          winget install Hibbiki.Chromium
  elsewhere        set CHROMIUM_PATH to the program of any Chromium-family browser`;

/** Debian's own packages, where this process may install one: the first there is. */
function installDebians(): void {
  const debian = process.platform === 'linux' && existsSync('/etc/debian_version');
  if (!debian || process.getuid?.() !== 0) return;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const aptGet = (...args: string[]): boolean => {
    try {
      execFileSync('apt-get', args, { stdio: 'inherit', env });
      return true;
    } catch (error) {
      console.error(error instanceof Error ? error.message : error);
      return false;
    }
  };
  if (!aptGet('update', '-qq')) return;
  for (const name of ['chromium-headless-shell', 'chromium']) {
    console.log(`No Chromium found; installing the package \`${name}\` with apt-get.`);
    if (aptGet('install', '-y', '-qq', '--no-install-recommends', name)) return;
  }
}

/** A browser's path; installs Debian's Chromium where it may. Throws `NoBrowser` saying how to get one. */
export function browserPath(): string {
  const found = findBrowser();
  if (found) return found;
  installDebians();
  const installed = findBrowser();
  if (installed) return installed;
  throw new NoBrowser(howToGetOne);
}

/** A headless browser that asks nothing of any host by itself. */
export function launchBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: browserPath(),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
