import { factWords } from './site-facts.ts';

type Params = Readonly<Record<string, string | number>>;

/** The label of a fact, with the row it stands in: `String 2: Module Voc`. */
export function factLabel(factId: string): string {
  const words = factWords[factId.replace(/\[\d+\]/g, '[]')];
  const row = /^(trackers|strings)\[(\d+)\]/.exec(factId);
  const label = words?.label ?? factId;
  if (!row) return label;
  return `${row[1] === 'trackers' ? 'Tracker' : 'String'} ${Number(row[2]) + 1}: ${label}`;
}

const fact = (params: Params): string => factLabel(String(params.fact));

/** Why a sheet or a file of sites is not taken, and what is odd about one that is, by message id. */
export const siteMessages: Readonly<Record<string, (params: Params) => string>> = {
  'site.missing': (params) => `${fact(params)}: nothing is entered. Guides cannot do without it.`,
  'site.missingOrUnknown': (params) =>
    `${fact(params)}: nothing is entered. Enter it, or tick “I don’t know”.`,
  'site.outOfRange': (params) =>
    `${fact(params)}: must lie between ${params.min} and ${params.max}. Check the number and its unit.`,
  'site.notAChoice': (params) => `${fact(params)}: choose one of those listed.`,
  'site.notYesNo': (params) => `${fact(params)}: answer yes or no.`,
  'site.badText': (params) =>
    `${fact(params)}: the text is blank, too long, or holds characters that do not print.`,
  'site.unknownField': ({ names }) => `It holds something that a site sheet does not have: ${names}.`,
  'site.badRecord': ({ field }) => `“${field}” is missing or is not what a site sheet has there.`,
  'site.mustBeBelow': ({ lowerFact, upperFact, lower, upper }) =>
    `“${factLabel(String(lowerFact))}” (${lower}) must be below “${factLabel(String(upperFact))}” (${upper}).`,
  'site.mustNotExceed': ({ lowerFact, upperFact, lower, upper }) =>
    `“${factLabel(String(lowerFact))}” (${lower}) must not be above “${factLabel(String(upperFact))}” (${upper}).`,
  'site.nameTwice': ({ name }) => `The name “${name}” is used twice. Give each its own.`,
  'site.noSuchTracker': ({ tracker, names }) =>
    names === ''
      ? `There is no tracker “${tracker}”: no tracker is entered.`
      : `There is no tracker “${tracker}”. The trackers entered are: ${names}.`,
  'site.fullAboveInverter': ({ full, max }) =>
    `A full bank stands at ${full}, above the ${max} the inverter runs on. Check the cells in series and both limits.`,
  'site.fullBelowInverter': ({ full, min }) =>
    `A full bank stands at only ${full}, not above the ${min} the inverter needs. Check the cells in series.`,
  'site.packsWithoutBreakers': () =>
    'Packs in parallel with no breaker or fuse of their own: when one shorts, the others feed it.',
  'site.noFuse': () => 'No fuse in the main battery lead: nothing breaks a short between bank and inverter.',
  'site.file.tooLong': ({ longest }) =>
    `The file is too big. A file of sites has at most ${longest} thousand characters.`,
  'site.file.unreadable': () => 'The file could not be read from the phone. Try again.',
  'site.file.notJson': () => 'The file is not JSON, or it is damaged. Choose a file that was exported here.',
  'site.file.poisoned': () =>
    'The file holds names that could change how this program works. It is refused whole.',
  'site.file.notSites': () => 'This is JSON, but not a file of sites. Choose a file that was exported here.',
  'site.file.newer': ({ version, known }) =>
    `The file is of version ${version}; this program knows version ${known}. Open it with a newer Faultwright.`,
  'site.file.badVersion': () =>
    'The file does not say a version that exists. It is damaged or was made by hand.',
  'site.file.badDraft': () =>
    'The file is of a site that was not finished, but it is damaged or was made by hand.',
  'site.file.empty': () => 'The file holds no site.',
  'site.file.tooMany': ({ most }) => `The file holds too many sites. The most is ${most}.`,
  'site.file.idTwice': ({ id }) => `Two sites in the file have the same id, “${id}”.`,
};

/** Headings of the groups of facts, by the first part of their ids, in the order of the form. */
export const factGroups: readonly { title: string; starts: readonly string[]; note?: string }[] = [
  { title: 'The site', starts: ['name', 'units', 'codeBasis', 'altitudeM'] },
  { title: 'Climate', starts: ['climate.'] },
  { title: 'Battery', starts: ['battery.'], note: 'The pack label wins over any other source.' },
  { title: 'Main switch', starts: ['mainSwitch.'] },
  { title: 'Fuse and pack breakers', starts: ['fuse.', 'packBreaker.'] },
  { title: 'Battery cable', starts: ['batteryCable.'] },
  { title: 'Pre-charge resistor', starts: ['precharge.'] },
  { title: 'Inverter', starts: ['inverter.', 'parallelUnits'] },
  { title: 'Second source', starts: ['secondSource.'] },
  {
    title: 'Feeder to the load panel',
    starts: ['outputFeeder.'],
    note: 'From the inverter’s output to the panel. It says what a sound neutral may lose.',
  },
  { title: 'Data link', starts: ['dataLink.'] },
  {
    title: 'Your meter',
    starts: ['meter.'],
    note: 'A reading too near a limit for this meter to tell is called undetermined, never a pass.',
  },
  { title: 'Notes', starts: ['notes'] },
];

