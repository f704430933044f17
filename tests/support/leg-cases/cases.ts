import { sallowCreek, ternLedge } from '../../../src/site/demo.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import { isolate, restore } from '../pv-cases/procedures.ts';
import { backFed, open, type Plant, type Seen, seen } from './network.ts';

/** One visit: what stands at the plant, what was said, and what a good fault-finder comes to. */
export interface LegCase {
  id: string;
  sheet: SiteSheet;
  answers: Record<string, unknown>;
  causes: readonly string[] | null;
  end: string;
  leaves?: string;
}

const wye: SiteSheet = {
  ...sallowCreek,
  id: 'wye',
  inverter: { ...sallowCreek.inverter, topology: 'wye-120-208' },
};
const line: SiteSheet = {
  ...sallowCreek,
  id: 'line',
  inverter: { ...sallowCreek.inverter, topology: 'single-230', frequencyHz: 50, legLimitW: 6000 },
};
const nominals = new Map<SiteSheet, number>([[line, 230]]);
const angles = new Map<SiteSheet, number | undefined>([
  [sallowCreek, 180],
  [ternLedge, 0],
  [wye, 120],
  [line, undefined],
]);

/** 200 ft of 6 AWG at 40 °C by NEC chapter 9 table 8: 0.491 Ω per 1000 ft at 75 °C. */
const longRun = 0.2 * 0.491 * (1 - 0.00323 * 35);
/** 6 m of 6 mm² class 5 at 40 °C by IEC 60228: 3.30 Ω/km at 20 °C. */
const shortRun = 0.006 * 3.3 * (1 + 0.00393 * 20);
const runOf = (sheet: SiteSheet) => (sheet === ternLedge ? shortRun : longRun);

/** The plant of a sheet, sound but for what is changed. */
const plant = (sheet: SiteSheet, change: Partial<Plant> = {}): Plant => ({
  volts: nominals.get(sheet) ?? 120,
  angle: angles.get(sheet),
  sourceOhms: 0.01,
  sourceNeutralOhms: 0,
  hot1Ohms: runOf(sheet) + 0.003,
  hot2Ohms: runOf(sheet) + 0.003,
  neutralOhms: runOf(sheet) + 0.003,
  ...change,
});
const joint = (sheet: SiteSheet, ohms: number) => runOf(sheet) + 0.003 + ohms;

const v = (volts: number) => volts.toFixed(1);
const three = ({ v12, v1, v2 }: Seen['d']) => ({ v12: v(v12), v1: v(v1), v2: v(v2) });

/** Everything that can be asked on the way, read from the plant: the walk takes what it needs. */
function readings(sheet: SiteSheet, p: Plant, house: readonly [number, number] = [900, 700]) {
  const nominal = nominals.get(sheet) ?? 120;
  const none = seen(p, 0, 0, nominal);
  // With the breaker open nothing of the feeder is on the output.
  const alone = seen({ ...p, hot1Ohms: 0, hot2Ohms: 0, neutralOhms: 1e-6 }, 0, 0, nominal);
  const one = seen(p, 1000, 0, nominal);
  const two = seen(p, 0, 1000, nominal);
  const home = seen(p, house[0], house[1], nominal);
  const clamp = (amps: number) => amps.toFixed(2);
  return {
    'panel-legs': three(home.d),
    'panel-line': v(home.d.v1),
    'both-ends': { d1: v(home.d.v1), d2: v(home.d.v2), o1: v(home.o.v1), o2: v(home.o.v2), bus: '51.9' },
    'line-ends': { d1: v(home.d.v1), o1: v(home.o.v1), bus: '51.9' },
    'leg-clamps': { i1: clamp(home.i1), i2: clamp(home.i2) },
    'out-legs': three(alone.o),
    'out-line': v(alone.o.v1),
    'panel-still': three(none.d),
    'panel-loaded': three(one.d),
    'panel-loaded-out': three(one.d),
    'out-moved': { v1: v(one.o.v1), v2: v(one.o.v2), amps: clamp(one.i1) },
    'out-loaded': { v1: v(one.o.v1), v2: v(one.o.v2), amps: clamp(one.i1) },
    'ng-loaded': { ng: one.ng.toFixed(2), neutral: clamp(one.neutral), ground: '0.02' },
    'leg-2-loaded': {
      d1: v(two.d.v1),
      d2: v(two.d.v2),
      o1: v(two.o.v1),
      o2: v(two.o.v2),
      amps: clamp(two.i2),
    },
    'run-drop': (one.i1 * p.hot1Ohms).toFixed(2),
    'run-drop-2': (two.i2 * p.hot2Ohms).toFixed(2),
    'house-legs': three(home.d),
    'house-amps': { i1: clamp(home.i1), i2: clamp(home.i2) },
    'line-still': v(none.d.v1),
    'line-loaded': {
      d1: v(one.d.v1),
      o1: v(one.o.v1),
      ng: one.ng.toFixed(2),
      amps: clamp(one.neutral),
      ground: '0.02',
    },
    'line-loaded-out': {
      d1: v(one.d.v1),
      o1: v(one.o.v1),
      ng: one.ng.toFixed(2),
      amps: clamp(one.neutral),
      ground: '0.02',
    },
    'house-line': v(home.d.v1),
  };
}

