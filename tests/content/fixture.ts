import type { ContentInput } from '../../src/guide/content-check.ts';
import type { Machine } from '../../src/guide/vocabulary.ts';

/** A small guide that has one procedure done at two places, the procedure itself having another done. */

const openString = {
  id: 'open-string',
  kind: 'procedure',
  version: 1,
  begins: ['asFound'],
  start: 'no-current',
  escape: 'left',
  stop: 'away',
  steps: {
    'no-current': {
      kind: 'measure',
      at: ['pvString'],
      hazards: ['pv-arc', 'live-metering'],
      ppe: ['rated-gloves'],
      tools: ['dc-clamp'],
      energised: true,
      readings: { i: { point: 'P1', scale: 'pv-no-current', mode: 'dcClamp', signed: true } },
      outcomes: {
        none: { to: 'open', does: [{ zeroShown: 'pv' }] },
        some: { to: 'no-current', limit: { counter: 'clamped', max: 2, otherwise: 'left' } },
        undetermined: 'left',
      },
    },
    open: {
      kind: 'operate',
      hazards: ['pv-arc'],
      device: 'pv',
      outcomes: { done: { to: 'opened', does: [{ open: 'pv' }] } },
    },
    opened: { kind: 'end', result: 'done', leaves: ['isolated'] },
    left: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'] },
    away: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'] },
  },
} satisfies Machine;

const makeSafe = {
  id: 'make-safe',
  kind: 'procedure',
  version: 1,
  begins: ['asFound'],
  start: 'loads-off',
  escape: 'left',
  stop: 'away',
  steps: {
    'loads-off': { kind: 'operate', outcomes: { done: { to: 'string', does: [{ loads: 'off' }] } } },
    string: { kind: 'perform', procedure: 'open-string', endings: { opened: 'safe' } },
    safe: { kind: 'end', result: 'done', leaves: ['isolated'] },
    left: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'] },
    away: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'] },
  },
} satisfies Machine;

const guide = {
  id: 'small-guide',
  kind: 'guide',
  version: 1,
  begins: ['asFound'],
  start: 'volts',
  escape: 'unresolved',
  stop: 'away',
  steps: {
    volts: {
      kind: 'measure',
      state: 'asFound',
      at: ['pvString'],
      hazards: ['live-metering', 'pv-live-in-light'],
      energised: true,
      readings: { p1: { point: 'P1', scale: 'string-volts', mode: 'dcVolts', signed: true } },
      outcomes: { ok: 'make-safe', low: 'make-safe-first', reversed: 'verdict', undetermined: 'unresolved' },
    },
    'make-safe': { kind: 'perform', procedure: 'make-safe', endings: { safe: 'ready' } },
    'make-safe-first': {
      kind: 'perform',
      procedure: 'make-safe',
      endings: { safe: 'verdict', left: 'away' },
    },
    ready: {
      kind: 'hold',
      items: [
        { id: 'covers-on' },
        { id: 'volts-known', reading: { step: 'volts', reading: 'p1', zones: ['ok'] } },
      ],
      outcomes: { done: 'verdict' },
    },
    verdict: {
      kind: 'verdict',
      causes: ['small-cause'],
      because: [
        { step: 'volts', outcomes: ['ok', 'low'] },
        { step: 'make-safe/string/no-current', outcomes: ['none'] },
      ],
      outcomes: { done: 'unresolved' },
    },
    unresolved: { kind: 'end', result: 'unresolved', leaves: ['isolated', 'untouched'] },
    away: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: [{ id: 'area-closed' }] },
  },
} satisfies Machine;

export const machines = { guide: guide as Machine, procedures: [makeSafe, openString] as Machine[] };
export const proceduresById: Readonly<Record<string, Machine>> = {
  'make-safe': makeSafe,
  'open-string': openString,
};

