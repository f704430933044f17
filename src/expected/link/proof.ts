import type { ExpectContext, ScaleDef, WaitDef } from '../context.ts';
import { scaleOf } from '../pv/build.ts';

const minute = 60;
/** Where neither label nor setting says one: the longest time-out in common use [s]. Common practice. */
const silentTimeOutS = 5 * minute;
/** A time-out longer than this is none that a person would wait for [s]. Common practice. */
const longestTimeOutS = 600;
/** What a hand and a watch add [s], and what a unit may take to believe a link again [s]. Common practice. */
const slack = { hand: 5, again: 60 };
/** A link that came and went is held under load for this long [s]. Common practice. */
export const steadyS = 30 * minute;
/** Charging under this share of what is permitted tells nothing of whether the limit is kept. Common practice. */
const hardShare = 0.6;
/** Up to this [A] the packs permit no charge at all. Common practice. */
const permitsNone = 0.5;
/** A clamp and a unit's own shunt may differ by this share, and never by less than this [A]. Common practice. */
const overBy = { share: 0.05, amps: 2 };

const timeOut = ({ readings }: ExpectContext): number => readings['time-out.seconds'] ?? silentTimeOutS;

function timed(id: string, most: (context: ExpectContext) => number, why: string): ScaleDef {
  return {
    id,
    kind: 'time',
    zones: ['in-time', 'late'],
    build(context) {
      const params = { most: most(context), timeOut: timeOut(context) };
      return {
        ok: true,
        scale: scaleOf(
          id,
          'time',
          [
            ['in-time', params.most],
            ['late', null],
          ],
          { expected: 'in-time', why: [{ id: why, params }], uses: params },
        ),
      };
    },
  };
}

/** Charge amps that the packs permit, as the inverter shows them, against the packs' label. */
const permitted: ScaleDef = {
  id: 'link-permitted',
  kind: 'current',
  zones: ['none', 'some', 'over-label'],
  build({ sheet: { battery } }) {
    const params = { label: battery.packs * battery.packContinuousA, packs: battery.packs };
    return {
      ok: true,
      scale: scaleOf(
        'link-permitted',
        'current',
        [
          ['none', permitsNone],
          ['some', params.label * (1 + overBy.share)],
          ['over-label', null],
        ],
        { expected: 'some', why: [{ id: 'expected.link.permitted', params }], uses: params },
      ),
    };
  },
};

/** The clamp while the bank charges hard, against what the packs permit. */
const chargeAmps: ScaleDef = {
  id: 'link-charge-amps',
  kind: 'current',
  zones: ['little', 'kept', 'over'],
  build({ readings, sheet: { battery } }) {
    const label = battery.packs * battery.packContinuousA;
    const permits = Math.min(readings['permitted.amps'] ?? label, label);
    const most = permits + Math.max(overBy.amps, overBy.share * permits);
    // Where none is permitted, no current at all is the limit kept: there is no such thing as too little.
    const none = permits <= permitsNone;
    const params: Record<string, number> = none
      ? { permits, most }
      : { permits, enough: hardShare * permits, most };
    return {
      ok: true,
      scale: scaleOf(
        'link-charge-amps',
        'current',
        [...(none ? [] : ([['little', hardShare * permits]] as const)), ['kept', most], ['over', null]],
        {
          expected: 'kept',
          why: [{ id: none ? 'expected.link.chargeNone' : 'expected.link.chargeAmps', params }],
          uses: params,
          overRange: 'over',
        },
      ),
    };
  },
};

const statedTimeOut: ScaleDef = {
  id: 'link-time-out',
  kind: 'time',
  zones: ['stated', 'long'],
  build: () => {
    const params = { longest: longestTimeOutS, silent: silentTimeOutS };
    return {
      ok: true,
      scale: scaleOf(
        'link-time-out',
        'time',
        [
          ['stated', longestTimeOutS],
          ['long', null],
        ],
        { expected: 'stated', why: [{ id: 'expected.link.timeOut', params }], uses: params },
      ),
    };
  },
};

/** How a link shows that it is one. */
export const proofScales: readonly ScaleDef[] = [
  statedTimeOut,
  timed('link-alarm-after', (context) => timeOut(context) + slack.hand, 'expected.link.alarmAfter'),
  timed('link-clears-after', (context) => timeOut(context) + slack.again, 'expected.link.clearsAfter'),
  permitted,
  chargeAmps,
];

export const linkWaits: readonly WaitDef[] = [
  /** From a plug in or a setting changed to data on the screen. */
  { id: 'link-settle', seconds: () => minute },
  /** Devices switched off hold their supplies up for a while. */
  { id: 'link-off', seconds: () => 90 },
  /** Long enough to miss a drop-out that came and went before; a link that was down all the time answers in a minute. */
  {
    id: 'link-watch',
    seconds: ({ outcomes }) => (outcomes.symptom === 'comes-goes' ? steadyS : minute),
  },
  { id: 'link-steady', seconds: () => steadyS },
];
