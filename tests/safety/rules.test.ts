import { describe, expect, it } from 'vitest';
import type { Effect } from '../../src/safety/effects.ts';
import { applyEffect, type Energy, initialEnergy } from '../../src/safety/energy.ts';
import { allVariants, type Variant } from '../../src/safety/plant.ts';
import { rules } from '../../src/safety/rules/index.ts';
import {
  type RuleEdge,
  type RuleGraph,
  type RuleNode,
  type RuleStep,
  ruleIds,
} from '../../src/safety/rules/rule.ts';

const richest: Variant = allVariants()[0]!;
const simple: Variant = { ...richest, source: 'none', packs: 'one', inverters: 'one' };

const after = (
  effects: Effect[],
  variant = simple,
  begins: Parameters<typeof initialEnergy>[1] = 'asFound',
): Energy => effects.reduce(applyEffect, initialEnergy(variant, begins));

const isolated: Effect[] = [
  { loads: 'off' },
  { inverter: 'off' },
  { open: 'pv' },
  { lock: 'pv' },
  { open: 'pvOther' },
  { lock: 'pvOther' },
  { open: 'main' },
  { lock: 'main' },
];
const dead: Effect[] = [
  ...isolated,
  { waited: 'invDC' },
  { waited: 'pvBus' },
  { testerProved: true },
  { measuredDead: 'invDC' },
  { measuredDead: 'pvBus' },
  { testerProved: true },
];

interface Case {
  rule: string;
  why: string;
  step: RuleStep;
  effect?: Effect;
  when?: RuleEdge['when'];
  energy: Energy;
  variant?: Variant;
  /** Steps that lead here. */
  from?: RuleStep;
  broken: boolean;
}

const gear = {
  ppe: ['rated-gloves', 'eye-protection'],
  tools: ['meter-cat3-1000'],
  hazards: ['battery-arc'],
};
const touchDc: RuleStep = { kind: 'touch', at: ['invDC'], hazards: ['battery-arc'] };
const volts = (mode: string) => ({ mode, scale: 'x', signed: true });
const six = { a: volts('dcVolts'), b: volts('dcVolts'), c: volts('dcVolts'), d: volts('acVolts') };
const allDead = { a: 'dead', b: 'dead', c: 'dead', d: 'dead' };
const operate: RuleStep = { kind: 'operate', hazards: ['battery-arc'] };
const clamp: RuleStep = {
  kind: 'measure',
  ...gear,
  at: ['pvString'],
  energised: true,
  readings: { a: { mode: 'dcClamp', scale: 'x' } },
};
const named = after([{ namedPerson: true }]);
const bothSides: RuleStep = { kind: 'measure', readings: { s1: volts('dcVolts'), s2: volts('dcVolts') } };
const safeToClose = after([
  ...isolated,
  { polarityProved: 'main' },
  { bothSidesRead: 'apart' },
  { resistor: 'on' },
  { precharged: true },
]);

