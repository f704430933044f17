import type { ExpectContext, ScaleDef } from './context.ts';
import { earlierReading } from './earlier.ts';
import { scaleOf } from './pv/build.ts';

/** At or below this, with the meter's own uncertainty added, a pair counts as dead [V]. This project's choice; safety rule I2. */
export const deadVolts = 3;
/** A dead pair may creep up by no more than this in half a minute [V]. This project's choice; safety rule I2. */
const creepVolts = 1;
/** A proving source gives at least this much; less proves too little of a tester [V]. Common practice. */
const provingVolts = 24;

/** Dead, or not: the same threshold on the direct and on the alternating range. */
function dead(id: string): ScaleDef {
  return {
    id,
    kind: 'voltage',
    zones: ['dead', 'live'],
    build: () => ({
      ok: true,
      scale: scaleOf(
        id,
        'voltage',
        [
          ['dead', deadVolts],
          ['live', null],
        ],
        {
          expected: 'dead',
          nominal: 0,
          why: [{ id: 'expected.dead', params: { deadVolts } }],
          uses: { deadVolts },
          overRange: 'live',
        },
      ),
    }),
  };
}

/** The same pair half a minute on: charge that comes back shows as a rise. */
function notRising(id: string, step: string): ScaleDef {
  return {
    id,
    kind: 'voltage',
    zones: ['steady', 'rising'],
    build(context: ExpectContext) {
      const first = earlierReading(context, 'prove-dead', step, 'plus-minus-dc') ?? deadVolts - creepVolts;
      const most = Math.min(deadVolts, first + creepVolts);
      const params = { first, most, creepVolts, deadVolts };
      return {
        ok: true,
        scale: scaleOf(
          id,
          'voltage',
          [
            ['steady', most],
            ['rising', null],
          ],
          {
            expected: 'steady',
            why: [{ id: 'expected.notRising', params }],
            uses: params,
            overRange: 'rising',
          },
        ),
      };
    },
  };
}

/** A proving source, which gives the volts printed on it. */
function proving(id: string): ScaleDef {
  return {
    id,
    kind: 'voltage',
    zones: ['low', 'live'],
    build: () => ({
      ok: true,
      scale: scaleOf(
        id,
        'voltage',
        [
          ['low', provingVolts],
          ['live', null],
        ],
        {
          expected: 'live',
          why: [{ id: 'expected.proving', params: { provingVolts } }],
          uses: { provingVolts },
        },
      ),
    }),
  };
}

/** The battery side of the main switch as a known live source: the bank's own volts, all of them. */
const knownLiveBattery: ScaleDef = {
  id: 'known-live-battery',
  kind: 'voltage',
  zones: ['low', 'live', 'high'],
  build({ sheet: { battery } }) {
    const params = {
      cells: battery.cellsInSeries,
      low: battery.cellsInSeries * battery.cellMinV,
      high: battery.cellsInSeries * battery.cellMaxV,
    };
    return {
      ok: true,
      scale: scaleOf(
        'known-live-battery',
        'voltage',
        [
          ['low', params.low],
          ['live', params.high],
          ['high', null],
        ],
        {
          expected: 'live',
          why: [{ id: 'expected.knownLiveBattery', params }],
          uses: params,
          overRange: 'high',
        },
      ),
    };
  },
};

/** What proves a place dead, and what proves the tester. */
export const deadScales: readonly ScaleDef[] = [
  dead('dead-dc'),
  dead('dead-ac'),
  notRising('not-rising-dc', 'dc-dead'),
  notRising('not-rising-pv', 'pv-dead'),
  proving('known-live-dc'),
  proving('known-live-ac'),
  knownLiveBattery,
];
