/** Size of files as people say it: kB below a megabyte, MB above, with figures that matter. */
export function size(bytes: number): string {
  if (bytes < 1e6) return `${Math.max(1, Math.round(bytes / 1e3))} kB`;
  return `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;
}

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** Words for working with no network and for what is kept on the phone. */
export const offline = {
  title: 'What is stored on this phone',
  lede: 'Everything stays in this browser, on this phone. No account. Nothing is sent to anyone.',
  needsScript: 'The figures on this page need a script. The words hold without one.',

  guideTitle: 'The guide itself',
  guideText:
    'Open any page once with a signal, and wait until it says saved. From then on every page opens with no signal, after months too.',
  state: {
    looking: 'Looking…',
    unsupported:
      'Not saved. This browser cannot save the guide: it may be a private window, or the address does not begin with https. Open it in the phone’s own browser. Do not rely on it where there is no signal.',
    saving: 'Saving for offline use. Keep the signal until it says saved.',
    failed:
      'Not saved for offline use. Either the signal broke off, or the phone is full. Open this page again with a signal. What was saved so far is not lost.',
    saved: (count: number, bytes: number): string =>
      `Saved for offline use: ${plural(count, 'file', 'files')}, ${size(bytes)}.`,
    partly: (count: number, expected: number): string =>
      `Only ${count} of ${plural(expected, 'file', 'files')} are still saved: the browser made room. With a signal, they are being saved again.`,
  },
  version: 'Version in use',

  update: {
    ready: 'A newer version of the guide is saved and ready.',
    use: 'Use the newer version',
    waits:
      'A newer version of the guide is ready. It waits until your open visit is closed, so that nothing changes under your hands.',
    failed:
      'The newer version did not take over. Nothing has changed. Close all tabs of the guide and open it again.',
  },

  yoursTitle: 'What you entered',
  yoursText: 'Sites, visits with every reading, and the lighting you chose.',
  rows: {
    sites: 'Sites',
    visits: 'Visits',
    open: 'Visits still open',
    entries: 'Entries in the log',
    used: 'Space used in all',
    free: 'Space the browser allows',
    kept: 'Kept when the phone is short of space',
  },
  unknown: 'The browser does not say',
  cannotRead:
    'This browser lets the page keep nothing. Visits are lost when the tab closes. Use another browser.',
  kept: 'Yes, the browser has promised',
  notKept: 'Not promised',
  askToKeep: 'Ask the browser to keep it',
  keepRefused:
    'The browser did not promise. Put the guide on the home screen, and export visits that matter.',
  sitesLink: 'Sites: look, export, delete',
  visitsLink: 'Visits: look, export, delete',

  installTitle: 'Put it on the home screen',
  installText: [
    'It then opens like any other program, and the browser keeps it more surely.',
    'Android: open the browser’s menu and tap “Install app” or “Add to home screen”.',
    'iPhone and iPad: tap the share sign, then “Add to Home Screen”. Do this. Without it, the phone deletes what a page stored after about a week of not opening it.',
    'A visit that matters: export it to a file the same day. A phone can fall into water.',
  ],

  removeTitle: 'How to remove it',
  removeText: [
    'First export the sites and visits that you want to keep.',
    'One site or one visit: delete it on its own page.',
    'Everything: open the browser’s settings, find the data of this site, and delete it. That removes the saved guide, the sites and the visits together. It cannot be undone.',
  ],
} as const;