/** Everything else on the pages of the sites and in the form. */
export const siteWords = {
  listTitle: 'Sites',
  listLede:
    'A site sheet holds the facts of one install. Every expected reading is worked out from it. It stays on this phone.',
  none: 'No site is kept here yet. Enter yours, or take a demo to try the guides on.',
  current: 'In use',
  use: 'Use this site',
  edit: 'Edit',
  remove: 'Delete',
  exportOne: 'Export',
  removed: (name: string) => `“${name}” is deleted.`,
  undo: 'Undo',
  restored: (name: string) => `“${name}” is back.`,
  inUse: (name: string) => `“${name}” is now in use.`,
  invented: 'Invented figures. Do not work from them.',
  enter: 'Enter a new site',
  demos: 'Demo sites',
  demosLede: 'Two made-up installs, to try the guides on. Their figures belong to no real place.',
  takeDemo: (name: string) => `Take “${name}”`,
  takenDemo: (name: string) => `“${name}” is copied to your sites and in use.`,
  move: 'Move sites to another phone',
  exportAll: 'Export all sites',
  exported: (file: string) => `Saved as ${file}.`,
  importLabel: 'Import a file of sites',
  importHint: 'A .json file exported here. Nothing kept here is overwritten.',
  imported: (added: number, same: number) =>
    `${added} ${added === 1 ? 'site' : 'sites'} added${same > 0 ? `, ${same} already here` : ''}.`,
  unfinished: 'Not finished yet',
  unfinishedLede: 'Kept as it was typed. It counts as a site when it is saved.',
  unnamed: 'Site without a name',
  goOnTyping: 'Go on typing',
  throwAway: 'Throw away',
  importedDraft: (name: string) =>
    `“${name}” was not finished when it was exported. It came in as it was typed, and counts as a site when it is saved.`,
  importRefused: 'The file was refused. Nothing was taken from it.',
  summary: (cells: number, packs: number, watts: string, strings: number) =>
    `${packs} × ${cells}-cell ${packs === 1 ? 'pack' : 'packs'}, ${watts} inverter, ${strings} PV ${strings === 1 ? 'string' : 'strings'}`,
  summaryStrange: 'Kept by another version; it cannot be read here. Export it before you delete it.',
  loading: 'Reading what is kept on this phone…',
  needsScript: 'Sites are kept by a script in this browser. Without scripts, the guides still read as pages.',
  blocked:
    'This browser does not let the page keep anything. Sites will be gone when the page closes. Export what you enter.',
  full: 'The phone’s storage is full. What you see is not kept. Export it now, then free some space.',
  newTitle: 'New site',
  editTitle: (name: string) => `Edit ${name}`,
  formLede:
    'A bare number is taken in the unit of its label. You may type another unit after it. Comma or point, both work.',
  jump: 'Jump to',
  dontKnow: 'I don’t know',
  yes: 'Yes',
  no: 'No',
  readAs: (shown: string) => `Read as ${shown}`,
  save: 'Save the site',
  saveHere: 'Save',
  discard: 'Throw away changes',
  discardSure: 'Throw away everything typed since the last save?',
  discardYes: 'Yes, throw it away',
  keepTyping: 'Keep typing',
  saved: 'Saved. This site is in use.',
  toList: 'All sites',
  draftBack: 'What you typed before is still here. It is not saved yet.',
  draftKept: 'Kept as you type, not saved yet.',
  exportDraft: 'Export what is typed',
  notFound: 'That site is not kept on this phone.',
  errorTitle: (count: number) =>
    count === 1 ? 'One entry needs a change' : `${count} entries need a change`,
  errorPrefix: 'Error: ',
  warningTitle: 'Saved, but look at this',
  tracker: (at: number) => `Tracker ${at}`,
  string: (at: number) => `PV string ${at}`,
  addTracker: 'Add a tracker',
  addString: 'Add a PV string',
  dropTracker: (at: number) => `Remove tracker ${at}`,
  dropString: (at: number) => `Remove PV string ${at}`,
  trackersTitle: 'Trackers',
  trackersNote: 'The inputs of the inverter or charge controller that take PV.',
  stringsTitle: 'PV strings',
  stringsNote: 'Each string lands on one tracker.',
  needFactsTitle: 'The site sheet does not know this yet',
  listMissing: (list: string) =>
    `No ${list === 'trackers' ? 'tracker' : 'PV string'} is entered on the site sheet. Enter it there first.`,
  openSheet: 'Open the site sheet',
  stillUnknown: 'If you cannot find it out, leave this page and choose “I can’t do this” at the step.',
} as const;
