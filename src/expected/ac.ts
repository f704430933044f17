import { acNominal } from '../site/ac.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { ScaleDef } from './context.ts';
import { earlierReading } from './earlier.ts';
import { scaleOf } from './pv/build.ts';

/** Service volts may stand this far from nominal. ANSI C84.1, range A. */
const legShare = 0.05;
/** Legs in step read this little between them [V]. This project's choice; safety rule I25. */
const inStepVolts = 5;
/** A stand-alone inverter keeps its frequency far closer; a meter that shows tenths needs this much [Hz]. Common practice. */
const withinHz = 0.3;
/** With the bond at the source in use, a neutral stands this close to ground [V]. Common practice. */
const neutralGroundVolts = 2;
/** A circuit may lose 5 % of its volts under load, half of it in the neutral. Common practice. */
const neutralDropShare = 0.025;
/** Of the test load's current, the most that may come back by the grounding conductor. Common practice. */
const strayShare = 0.1;
/** The test load of the output check [W]. */
export const testLoadWatts = 1000;
/** What the other leg may gain from one test load on a sound neutral, a long feeder included [V]. Common practice. */
const lightLegRiseVolts = 3;
/** Current between units at no load that is their own capacitors and no quarrel [A]. Common practice. */
const circulatingAmps = 1;

const nominalOf = (sheet: SiteSheet) => acNominal[sheet.inverter.topology];

/** One leg to neutral. */
const legVolts: ScaleDef = {
  id: 'leg-volts',
  kind: 'voltage',
  zones: ['low', 'ok', 'high'],
  build({ sheet }) {
    const nominal = nominalOf(sheet).legToNeutralV;
    const params = { nominal, low: (1 - legShare) * nominal, high: (1 + legShare) * nominal };
    return {
      ok: true,
      scale: scaleOf(
        'leg-volts',
        'voltage',
        [
          ['low', params.low],
          ['ok', params.high],
          ['high', null],
        ],
        {
          expected: 'ok',
          nominal,
          why: [{ id: 'expected.legVolts', params }],
          uses: params,
          overRange: 'high',
        },
      ),
    };
  },
};

/** Leg to leg. Read first: it tells how the legs stand to each other. */
const legToLeg: ScaleDef = {
  id: 'v12',
  kind: 'voltage',
  zones: ['low', 'ok', 'high'],
  build({ sheet }) {
    const nominal = nominalOf(sheet).legToLegV ?? 0;
    const common = nominal === 0;
    const params = {
      nominal,
      // Legs in step read nothing between them: there is no "too low".
      low: common ? -1 : (1 - legShare) * nominal,
      high: common ? inStepVolts : (1 + legShare) * nominal,
    };
    const why = common ? 'expected.legsInStep' : 'expected.legToLeg';
    return {
      ok: true,
      scale: scaleOf(
        'v12',
        'voltage',
        [
          ['low', params.low],
          ['ok', params.high],
          ['high', null],
        ],
        { expected: 'ok', nominal, why: [{ id: why, params }], uses: params, overRange: 'high' },
      ),
    };
  },
};

/** The leg without the test load: on a lost neutral it rises. */
const legRise: ScaleDef = {
  id: 'leg-rise',
  kind: 'voltage',
  zones: ['low', 'ok', 'high'],
  build(context) {
    const nominal = nominalOf(context.sheet).legToNeutralV;
    const unloaded = earlierReading(context, 'neutral-proof', 'unloaded', 'v2') ?? nominal;
    const params = {
      nominal,
      unloaded,
      low: (1 - legShare) * nominal,
      high: Math.min((1 + legShare) * nominal, unloaded + lightLegRiseVolts),
      riseVolts: lightLegRiseVolts,
    };
    return {
      ok: true,
      scale: scaleOf(
        'leg-rise',
        'voltage',
        [
          ['low', params.low],
          ['ok', params.high],
          ['high', null],
        ],
        {
          expected: 'ok',
          nominal: unloaded,
          why: [{ id: 'expected.legRise', params }],
          uses: params,
          overRange: 'high',
        },
      ),
    };
  },
};

const outputHz: ScaleDef = {
  id: 'output-hz',
  kind: 'frequency',
  zones: ['low', 'ok', 'high'],
  build({ sheet }) {
    const nominal = sheet.inverter.frequencyHz;
    const params = { nominal, low: nominal - withinHz, high: nominal + withinHz };
    return {
      ok: true,
      scale: scaleOf(
        'output-hz',
        'frequency',
        [
          ['low', params.low],
          ['ok', params.high],
          ['high', null],
        ],
        { expected: 'ok', nominal, why: [{ id: 'expected.outputHz', params }], uses: params },
      ),
    };
  },
};

/** A reading that should be next to nothing. */
function nextToNothing(
  id: string,
  kind: ScaleDef['kind'],
  why: string,
  most: (sheet: SiteSheet) => number,
): ScaleDef {
  return {
    id,
    kind,
    zones: ['ok', 'high'],
    build({ sheet }) {
      const params = { most: most(sheet) };
      return {
        ok: true,
        scale: scaleOf(
          id,
          kind,
          [
            ['ok', params.most],
            ['high', null],
          ],
          { expected: 'ok', nominal: 0, why: [{ id: why, params }], uses: params, overRange: 'high' },
        ),
      };
    },
  };
}

/** The AC output: legs, neutral, ground, and units that share it. */
export const acScales: readonly ScaleDef[] = [
  legVolts,
  legToLeg,
  legRise,
  outputHz,
  nextToNothing('n-g', 'voltage', 'expected.neutralGround', () => neutralGroundVolts),
  nextToNothing('n-g-loaded', 'voltage', 'expected.neutralGroundLoaded', (sheet) =>
    Math.max(neutralGroundVolts, neutralDropShare * nominalOf(sheet).legToNeutralV),
  ),
  nextToNothing(
    'egc-amps',
    'current',
    'expected.egcAmps',
    (sheet) => (strayShare * testLoadWatts) / nominalOf(sheet).legToNeutralV,
  ),
  nextToNothing('same-leg-apart', 'voltage', 'expected.sameLegApart', () => inStepVolts),
  nextToNothing('circulating-amps', 'current', 'expected.circulatingAmps', () => circulatingAmps),
];
