import { cellOpenVolts } from '../battery/open-circuit.ts';
import { translated } from '../pv/de-soto.ts';
import { openVolts } from '../pv/single-diode.ts';
import { cellTemp, type ModuleRun, type PvRun } from '../pv/spec.ts';
import type { Draft, Fault, Making } from './fault.ts';

const runOf = ({ spec }: Draft, { subject }: Making): PvRun => spec.runs[subject.run]!;
const trackerOf = (draft: Draft, making: Making) => draft.spec.trackers[runOf(draft, making).plusTo.tracker]!;

/** Open volts of one module in the light and heat of the visit. */
function moduleNowV(draft: Draft, making: Making): number {
  const { sky } = draft.spec;
  return openVolts(translated(runOf(draft, making).module, sky.lightWm2, cellTemp(sky)));
}

function setCount(run: PvRun, count: number): void {
  for (const branch of run.branches) branch.modules = [{ ...branch.modules[0]!, count }];
}

/** Takes `count` modules out of a branch's row into a run of their own with something else about them. */
function splitOff(modules: ModuleRun[], count: number, change: Partial<ModuleRun>): ModuleRun[] {
  const [first, ...rest] = modules;
  const taken = Math.min(count, first!.count);
  const left = first!.count - taken;
  return [...(left > 0 ? [{ ...first!, count: left }] : []), { ...first!, count: taken, ...change }, ...rest];
}

const several = (sheet: Making['sheet']) => sheet.strings.length > 1 && sheet.trackers.length > 1;
const bright = ({ random }: Making) => ({ lightWm2: random.between(450, 1000) });
/** Little is asked of the battery and of the loads, so that a full battery shows. */
function quietHouse(draft: Draft): void {
  for (const load of draft.spec.ac.loads) load.watts *= 0.15;
}

