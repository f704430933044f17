import { pairLimits, pairOhms, usualEndOhms } from '../../worksheets/link/pair-ohms.ts';
import type { ExpectContext, ScaleDef } from '../context.ts';
import { scaleOf } from '../pv/build.ts';

/** Up to this a port's pin shows nothing; a pin of an idle or talking CAN port stands between the next two [V]. ISO 11898-2, from memory. */
const canPin = { nothing: 0.5, low: 1.2, high: 3.6 };
/** Volts between the wires that every receiver of a serial pair takes one way [V]. TIA-485-A, from memory. */
const serialVolts = 0.2;
/** Between the wires of a pair whose devices are off stands less than this [V]; more spoils an ohms reading. Common practice. */
const offVolts = 0.05;
/** A wire of a data lead: contacts and what a metre of thin copper adds, there and back by the meter's leads [Ω]. Common practice. */
const wireOhms = { contacts: 2, perMetre: 0.15, poor: 1000 };

const fixed = (
  id: string,
  kind: ScaleDef['kind'],
  edges: readonly (readonly [string, number | null])[],
  rest: { expected: string; nominal?: number; why: string; overRange?: string },
): ScaleDef => ({
  id,
  kind,
  zones: edges.map(([zone]) => zone),
  build: () => {
    const params = Object.fromEntries(
      edges.flatMap(([zone, max]) => (max === null ? [] : [[zone.replaceAll('-', ''), max]])),
    ) as Record<string, number>;
    const { why, ...more } = rest;
    return {
      ok: true,
      scale: scaleOf(id, kind, edges, { ...more, why: [{ id: why, params }], uses: params }),
    };
  },
});

const lengthOf = ({ sheet }: ExpectContext): number => sheet.dataLink.lengthM ?? 10;

/** Between the two data wires, both plugs in, both devices off. */
const bothIn: ScaleDef = {
  id: 'link-ends',
  kind: 'resistance',
  zones: ['shorted', 'many', 'good', 'between', 'one', 'none'],
  build() {
    const ohms = (resistors: number) => pairOhms({ resistors, endOhms: usualEndOhms })!;
    const params = {
      one: ohms(1),
      two: ohms(2),
      three: ohms(3),
      low: pairLimits.many,
      high: pairLimits.good,
    };
    return {
      ok: true,
      scale: scaleOf(
        'link-ends',
        'resistance',
        [
          ['shorted', pairLimits.shorted],
          ['many', pairLimits.many],
          ['good', pairLimits.good],
          ['between', pairLimits.between],
          ['one', pairLimits.one],
          ['none', null],
        ],
        {
          expected: 'good',
          nominal: params.two,
          why: [{ id: 'expected.link.ends', params }],
          uses: params,
          overRange: 'none',
        },
      ),
    };
  },
};

/** One side alone: with the plug out, and the end resistors inside the devices at the ends. */
const oneSide: ScaleDef = {
  id: 'link-one-end',
  kind: 'resistance',
  zones: ['shorted', 'two', 'between', 'one', 'none'],
  build() {
    const params = {
      one: usualEndOhms,
      two: usualEndOhms / 2,
      low: pairLimits.between,
      high: pairLimits.one,
    };
    return {
      ok: true,
      scale: scaleOf(
        'link-one-end',
        'resistance',
        [
          ['shorted', pairLimits.shorted],
          ['two', pairLimits.good],
          ['between', pairLimits.between],
          ['one', pairLimits.one],
          ['none', null],
        ],
        {
          expected: 'one',
          nominal: usualEndOhms,
          why: [{ id: 'expected.link.oneEnd', params }],
          uses: params,
          overRange: 'none',
        },
      ),
    };
  },
};

/** One wire of the lead, out of both sockets. `joined` or `open` is right according to which two pins are meant. */
const wire = (id: string, expected: 'joined' | 'open'): ScaleDef => ({
  id,
  kind: 'resistance',
  zones: ['joined', 'poor', 'open'],
  build(context) {
    const most = wireOhms.contacts + wireOhms.perMetre * lengthOf(context);
    const params = { most, open: wireOhms.poor };
    return {
      ok: true,
      scale: scaleOf(
        id,
        'resistance',
        [
          ['joined', most],
          ['poor', wireOhms.poor],
          ['open', null],
        ],
        {
          expected,
          why: [{ id: `expected.link.wire.${expected}`, params }],
          uses: params,
          overRange: 'open',
        },
      ),
    };
  },
});

/** What a meter finds on the two data wires. */
export const pairScales: readonly ScaleDef[] = [
  bothIn,
  oneSide,
  wire('link-wire-joined', 'joined'),
  wire('link-wire-apart', 'open'),
  fixed(
    'link-can-pin',
    'voltage',
    [
      ['none', canPin.nothing],
      ['low', canPin.low],
      ['ok', canPin.high],
      ['high', null],
    ],
    { expected: 'ok', nominal: 2.5, why: 'expected.link.canPin' },
  ),
  fixed(
    'link-serial-idle',
    'voltage',
    [
      ['negative', -serialVolts],
      ['weak', serialVolts],
      ['positive', null],
    ],
    { expected: 'positive', why: 'expected.link.serialIdle' },
  ),
  fixed(
    'link-pair-off',
    'voltage',
    [
      ['off', offVolts],
      ['fed', null],
    ],
    { expected: 'off', nominal: 0, why: 'expected.link.pairOff', overRange: 'fed' },
  ),
];
