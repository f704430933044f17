import type { MessageRef } from '../../quantity/message.ts';
import type { ExpectContext, ScaleDef } from '../context.ts';
import { scaleOf } from '../pv/build.ts';
import {
  bandShare,
  deadShare,
  endsOhms,
  feederOhms,
  legLimitAmps,
  nominalLeg,
  poorTimes,
  testAmps,
} from './site.ts';

/** A start on a sound neutral lifts no leg by more than this [V]. Common practice. */
const startRiseVolts = 3;
/**
 * What the empty leg may gain from one heater before its neutral counts as lost [V]: a long sound feeder and the meter's own
 * error included. A poor joint that stays below it is found in ohms, by neutral to ground. Common practice.
 */
const heaterRiseVolts = 5;
/** A dip of more than this is deep; less than the other nobody sees. Common practice. */
const dips = { deep: 0.05, seen: 0.01 };
/** Tied to ground once at the source, a neutral stands this close; a floating one is further off than any drop [V]. Common practice. */
const neutralGround = { ok: 3, floats: 10 };
/** A ghost falls away on low impedance to less than this [V]. Common practice. */
const ghostVolts = 2;
/** Of the test load's amps, what shows that it is on. */
const onShare = 0.3;

type Ends = readonly (readonly [zone: string, max: number | null])[];

/** A scale whose figures are all in the words of its reason. */
function scale(
  id: string,
  kind: ScaleDef['kind'],
  zones: readonly string[],
  expected: string,
  build: (context: ExpectContext) => {
    ends: Ends;
    nominal?: number;
    why: string;
    params: Record<string, number>;
  },
): ScaleDef {
  return {
    id,
    kind,
    zones,
    build(context) {
      const { ends, nominal, why, params } = build(context);
      const reasons: MessageRef[] = [{ id: why, params }];
      return {
        ok: true,
        scale: scaleOf(id, kind, ends, {
          expected,
          ...(nominal === undefined ? {} : { nominal }),
          why: reasons,
          uses: params,
          overRange: zones.at(-1)!,
        }),
      };
    },
  };
}

const leg = scale('legs-leg', 'voltage', ['dead', 'low', 'ok', 'high'], 'ok', ({ sheet }) => {
  const nominal = nominalLeg(sheet);
  const params = {
    nominal,
    dead: deadShare * nominal,
    low: (1 - bandShare) * nominal,
    high: (1 + bandShare) * nominal,
  };
  return {
    ends: [
      ['dead', params.dead],
      ['low', params.low],
      ['ok', params.high],
      ['high', null],
    ],
    nominal,
    why: 'expected.legs.leg',
    params,
  };
});

/** The leg without the test load: `block.reading` is what it read with nothing on. */
const rise = (id: string, still: string) =>
  scale(id, 'voltage', ['low', 'ok', 'high'], 'ok', ({ sheet, readings }) => {
    const nominal = nominalLeg(sheet);
    const unloaded = readings[still] ?? nominal;
    const params = {
      unloaded,
      riseVolts: heaterRiseVolts,
      low: (1 - bandShare) * nominal,
      high: Math.min((1 + bandShare) * nominal, unloaded + heaterRiseVolts),
    };
    return {
      ends: [
        ['low', params.low],
        ['ok', params.high],
        ['high', null],
      ],
      nominal: unloaded,
      why: 'expected.legs.rise',
      params,
    };
  });

const amps = scale('legs-amps', 'current', ['ok', 'over'], 'ok', ({ sheet }) => {
  const params = { limit: legLimitAmps(sheet), nominal: nominalLeg(sheet) };
  return {
    ends: [
      ['ok', params.limit],
      ['over', null],
    ],
    why: 'expected.legs.amps',
    params,
  };
});

const testLoad = scale('legs-test-amps', 'current', ['none', 'ok'], 'ok', ({ sheet }) => {
  const nominal = testAmps(sheet);
  const params = { nominal, least: onShare * nominal };
  return {
    ends: [
      ['none', params.least],
      ['ok', null],
    ],
    nominal,
    why: 'expected.legs.testAmps',
    params,
  };
});

const neutralToGround = scale('legs-ng', 'voltage', ['ok', 'drop', 'floats'], 'ok', () => {
  const params = { most: neutralGround.ok, floats: neutralGround.floats };
  return {
    ends: [
      ['ok', params.most],
      ['drop', params.floats],
      ['floats', null],
    ],
    nominal: 0,
    why: 'expected.legs.neutralGround',
    params,
  };
});

const lowZ = scale('legs-ng-low-z', 'voltage', ['collapses', 'stays'], 'collapses', () => ({
  ends: [
    ['collapses', ghostVolts],
    ['stays', null],
  ],
  why: 'expected.legs.lowZ',
  params: { ghostVolts },
}));

/** Lowest or highest volts that the meter held through a start, against what the leg read before. */
const held = (id: string, before: string, way: 'lowest' | 'highest') =>
  scale(
    id,
    'voltage',
    way === 'lowest' ? ['deep', 'dip', 'steady'] : ['steady', 'rises'],
    'steady',
    ({ sheet, readings }) => {
      const stood = readings[before] ?? nominalLeg(sheet);
      const params = {
        stood,
        deep: (1 - dips.deep) * stood,
        seen: (1 - dips.seen) * stood,
        rises: stood + startRiseVolts,
      };
      return {
        ends:
          way === 'lowest'
            ? [
                ['deep', params.deep],
                ['dip', params.seen],
                ['steady', null],
              ]
            : [
                ['steady', params.rises],
                ['rises', null],
              ],
        nominal: stood,
        why: way === 'lowest' ? 'expected.legs.lowest' : 'expected.legs.highest',
        params,
      };
    },
  );

/** Volts along one hot conductor of the feeder, end to end, with the test load on it. */
const runDrop = (id: string, reading: string) =>
  scale(id, 'voltage', ['small', 'large'], 'small', ({ sheet, readings }) => {
    const current = readings[reading] ?? testAmps(sheet);
    const ohms = (feederOhms(sheet) ?? 2 * endsOhms) + endsOhms;
    const params = { current, ohms, most: poorTimes * ohms * current };
    return {
      ends: [
        ['small', params.most],
        ['large', null],
      ],
      nominal: ohms * current,
      why: 'expected.legs.runDrop',
      params,
    };
  });

/** Bands of the legs, of the test load, and of the neutral against ground. */
export const legScales: readonly ScaleDef[] = [
  leg,
  rise('legs-rise', 'panel-still.v2'),
  rise('legs-rise-2', 'panel-still.v1'),
  amps,
  testLoad,
  neutralToGround,
  lowZ,
  held('legs-lowest', 'panel-legs.v1', 'lowest'),
  held('legs-lowest-2', 'panel-legs.v2', 'lowest'),
  held('legs-lowest-line', 'panel-line.v1', 'lowest'),
  held('legs-highest', 'panel-legs.v1', 'highest'),
  held('legs-highest-2', 'panel-legs.v2', 'highest'),
  runDrop('legs-run-drop', 'out-loaded.amps'),
  runDrop('legs-run-drop-2', 'leg-2-loaded.amps'),
];