/** Causes of *PV volts are there but the tracker will not start*. */
export const pvNoStart: readonly Fault[] = [
  {
    id: 'a1',
    cause: 'isolator-open',
    group: 'a',
    frequency: 'common',
    conditions: bright,
    make(draft, making) {
      const form = making.random.pick(['handle', 'plus', 'minus'] as const);
      if (form === 'handle') draft.state.isolators[making.subject.run] = false;
      else runOf(draft, making).poles[form] = Number.POSITIVE_INFINITY;
      return { form };
    },
  },
  {
    id: 'a1',
    cause: 'string-fuse-open',
    group: 'a',
    frequency: 'common',
    conditions: bright,
    make(draft, making) {
      const run = runOf(draft, making);
      run.fuseFitted = true;
      for (const branch of run.branches) branch.fuse = Number.POSITIVE_INFINITY;
      return { fuses: run.branches.length };
    },
  },
  {
    id: 'a1',
    cause: 'module-shutdown-holding',
    group: 'a',
    frequency: 'common',
    fits: ({ strings }) => strings.some(({ shutdownDevices }) => shutdownDevices === true),
    conditions: bright,
    make(draft, making) {
      const run = runOf(draft, making);
      run.shutdown = 'holding';
      run.shutdownPressed = making.random.chance(0.4);
      for (const branch of run.branches) for (const modules of branch.modules) modules.held = true;
      return { pressed: String(run.shutdownPressed) };
    },
  },
  {
    id: 'a2',
    cause: 'string-too-short',
    group: 'a',
    frequency: 'common',
    conditions: bright,
    make(draft, making) {
      const run = runOf(draft, making);
      const most = Math.floor((trackerOf(draft, making).startV - 0.01) / moduleNowV(draft, making));
      const count = Math.max(1, most - (making.random.chance(0.6) ? 0 : making.random.whole(0, 2)));
      setCount(run, count);
      return { modules: count };
    },
  },
  {
    id: 'a2',
    cause: 'module-bypassed',
    group: 'a',
    frequency: 'occasional',
    conditions: bright,
    make(draft, making) {
      const run = runOf(draft, making);
      const count = making.random.whole(1, Math.max(1, Math.ceil(0.7 * run.branches[0]!.modules[0]!.count)));
      const bridgedParts = making.random.whole(1, 3);
      for (const branch of run.branches) branch.modules = splitOff(branch.modules, count, { bridgedParts });
      return { modules: count, bridgedParts };
    },
  },
  {
    id: 'a3',
    cause: 'string-too-long',
    group: 'a',
    frequency: 'occasional',
    conditions: ({ sheet, random }) => ({
      airC: random.between(sheet.climate.recordLowC, sheet.climate.usualLowC ?? 0),
      lightWm2: random.between(300, 1000),
    }),
    make(draft, making) {
      const run = runOf(draft, making);
      const { recordLowC } = making.sheet.climate;
      const coldV = openVolts(translated(run.module, 1000, recordLowC));
      const least = Math.floor(trackerOf(draft, making).maxV / coldV) + 1;
      const count = least + making.random.whole(0, 2);
      setCount(run, count);
      return { modules: count };
    },
  },
  {
    id: 'a4',
    cause: 'held-back',
    group: 'a',
    frequency: 'common',
    conditions: bright,
    make(draft, making) {
      const { random } = making;
      const form = random.pick(['full', 'cold', 'hot', 'high-cell'] as const);
      quietHouse(draft);
      for (const pack of draft.spec.packs) {
        if (form === 'full') pack.charge = random.between(0.99, 1);
        else if (form === 'cold') pack.coldestC = pack.chargeMinC - random.between(0.5, 12);
        else if (form === 'hot') pack.hottestC = pack.chargeMaxC + random.between(0.5, 8);
        else pack.highestCellOffV = pack.cellMaxV - cellOpenVolts(pack.charge) + random.between(0.005, 0.08);
      }
      return { form };
    },
  },
  {
    id: 'a5',
    cause: 'string-reversed',
    group: 'a',
    frequency: 'occasional',
    conditions: bright,
    make(draft, making) {
      const run = runOf(draft, making);
      const form = making.random.pick(['array', 'array', 'isolator', 'unit'] as const);
      if (form === 'array') for (const branch of run.branches) branch.reversed = true;
      else run.crossedAt = form;
      return { form };
    },
  },
  {
    id: 'a6',
    cause: 'high-resistance-joint',
    group: 'a',
    frequency: 'occasional',
    conditions: bright,
    make(draft, making) {
      // From a drag that just shows to one that only blocks: 2 to 60 Ω burns, kilohms stay cool.
      const ohms = making.random.logBetween(4, 5000);
      for (const branch of runOf(draft, making).branches) branch.joint += ohms;
      return { ohms };
    },
  },
  {
    id: 'a7',
    cause: 'insulation-fault',
    group: 'a',
    frequency: 'occasional',
    conditions: ({ random }) => ({ lightWm2: random.between(450, 1000), wet: random.chance(0.6) }),
    make(draft, making) {
      const run = runOf(draft, making);
      const { random } = making;
      const modules = run.branches[0]!.modules.reduce((sum, { count }) => sum + count, 0);
      const ohms = random.logBetween(500, 0.95 * draft.spec.unit.insulationLimitOhm);
      const at = random.whole(0, modules);
      run.leaks.push({ at, ohms, wetOnly: draft.spec.sky.wet });
      return { ohms, at };
    },
  },
  {
    id: 'a8',
    cause: 'wrong-tracker-input',
    group: 'a',
    frequency: 'occasional',
    fits: several,
    conditions: bright,
    make(draft, making) {
      const run = runOf(draft, making);
      // `fits` asks for two trackers; a run on each is what the sheet says.
      const other = draft.spec.runs.find((each) => each.plusTo.tracker !== run.plusTo.tracker) ?? run;
      const pole = making.random.pick(['minusTo', 'plusTo'] as const);
      const own = run[pole];
      // Both runs wrong, or this one's conductor landed beside the other's.
      const both = making.random.chance(0.7);
      run[pole] = { ...other[pole] };
      if (both) other[pole] = own;
      return { pole, both: String(both) };
    },
  },
  {
    id: 'a9',
    cause: 'start-disabled-by-setting',
    group: 'a',
    frequency: 'common',
    conditions: bright,
    make(draft, making) {
      const form = making.random.pick(['pv-not-used', 'link-required'] as const);
      if (form === 'pv-not-used') trackerOf(draft, making).enabled = false;
      else {
        draft.spec.unit.linkRequired = true;
        draft.spec.link.protocol.unit = 2;
      }
      return { form };
    },
  },
  {
    id: 'a10',
    cause: 'lockout-latched',
    group: 'a',
    frequency: 'occasional',
    conditions: bright,
    make(draft, making) {
      const latched = making.random.pick(['arc', 'ground-fault'] as const);
      draft.spec.unit.latched.push(latched);
      return { latched };
    },
  },
  {
    id: 'a11',
    cause: 'battery-not-live',
    group: 'a',
    frequency: 'occasional',
    conditions: bright,
    make(draft, making) {
      const form = making.random.pick(['main-off', 'asleep', 'fuse', 'flat'] as const);
      const { spec, state } = draft;
      if (form === 'main-off') state.mainOn = false;
      else if (form === 'fuse') spec.path.fuse = Number.POSITIVE_INFINITY;
      else
        for (const pack of spec.packs) {
          if (form === 'asleep') pack.awake = false;
          // So flat that its rest volts are under what the unit starts at.
          else pack.charge = making.random.between(0.001, 0.007);
        }
      return { form };
    },
  },
  {
    id: 'a12',
    cause: 'pole-grounded-or-shared',
    group: 'a',
    frequency: 'rare',
    conditions: bright,
    make(draft, making) {
      const run = runOf(draft, making);
      const modules = run.branches[0]!.modules.reduce((sum, { count }) => sum + count, 0);
      const pole = making.random.pick(['plus', 'minus'] as const);
      const ohms = making.random.logBetween(0.05, 50);
      run.leaks.push({ at: pole === 'plus' ? 0 : modules, ohms, wetOnly: false });
      return { pole, ohms };
    },
  },
  {
    id: 'a12',
    cause: 'unequal-strings',
    group: 'a',
    frequency: 'rare',
    fits: ({ strings }) => strings.some(({ parallel }) => parallel > 1),
    conditions: bright,
    make(draft, making) {
      const run = runOf(draft, making);
      const branch = run.branches.at(-1)!;
      const fewer = making.random.whole(1, Math.max(1, branch.modules[0]!.count - 2));
      branch.modules = [{ ...branch.modules[0]!, count: Math.max(1, branch.modules[0]!.count - fewer) }];
      return { fewer };
    },
  },
  {
    id: 'a13',
    cause: 'tracker-input-failed',
    group: 'a',
    frequency: 'rare',
    conditions: bright,
    make(draft, making) {
      trackerOf(draft, making).works = false;
      return {};
    },
  },
  {
    id: 'a1',
    cause: 'string-open-circuit',
    group: 'a',
    frequency: 'occasional',
    conditions: bright,
    make(draft, making) {
      for (const branch of runOf(draft, making).branches) branch.joint = Number.POSITIVE_INFINITY;
      return {};
    },
  },
  {
    id: 'a5',
    cause: 'string-shorted',
    group: 'a',
    frequency: 'rare',
    conditions: bright,
    make(draft, making) {
      const ohms = making.random.logBetween(0.003, 0.5);
      runOf(draft, making).short = ohms;
      return { ohms };
    },
  },
];
