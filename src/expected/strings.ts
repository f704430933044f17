import { minimumInsulationFor } from '../worksheets/pv/insulation.ts';
import type { ScaleDef } from './context.ts';
import { earlierReading } from './earlier.ts';
import { scaleOf } from './pv/build.ts';
import { runString, stringVoc } from './pv/site.ts';

/** This far the other way round, a string is reversed [V]. Common practice. */
const reversedVolts = -5;
/** A string gives at least this share of its rated volts once there is any light to read by. Common practice. */
const lightShare = 0.2;
/** Strings alike read this close in the same minute. Common practice. */
const sisterShare = 0.02;
/** Input of an ordinary meter on volts [Ω]. Common practice. */
const usualMeterOhms = 10e6;

/** The lowest reading of all strings, signed: right way round, and below the input's limit. */
const polarity: ScaleDef = {
  id: 'string-polarity',
  kind: 'voltage',
  zones: ['reversed', 'absent', 'ok', 'over'],
  build({ sheet }) {
    if (sheet.strings.length === 0) return { ok: false, missing: ['strings'] };
    if (sheet.trackers.length === 0) return { ok: false, missing: ['trackers'] };
    const rated = Math.min(...sheet.strings.map((string) => string.modulesInSeries * string.vocV));
    const params = {
      low: lightShare * rated,
      high: Math.min(...sheet.trackers.map((tracker) => tracker.maxV)),
      rated,
      strings: sheet.strings.length,
    };
    return {
      ok: true,
      scale: scaleOf(
        'string-polarity',
        'voltage',
        [
          ['reversed', reversedVolts],
          ['absent', params.low],
          ['ok', params.high],
          ['over', null],
        ],
        {
          expected: 'ok',
          why: [{ id: 'expected.stringPolarity', params }],
          uses: params,
          overRange: 'over',
        },
      ),
    };
  },
};

/** Another string of the same make-up, in the same minute. */
const sister: ScaleDef = {
  id: 'sister-volts',
  kind: 'voltage',
  zones: ['low', 'ok', 'high'],
  build(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const own =
      earlierReading(context, 'string-check', 'own', 'own') ??
      earlierReading(context, 'string-check', 'p1', 'p1') ??
      stringVoc(run.string, 25);
    const params = { own, low: (1 - sisterShare) * own, high: (1 + sisterShare) * own };
    return {
      ok: true,
      scale: scaleOf(
        'sister-volts',
        'voltage',
        [
          ['low', params.low],
          ['ok', params.high],
          ['high', null],
        ],
        { expected: 'ok', nominal: own, why: [{ id: 'expected.sisterVolts', params }], uses: params },
      ),
    };
  },
};

/**
 * One pole to ground through the meter. A single leak of the least allowed resistance leaves the two poles sharing
 * Voc·R_m/(R_m + R); each may hold half of that. A leak at one end puts it all on one pole, so this asks on the safe side.
 */
const poleToGround: ScaleDef = {
  id: 'pole-to-ground',
  kind: 'voltage',
  zones: ['settled', 'steady'],
  build(context) {
    const run = runString(context);
    if (!run.ok) return run;
    const { string } = run;
    const rated = string.modulesInSeries * string.vocV;
    const voc = earlierReading(context, 'string-check', 'p1', 'p1') ?? rated;
    const meterOhms = context.sheet.meter.inputOhm ?? usualMeterOhms;
    const leastOhms = Math.max(
      minimumInsulationFor(rated).leastOhms,
      context.sheet.inverter.insulationLimitOhm ?? 0,
    );
    const params = { voc, meterOhms, leastOhms, most: (voc * meterOhms) / (meterOhms + leastOhms) / 2 };
    return {
      ok: true,
      scale: scaleOf(
        'pole-to-ground',
        'voltage',
        [
          ['settled', params.most],
          ['steady', null],
        ],
        {
          expected: 'settled',
          nominal: 0,
          why: [{ id: 'expected.poleToGround', params }],
          uses: params,
          overRange: 'steady',
        },
      ),
    };
  },
};

/** Strings behind their open isolators. */
export const stringScales: readonly ScaleDef[] = [polarity, sister, poleToGround];