const cases: Case[] = [
  {
    rule: 'I1',
    why: 'proved dead',
    step: touchDc,
    effect: { touch: 'invDC' },
    energy: after(dead),
    broken: false,
  },
  {
    rule: 'I1',
    why: 'never proved',
    step: touchDc,
    effect: { touch: 'invDC' },
    energy: after(isolated),
    broken: true,
  },
  {
    rule: 'I1',
    why: 'always live',
    step: { ...touchDc, at: ['packPost'] },
    effect: { touch: 'packPost' },
    energy: after(dead),
    broken: true,
  },
  {
    rule: 'I1',
    why: 'no hazard statement',
    step: { ...touchDc, hazards: [] },
    effect: { touch: 'invDC' },
    energy: after(dead),
    broken: true,
  },
  {
    rule: 'I2',
    why: 'all pairs, both ranges',
    step: { kind: 'measure', proves: 'invDC', readings: six },
    effect: { measuredDead: 'invDC' },
    when: allDead,
    energy: after([...isolated, { testerProved: true }]),
    broken: false,
  },
  {
    rule: 'I2',
    why: 'tester not shown first',
    step: { kind: 'measure', proves: 'invDC', readings: six },
    effect: { measuredDead: 'invDC' },
    when: allDead,
    energy: after(isolated),
    broken: true,
  },
  {
    rule: 'I2',
    why: 'one reading too close to call',
    step: { kind: 'measure', proves: 'invDC', readings: six },
    effect: { measuredDead: 'invDC' },
    when: { ...allDead, b: ['dead', 'undetermined'] },
    energy: after([...isolated, { testerProved: true }]),
    broken: true,
  },
  {
    rule: 'I2',
    why: 'DC range only',
    step: { kind: 'measure', proves: 'invDC', readings: { a: six.a, b: six.b, c: six.c } },
    effect: { measuredDead: 'invDC' },
    when: { a: 'dead', b: 'dead', c: 'dead' },
    energy: after([...isolated, { testerProved: true }]),
    broken: true,
  },
  {
    rule: 'I3',
    why: 'lock on an open device',
    step: operate,
    effect: { lock: 'main' },
    energy: after([{ open: 'main' }]),
    broken: false,
  },
  {
    rule: 'I3',
    why: 'lock on a closed device',
    step: operate,
    effect: { lock: 'main' },
    energy: after([]),
    broken: true,
  },
  {
    rule: 'I3',
    why: 'waiting before the locks',
    step: { kind: 'wait' },
    effect: { waited: 'invDC' },
    energy: after([]),
    broken: true,
  },
  {
    rule: 'I3',
    why: 'bled with a tool',
    step: { kind: 'discharge', hazards: ['stored-charge'], tools: [] },
    effect: { bleed: 'invDC' },
    energy: after(isolated),
    broken: true,
  },
  {
    rule: 'I4',
    why: 'proof stands',
    step: touchDc,
    effect: { touch: 'invDC' },
    energy: after(dead),
    broken: false,
  },
  {
    rule: 'I4',
    why: 'a lock came off since',
    step: touchDc,
    effect: { touch: 'invDC' },
    energy: after([...dead, { unlock: 'main' }]),
    broken: true,
  },
  {
    rule: 'I5',
    why: 'pre-charged, resistor on',
    step: operate,
    effect: { close: 'main' },
    energy: safeToClose,
    broken: false,
  },
  {
    rule: 'I5',
    why: 'resistor off first',
    step: operate,
    effect: { close: 'main' },
    energy: applyEffect(safeToClose, { resistor: 'off' }),
    broken: true,
  },
  {
    rule: 'I5',
    why: 'not pre-charged',
    step: operate,
    effect: { close: 'main' },
    energy: after([...isolated, { bothSidesRead: 'apart' }]),
    broken: true,
  },
  {
    rule: 'I5',
    why: 'across the switch only',
    step: { kind: 'measure', readings: { across: volts('dcVolts') } },
    effect: { bothSidesRead: 'alike' },
    when: { across: 'ok' },
    energy: after(isolated),
    broken: true,
  },
  {
    rule: 'I5',
    why: 'both sides signed',
    step: bothSides,
    effect: { bothSidesRead: 'apart' },
    when: { s1: 'ok', s2: 'absent' },
    energy: after(isolated),
    broken: false,
  },
  {
    rule: 'I6',
    why: 'zero shown',
    step: operate,
    effect: { open: 'pv' },
    energy: after([{ zeroShown: 'pv' }]),
    broken: false,
  },
  {
    rule: 'I6',
    why: 'nothing shown',
    step: operate,
    effect: { open: 'pv' },
    energy: after([]),
    broken: true,
  },
  {
    rule: 'I6',
    why: 'current flows',
    step: operate,
    effect: { open: 'pv' },
    energy: after([{ inverter: 'off' }, { currentFlows: 'pv' }]),
    variant: { ...simple, pvLoadBreak: true, polarised: false },
    broken: true,
  },
  {
    rule: 'I7',
    why: 'PV still on',
    step: operate,
    effect: { open: 'main' },
    energy: after([{ loads: 'off' }, { inverter: 'off' }, { zeroShown: 'main' }]),
    broken: true,
  },
  {
    rule: 'I7',
    why: 'all off, zero shown',
    step: operate,
    effect: { open: 'main' },
    energy: after([...isolated.slice(0, 6), { zeroShown: 'main' }]),
    broken: false,
  },
  {
    rule: 'I8',
    why: 'unlocked before made ready',
    step: operate,
    effect: { unlock: 'main' },
    energy: after(isolated),
    broken: true,
  },
  {
    rule: 'I8',
    why: 'made ready',
    step: operate,
    effect: { unlock: 'main' },
    energy: after([...isolated, { readyToRestore: true }]),
    broken: false,
  },
  {
    rule: 'I9',
    why: 'generator still connected',
    step: touchDc,
    effect: { touch: 'invDC' },
    energy: after(dead, richest),
    variant: richest,
    broken: true,
  },
  {
    rule: 'I9',
    why: 'every source off',
    step: touchDc,
    effect: { touch: 'invDC' },
    energy: after(
      [...dead, { open: 'acIn' }, { lock: 'acIn' }, { open: 'others' }, { lock: 'others' }],
      richest,
    ),
    variant: richest,
    broken: false,
  },
  {
    rule: 'I10',
    why: 'moved since',
    step: operate,
    effect: { close: 'main' },
    energy: after([...dead, { touch: 'invDC' }]),
    broken: true,
  },
  {
    rule: 'I10',
    why: 'proved again',
    step: operate,
    effect: { close: 'main' },
    energy: after([...dead, { touch: 'invDC' }, { polarityProved: 'main' }]),
    broken: false,
  },
  { rule: 'I11', why: 'all stated', step: clamp, energy: named, broken: false },
  {
    rule: 'I11',
    why: 'not marked energised',
    step: { ...clamp, energised: false },
    energy: named,
    broken: true,
  },
  { rule: 'I11', why: 'no gloves', step: { ...clamp, ppe: ['eye-protection'] }, energy: named, broken: true },
  {
    rule: 'I11',
    why: 'no meter rating',
    step: { ...clamp, tools: ['dc-clamp'] },
    energy: named,
    broken: true,
  },
  {
    rule: 'I14',
    why: 'zone not dead',
    step: { kind: 'measure', hazards: ['insulation-test-volts'] },
    effect: { insulationTest: 'pvRun' },
    energy: after(isolated),
    from: { kind: 'hold', items: [{ id: 'everyone-clear' }, { id: 'electronics-off' }] },
    broken: true,
  },
  {
    rule: 'I14',
    why: 'array tester, all clear',
    step: {
      kind: 'measure',
      hazards: ['insulation-test-volts'],
      ppe: ['rated-gloves', 'eye-protection'],
      tools: ['array-insulation-tester'],
    },
    effect: { insulationTest: 'pvString' },
    energy: after(isolated),
    from: { kind: 'hold', items: [{ id: 'everyone-clear' }, { id: 'electronics-off' }] },
    broken: false,
  },
  {
    rule: 'I14',
    why: 'no gloves',
    step: { kind: 'measure', hazards: ['insulation-test-volts'], tools: ['array-insulation-tester'] },
    effect: { insulationTest: 'pvString' },
    energy: after(isolated),
    from: { kind: 'hold', items: [{ id: 'everyone-clear' }, { id: 'electronics-off' }] },
    broken: true,
  },
  {
    rule: 'I14',
    why: 'people not cleared',
    step: { kind: 'measure', hazards: ['insulation-test-volts'], tools: ['array-insulation-tester'] },
    effect: { insulationTest: 'pvString' },
    energy: after(isolated),
    from: { kind: 'look' },
    broken: true,
  },
  {
    rule: 'I15',
    why: 'cells not known',
    step: operate,
    effect: { enableCharging: true },
    energy: after([]),
    broken: true,
  },
  {
    rule: 'I15',
    why: 'cells fit',
    step: operate,
    effect: { enableCharging: true },
    energy: after([{ cellsFitToCharge: true }]),
    broken: false,
  },
  {
    rule: 'I17',
    why: 'state holds',
    step: { kind: 'look', state: 'pvOpen' },
    energy: after([{ open: 'pv' }, { lock: 'pv' }]),
    broken: false,
  },
  {
    rule: 'I17',
    why: 'state does not hold',
    step: { kind: 'look', state: 'pvOpen' },
    energy: after([]),
    broken: true,
  },
  {
    rule: 'I19',
    why: 'plug moved with isolator closed',
    step: { kind: 'handleLive', at: ['pvString'], ...gear },
    effect: { plugs: 'parted' },
    energy: after([]),
    broken: true,
  },
  {
    rule: 'I19',
    why: 'plug moved at no current',
    step: { kind: 'handleLive', at: ['pvString'], ...gear },
    effect: { plugs: 'parted' },
    energy: after([{ open: 'pv' }, { lock: 'pv' }]),
    broken: false,
  },
  {
    rule: 'I19',
    why: 'plug moved with bare hands',
    step: { kind: 'handleLive', at: ['pvString'], ...gear, ppe: [] },
    effect: { plugs: 'joined' },
    energy: after([{ open: 'pv' }, { lock: 'pv' }]),
    broken: true,
  },
  {
    rule: 'I19',
    why: 'posts with packs on',
    step: { kind: 'handleLive', at: ['packPost'], ...gear },
    effect: { handleLive: 'packPost' },
    energy: after(isolated),
    broken: true,
  },
  {
    rule: 'I20',
    why: 'PV made onto a running tracker',
    step: operate,
    effect: { close: 'pv' },
    energy: after([{ open: 'pv' }]),
    broken: true,
  },
  {
    rule: 'I20',
    why: 'rated to make it',
    step: operate,
    effect: { close: 'pv' },
    energy: after([{ open: 'pv' }]),
    variant: { ...simple, pvLoadBreak: true },
    broken: false,
  },
  {
    rule: 'I20',
    why: 'output opened with loads on',
    step: operate,
    effect: { open: 'acOut' },
    energy: after([]),
    broken: true,
  },
  {
    rule: 'I20',
    why: 'output opened with loads off',
    step: operate,
    effect: { open: 'acOut' },
    energy: after([{ loads: 'off' }]),
    broken: false,
  },
  {
    rule: 'I20',
    why: 'AC input opened with its source running',
    step: operate,
    effect: { open: 'acIn' },
    energy: after([], richest),
    broken: true,
  },
  {
    rule: 'I20',
    why: 'other units opened with no current shown',
    step: operate,
    effect: { open: 'others' },
    energy: after([{ loads: 'off' }], richest),
    broken: true,
  },
  {
    rule: 'I8',
    why: 'closed with the lock still on',
    step: operate,
    effect: { close: 'pv' },
    energy: after([{ open: 'pv' }, { lock: 'pv' }]),
    broken: true,
  },
  {
    rule: 'I21',
    why: 'ohms on a string',
    step: { kind: 'measure', at: ['pvString'], readings: { r: { mode: 'ohms', scale: 'x' } } },
    energy: after(dead),
    broken: true,
  },
  {
    rule: 'I21',
    why: 'ohms where proved dead',
    step: { kind: 'measure', at: ['invDC'], readings: { r: { mode: 'ohms', scale: 'x' } } },
    energy: after(dead),
    broken: false,
  },
  { rule: 'I22', why: 'nobody knows', step: clamp, energy: after([]), broken: true },
  { rule: 'I22', why: 'someone will come', step: clamp, energy: named, broken: false },
  {
    rule: 'I23',
    why: 'packs unlike',
    step: operate,
    effect: { close: 'packs' },
    energy: after([{ open: 'packs' }], richest),
    variant: richest,
    broken: true,
  },
  {
    rule: 'I23',
    why: 'packs alike',
    step: operate,
    effect: { close: 'packs' },
    energy: after([{ packsAlike: true }], richest),
    variant: richest,
    broken: false,
  },
  {
    rule: 'I24',
    why: 'engine running',
    step: operate,
    effect: { inlet: 'unplugged' },
    energy: after([], richest),
    variant: richest,
    broken: true,
  },
  {
    rule: 'I24',
    why: 'stopped, disabled, dead',
    step: operate,
    effect: { inlet: 'unplugged' },
    energy: after(
      [
        { source: 'stopped' },
        { autoStart: 'disabled' },
        { testerProved: true },
        { measuredDead: 'inlet' },
        { testerProved: true },
      ],
      richest,
    ),
    variant: richest,
    broken: false,
  },
  {
    rule: 'I25',
    why: 'not in step',
    step: operate,
    effect: { close: 'others' },
    energy: after([{ open: 'others' }], richest),
    variant: richest,
    broken: true,
  },
  {
    rule: 'I25',
    why: 'in step',
    step: operate,
    effect: { close: 'others' },
    energy: after([{ open: 'others' }, { inStep: true }], richest),
    variant: richest,
    broken: false,
  },
  {
    rule: 'I26',
    why: 'loads on a moved neutral',
    step: operate,
    effect: { loads: 'on' },
    energy: after([...dead, { touch: 'acOut' }]),
    broken: true,
  },
  {
    rule: 'I26',
    why: 'neutral proved',
    step: operate,
    effect: { loads: 'on' },
    energy: after([...dead, { touch: 'acOut' }, { neutral: 'legsInBand' }, { neutral: 'proved' }]),
    broken: false,
  },
  {
    rule: 'I27',
    why: 'no finding',
    step: operate,
    effect: { close: 'main' },
    energy: after([{ open: 'main' }, { tripped: 'main' }]),
    broken: true,
  },
  {
    rule: 'I27',
    why: 'cause found',
    step: operate,
    effect: { close: 'main' },
    energy: after([{ open: 'main' }, { tripped: 'main' }, { tripExplained: 'main' }]),
    broken: false,
  },
  {
    rule: 'I28',
    why: 'work goes on with volts back',
    step: { kind: 'measure' },
    effect: { measuredLive: 'invDC' },
    energy: after(dead),
    broken: true,
  },
];

