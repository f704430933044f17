import type { WorksheetWords } from '../worksheet-words.ts';
import { dcPath } from './worksheets/dc-path.ts';
import { idleDraw } from './worksheets/idle-draw.ts';
import { insulationPosition } from './worksheets/insulation-position.ts';
import { preCharge } from './worksheets/pre-charge.ts';
import { stringWindow } from './worksheets/string-window.ts';

/** The words of every worksheet, by its id. */
export const worksheetWords: Readonly<Record<string, WorksheetWords>> = {
  'string-window': stringWindow,
  'insulation-position': insulationPosition,
  'pre-charge': preCharge,
  'idle-draw': idleDraw,
  'dc-path': dcPath,
};

/** Words that stand on every worksheet's page. */
export const worksheetPage = {
  title: 'Worksheets',
  lede: 'Arithmetic for this trade, with the working shown and the source named. Figures are filled from your site; change any of them.',
  groups: { pv: 'PV strings', 'battery-dc': 'Battery and DC', ac: 'AC' },
  numbers: 'Numbers',
  result: 'Result',
  remarks: 'What it means here',
  working: 'Working',
  workingColumns: { what: 'Step', formula: 'Formula', numbers: 'With these numbers', result: 'Gives' },
  sources: 'Sources',
  hows: {
    read: 'read',
    'from memory': 'from memory: confirm it before you rely on it',
    'common practice': 'common practice',
  },
  leavesOut: 'What it leaves out',
  limits: 'Limits of the numbers',
  explained: 'How to use it',
  noScript: 'Without a script this page cannot calculate. The formulas and their limits stand below.',
  range: (low: string, high: string): string => `Between ${low} and ${high}.`,
  optional: 'may be empty',
  from: {
    site: (name: string): string => `Filled from ${name}.`,
    none: 'No site is chosen, so nothing is filled in.',
    link: 'Filled from the link.',
    again: 'Fill from the site again',
    pick: 'String',
  },
  units: { label: 'Units', us: 'US', metric: 'Metric' },
  readAs: (shown: string): string => `Read as ${shown}`,
  sign: 'Change the sign',
  timed: { at: 'Time', add: 'Add a reading', remove: 'Remove', row: (at: number): string => `Reading ${at}` },
  copyLink: 'Copy a link with these numbers',
  copied: 'Link copied.',
  copyFailed: 'The browser did not let the link be copied. It stands in the address bar.',
  print: 'Print',
  waiting: (labels: string): string => `Fill in to see a result: ${labels}.`,
  fix: 'No result until this is put right:',
  noResult: 'No result',
  plotTable: 'The curve in words',
  input: {
    missing: 'Nothing is typed.',
    notAnOption: 'Choose one of the answers.',
    notReadings: 'A reading is not complete: type a time and the volts, or remove the row.',
    notANumber: 'That is not a number.',
    notWhole: 'Count whole ones.',
    tooSmall: 'Too small.',
    tooLarge: 'Too large.',
  },
} as const;