/** Holds, handles and questions that every walk may meet. */
const ways = {
  'first-look': 'quiet',
  'someone-knows': 'done',
  'common-scope': 'understood',
  'single-scope': 'understood',
  symptom: 'nothing-now',
  'symptom-one': 'nothing-now',
  'meter-ready': 'done',
  'line-ready': 'done',
  'test-wanted': 'now',
  'loads-away': 'done',
  'breakers-off': 'done',
  'out-ready': 'done',
  'close-ready': 'done',
  'close-out': 'done',
  'test-load-on': 'done',
  'test-load-on-out': 'done',
  'load-moves': 'done',
  'test-load-off': 'done',
  'test-load-off-watch': 'done',
  'loads-ready': 'done',
  'loads-on': 'done',
  'open-again': 'done',
  'open-unresolved': 'done',
  'house-off': 'done',
  'line-close-ready': 'done',
  'line-close': 'done',
  'line-load-on': 'done',
  'line-load-on-out': 'done',
  'line-load-off': 'done',
  'line-loads-ready': 'done',
  'line-loads-on': 'done',
  'set-jumper': 'none-there',
  'set-part': 'done',
  'set-ready': 'done',
  'set-legs': 'done',
};

const verdicts = [
  'v-both-dead',
  'v-neutral-open',
  'v-neutral-at-source',
  'v-output-collapses',
  'v-line-or-neutral',
  'v-leg-open',
  'v-source-gives-way',
  'v-neutral-joint-moved',
  'v-hot-joint-moved',
  'v-both-joints-moved',
  'v-feeder-long-moved',
  'v-neutral-joint',
  'v-hot-joint',
  'v-both-joints',
  'v-hot-joint-run',
  'v-hot-joint-2',
  'v-leg-open-2',
  'v-leg-lost-unit',
  'v-leg-lost-feeder',
  'v-in-phase',
  'v-third',
  'v-out-uneven',
  'v-line-neutral',
  'v-line-hot',
  'v-line-both',
  'v-line-neutral-open',
  'v-line-open',
  'v-line-neutral-moved',
  'v-line-hot-moved',
  'v-shared-neutral',
  'v-not-grounded',
];
const leave = Object.fromEntries(verdicts.map((id) => [id, 'leave']));
const explain = Object.fromEntries(
  [
    'v-healthy',
    'v-line-healthy',
    'v-feeder-long',
    'v-line-long',
    'v-source-sags',
    'v-start-sag',
    'v-start-dip',
    'v-line-dip',
    'v-line-source',
    'v-search-mode',
    'v-source-flipping',
  ].map((id) => [id, 'explained']),
);

function visit(
  id: string,
  sheet: SiteSheet,
  p: Plant,
  causes: readonly string[] | null,
  end: string,
  more: Record<string, unknown> = {},
  house?: readonly [number, number],
): LegCase {
  return {
    id,
    sheet,
    answers: { ...ways, ...leave, ...explain, ...readings(sheet, p, house), ...more },
    causes,
    end,
  };
}

const isolated = 'leftIsolated';
const sites = [
  ['opposed', sallowCreek],
  ['common', ternLedge],
  ['wye', wye],
] as const;