const read = (zone: string, to: string, ...does: Effect[]): RuleEdge => ({
  outcome: zone,
  to,
  does,
  when: { a: zone },
});
const insulation: RuleStep = { kind: 'measure', readings: { a: { mode: 'insulation', scale: 'x' } } };
const tested: Effect = { insulationTest: 'pvString' };

const behindHandle: RuleStep = {
  kind: 'measure',
  ...gear,
  state: 'pvOpen',
  at: ['pvString'],
  readings: { a: volts('dcVolts') },
};
const noVolts = [read('ok', 'next'), read('absent', 'after')];
const clamped = (cant: string): RuleNode => ({
  path: 'after',
  step: clamp,
  edges: [
    read('zero', 'next', { zeroShown: 'pv' }),
    read('flows', 'left', { currentFlows: 'pv' }),
    { outcome: 'cant', to: cant, does: [] },
  ],
});

/** Rules that a step's outcomes keep or break together, whatever the plant. */
const shapes: {
  rule: string;
  why: string;
  step: RuleStep;
  edges: RuleEdge[];
  /** A step that one of them leads to. */
  after?: RuleNode;
  broken: boolean;
}[] = [
  {
    rule: 'I1',
    why: 'a touch that says so',
    step: touchDc,
    edges: [
      { outcome: 'done', to: 'next', does: [{ touch: 'invDC' }] },
      { outcome: 'not-today', to: 'left', does: [] },
    ],
    broken: false,
  },
  {
    rule: 'I1',
    why: 'a touch that nobody hears of',
    step: touchDc,
    edges: [{ outcome: 'done', to: 'next', does: [] }],
    broken: true,
  },
  {
    rule: 'I3',
    why: 'a discharge that takes nothing out',
    step: { kind: 'discharge' },
    edges: [{ outcome: 'done', to: 'next', does: [] }],
    broken: true,
  },
  {
    rule: 'I3',
    why: 'a discharge',
    step: { kind: 'discharge' },
    edges: [{ outcome: 'done', to: 'next', does: [{ bleed: 'invDC' }] }],
    broken: false,
  },
  {
    rule: 'I6',
    why: 'a clamp that says both',
    step: clamp,
    edges: [
      read('zero', 'next', { zeroShown: 'pv' }),
      read('flows', 'left', { currentFlows: 'pv' }),
      read('undetermined', 'left', { currentFlows: 'pv' }),
    ],
    broken: false,
  },
  {
    rule: 'I6',
    why: 'a clamp that leaves an older zero standing',
    step: clamp,
    edges: [
      read('zero', 'next', { zeroShown: 'pv' }),
      read('flows', 'left', { currentFlows: 'pv' }),
      read('undetermined', 'left'),
    ],
    broken: true,
  },
  {
    rule: 'I6',
    why: 'a clamp of two strings that finds nothing in one only',
    step: clamp,
    edges: [
      read('zero', 'next', { zeroShown: 'pv' }),
      read('flows', 'left', { currentFlows: 'pv' }, { currentFlows: 'pvOther' }),
    ],
    broken: true,
  },
  {
    rule: 'I6',
    why: 'no volts, then a clamp',
    step: behindHandle,
    edges: noVolts,
    after: clamped('left'),
    broken: false,
  },
  {
    rule: 'I6',
    why: 'no volts, then a clamp that may be left out',
    step: behindHandle,
    edges: noVolts,
    after: clamped('next'),
    broken: true,
  },
  {
    rule: 'I6',
    why: 'no volts, then the next switch',
    step: behindHandle,
    edges: noVolts,
    after: { path: 'after', step: operate, edges: [] },
    broken: true,
  },
  {
    rule: 'I6',
    why: 'no volts, and the plant is left as it is',
    step: behindHandle,
    edges: noVolts,
    after: { path: 'after', step: { kind: 'end' }, edges: [] },
    broken: false,
  },
  {
    rule: 'I14',
    why: 'test volts told of, whatever they showed',
    step: insulation,
    edges: [read('sound', 'next', tested), read('leak', 'left', tested)],
    broken: false,
  },
  {
    rule: 'I14',
    why: 'test volts not told of',
    step: insulation,
    edges: [read('sound', 'next', tested), read('leak', 'left')],
    broken: true,
  },
  {
    rule: 'I14',
    why: 'a leak that goes on as if sound',
    step: insulation,
    edges: [read('sound', 'next', tested), read('leak', 'next', tested)],
    broken: true,
  },
  {
    rule: 'I19',
    why: 'plugs parted as live work',
    step: { kind: 'handleLive' },
    edges: [{ outcome: 'done', to: 'next', does: [{ plugs: 'parted' }] }],
    broken: false,
  },
  {
    rule: 'I19',
    why: 'live work that nobody hears of',
    step: { kind: 'handleLive' },
    edges: [{ outcome: 'done', to: 'next', does: [] }],
    broken: true,
  },
];

