import type { ScaleDef } from '../context.ts';
import { heatScale } from './build.ts';
import {
  derateStartOf,
  inletOf,
  latest,
  lossOf,
  ratedLossOf,
  riseFor,
  roomOf,
  throughputOf,
} from './site.ts';

/** An inlet this far above the room breathes used air [°C]. Common practice, 5 to 10. */
const recirculatedC = 5;
/** In a stack: the part of the lower unit's own rise that may reach the upper inlet. Common practice. */
const stackShare = 1 / 3;
const leastStackC = 3;
/** An inlet this far above the exhaust below it is heated by something else [°C]. Common practice. */
const aboveExhaustC = 5;
/** Rise against what loss, airflow and height give: fans in place move 0.6 to 2 times the sheet's figure. Common practice. */
const riseShares = { low: 0.5, high: 1.6 };
/** Two readings with one thermometer, and eddies at the grille [°C]. Common practice. */
const readingC = 3;
/** Airflow not known: a unit in good order stays under this rise at rated load, and under the second at any load [°C]. Common practice. */
const usualRise = { ratedC: 20, leastC: 10 };
/** The unit's own least rise with its fans at work, airflow not known [°C]. Common practice. */
const someRiseC = 1;
/** Nothing else in the room [°C]: an exhaust hotter than this above it is read beside the stream. */
const noStackC = 60;

const room = heatScale('heat-room', 'temperature', ['ok', 'hot'], ({ sheet }) => {
  const params = { derateC: derateStartOf(sheet), usualHighC: sheet.climate.usualHighC };
  return {
    edges: [
      ['ok', params.derateC],
      ['hot', null],
    ],
    expected: 'ok',
    why: sheet.inverter.derateStartC === null ? 'expected.heat.roomAssumed' : 'expected.heat.room',
    params,
  };
});

const below = heatScale('heat-below', 'temperature', ['as-room', 'warmer'], (context) => {
  const roomC = roomOf(context) ?? context.sheet.climate.usualHighC;
  return {
    edges: [
      ['as-room', roomC + leastStackC],
      ['warmer', null],
    ],
    expected: 'warmer',
    why: 'expected.heat.below',
    params: { roomC, limitC: roomC + leastStackC },
  };
});

const inlet = heatScale(
  'heat-inlet',
  'temperature',
  ['as-room', 'warmer', 'hotter-than-exhaust'],
  (context) => {
    const roomC = roomOf(context) ?? context.sheet.climate.usualHighC;
    const belowC = latest(context, ['below-outlet.air']);
    const riseBelowC = belowC === undefined ? undefined : Math.max(0, belowC - roomC);
    const limitC =
      roomC + (riseBelowC === undefined ? recirculatedC : Math.max(leastStackC, stackShare * riseBelowC));
    const exhaustC = belowC === undefined ? roomC + noStackC : Math.max(limitC, belowC + aboveExhaustC);
    return {
      edges: [
        ['as-room', limitC],
        ['warmer', exhaustC],
        ['hotter-than-exhaust', null],
      ],
      expected: 'as-room',
      nominal: roomC,
      why: belowC === undefined ? 'expected.heat.inlet' : 'expected.heat.inletStacked',
      params: { roomC, limitC, exhaustC, belowC: belowC ?? roomC },
    };
  },
);

const outlet = heatScale('heat-outlet', 'temperature', ['cooler', 'ok', 'hotter'], (context) => {
  const { sheet } = context;
  const inletC = inletOf(context) ?? sheet.climate.usualHighC;
  const loss = lossOf(context);
  const { fanAirflowM3s } = sheet.inverter;
  const shared = { inletC, lossWatts: loss.likely, acWatts: throughputOf(context).acWatts };
  if (fanAirflowM3s === null) {
    const mostC = Math.max(usualRise.leastC, (usualRise.ratedC * loss.high) / ratedLossOf(sheet));
    return {
      edges: [
        ['cooler', inletC + someRiseC],
        ['ok', inletC + mostC + readingC],
        ['hotter', null],
      ],
      expected: 'ok',
      why: 'expected.heat.outletUnknownFlow',
      params: { ...shared, mostC, low: inletC + someRiseC, high: inletC + mostC + readingC },
    };
  }
  const { altitudeM } = sheet;
  if (altitudeM === null) return { ok: false, missing: ['altitudeM'] };
  const rise = (watts: number) => riseFor(watts, fanAirflowM3s, altitudeM, inletC);
  const low = inletC + Math.max(0, riseShares.low * rise(loss.low) - readingC);
  const high = inletC + riseShares.high * rise(loss.high) + readingC;
  return {
    edges: [
      ['cooler', low],
      ['ok', high],
      ['hotter', null],
    ],
    expected: 'ok',
    nominal: inletC + rise(loss.likely),
    why: 'expected.heat.outlet',
    params: { ...shared, airflowM3s: fanAirflowM3s, altitudeM, riseC: rise(loss.likely), low, high },
  };
});

/** The room, the exhaust of the unit below, the inlet and the outlet: each stands on the one before it. */
export const airScales: readonly ScaleDef[] = [room, below, inlet, outlet];