/** The same faults on each arrangement of two legs. */
const onEachSite = sites.flatMap(([name, sheet]) => {
  const run = runOf(sheet);
  return [
    visit(`${name}: healthy`, sheet, plant(sheet), ['legs-healthy'], 'healthy'),
    visit(
      `${name}: neutral open in the feeder`,
      sheet,
      plant(sheet, { neutralOhms: open }),
      // In step both legs fall to nothing, as they do on an open hot.
      name === 'common' ? ['neutral-open-feeder', 'leg-lost'] : ['neutral-open-feeder'],
      isolated,
      { symptom: 'see-saw' },
    ),
    visit(
      `${name}: a poor joint of 0.25 Ω in the neutral`,
      sheet,
      plant(sheet, { neutralOhms: joint(sheet, 0.25) }),
      ['neutral-joint-poor'],
      isolated,
      { symptom: 'side-dims' },
    ),
    visit(
      `${name}: 1 Ω in the neutral, as good as lost`,
      sheet,
      plant(sheet, { neutralOhms: joint(sheet, 1) }),
      ['neutral-joint-poor'],
      isolated,
      { symptom: 'see-saw' },
    ),
    visit(
      `${name}: a poor joint in hot 1`,
      sheet,
      plant(sheet, { hot1Ohms: joint(sheet, 0.35) }),
      ['hot-joint-poor'],
      isolated,
      { symptom: 'side-dims' },
    ),
    visit(
      `${name}: a burnt joint in hot 1`,
      sheet,
      plant(sheet, { hot1Ohms: joint(sheet, 1.5) }),
      ['hot-joint-poor'],
      isolated,
      { symptom: 'see-saw' },
    ),
    visit(
      `${name}: a poor joint in hot 2`,
      sheet,
      plant(sheet, { hot2Ohms: joint(sheet, 0.35) }),
      ['hot-joint-poor'],
      isolated,
      { symptom: 'nothing-now' },
    ),
    visit(
      `${name}: hot 2 open in the feeder`,
      sheet,
      plant(sheet, { hot2Ohms: open }),
      ['leg-lost'],
      isolated,
      { symptom: 'side-dead' },
    ),
    visit(
      `${name}: the source sags under the house`,
      sheet,
      plant(sheet, { sourceOhms: run + 0.8 }),
      ['source-sags'],
      'referred',
      { symptom: 'dims-together' },
      [1600, 1600],
    ),
  ];
});

const start = { v12: '240.0', v1: '120.0', v2: '120.0' };

const two: SiteSheet = { ...sallowCreek, id: 'two', parallelUnits: 2 };
const joined = {
  'set-first-on': 'done',
  'set-wait': 'done',
  'set-join-ready': 'done',
  'set-join': 'done',
  'out-joined': start,
};

/** Mended at the panel, and what the heater shows after it. */
const mendAtPanel = {
  ...isolate,
  'where-work': 'panel',
  'panel-tester': { dc: '52.8', ac: '120.0' },
  'panel-dead': {
    'hots-ac': '0.2',
    'hots-earth-ac': '0.1',
    'neutral-earth-ac': '0.0',
    'largest-dc': '0.0',
  },
  'panel-tester-after': { dc: '52.8', ac: '120.0' },
  'panel-ready': 'done',
  'mend-panel': 'done',
  ...restore('310.2'),
  'retest-ready': 'done',
  retest: { v12: '239.8', d1: '119.0', d2: '120.5', ng: '0.74', neutral: '8.20' },
  'retest-ends': { panel: '119.0', output: '120.4', amps: '8.20' },
};
const moved = {
  symptom: 'trips-leg',
  'panel-legs': start,
  'leg-clamps': { i1: '29.40', i2: '4.10' },
  'v-leg-overloaded': 'mend',
  ...mendAtPanel,
};

