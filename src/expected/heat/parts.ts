import type { ScaleDef } from '../context.ts';
import { heatScale } from './build.ts';
import { allowedWattsOf, fanStartOf, idleOf, latest, roomOf } from './site.ts';

/** A unit under this share of its rating is at rest, over the second it carries more than its label says. Common practice. */
const outputShares = { idle: 0.05, over: 1.05 };
/** At a re-test at least this share of the load that was there when it failed. Common practice. */
const asLoadedShare = 0.9;
/** No screen shows a load or charge of nothing as less than this. */
const nothingLess = { power: 500, current: 5 };
/** A battery taking no more than this takes none [A]. Common practice. */
const noChargeAmps = 3;
/** No heatsink is this much colder than the air it stands in [°C]. */
const colderThanAirC = 10;
/** Fans that are due have started when the heatsink is this far past their start [°C]. Common practice. */
const pastStartC = 5;
/** A screen and a taped fin agree within this at rest [°C]; under load the inside is hotter by up to the second. Common practice. */
const finWithin = { restC: 10, loadC: 30 };
/** Jackets of two poles that carry the same amps: 5 °C apart, and what one thermometer adds [°C]. Common practice. */
const twinC = 8;
/** Ordinary 90 °C cable under its jacket stays below this at the surface [°C]. Common practice. */
const jacketC = 70;
/** Volt-amps that a load of ordinary power factor draws beside its watts. Common practice. */
const ordinaryVa = { ratio: 1.4, va: 100 };
/** A screen that shows less than this at rest does not count the unit itself [W]. Common practice. */
const countsNothingWatts = 5;
/** Idle draw may stand this far over the sheet's figure. Common practice. */
const idleOver = { share: 0.3, watts: 25 };
/** Electronics of one pack [W]. Common practice. */
const packWatts = 10;
/** Between units at rest up to this flows by their own capacitors [A]; together it cancels to a third of one unit's. Common practice. */
const together = { amps: 1, share: 1 / 3 };

const output = heatScale('heat-output', 'power', ['idle', 'working', 'over'], ({ sheet }) => {
  const { ratedW } = sheet.inverter;
  const params = { ratedW, idle: outputShares.idle * ratedW, over: outputShares.over * ratedW };
  return {
    edges: [
      ['idle', params.idle],
      ['working', params.over],
      ['over', null],
    ],
    expected: 'working',
    why: 'expected.heat.output',
    params,
  };
});

const charge = heatScale('heat-charge', 'current', ['none', 'some'], () => ({
  edges: [
    ['none', noChargeAmps],
    ['some', null],
  ],
  expected: 'none',
  why: 'expected.heat.charge',
  params: { most: noChargeAmps },
}));

/** What was there when it failed, to be there again. */
const again = (kind: 'power' | 'current', before: number, why: string) => {
  const least = asLoadedShare * before;
  return {
    // A figure of nothing is met by nothing, whatever the last digit of the screen.
    edges: [
      ['lighter', least > 0 ? least : -nothingLess[kind]],
      ['as-loaded', null],
    ] as const,
    expected: 'as-loaded',
    nominal: before,
    why,
    params: { before, least },
  };
};

/** The load of the complaint, as far as label and height allow it; where it was never read, all that they allow. */
const outputAgain = heatScale('heat-output-again', 'power', ['lighter', 'as-loaded'], (context) => {
  const { sheet, readings } = context;
  const { fullPowerToM, ratedW } = sheet.inverter;
  const allowed =
    sheet.altitudeM === null || fullPowerToM === null
      ? ratedW
      : allowedWattsOf(sheet, sheet.altitudeM, fullPowerToM);
  const before = readings['numbers.watts'];
  if (before === undefined) return again('power', allowed, 'expected.heat.outputAgainNotRead');
  if (before > allowed) return again('power', allowed, 'expected.heat.outputAgainAllowed');
  return again('power', before, 'expected.heat.outputAgain');
});

const chargeAgain = heatScale('heat-charge-again', 'current', ['lighter', 'as-loaded'], ({ readings }) =>
  again('current', readings['numbers.charge'] ?? 0, 'expected.heat.chargeAgain'),
);

/** The heatsink on the screen, against the temperature at which the fans start and a margin past it. */
const sink = (id: string, pastC: number) =>
  heatScale(id, 'temperature', ['colder-than-air', 'below-start', 'past-start'], (context) => {
    const { sheet } = context;
    const airC = roomOf(context) ?? sheet.climate.usualLowC ?? sheet.climate.recordLowC;
    const params = { startC: fanStartOf(sheet) + pastC, lowC: airC - colderThanAirC };
    return {
      edges: [
        ['colder-than-air', params.lowC],
        ['below-start', params.startC],
        ['past-start', null],
      ],
      expected: 'below-start',
      why: sheet.inverter.fanStartC === null ? 'expected.heat.sinkAssumed' : 'expected.heat.sink',
      params,
    };
  });

