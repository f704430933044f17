import { minimumInsulationFor } from '../../worksheets/pv/insulation.ts';
import type { ScaleDef } from '../context.ts';
import { noCurrentRule, pvZeroAmps } from '../no-current.ts';
import { scaleOf } from './build.ts';
import { cellLimits, ratedWatts, runString } from './site.ts';

/** A tracker that tries draws more than this; less is a clamp's own noise [A]. Common practice. */
export const tryAmps = 0.15;
/** Less PV power than this is a tracker that waits: the larger of a few watts and this share of the rating. Common practice. */
const idlePower = { watts: 10, share: 0.005 };
/** A tracker that follows a load added by hand gives at least this much more [W]; clouds move less in a minute of steady light. Common practice. */
const followWatts = 100;

const stringClamp: ScaleDef = {
  id: 'pv-string-clamp',
  kind: 'current',
  zones: ['backward', 'zero', 'flows'],
  build(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const iscAmps = run.string.iscA * run.string.parallel;
    const params = { zeroAmps: pvZeroAmps, iscAmps, parallel: run.string.parallel };
    return {
      ok: true,
      scale: scaleOf(
        'pv-string-clamp',
        'current',
        [
          // An end belongs to the zone below it; here it is to count as none, as on the other side.
          ['backward', -pvZeroAmps - Number.EPSILON],
          ['zero', pvZeroAmps],
          ['flows', null],
        ],
        {
          ...noCurrentRule(context.sheet, pvZeroAmps, { id: 'expected.pv.stringClamp', params }),
          uses: params,
        },
      ),
    };
  },
};

/** During one start: a tracker that loads the string at all. */
const tryScale: ScaleDef = {
  id: 'pv-try-amps',
  kind: 'current',
  zones: ['backward', 'none', 'some'],
  build: () => ({
    ok: true,
    scale: scaleOf(
      'pv-try-amps',
      'current',
      [
        ['backward', -pvZeroAmps],
        ['none', tryAmps],
        ['some', null],
      ],
      {
        expected: 'some',
        why: [{ id: 'expected.pv.tryAmps', params: { tryAmps } }],
        uses: { tryAmps },
        overRange: 'some',
      },
    ),
  }),
};

const making: ScaleDef = {
  id: 'pv-making',
  kind: 'power',
  zones: ['none', 'making'],
  build(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const idle = Math.max(idlePower.watts, idlePower.share * ratedWatts(run.string));
    const params = { idleWatts: idle, ratedWatts: ratedWatts(run.string) };
    return {
      ok: true,
      scale: scaleOf(
        'pv-making',
        'power',
        [
          ['none', idle],
          ['making', null],
        ],
        { expected: 'making', why: [{ id: 'expected.pv.making', params }], uses: params },
      ),
    };
  },
};

const afterLoad: ScaleDef = {
  id: 'pv-after-load',
  kind: 'power',
  zones: ['same', 'rises'],
  build({ readings }) {
    const beforeWatts = readings['load-before.watts'] ?? 0;
    const params = { beforeWatts, followWatts, low: beforeWatts + followWatts };
    return {
      ok: true,
      scale: scaleOf(
        'pv-after-load',
        'power',
        [
          ['same', params.low],
          ['rises', null],
        ],
        { expected: 'rises', why: [{ id: 'expected.pv.afterLoad', params }], uses: params },
      ),
    };
  },
};

const cellTemp: ScaleDef = {
  id: 'pv-cell-temp',
  kind: 'temperature',
  zones: ['too-cold', 'cool', 'warm', 'too-hot'],
  build: () => ({
    ok: true,
    scale: scaleOf(
      'pv-cell-temp',
      'temperature',
      [
        ['too-cold', cellLimits.lowC],
        ['cool', 25],
        ['warm', cellLimits.highC],
        ['too-hot', null],
      ],
      {
        expected: 'warm',
        why: [{ id: 'expected.pv.cellTemp', params: cellLimits }],
        uses: cellLimits,
        overRange: 'too-hot',
      },
    ),
  }),
};

const insulationOhms: ScaleDef = {
  id: 'pv-insulation-ohms',
  kind: 'resistance',
  zones: ['leak', 'sound'],
  build(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const rated = run.string.modulesInSeries * run.string.vocV;
    const { testVolts, leastOhms } = minimumInsulationFor(rated);
    const least = Math.max(leastOhms, context.sheet.inverter.insulationLimitOhm ?? 0);
    const params = { testVolts, leastOhms: least, ratedVolts: rated };
    return {
      ok: true,
      scale: scaleOf(
        'pv-insulation-ohms',
        'resistance',
        [
          ['leak', least],
          ['sound', null],
        ],
        {
          expected: 'sound',
          why: [{ id: 'expected.pv.insulationOhms', params }],
          uses: params,
          overRange: 'sound',
        },
      ),
    };
  },
};

/** Amps, watts, temperature and ohms of a PV string. */
export const otherScales: readonly ScaleDef[] = [
  stringClamp,
  tryScale,
  making,
  afterLoad,
  cellTemp,
  insulationOhms,
];