/** What only one arrangement has, or what is told by eye, ear and clamp. */
const others: LegCase[] = [
  visit(
    'neutral lost in the unit',
    sallowCreek,
    plant(sallowCreek, { sourceNeutralOhms: 6 }),
    ['neutral-open-at-source'],
    isolated,
    { symptom: 'see-saw' },
  ),
  visit(
    'legs in step where they should oppose, set right',
    sallowCreek,
    plant(sallowCreek),
    ['legs-in-phase'],
    'fixed',
    {
      symptom: 'side-dead',
      'panel-legs': { v12: '0.6', v1: '120.1', v2: '119.8' },
      'out-legs': { v12: '0.4', v1: '120.2', v2: '120.0' },
      'v-in-phase': 'set-it',
      'out-after-set': { v12: '240.2', v1: '120.1', v2: '120.1' },
    },
  ),
  visit(
    'legs in step, no jumper ruled out: isolated, and nothing set',
    sallowCreek,
    plant(sallowCreek),
    ['legs-in-phase'],
    'leftIsolated',
    {
      symptom: 'side-dead',
      'out-legs': { v12: '0.4', v1: '120.2', v2: '120.0' },
      'v-in-phase': 'set-it',
      'set-jumper': 'not-seen',
      ...isolate,
      'where-work': 'cant',
    },
  ),
  visit(
    'two units a third apart, each set alone and joined in step',
    two,
    plant(sallowCreek, { hot1Ohms: 0.04, hot2Ohms: 0.04, neutralOhms: 0.04 }),
    ['legs-third-apart'],
    'fixed',
    {
      symptom: 'side-dead',
      'out-legs': { v12: '207.9', v1: '120.0', v2: '120.1' },
      'v-third': 'set-it',
      'out-after-set': { v12: '240.2', v1: '120.1', v2: '120.1' },
      ...joined,
      'set-across': { apart: '0.4', neutrals: '0.1' },
    },
  ),
  visit(
    'two units of which one was not set: 240 V across its breaker, never joined',
    two,
    plant(sallowCreek),
    ['legs-third-apart'],
    'unresolved',
    {
      symptom: 'side-dead',
      'out-legs': { v12: '207.9', v1: '120.0', v2: '120.1' },
      'v-third': 'set-it',
      'out-after-set': { v12: '240.2', v1: '120.1', v2: '120.1' },
      ...joined,
      'set-across': { apart: '239.8', neutrals: '0.1' },
    },
  ),
  visit('two units that cannot be parted', two, plant(sallowCreek), ['legs-third-apart'], 'referred', {
    symptom: 'side-dead',
    'out-legs': { v12: '207.9', v1: '120.0', v2: '120.1' },
    'v-third': 'set-it',
    'set-part': 'cant',
  }),
  visit(
    'legs a third apart where they should oppose',
    sallowCreek,
    plant(sallowCreek),
    ['legs-third-apart'],
    isolated,
    {
      symptom: 'side-dead',
      'panel-legs': { v12: '207.9', v1: '120.0', v2: '120.1' },
      'out-legs': { v12: '207.9', v1: '120.0', v2: '120.1' },
    },
  ),
  visit('a leg lost at the unit and fed backward', sallowCreek, plant(sallowCreek), ['leg-lost'], isolated, {
    symptom: 'side-dead',
    'panel-legs': three(backFed(120, 12.8, 12)),
    'out-legs': { v12: '120.3', v1: '120.2', v2: '0.3' },
  }),
  visit(
    'a leg fed backward with no load of its own',
    sallowCreek,
    plant(sallowCreek),
    ['leg-lost'],
    isolated,
    {
      symptom: 'side-dead',
      'panel-legs': three(backFed(120, 12.8, 1e7)),
      'out-legs': { v12: '120.3', v1: '120.2', v2: '0.3' },
    },
  ),
  visit('loads piled on leg 1', sallowCreek, plant(sallowCreek), ['leg-overloaded'], 'referred', {
    symptom: 'trips-leg',
    'panel-legs': start,
    'leg-clamps': { i1: '29.40', i2: '4.10' },
    'v-leg-overloaded': 'plan',
  }),
  visit('loads shared out badly', sallowCreek, plant(sallowCreek), ['leg-overloaded'], 'referred', {
    symptom: 'trips-leg',
    'panel-legs': start,
    'leg-clamps': { i1: '19.60', i2: '4.10' },
    'v-legs-shared-badly': 'plan',
  }),
  visit(
    'legs in step, each within, 3360 W together',
    ternLedge,
    plant(ternLedge),
    ['leg-overloaded'],
    'referred',
    {
      symptom: 'trips-leg',
      'panel-legs': { v12: '0.3', v1: '120.0', v2: '120.0' },
      'leg-clamps': { i1: '14.00', i2: '14.00' },
      'v-legs-sum-over': 'plan',
    },
  ),
  visit(
    'legs in step, tested sound, 3360 W together with the house on',
    ternLedge,
    plant(ternLedge),
    ['leg-overloaded'],
    'referred',
    { 'house-amps': { i1: '14.00', i2: '14.00' }, 'v-house-sum-over': 'plan' },
  ),
  visit(
    'circuits moved, and clamped again at the peak',
    sallowCreek,
    plant(sallowCreek),
    ['leg-overloaded'],
    'fixed',
    {
      ...moved,
      'retest-peak': { i1: '17.20', i2: '16.30' },
    },
  ),
  visit(
    'circuits moved, the peak not had',
    sallowCreek,
    plant(sallowCreek),
    ['leg-overloaded'],
    'unresolved',
    {
      ...moved,
      'retest-peak': { i1: '3.20', i2: '2.90' },
    },
  ),
  visit('circuits moved, a leg still over', sallowCreek, plant(sallowCreek), ['leg-overloaded'], 'referred', {
    ...moved,
    'retest-peak': { i1: '28.20', i2: '6.30' },
  }),
  visit('an ordinary start', sallowCreek, plant(sallowCreek), ['start-dip'], 'referred', {
    symptom: 'blinks-at-start',
    'panel-legs': start,
    'dip-watch': { 'min-1': '116.4', 'max-1': '120.3', 'min-2': '116.2', 'max-2': '120.2' },
    'dip-length': 'start-only',
  }),
  visit(
    'a start that lifts the other leg',
    sallowCreek,
    plant(sallowCreek, { neutralOhms: joint(sallowCreek, 0.6) }),
    ['neutral-joint-poor'],
    isolated,
    {
      symptom: 'blinks-at-start',
      'panel-legs': start,
      'dip-watch': { 'min-1': '97.0', 'max-1': '120.3', 'min-2': '119.8', 'max-2': '133.1' },
    },
  ),
  visit('a source too weak for the start', sallowCreek, plant(sallowCreek), ['source-sags'], 'referred', {
    symptom: 'blinks-at-start',
    'panel-legs': start,
    'dip-watch': { 'min-1': '104.0', 'max-1': '120.3', 'min-2': '104.2', 'max-2': '120.2' },
    'start-sag': { 'min-1': '105.1', 'min-2': '105.3', bus: '46.1' },
  }),
  visit(
    'a start that the feeder loses most of: 17 of 24 V',
    sallowCreek,
    plant(sallowCreek, { hot1Ohms: joint(sallowCreek, 0.35) }),
    ['hot-joint-poor'],
    isolated,
    {
      symptom: 'blinks-at-start',
      'panel-legs': start,
      'dip-watch': { 'min-1': '96.0', 'max-1': '120.3', 'min-2': '119.4', 'max-2': '120.2' },
      'start-sag': { 'min-1': '113.0', 'min-2': '119.6', bus: '50.1' },
    },
  ),
  visit('the search mode', sallowCreek, plant(sallowCreek), ['search-mode'], 'fixed', {
    symptom: 'pulses',
    'pulse-look': 'stops',
    'search-watch': 'steady',
  }),
  visit('the source flips', sallowCreek, plant(sallowCreek), ['source-flipping'], 'fixed', {
    symptom: 'source-blinks',
    'source-watch': 'with-relay',
    'source-settled': 'steady',
  }),
  visit('a neutral that floats', sallowCreek, plant(sallowCreek), ['neutral-not-grounded'], 'referred', {
    symptom: 'odd-to-ground',
    'panel-legs': start,
    'ground-volts': { panel: '47.2', output: '46.8' },
    'ground-low-z': '0.9',
    'loads-away-ground': 'done',
  }),
  visit(
    'a floating neutral on a site without a low-impedance meter',
    ternLedge,
    plant(ternLedge),
    ['neutral-not-grounded'],
    'referred',
    {
      symptom: 'odd-to-ground',
      'panel-legs': { v12: '0.3', v1: '120.0', v2: '120.0' },
      'ground-volts': { panel: '47.2', output: '46.8' },
      'loads-away-ground': 'done',
    },
  ),
  visit(
    'the shared neutral of a pair',
    sallowCreek,
    plant(sallowCreek),
    ['shared-neutral-open'],
    'referred',
    {
      symptom: 'one-pair',
      'pair-off': 'done',
      'pair-rest-ready': 'done',
      'pair-on': 'done',
      'pair-legs': { other: '238.9', loaded: '0.9', 'panel-1': '120.0', 'panel-2': '120.1' },
      'pair-off-again': 'done',
    },
  ),
  visit(
    'a sound feeder that is long: 0.16 Ω one way',
    { ...sallowCreek, outputFeeder: { lengthM: 112, areaMm2: 13.3 } },
    plant(sallowCreek, { hot1Ohms: 0.163, hot2Ohms: 0.163, neutralOhms: 0.163 }),
    ['feeder-long'],
    'referred',
    { symptom: 'side-dims' },
    [500, 400],
  ),
  visit(
    'a sound feeder so long that one heater moves the legs out of band',
    { ...sallowCreek, outputFeeder: { lengthM: 200, areaMm2: 13.3 } },
    plant(sallowCreek, { hot1Ohms: 0.292, hot2Ohms: 0.292, neutralOhms: 0.292 }),
    ['feeder-long'],
    isolated,
    { symptom: 'side-dims' },
    [500, 400],
  ),
  visit(
    'a sound long feeder on a sheet that does not know it',
    { ...sallowCreek, outputFeeder: { lengthM: null, areaMm2: null } },
    plant(sallowCreek),
    ['legs-healthy'],
    'healthy',
  ),
  visit(
    'unlike power factors on an open neutral',
    sallowCreek,
    plant(sallowCreek, { neutralOhms: open }),
    ['neutral-open-feeder'],
    isolated,
    // 12 Ω and 16 + j12 Ω in series on 240 V: 94.5 and 157.6 V.
    { symptom: 'side-dims', 'panel-legs': { v12: '240.0', v1: '94.5', v2: '157.6' } },
  ),
  {
    ...visit(
      'an open neutral, mended and shown',
      sallowCreek,
      plant(sallowCreek, { neutralOhms: open }),
      ['neutral-open-feeder'],
      'fixed',
      {
        symptom: 'see-saw',
        'v-neutral-open': 'mend',
        ...mendAtPanel,
      },
    ),
  },
];

