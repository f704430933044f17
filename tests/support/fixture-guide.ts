import type { ScaleDef, WaitDef, WorkDef } from '../../src/expected/context.ts';
import { compile } from '../../src/guide/compile.ts';
import { flatten } from '../../src/guide/flatten.ts';
import { questions } from '../../src/guide/questions.ts';
import type { Machine, ReadingStep } from '../../src/guide/vocabulary.ts';
import { demoSites } from '../../src/site/demo.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';
import type { Knowledge } from '../../src/visit/knowledge.ts';

/** A small guide that has every kind of step, for tests of the run. It is about no real fault. */

const live = {
  hazards: ['live-metering'],
  ppe: ['rated-gloves', 'eye-protection'],
  tools: ['meter-1000v'],
  energised: true,
} as const;

const zero = (mode: 'dcVolts' | 'acVolts') => ({ point: 'i', scale: 'fx-dead', mode });

const deadTest: ReadingStep = {
  kind: 'measure',
  state: 'lockedOut',
  at: ['invDC'],
  ...live,
  proves: 'invDC',
  readings: {
    pair: zero('dcVolts'),
    'plus-earth': zero('dcVolts'),
    'minus-earth': zero('dcVolts'),
    'pair-ac': zero('acVolts'),
  },
  rows: [
    {
      id: 'dead',
      when: { pair: 'dead', 'plus-earth': 'dead', 'minus-earth': 'dead', 'pair-ac': 'dead' },
      to: 'tester-after',
      does: [{ measuredDead: 'invDC' }],
    },
    { id: 'live', when: {}, to: 'live', does: [{ measuredLive: 'invDC' }] },
  ],
};

const tester = (to: string): ReadingStep => ({
  kind: 'measure',
  at: ['packPost'],
  ...live,
  readings: { known: { point: 's1', scale: 'fx-live', mode: 'dcVolts' } },
  outcomes: { live: { to, does: [{ testerProved: true }] }, dead: 'live', undetermined: 'live' },
});

export const fixtureProcedure: Machine = {
  id: 'fx-prove',
  kind: 'procedure',
  version: 1,
  begins: ['lockedOut'],
  start: 'tester-before',
  escape: 'live',
  stop: 'live',
  steps: {
    'tester-before': tester('dead'),
    dead: deadTest,
    'tester-after': tester('proved'),
    proved: { kind: 'end', result: 'done', leaves: ['isolated'] },
    live: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'] },
  },
};

export const fixtureGuide: Machine = {
  id: 'fx-guide',
  kind: 'guide',
  version: 1,
  begins: ['lockedOut'],
  start: 'symptom',
  escape: 'left',
  stop: 'stopped',
  facts: ['inverter.busCapacitanceF'],
  against: {
    short: [[{ step: 'volts', outcomes: ['ok', 'high'] }]],
    few: [[{ step: 'volts', outcomes: ['low', 'ok', 'high'] }]],
    old: [[{ step: 'volts', outcomes: ['low', 'ok', 'high'] }]],
  },
  steps: {
    symptom: { kind: 'choose', outcomes: { quiet: 'source', other: 'unresolved' } },
    source: { kind: 'sheet', ask: 'second-source', outcomes: { fitted: 'volts', none: 'volts' } },
    volts: {
      kind: 'display',
      readings: { v: { point: 'display', scale: 'fx-volts', mode: 'display', signed: true } },
      outcomes: {
        reversed: 'left',
        low: 'verdict-short',
        ok: 'named',
        high: { to: 'volts', limit: { counter: 'again', max: 2, otherwise: 'unresolved' } },
        undetermined: 'work-out',
      },
    },
    'work-out': { kind: 'workOut', ask: 'fx-work', outcomes: { enough: 'named', few: 'verdict-few' } },
    'verdict-short': {
      kind: 'verdict',
      causes: ['short'],
      because: [{ step: 'volts', outcomes: ['low'] }],
      outcomes: { next: 'named' },
    },
    'verdict-few': {
      kind: 'verdict',
      causes: ['few', 'old'],
      because: [
        { step: 'volts', outcomes: ['undetermined'] },
        { step: 'work-out', outcomes: ['few'] },
      ],
      outcomes: { next: 'named' },
    },
    named: {
      kind: 'hold',
      items: [{ id: 'named' }],
      outcomes: { done: { to: 'drain', does: [{ namedPerson: true }] } },
    },
    drain: {
      kind: 'wait',
      state: 'lockedOut',
      wait: 'fx-wait',
      outcomes: { done: { to: 'prove', does: [{ waited: 'invDC' }] } },
    },
    prove: { kind: 'perform', procedure: 'fx-prove', endings: { proved: 'ready' } },
    ready: {
      kind: 'hold',
      state: 'dead',
      at: ['invDC'],
      items: [
        { id: 'shown-dead', reading: { step: 'prove/dead', reading: 'pair', zones: ['dead'] } },
        { id: 'nobody-near' },
      ],
      outcomes: { done: 'work' },
    },
    work: {
      kind: 'touch',
      state: 'dead',
      at: ['invDC'],
      hazards: ['live-metering'],
      outcomes: { done: { to: 'sides', does: [{ touch: 'invDC' }] } },
    },
    sides: {
      kind: 'measure',
      state: 'lockedOut',
      at: ['battBus'],
      ...live,
      readings: {
        s1: { point: 's1', scale: 'fx-bank', mode: 'dcVolts', signed: true },
        s2: { point: 's2', scale: 'fx-bank', mode: 'dcVolts', signed: true },
      },
      rows: [
        {
          id: 'ok',
          when: { s1: 'ok', s2: 'ok' },
          to: 'tidy',
          does: [{ polarityProved: 'main' }, { bothSidesRead: 'alike' }],
        },
        { id: 'unsafe', when: {}, to: 'left' },
      ],
    },
    tidy: {
      kind: 'hold',
      items: [{ id: 'tools-out' }, { id: 'covers-on' }, { id: 'people-told' }],
      outcomes: { done: { to: 'unlock-main', does: [{ readyToRestore: true }] } },
    },
    'unlock-main': { kind: 'operate', outcomes: { done: { to: 'clear', does: [{ unlock: 'main' }] } } },
    clear: { kind: 'hold', items: [{ id: 'clear' }], outcomes: { done: 'close-main' } },
    'close-main': {
      kind: 'operate',
      hazards: ['battery-short'],
      outcomes: { done: { to: 'rise', does: [{ close: 'main' }] } },
    },
    rise: {
      kind: 'measure',
      at: ['invDC'],
      ...live,
      readings: { s2: { point: 's2', scale: 'fx-bank', mode: 'dcVolts', signed: true, series: 2 } },
      outcomes: {
        reversed: 'unresolved',
        low: 'unresolved',
        ok: { to: 'fixed', does: [{ verified: true }] },
        high: 'unresolved',
        undetermined: 'unresolved',
      },
    },
    fixed: { kind: 'end', result: 'done', leaves: ['restored', 'guarded'], items: [{ id: 'owner-told' }] },
    unresolved: { kind: 'end', result: 'unresolved', leaves: ['isolated', 'guarded'] },
    left: {
      kind: 'end',
      result: 'leftIsolated',
      leaves: ['isolated', 'guarded'],
      items: [{ id: 'owner-told' }],
    },
    stopped: {
      kind: 'end',
      result: 'leftGuarded',
      leaves: ['guarded'],
      items: [{ id: 'area-closed' }, { id: 'owner-told' }, { id: 'return-time' }],
    },
  },
};