export const guideWords = `---
title: A small guide
summary: It shows how words and machine meet.
---
For whom it is.

<Step of="small-guide" id="volts" title="Read the string">
<Do>
1. Set the meter to DC volts.
2. Put the leads on.
</Do>
<Reading id="p1" label="P1, array side">Red on the conductor marked +.</Reading>
<Expect>The string’s own volts.</Expect>
<Sign>A minus sign means reversed.</Sign>
<Outcome id="ok" label="In band">The string is whole.</Outcome>
<Outcome id="low" label="Low">Too few modules.</Outcome>
<Outcome id="reversed" label="Negative">Reversed.</Outcome>
<Outcome id="undetermined" label="Too close to call">Leave it.</Outcome>
</Step>

<Step of="small-guide" id="make-safe" title="Make it safe">
It is whole, so the joint comes next.
</Step>
<Step of="small-guide" id="make-safe-first" title="Make it safe first"></Step>

<Step of="small-guide" id="ready" title="Ready?">
<Item id="covers-on">Covers are on.</Item>
<Item id="volts-known">The volts are known.</Item>
</Step>

<Step of="small-guide" id="verdict" title="It is the small cause">
It reads so.
</Step>

<Step of="small-guide" id="unresolved" title="Not resolved">Write down what you read.</Step>
<Step of="small-guide" id="away" title="Get away">
<Item id="area-closed">The area is closed.</Item>
</Step>
`;

const makeSafeWords = `---
title: Make safe
summary: It takes the energy away.
---
<Step of="make-safe" id="loads-off" title="Switch the loads off">
<Do>
1. Switch every load off.
</Do>
</Step>
<Step of="make-safe" id="string" title="Open the string"></Step>
<Step of="make-safe" id="safe" title="Safe"></Step>
<Step of="make-safe" id="left" title="Left guarded"></Step>
<Step of="make-safe" id="away" title="Get away"></Step>
`;

const openStringWords = `---
title: Open the string
summary: It opens the isolator at no current.
---
<Step of="open-string" id="no-current" title="Show no current">
<Do>
1. Zero the clamp.
2. Close it round one conductor.
</Do>
<Reading id="i" label="PV current">Round the conductor marked +.</Reading>
<Outcome id="none" label="No current" />
<Outcome id="some" label="Current flows">Wait.</Outcome>
<Outcome id="undetermined" label="Too close to call">It counts as flowing.</Outcome>
</Step>
<Step of="open-string" id="open" title="Open the isolator">
<Do>
1. Open it in one move.
</Do>
</Step>
<Step of="open-string" id="opened" title="Open"></Step>
<Step of="open-string" id="left" title="Left guarded"></Step>
<Step of="open-string" id="away" title="Get away"></Step>
`;

export const causeWords = `---
title: The small cause
---
## What it is
A cause.
## How it shows
It shows.
## The check that tells it apart
It is told apart.
## Remedy
Mend it.
## Re-test
Read again.
## Trap
None.
`;

/** Machines, words and lists that fit together: a test changes one thing and expects one finding. */
export function fittingInput(): ContentInput {
  return {
    guides: [guide],
    procedures: [makeSafe, openString],
    files: [
      {
        path: 'guides/small-guide.mdx',
        kind: 'guide',
        id: 'small-guide',
        source: guideWords,
        sources: ['a-book'],
      },
      {
        path: 'procedures/make-safe.mdx',
        kind: 'procedure',
        id: 'make-safe',
        source: makeSafeWords,
        sources: [],
      },
      {
        path: 'procedures/open-string.mdx',
        kind: 'procedure',
        id: 'open-string',
        source: openStringWords,
        sources: [],
      },
      {
        path: 'causes/small-cause.mdx',
        kind: 'cause',
        id: 'small-cause',
        source: causeWords,
        sources: [],
        guide: 'small-guide',
      },
    ],
    words: {
      hazards: { 'pv-arc': 'danger', 'live-metering': 'warning', 'pv-live-in-light': 'warning' },
      ppe: ['rated-gloves'],
      tools: ['dc-clamp'],
      states: ['any', 'asFound'],
      zones: ['pvString'],
    },
    signalWords: { 'pv-arc': 'danger', 'live-metering': 'warning', 'pv-live-in-light': 'warning' },
    sources: ['a-book'],
    broken: [],
    cited: [],
  };
}

/** The words of the fixture by machine id, as a page needs them. */
export const wordsById = {
  'small-guide': guideWords,
  'make-safe': makeSafeWords,
  'open-string': openStringWords,
};
