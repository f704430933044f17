import { deedText } from './deeds.ts';
import { deviceNames } from './devices.ts';
import { pairingWords } from './run-pairing.ts';
import { factLabel } from './site.ts';
import { steps } from './steps.ts';
import { triedText } from './tried.ts';
import { zoneName } from './zones.ts';

type Params = Readonly<Record<string, string | number>>;

const bandOf = ({ min, max }: Params): string => {
  if (min !== '' && max !== '') return ` Expected ${min} to ${max}.`;
  if (min !== '') return ` Expected ${min} or more.`;
  return max === '' ? '' : ` Expected at most ${max}.`;
};
const judgedAs = ({ outcome, between }: Params): string =>
  between === ''
    ? zoneName(String(outcome))
    : `${zoneName(String(outcome))}, between ${String(between).split(' ').map(zoneName).join(' and ')}`;

const say = (title: string | number | undefined, answer: string) =>
  answer === '' ? `${title}.` : `${title}: ${answer}.`;
const outcomeText = ({ answer, outcome }: Params): string =>
  answer !== '' && answer !== undefined
    ? String(answer)
    : ((steps.always as Readonly<Record<string, string>>)[String(outcome)] ?? zoneName(String(outcome)));

/** Lines of a visit's record, by message id. */
export const visitMessages: Readonly<Record<string, (params: Params) => string>> = {
  'visit.log.begin': ({ guide, site, subject }) =>
    `Began “${guide}” at ${site}${subject === '' ? '' : `, string ${subject}`}.`,
  'visit.log.answer': (params) => say(params.title, outcomeText(params)),
  'visit.log.by.sheet': (params) => `${say(params.title, outcomeText(params))} From the site sheet.`,
  'visit.log.by.worksheet': (params) => `${say(params.title, outcomeText(params))} Worked out.`,
  'visit.log.reading': (params) =>
    `${params.label}: typed “${params.typed}”, read as ${params.value} ± ${params.u}: ${judgedAs(params)}.${bandOf(params)}${
      params.points ? ` The last of ${params.points} timed values.` : ''
    }`,
  'visit.log.overRange': (params) =>
    `${params.label}: typed “${params.typed}”, over the meter’s range: ${judgedAs(params)}.${bandOf(params)}`,
  'visit.log.pair': ({ inverter, pack }) => `Pair to try: inverter “${inverter}”, pack “${pack}”.`,
  'visit.log.pairTried': ({ inverter, pack, waitedS }) =>
    `Pair tried: inverter “${inverter}”, pack “${pack}”, given ${pairingWords.waitedFor(Number(waitedS))}.`,
  'visit.log.confirmed': ({ title, item }) => `${title}. Confirmed: ${item}`,
  'visit.log.unconfirmed': ({ title, item }) => `${title}. No longer confirmed: ${item}`,
  'visit.log.facts': () => 'Site sheet changed.',
  'visit.log.fact': ({ fact, from, to }) =>
    `${factLabel(String(fact))}: ${from === '' ? 'not known' : from} before, ${to === '' ? 'not known' : to} now.`,
  'visit.log.correct': ({ title }) => `Back to “${title}”. What was done since stays done.`,
  'visit.log.undo': ({ title }) => `“I did not do that”: ${title}. Every proof is void.`,
  'visit.log.expiry.age': () => 'A proof was 15 minutes old. Every proof is void.',
  'visit.log.expiry.clock': () => 'The phone’s clock was set back. Every proof is void.',
  'visit.log.expiry.person': () => 'Away from the plant, or someone else was at it. Every proof is void.',
  'visit.log.changed': ({ version }) => `The guide had changed. Went on by version ${version}.`,
  'visit.log.note': ({ text }) => `Note: ${text}`,
  'visit.log.closed': ({ result, leaves }) =>
    `Closed. ${steps.results[String(result)]}. ${steps.leaves[String(leaves)]}`,

  'visit.log.retest.cured': () => 'Re-test passed.',
  'visit.log.retest.failed': () => 'Re-test failed: what was tried did not cure.',
  'visit.log.ruledOut': ({ cause, by }) => `Ruled out: ${cause}, by ${by}.`,
  'visit.log.tried': ({ title, retest, closed }) => triedText(String(title), String(retest), String(closed)),

  'visit.log.deed': ({ verb, of }) => deedText({ [String(verb)]: of }),

  'visit.file.tooLong': ({ longest }) =>
    `The file is too big. A file of visits has at most ${longest} million characters.`,
  'visit.file.unreadable': () => 'The file could not be read from the phone. Try again.',
  'visit.file.notJson': () => 'The file is not JSON, or it is damaged. Choose a file that was exported here.',
  'visit.file.poisoned': () =>
    'The file holds names that could change how this program works. It is refused whole.',
  'visit.file.notVisits': () =>
    'This is JSON, but not a file of visits. Choose a file that was exported on the Visits page.',
  'visit.file.newer': ({ version, known }) =>
    `The file is of version ${version}; this program knows version ${known}. Open it with a newer Faultwright.`,
  'visit.file.badVersion': () =>
    'The file does not say a version that exists. It is damaged or was made by hand.',
  'visit.file.empty': () => 'The file holds no visit.',
  'visit.file.tooMany': ({ most }) => `The file holds too many visits. The most is ${most}.`,
  'visit.file.idTwice': ({ id }) => `Two visits in the file have the same id, “${id}”.`,
  'visit.file.emptyVisit': ({ visit }) => `Visit ${visit} of the file holds no entries.`,
  'visit.file.tooLongVisit': ({ visit, most }) =>
    `Visit ${visit} of the file is too long. The most is ${most} entries.`,
  'visit.file.badLine': ({ visit, line, field }) =>
    `Visit ${visit}, entry ${line}: ${field === '' ? 'this' : `“${field}”`} is not what a visit has there.`,
  'visit.file.gap': ({ visit, line }) =>
    `Visit ${visit}, entry ${line}: an entry before it is missing or moved. The record is not whole.`,
  'visit.file.badBegin': ({ visit, line }) =>
    `Visit ${visit}, entry ${line}: a visit begins once, with its first entry.`,
  'visit.file.mixed': ({ visit, line }) => `Visit ${visit}, entry ${line}: it belongs to another visit.`,
  'visit.file.backInTime': ({ visit, line }) =>
    `Visit ${visit}, entry ${line}: it is older than the entry before it.`,
  'visit.file.afterEnd': ({ visit, line }) =>
    `Visit ${visit}, entry ${line}: the visit was closed before it.`,
};

