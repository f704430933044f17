import type { Fault } from './fault.ts';

/** Causes of the groups whose guides are still to come: what the plant can already be. */
export const otherGroups: readonly Fault[] = [
  {
    id: 'e3',
    cause: 'main-fuse-open',
    group: 'e',
    frequency: 'common',
    make({ spec }) {
      spec.path.fuse = Number.POSITIVE_INFINITY;
      return {};
    },
  },
  {
    id: 'e4',
    cause: 'pack-asleep',
    group: 'e',
    frequency: 'common',
    make({ spec }) {
      for (const pack of spec.packs) pack.awake = false;
      return {};
    },
  },
  {
    id: 'e6',
    cause: 'battery-reversed',
    group: 'e',
    frequency: 'occasional',
    make({ spec, state }) {
      spec.path.reversed = true;
      state.mainOn = false;
      return {};
    },
  },
  {
    id: 'f1',
    cause: 'idle-draw-large',
    group: 'f',
    frequency: 'common',
    make({ spec }, { random }) {
      spec.unit.idleW *= random.between(1.5, 3);
      return { watts: spec.unit.idleW };
    },
  },
  {
    id: 'g1',
    cause: 'battery-joint-poor',
    group: 'g',
    frequency: 'common',
    make({ spec }, { random }) {
      const ohms = random.logBetween(0.0005, 0.02);
      spec.path[random.pick(['plusJoint', 'minusJoint'] as const)] += ohms;
      return { ohms };
    },
  },
  {
    id: 'g2',
    cause: 'battery-cable-thin',
    group: 'g',
    frequency: 'common',
    make({ spec }, { random }) {
      spec.path.cableOhm *= random.between(3, 8);
      return { ohms: spec.path.cableOhm };
    },
  },
  {
    id: 'k1',
    cause: 'module-shaded-or-dirty',
    group: 'k',
    frequency: 'common',
    make({ spec }, { random, subject }) {
      const lightShare = random.between(0.3, 0.85);
      for (const branch of spec.runs[subject.run]!.branches)
        for (const modules of branch.modules) modules.lightShare *= lightShare;
      return { lightShare };
    },
  },
  {
    id: 'm1',
    cause: 'units-out-of-step',
    group: 'm',
    frequency: 'occasional',
    fits: ({ parallelUnits }) => parallelUnits > 1,
    make({ spec }, { random }) {
      spec.ac.units[1]!.aheadDeg = random.between(0.5, 3);
      return { degrees: spec.ac.units[1]!.aheadDeg };
    },
  },
];
