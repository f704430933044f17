import { sallowCreek } from '../../../src/site/demo.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import {
  ampsAt,
  circulatingA,
  iscA,
  noon,
  polesToGround,
  type Sun,
  stringV,
  vocV,
  workingPoint,
} from './module.ts';
import { isolate, openString, openStringRefused, restore, stringCheck } from './procedures.ts';

/** One visit: the site as its sheet has it, what was answered, and what a good fault-finder comes to. */
export interface PvCase {
  id: string;
  sheet: SiteSheet;
  answers: Record<string, unknown>;
  causes: readonly string[] | null;
  end: string;
  leaves: string;
}

const modules = 8;
const v = (volts: number) => volts.toFixed(1);
const a = (amps: number) => amps.toFixed(2);

const whole = modules * vocV(noon);
const work = workingPoint(modules, noon);
const working = { volts: v(work.volts), watts: work.watts.toFixed(0) };
/** A meter with a 10 MΩ input. */
const meterOhm = 1e7;
/** A good array: all its leakage together. */
const soundOhm = 4e7;

const string = sallowCreek.strings[0]!;
const tracker = sallowCreek.trackers[0]!;

/** The demo site with its first string or first tracker changed. */
function site(
  change: { string?: Partial<typeof string>; tracker?: Partial<typeof tracker> } = {},
): SiteSheet {
  const [, ...otherStrings] = sallowCreek.strings;
  const [, ...otherTrackers] = sallowCreek.trackers;
  return {
    ...sallowCreek,
    strings: [{ ...string, ...change.string }, ...otherStrings],
    trackers: [{ ...tracker, ...change.tracker }, ...otherTrackers],
  };
}

const arrive = {
  'first-look': 'quiet',
  'someone-knows': 'done',
  events: 'none',
  symptom: 'volts-no-watts',
  light: 'bright',
};
/** Battery asks for charge, a load moves nothing, settings are right. */
const notHeldBack = {
  screen: v(whole),
  'battery-screen': '52.6',
  'charge-permit': '150',
  'load-before': '0',
  'load-on': 'done',
  'load-after': '0',
  settings: 'all-right',
};
/** Handle on; no current, cells at 45 °C. */
const still = { 'isolator-handle': 'on', 'ready-string': 'done', 'clamp-string': '0.03', 'cell-temp': '45 °C' };
/** Nothing on the screen: straight to the string. */
const noVolts = { ...arrive, symptom: 'no-volts', screen: '0', ...still };
/** Whole string at the isolator. */
const wholeStill = { ...arrive, ...notHeldBack, ...still, 'volts-still': { p2: v(whole), p1: v(whole) } };
/** The tracker makes no try. */
const noTry = { ...wholeStill, 'start-watch': { volts: v(whole - 1), amps: '0.02' } };
/** On to the open isolator, right way round. */
const opened = { ...noTry, terminals: v(whole), ...openString, 'p1-open': v(whole), 'poles-both': 'both' };
const poles = (k: number, leakOhm: number) => {
  const { plus, minus } = polesToGround(modules, k, leakOhm, meterOhm, noon);
  return { voc: v(whole), plus: v(plus), minus: v(minus) };
};
const soundPoles = poles(4, soundOhm);
/** Ground point and ground bar are joined: a 52.8 V source reads right through both. */
const contact = { between: '0.0', source: '52.8' };
/** An insulation alarm: hands off the frame, the string opened at no current, poles next. */
const alarm = {
  ...arrive,
  events: 'insulation',
  'alarm-ready': 'done',
  ...openString,
  'p1-open': v(whole),
  'poles-both': 'both',
};
/** Plugs parted at no current, the run proved dead, mended, joined, tested, back. */
const mended = {
  ...isolate,
  'which-work': 'string',
  'plug-clamp': '0.01',
  'roof-people': 'done',
  'part-plugs': 'done',
  'tester-before': { dc: '52.8', ac: '120.0' },
  'run-dead': { pair: '0.0', plus: '0.0', minus: '0.0', 'pair-ac': '0.0' },
  'tester-after': { dc: '52.8', ac: '120.0' },
  'mend-ready': 'done',
  mend: 'done',
  'join-ready': 'done',
  'join-plugs': 'done',
  'frame-volts': { dc: '0.1', ac: '0.2' },
  'cell-again': '45 °C',
  'retest-ground': soundPoles,
  'retest-contact': contact,
  ...restore(v(whole)),
  'which-retest': 'repair',
  'retest-start': working,
};