/** Words of the pages of visits. */
export const visitWords = {
  title: 'Visits',
  lede: 'Every run is kept on this phone as a visit: what was asked, typed, judged and done. Nothing leaves the phone unless you export it.',
  none: 'No visit yet. A guide or a procedure starts one.',
  open: 'Open',
  openHeading: 'Open visits',
  closedHeading: 'Closed visits',
  resume: 'Go on',
  record: 'Read the record',
  exportAll: 'Export all visits',
  exportOne: 'Export this visit',
  importLabel: 'Bring in a file of visits',
  importHint: 'A file that was exported here, on this phone or another one.',
  print: 'Print',
  noteLabel: 'Add a note',
  noteSave: 'Keep the note',
  noteKept: 'Note kept.',
  back: 'All visits',
  recordTitle: 'Record of the visit',
  noSuch: 'There is no such visit on this phone.',
  blocked:
    'This browser keeps nothing for this site, so no visit can be listed. In a private window, open an ordinary one.',
  unreadable: 'The visits cannot be read right now. Close other tabs of this site and try again.',
  takenBack: 'Taken back later.',
  site: 'Site',
  guide: 'Guide',
  begun: 'Begun',
  changed: 'Last entry',
  string: 'String',
  result: 'Result',
  found: 'Found',
  stillOpen: 'Still open',
  stillOpenDevices: (devices: readonly string[]) =>
    `Left open: ${devices.map((each) => deviceNames[each] ?? each).join('; ')}.`,
  standsAt: (title: string) => `Stands at: ${title}`,
  entries: (count: number) => (count === 1 ? '1 entry' : `${count} entries`),
  imported: (fresh: number, longer: number, had: number, parted: number) =>
    [
      fresh > 0 ? `${fresh} brought in.` : '',
      longer > 0 ? `${longer} brought up to date.` : '',
      had > 0 ? `${had} were here already.` : '',
      parted > 0
        ? `${parted} differed from the one kept here, so both are kept: the one brought in stands as a visit of its own.`
        : '',
    ]
      .filter(Boolean)
      .join(' '),
  notKept: 'The phone refused to keep them: it is full, or storage is blocked. Nothing was changed.',
} as const;