/** One line and a neutral. */
const onLine: LegCase[] = [
  visit('line: healthy', line, plant(line), ['legs-healthy'], 'healthy', {}, [2000, 0]),
  visit('line: neutral open', line, plant(line, { neutralOhms: open }), ['neutral-open-feeder'], isolated, {
    'symptom-one': 'dims',
  }),
  visit('line: line open', line, plant(line, { hot1Ohms: open }), ['leg-lost'], isolated, {
    'symptom-one': 'dims',
  }),
  visit(
    'line: a poor joint in the neutral',
    line,
    plant(line, { neutralOhms: joint(line, 0.5) }),
    ['neutral-joint-poor'],
    isolated,
  ),
  visit(
    'line: a poor joint in the line',
    line,
    plant(line, { hot1Ohms: joint(line, 0.9) }),
    ['hot-joint-poor'],
    isolated,
  ),
  visit(
    'line: a whole neutral that floats',
    line,
    plant(line),
    ['neutral-not-grounded'],
    'referred',
    {
      'line-loaded': { d1: '228.6', o1: '229.9', ng: '115.0', amps: '4.30', ground: '0.02' },
      'v-line-not-grounded': 'leave',
      'open-ground': 'done',
    },
    [2000, 0],
  ),
  visit(
    'line: the source sags',
    line,
    plant(line, { sourceOhms: 1.6 }),
    ['source-sags'],
    'referred',
    { 'symptom-one': 'dims' },
    [3000, 0],
  ),
];

/** A plant with this in its conductors, on one of the sites with two legs, walked as if nothing were known. */
export function plantCase(
  site: 'opposed' | 'common' | 'wye',
  extra: { neutral?: number; hot1?: number; hot2?: number; volts?: number; sourceOhms?: number },
  house: readonly [number, number],
): LegCase {
  const sheet = sites.find(([name]) => name === site)![1];
  const made = plant(sheet, {
    neutralOhms: joint(sheet, extra.neutral ?? 0),
    hot1Ohms: joint(sheet, extra.hot1 ?? 0),
    hot2Ohms: joint(sheet, extra.hot2 ?? 0),
    volts: extra.volts ?? 120,
    sourceOhms: extra.sourceOhms ?? 0.01,
  });
  return visit(
    'a plant',
    sheet,
    made,
    null,
    '',
    {
      'v-leg-overloaded': 'plan',
      'v-legs-shared-badly': 'plan',
      'v-house-overloaded': 'plan',
      'v-legs-sum-over': 'plan',
      'v-house-sum-over': 'plan',
    },
    house,
  );
}

export const legCases: readonly LegCase[] = [...onEachSite, ...others, ...onLine];