/** A taped fin beside the screen's own figure. */
const fin = (id: string, belowC: number, why: string, screens: readonly string[]) =>
  heatScale(id, 'temperature', ['screen-high', 'agree', 'screen-low'], (context) => {
    const screenC = latest(context, screens) ?? fanStartOf(context.sheet);
    const params = { screenC, low: screenC - belowC, high: screenC + finWithin.restC };
    return {
      edges: [
        ['screen-high', params.low],
        ['agree', params.high],
        ['screen-low', null],
      ],
      expected: 'agree',
      nominal: screenC,
      why,
      params,
    };
  });

const finStart = heatScale('heat-fin-start', 'temperature', ['below-start', 'past-start'], ({ sheet }) => {
  const params = { startC: fanStartOf(sheet) + pastStartC };
  return {
    edges: [
      ['below-start', params.startC],
      ['past-start', null],
    ],
    expected: 'below-start',
    why: 'expected.heat.finStart',
    params,
  };
});

const jacket = heatScale('heat-jacket', 'temperature', ['cool-enough', 'too-hot-jacket'], () => ({
  edges: [
    ['cool-enough', jacketC],
    ['too-hot-jacket', null],
  ],
  expected: 'cool-enough',
  why: 'expected.heat.jacket',
  params: { most: jacketC },
}));

const joint = heatScale('heat-joint', 'temperature', ['colder', 'alike', 'hot'], (context) => {
  const twin =
    latest(context, ['retest-twin.cooler', 'twin-heat.cooler']) ?? context.sheet.climate.usualHighC;
  const params = { twin, low: twin - twinC, high: twin + twinC };
  return {
    edges: [
      ['colder', params.low],
      ['alike', params.high],
      ['hot', null],
    ],
    expected: 'alike',
    nominal: twin,
    why: 'expected.heat.joint',
    params,
  };
});

const va = heatScale('heat-va', 'apparentPower', ['like-watts', 'more'], ({ sheet, readings }) => {
  const { ratedW, fanStartLoad } = sheet.inverter;
  const watts = Math.max(0, readings['numbers.watts'] ?? 0);
  const most = Math.max(ordinaryVa.ratio * watts + ordinaryVa.va, (fanStartLoad ?? 0) * ratedW);
  return {
    edges: [
      ['like-watts', most],
      ['more', null],
    ],
    expected: 'like-watts',
    nominal: watts,
    why: 'expected.heat.va',
    params: { watts, most },
  };
});

const restWatts = heatScale('heat-rest-watts', 'power', ['none', 'ok', 'high'], ({ sheet }) => {
  const idle = idleOf(sheet);
  const each = idle.assumed
    ? 2 * idle.watts
    : idle.watts + Math.max(idleOver.share * idle.watts, idleOver.watts);
  const params = {
    units: sheet.parallelUnits,
    idleWatts: idle.watts,
    high: sheet.parallelUnits * each + sheet.battery.packs * packWatts,
  };
  return {
    edges: [
      ['none', countsNothingWatts],
      ['ok', params.high],
      ['high', null],
    ],
    expected: 'ok',
    nominal: sheet.parallelUnits * idle.watts,
    why: idle.assumed ? 'expected.heat.restAssumed' : 'expected.heat.rest',
    params,
  };
});

const clampTogether = heatScale('heat-together', 'current', ['cancels', 'adds'], ({ readings }) => {
  const one = readings['clamp-one.largest'] ?? together.amps;
  const params = { one, most: Math.max(together.amps, together.share * one) };
  return {
    edges: [
      ['cancels', params.most],
      ['adds', null],
    ],
    expected: 'cancels',
    nominal: 0,
    why: 'expected.heat.together',
    params,
  };
});

/** Load, charge, heatsink, cables and what flows at rest. */
export const partScales: readonly ScaleDef[] = [
  output,
  charge,
  outputAgain,
  chargeAgain,
  sink('heat-sink', 0),
  sink('heat-sink-due', pastStartC),
  fin('heat-fin-rest', finWithin.restC, 'expected.heat.finRest', ['sink-rest.sink']),
  fin('heat-fin-load', finWithin.loadC, 'expected.heat.finLoad', ['sink-at-it.sink', 'sink-silent.sink']),
  finStart,
  jacket,
  joint,
  va,
  restWatts,
  clampTogether,
];
