import type { ExpectContext, ScaleDef } from './context.ts';
import { earlierReading } from './earlier.ts';
import { expectedTauS, sourceVolts } from './pre-charge-site.ts';
import { scaleOf } from './pv/build.ts';

/** The two sides of an open switch count as alike within this share of the source. This project's choice; safety rule I5. */
export const alikeShare = 0.05;
/** A bus pushed this far below zero is fed the wrong way round [V]. Common practice. */
const reversedVolts = -1;
/** Less than this on the bus is no charge worth speaking of [V]: the dead threshold. */
const unchargedVolts = 3;
/** A bus that only holds charge loses at least this share of its volts in a minute of waiting. Common practice. */
const fallShare = 0.1;

/** The empty side of an open switch, judged against the volts of the full one. */
const emptySide = (id: string, why: string, full: (context: ExpectContext) => number): ScaleDef => ({
  id,
  kind: 'voltage',
  zones: ['reversed', 'absent', 'apart', 'alike', 'above'],
  build(context) {
    const source = full(context);
    const params = { source, low: (1 - alikeShare) * source, high: (1 + alikeShare) * source };
    return {
      ok: true,
      scale: scaleOf(
        id,
        'voltage',
        [
          ['reversed', reversedVolts],
          ['absent', unchargedVolts],
          ['apart', params.low],
          ['alike', params.high],
          ['above', null],
        ],
        {
          expected: 'absent',
          nominal: 0,
          why: [{ id: why, params }],
          uses: params,
          overRange: 'above',
        },
      ),
    };
  },
});

const s2Fell: ScaleDef = {
  id: 's2-fell',
  kind: 'voltage',
  zones: ['fell', 'held'],
  build(context) {
    const before = earlierReading(context, 'pre-charge', 'sides', 's2') ?? sourceVolts(context);
    const params = { before, most: (1 - fallShare) * before };
    return {
      ok: true,
      scale: scaleOf(
        's2-fell',
        'voltage',
        [
          ['fell', params.most],
          ['held', null],
        ],
        { expected: 'fell', why: [{ id: 'expected.s2Fell', params }], uses: params, overRange: 'held' },
      ),
    };
  },
};

const s2Rise: ScaleDef = {
  id: 's2-rise',
  kind: 'voltage',
  zones: ['reversed', 'under', 'charged', 'above'],
  build(context) {
    const source = sourceVolts(context);
    const params = {
      source,
      low: (1 - alikeShare) * source,
      high: (1 + alikeShare) * source,
      fiveTauS: 5 * expectedTauS(context),
    };
    return {
      ok: true,
      scale: scaleOf(
        's2-rise',
        'voltage',
        [
          ['reversed', reversedVolts],
          ['under', params.low],
          ['charged', params.high],
          ['above', null],
        ],
        {
          expected: 'charged',
          nominal: source,
          why: [{ id: 'expected.s2Rise', params }],
          uses: params,
          overRange: 'above',
        },
      ),
    };
  },
};

/** What is left across an open switch once the empty side has filled. */
const across = (id: string, full: (context: ExpectContext) => number): ScaleDef => ({
  id,
  kind: 'voltage',
  zones: ['ok', 'apart'],
  build(context) {
    const source = full(context);
    const params = { source, most: alikeShare * source };
    return {
      ok: true,
      scale: scaleOf(
        id,
        'voltage',
        [
          ['ok', params.most],
          ['apart', null],
        ],
        { expected: 'ok', why: [{ id: 'expected.acrossMain', params }], uses: params, overRange: 'apart' },
      ),
    };
  },
});

/** The bus that a further unit joins: as read in that procedure, else as it stood at the main switch. */
const joinedBus = (context: ExpectContext): number =>
  earlierReading(context, 'join-unit-dc', 'bus', 'volts') ?? sourceVolts(context);

/** Both sides of the open main switch, before, during and after; the same for the switch of a further unit. */
export const preChargeScales: readonly ScaleDef[] = [
  emptySide('s2-before', 'expected.s2Before', sourceVolts),
  s2Fell,
  s2Rise,
  across('across-main', sourceVolts),
  emptySide('unit-before', 'expected.unitBefore', joinedBus),
  across('across-unit', joinedBus),
];