/** A scale with fixed limits, or with one that stands on the sheet. */
function scale(
  id: string,
  limits: readonly [string, number | null][],
  expected: string,
  lowest?: string,
): ScaleDef {
  return {
    id,
    kind: 'voltage',
    zones: limits.map(([zone]) => zone),
    build: ({ sheet }) => {
      const capacitance = sheet.inverter.busCapacitanceF;
      if (lowest !== undefined && capacitance === null) return { ok: false, missing: [lowest] };
      // An odd law on purpose: the limit of "low" moves with a fact of the sheet, so that a change can be seen.
      const shift = lowest === undefined ? 0 : (capacitance ?? 0) * 1000 - 20;
      return {
        ok: true,
        scale: {
          id,
          kind: 'voltage',
          expected,
          why: [],
          uses: lowest === undefined ? {} : { [lowest]: capacitance ?? 0 },
          zones: limits.map(([zone, max], row) => {
            const under = limits[row - 1]?.[1];
            return {
              id: zone,
              min: under === undefined || under === null ? null : under + shift,
              max: max === null ? null : max + shift,
            };
          }),
        },
      };
    },
  };
}

export const fixtureScales: Readonly<Record<string, ScaleDef>> = {
  'fx-volts': scale(
    'fx-volts',
    [
      ['reversed', -3],
      ['low', 100],
      ['ok', 200],
      ['high', null],
    ],
    'ok',
    'inverter.busCapacitanceF',
  ),
  'fx-bank': scale(
    'fx-bank',
    [
      ['reversed', -3],
      ['low', 44],
      ['ok', 58.4],
      ['high', null],
    ],
    'ok',
  ),
  'fx-dead': scale(
    'fx-dead',
    [
      ['dead', 3],
      ['live', null],
    ],
    'dead',
  ),
  'fx-live': scale(
    'fx-live',
    [
      ['dead', 24],
      ['live', null],
    ],
    'live',
  ),
};

export const fixtureWorks: Readonly<Record<string, WorkDef>> = {
  'fx-work': {
    id: 'fx-work',
    answers: ['enough', 'few'],
    work: ({ readings }) => ({
      ok: true,
      outcome: (readings['volts.v'] ?? 0) > 150 ? 'enough' : 'few',
      use: { worksheet: 'fx', inputs: { volts: readings['volts.v'] ?? 0 } },
      says: [],
    }),
  },
};

export const fixtureWaits: Readonly<Record<string, WaitDef>> = {
  'fx-wait': { id: 'fx-wait', seconds: () => 300 },
};

/** The fixture guide, or a changed form of it, with what judges it. */
export function fixtureKnowledge(guide: Machine = fixtureGuide): Knowledge {
  return {
    compiled: compile(flatten(guide, { 'fx-prove': fixtureProcedure })),
    scales: fixtureScales,
    works: fixtureWorks,
    waits: fixtureWaits,
    questions,
  };
}

/** A demo site made plain: one pack, one unit, no other source, so that a short guide can be safe on it. */
export function plainSite(): SiteSheet {
  const sheet = structuredClone(demoSites[0]!);
  return {
    ...sheet,
    battery: { ...sheet.battery, packs: 1 },
    parallelUnits: 1,
    secondSource: { ...sheet.secondSource, kind: 'none' },
    inverter: { ...sheet.inverter, busCapacitanceF: 0.02 },
    units: 'metric',
  };
}