/** A string that stands reversed across a closed input: its own short-circuit current, held down by diodes. */
const reversedFlowing = {
  ...arrive,
  symptom: 'no-volts',
  screen: '0',
  'isolator-handle': 'on',
  'ready-string': 'done',
  'clamp-string': a(-iscA(noon)),
  flowing: { volts: '-1.2', amps: a(-iscA(noon)) },
};
const openedInDark = { 'dark-clamp': '0.02', ...openString, 'light-again': 'light-now' };

/** A joint of 60 Ω: the tracker pulls down to the bottom of its window. */
const jointOhm = 60;
const pulled = {
  volts: v(tracker.trackMinV),
  amps: a(ampsAt(tracker.trackMinV, modules, noon, jointOhm)),
};
/** A joint of 6 Ω at 9 A. */
const dragged = { volts: v(stringV(modules, 9.6, noon, 6)), amps: '9.60' };

const cool: Sun = { light: 950, cellC: 10 };
const dawn: Sun = { light: 60, cellC: -5 };

export const pvCases: readonly PvCase[] = [
  {
    id: 'healthy-working',
    sheet: site(),
    answers: { ...arrive, symptom: 'working-now', 'running-now': working, 'v-runs': 'explained' },
    causes: ['nothing-wrong'],
    end: 'healthy',
    leaves: 'untouched',
  },
  {
    id: 'healthy-the-long-way',
    sheet: site(),
    answers: {
      ...wholeStill,
      'start-watch': { volts: v(work.volts), amps: a(work.amps) },
      'v-runs': 'explained',
    },
    causes: ['nothing-wrong'],
    end: 'healthy',
    leaves: 'untouched',
  },
  {
    id: 'dawn-light-condemns-nothing',
    sheet: site(),
    answers: {
      ...wholeStill,
      light: 'weak',
      'cell-temp': '-5 °C',
      screen: v(modules * vocV(dawn)),
      'volts-still': { p2: v(modules * vocV(dawn)), p1: v(modules * vocV(dawn)) },
      'start-watch': { volts: '125.0', amps: a(ampsAt(125, modules, dawn)) },
    },
    causes: null,
    end: 'unresolved',
    leaves: 'untouched',
  },
  {
    id: 'held-back-full',
    sheet: site(),
    answers: {
      ...arrive,
      ...notHeldBack,
      'battery-screen': '55.1',
      'load-before': '0',
      'load-after': '1090',
      'v-follows': 'explained',
    },
    causes: ['held-back'],
    end: 'healthy',
    leaves: 'untouched',
  },
  {
    id: 'held-back-cold-cells',
    sheet: site(),
    answers: {
      ...arrive,
      ...notHeldBack,
      'charge-permit': '0',
      cells: { coldest: '-2 °C', hottest: '1 °C', highest: '3.34' },
      'v-held-cold': 'explained',
    },
    causes: ['held-back'],
    end: 'healthy',
    leaves: 'untouched',
  },
  {
    id: 'held-back-by-limit',
    sheet: site(),
    answers: {
      ...arrive,
      ...notHeldBack,
      'charge-permit': '0',
      cells: { coldest: '18 °C', hottest: '20 °C', highest: '3.34' },
      'v-held-limit': 'refer',
    },
    causes: ['held-back'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'start-disabled-by-schedule',
    sheet: site(),
    answers: {
      ...arrive,
      ...notHeldBack,
      settings: 'pv-not-used',
      'v-setting': 'set-it',
      'change-setting': 'done',
      'retest-setting': working.watts,
    },
    causes: ['start-disabled-by-setting'],
    end: 'fixed',
    leaves: 'untouched',
  },
  {
    id: 'start-needs-link',
    sheet: site(),
    answers: {
      ...arrive,
      ...notHeldBack,
      events: 'battery-link',
      settings: 'link-required',
      'v-link-required': 'refer',
    },
    causes: ['start-disabled-by-setting'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'tracker-mode-wrong',
    sheet: site(),
    answers: {
      ...arrive,
      ...notHeldBack,
      settings: 'mode-wrong',
      'v-input-mode': 'set-it',
      'mode-ready': 'done',
      'change-setting': 'done',
      'retest-setting': working.watts,
    },
    causes: ['wrong-tracker-input'],
    end: 'fixed',
    leaves: 'untouched',
  },
  {
    id: 'battery-not-live',
    sheet: site(),
    answers: {
      ...arrive,
      symptom: 'unit-dark',
      'ready-battery': 'done',
      'battery-at-inverter': '0.4',
      'v-battery-not-live': 'put-right',
      ...isolate,
      'which-work': 'battery',
      'battery-found': 'awake',
      ...restore(v(whole)),
      'which-retest': 'repair',
      'retest-start': working,
    },
    causes: ['battery-not-live'],
    end: 'fixed',
    leaves: 'restored',
  },
  {
    id: 'isolator-off',
    sheet: site(),
    answers: {
      ...noVolts,
      'isolator-handle': 'off',
      'v-isolator-off': 'close-it',
      ...openString,
      ...stringCheck(v(whole), working),
      'retest-start': working,
    },
    causes: ['isolator-open'],
    end: 'fixed',
    leaves: 'restored',
  },
  {
    id: 'isolator-pole-open',
    sheet: site(),
    answers: {
      ...noVolts,
      'volts-still': { p2: '1.8', p1: v(whole) },
      'isolator-handle': 'on',
      'across-poles': { plus: '0.1', minus: v(whole * 0.98) },
      'v-pole-open': 'refer',
    },
    causes: ['isolator-open'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'isolator-replaced',
    sheet: site(),
    answers: {
      ...noVolts,
      'volts-still': { p2: '1.8', p1: v(whole) },
      'isolator-handle': 'on',
      'across-poles': { plus: '104.0', minus: '96.0' },
      'v-pole-open': 'mend',
      ...openString,
      'repair-or-leave': 'mend',
      ...mended,
      'which-work': 'landing',
      'landing-ready': 'done',
      'land-again': 'done',
      'array-side-too': 'yes',
    },
    causes: ['isolator-open'],
    end: 'fixed',
    leaves: 'restored',
  },
  {
    id: 'isolator-ghost-at-p2',
    sheet: site(),
    answers: {
      ...noVolts,
      screen: '24',
      'isolator-handle': 'off',
      'v-isolator-off': 'leave-it',
    },
    causes: ['isolator-open'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'module-shutdown-holding',
    sheet: site({ string: { shutdownDevices: true } }),
    answers: {
      ...noVolts,
      'shutdown-button': 'on',
      'volts-still': { p2: v(modules * 0.9), p1: v(modules * 0.9) },
      'shutdown-look': 'no-signal',
      'v-shutdown': 'signal-back',
      'retest-start': working,
    },
    causes: ['module-shutdown-holding'],
    end: 'fixed',
    leaves: 'untouched',
  },
  {
    id: 'module-shutdown-lets-nothing-through',
    sheet: site({ string: { shutdownDevices: true } }),
    answers: {
      ...noVolts,
      'shutdown-button': 'off',
      'v-shutdown-pressed': 'signal-back',
      'retest-start': working,
    },
    causes: ['module-shutdown-holding'],
    end: 'fixed',
    leaves: 'untouched',
  },
  {
    id: 'leads-on-two-isolators',
    sheet: site(),
    answers: {
      ...noVolts,
      screen: '0',
      // Ghost between crossed leads: Voc shared by the meter and 20 MΩ of array leakage.
      'volts-still': { p2: v((whole * 1e7) / 3e7), p1: v((whole * 1e7) / 3e7) },
      'p1-low-z': '1.2',
      'clamp-again': '0.00',
      'cross-strings': { across: v(whole), back: v(whole) },
      'v-crossed-strings': 'refer',
    },
    causes: ['wrong-tracker-input'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'string-fuse-open',
    sheet: site(),
    answers: {
      ...noVolts,
      'volts-still': { p2: '0.1', p1: '0.2' },
      'clamp-again': '0.00',
      'cross-strings': { across: '0.4', back: '0.6' },
      'fuse-fitted': 'fitted',
      'across-fuse': v(whole * 0.99),
      'v-fuse-open': 'refer',
    },
    causes: ['string-fuse-open'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'string-open-circuit',
    sheet: site(),
    answers: {
      ...noVolts,
      'volts-still': { p2: '0.0', p1: '0.1' },
      'clamp-again': '0.01',
      'cross-strings': { across: '0.4', back: '0.6' },
      'fuse-fitted': 'none',
      'array-clamp': '0.02',
      'v-open-circuit': 'refer',
    },
    causes: ['string-open-circuit'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'string-shorted-on-its-way',
    sheet: site(),
    answers: {
      ...noVolts,
      'volts-still': { p2: '0.0', p1: '0.0' },
      'clamp-again': '0.00',
      'cross-strings': { across: '0.4', back: '0.6' },
      'fuse-fitted': 'none',
      'array-clamp': a(iscA(noon)),
      'v-shorted-run': 'guard',
    },
    causes: ['string-shorted'],
    end: 'leftGuarded',
    leaves: 'guarded',
  },
  {
    id: 'open-or-shorted-not-told-apart',
    sheet: site(),
    answers: {
      ...noVolts,
      'volts-still': { p2: '0.0', p1: '0.0' },
      'clamp-again': '0.00',
      'cross-strings': { across: '0.4', back: '0.6' },
      'fuse-fitted': 'none',
      'array-clamp': 'cant',
      'v-open-or-shorted': 'guard',
    },
    causes: ['string-open-circuit', 'string-fuse-open', 'string-shorted'],
    end: 'leftGuarded',
    leaves: 'guarded',
  },
  {
    id: 'string-reversed-blocked',
    sheet: site(),
    answers: {
      ...noVolts,
      'volts-still': { p2: v(-whole), p1: v(-whole) },
      ...openString,
      'p1-open': v(-whole),
      'v-reversed': 'leave',
    },
    causes: ['string-reversed'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'string-reversed-flowing',
    sheet: site(),
    answers: { ...reversedFlowing, 'v-reversed-or-shorted': 'guard' },
    causes: ['string-reversed', 'string-shorted'],
    end: 'leftGuarded',
    leaves: 'guarded',
  },
  {
    id: 'string-reversed-opened-in-the-dark',
    sheet: site(),
    answers: {
      ...reversedFlowing,
      'v-reversed-or-shorted': 'dark-now',
      ...openedInDark,
      'p1-after-dark': v(-whole),
      'v-reversed-dark': 'mend',
      ...mended,
    },
    causes: ['string-reversed'],
    end: 'fixed',
    leaves: 'restored',
  },
  {
    id: 'input-shorted',
    sheet: site(),
    answers: {
      ...reversedFlowing,
      'clamp-string': a(iscA(noon)),
      flowing: { volts: '0.6', amps: a(iscA(noon)) },
      'v-reversed-or-shorted': 'dark-now',
      ...openedInDark,
      'p1-after-dark': v(whole),
      'v-shorted-beyond': 'leave',
    },
    causes: ['string-shorted'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'string-too-short',
    sheet: site({ tracker: { startV: 330, trackMinV: 250 } }),
    answers: {
      ...arrive,
      'short-history': 'heat-or-never',
      ...still,
      'volts-still': { p2: v(whole), p1: v(whole) },
      'v-too-short': 'plan',
    },
    causes: ['string-too-short'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'string-too-short-when-hot',
    sheet: site({ tracker: { startV: 310, trackMinV: 200 } }),
    answers: {
      ...arrive,
      'short-history': 'heat-or-never',
      ...still,
      'cell-temp': '10 °C',
      'volts-still': { p2: v(modules * vocV(cool)), p1: v(modules * vocV(cool)) },
      'when-it-fails': 'hot-only',
      'v-too-short-hot': 'plan',
    },
    causes: ['string-too-short'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'string-shorter-than-the-sheet',
    sheet: site({ tracker: { startV: 180 } }),
    answers: {
      ...arrive,
      ...notHeldBack,
      screen: v(4 * vocV(noon)),
      ...still,
      'volts-still': { p2: v(4 * vocV(noon)), p1: v(4 * vocV(noon)) },
      'p1-low-z': v(4 * vocV(noon)),
      'module-count': 'fewer',
      'v-too-short-built': 'plan',
    },
    causes: ['string-too-short'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'modules-bypassed',
    sheet: site({ tracker: { startV: 180 } }),
    answers: {
      ...arrive,
      screen: v(4 * vocV(noon)),
      ...still,
      'volts-still': { p2: v(4 * vocV(noon)), p1: v(4 * vocV(noon)) },
      'p1-low-z': v(4 * vocV(noon)),
      'module-count': 'as-sheet',
      'v-module-bypassed': 'plan',
    },
    causes: ['module-bypassed'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'string-too-long',
    sheet: site({ string: { modulesInSeries: 11 } }),
    answers: { ...arrive, 'v-too-long': 'open-it', ...openString, 'repair-or-leave': 'leave' },
    causes: ['string-too-long'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'string-longer-than-the-sheet',
    sheet: site(),
    answers: {
      ...wholeStill,
      screen: v(12 * vocV(noon)),
      'volts-still': { p2: v(12 * vocV(noon)), p1: v(12 * vocV(noon)) },
      'v-too-long-built': 'open-it',
      ...openString,
      'repair-or-leave': 'leave',
    },
    causes: ['string-too-long'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'over-the-maximum-now',
    sheet: site(),
    answers: {
      ...arrive,
      screen: '512',
      'v-over-now': 'open-it',
      ...openString,
      'repair-or-leave': 'leave',
    },
    causes: ['string-too-long'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'high-resistance-joint',
    sheet: site(),
    answers: {
      ...wholeStill,
      symptom: 'drops-out',
      'start-watch': pulled,
      sister: 'normal',
      'full-sun': pulled,
      'v-joint': 'open-it',
      ...openString,
      'repair-or-leave': 'mend',
      ...mended,
    },
    causes: ['high-resistance-joint'],
    end: 'fixed',
    leaves: 'restored',
  },
  {
    id: 'joint-or-bypassed',
    sheet: site(),
    answers: {
      ...wholeStill,
      symptom: 'drops-out',
      'start-watch': dragged,
      sister: 'normal',
      'full-sun': dragged,
      'v-joint-or-bypassed': 'open-it',
      ...openString,
      'repair-or-leave': 'leave',
    },
    causes: ['high-resistance-joint', 'module-bypassed'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'insulation-fault-between',
    sheet: site(),
    answers: {
      ...alarm,
      'pole-ground': poles(3, 20_000),
      'v-insulation': 'mend',
      ...mended,
    },
    causes: ['insulation-fault'],
    end: 'fixed',
    leaves: 'restored',
  },
  {
    id: 'insulation-fault-in-the-plus-lead',
    sheet: site(),
    answers: {
      ...opened,
      'pole-ground': poles(0, 5000),
      'bond-look': 'neither',
      'v-insulation-at-end': 'leave',
    },
    causes: ['insulation-fault'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'pole-grounded',
    sheet: site(),
    answers: {
      ...opened,
      'pole-ground': poles(modules, 0.1),
      'bond-look': 'bond',
      'v-pole-grounded': 'leave',
    },
    causes: ['pole-grounded-or-shared'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'insulation-by-array-tester',
    sheet: site(),
    answers: {
      ...opened,
      'pole-ground': poles(4, 980_000),
      'tester-ready': 'done',
      'array-test': '0.62 MΩ',
      'v-insulation-tested': 'leave',
    },
    causes: ['insulation-fault'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'insulation-fault-when-wet',
    sheet: site(),
    answers: {
      ...alarm,
      'pole-ground': soundPoles,
      'ground-contact': contact,
      'wet-history': 'wet-alarm',
      'v-insulation-wet': 'leave',
    },
    causes: ['insulation-fault'],
    end: 'referred',
    leaves: 'isolated',
  },
  {
    id: 'wrong-tracker-input',
    sheet: site(),
    answers: {
      ...noTry,
      terminals: '3.1',
      'minus-common': 'separate',
      'cross-terminals': { across: v(whole), back: '0.8' },
      'v-wrong-input': 'mend',
      ...isolate,
      'which-work': 'landing',
      'landing-ready': 'done',
      'land-again': 'done',
      'array-side-too': 'no',
      ...restore(v(whole)),
      'which-retest': 'repair',
      'retest-start': working,
    },
    causes: ['wrong-tracker-input'],
    end: 'fixed',
    leaves: 'restored',
  },
  {
    id: 'lead-open-at-the-unit',
    sheet: site(),
    answers: {
      ...noTry,
      terminals: '0.4',
      'minus-common': 'separate',
      'cross-terminals': { across: '0.6', back: '0.3' },
      'v-run-open': 'refer',
    },
    causes: ['string-open-circuit', 'wrong-tracker-input'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'crossed-at-the-unit',
    sheet: site(),
    answers: { ...noTry, terminals: v(-whole), 'v-crossed-at-unit': 'refer' },
    causes: ['string-reversed'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'arc-lockout-cleared-once',
    sheet: site(),
    answers: {
      ...arrive,
      screen: v(whole),
      events: 'arc-latched',
      inspect: 'nothing',
      'v-lockout': 'clear',
      'clear-once': 'done',
      'watch-clear': working.watts,
    },
    causes: ['lockout-latched'],
    end: 'referred',
    leaves: 'untouched',
  },
  {
    id: 'arc-lockout-comes-back',
    sheet: site(),
    answers: {
      ...arrive,
      screen: v(whole),
      events: 'arc-latched',
      inspect: 'nothing',
      'v-lockout': 'clear',
      'clear-once': 'done',
      'watch-clear': '0',
      ...openString,
    },
    causes: ['lockout-latched'],
    end: 'unresolved',
    leaves: 'isolated',
  },
  {
    id: 'arc-was-real',
    sheet: site(),
    answers: {
      ...arrive,
      screen: v(whole),
      events: 'arc-latched',
      inspect: 'damage',
      'v-arc-damage': 'open-it',
      ...openString,
      'repair-or-leave': 'leave',
    },
    causes: ['high-resistance-joint'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'ground-lockout-left-over',
    sheet: site(),
    answers: {
      ...alarm,
      events: 'ground-latched',
      'pole-ground': soundPoles,
      'ground-contact': contact,
      'wet-history': 'latched',
      'inspect-open': 'nothing',
      'v-lockout-open': 'clear',
      'clear-open': 'done',
      ...stringCheck(v(whole), working),
    },
    causes: ['lockout-latched'],
    end: 'referred',
    leaves: 'restored',
  },
  {
    id: 'unequal-strings',
    sheet: site({ string: { parallel: 2 } }),
    answers: {
      ...opened,
      'pole-ground': soundPoles,
      'ground-contact': contact,
      'wet-history': 'neither',
      'parallel-clamp': a(-circulatingA(8, 7, noon)),
      'v-unequal': 'leave',
    },
    causes: ['unequal-strings'],
    end: 'leftIsolated',
    leaves: 'isolated',
  },
  {
    id: 'tracker-input-failed',
    sheet: site(),
    answers: {
      ...opened,
      'pole-ground': soundPoles,
      'ground-contact': contact,
      'wet-history': 'neither',
      ...isolate,
      'which-work': 'swap',
      'landing-ready': 'done',
      'land-again': 'done',
      'array-side-too': 'no',
      ...restore(v(whole)),
      'which-retest': 'swap',
      'swap-light': 'bright',
      'swap-result': { here: '0', there: working.watts },
      'v-tracker-failed': 'refer',
    },
    causes: ['tracker-input-failed'],
    end: 'referred',
    leaves: 'restored',
  },
  {
    id: 'current-will-not-stop',
    sheet: site(),
    answers: {
      ...wholeStill,
      'start-watch': pulled,
      sister: 'normal',
      'full-sun': pulled,
      'v-joint': 'open-it',
      ...openStringRefused,
    },
    causes: ['high-resistance-joint'],
    end: 'leftGuarded',
    leaves: 'guarded',
  },
];