describe('the safety rules, one deed at a time', () => {
  it.each(cases)(
    '$rule: $why',
    ({ rule: id, step, effect, when, energy, variant = simple, from, broken }) => {
      const rule = rules.find((candidate) => candidate.id === id)!;
      const edge: RuleEdge = {
        outcome: 'done',
        to: 'next',
        does: effect ? [effect] : [],
        ...(when ? { when } : {}),
      };
      const node: RuleNode = { path: 'here', step, edges: [edge] };
      const before: RuleNode = {
        path: 'before',
        step: from ?? { kind: 'look' },
        edges: [{ outcome: 'done', to: 'here', does: [] }],
      };
      const graph: RuleGraph = {
        start: 'before',
        stop: 'away',
        nodes: new Map([
          ['before', before],
          ['here', node],
        ]),
      };
      const reason = effect
        ? rule.onDeed?.({ node, edge, effect, before: energy, variant, graph })
        : rule.onArrival?.({ node, energy, variant, graph });
      expect(reason === undefined ? 'kept' : 'broken').toBe(broken ? 'broken' : 'kept');
    },
  );

  it.each(shapes)('$rule on the graph: $why', ({ rule: id, step, edges, after: next, broken }) => {
    const rule = rules.find((candidate) => candidate.id === id)!;
    const graph: RuleGraph = {
      start: 'here',
      stop: 'away',
      nodes: new Map([
        ['here', { path: 'here', step, edges }],
        ...(next ? [[next.path, next] as const] : []),
      ]),
    };
    expect(rule.onGraph?.(graph) === undefined ? 'kept' : 'broken').toBe(broken ? 'broken' : 'kept');
  });

  it('has every rule once, in order', () => {
    expect(rules.map((rule) => rule.id)).toEqual(ruleIds.filter((id) => id !== 'verdict'));
  });
});
