import type { SiteSheet } from '../site/sheet.ts';
import type { ScaleDef } from './context.ts';
import { scales } from './index.ts';
import type { Scale } from './scale.ts';

/**
 * The card of expected readings: what each test point of a sound plant shows at the first power-up and at a fault call.
 * Each row is a reading that a guide or a procedure takes; a test holds the two together.
 */

export const cardVisits = ['firstPowerUp', 'faultCall'] as const;
export type CardVisit = (typeof cardVisits)[number];

/** A site that has what a row is of. */
type Where = 'twoLegs' | 'can' | 'serial' | 'packs';

export interface CardRow {
  readonly visit: CardVisit;
  /** The reading in its machine: `machine.step.reading`. */
  readonly of: string;
  /** What the plant is like, by its words' id. */
  readonly state: string;
  readonly point: string;
  readonly mode: 'dcVolts' | 'acVolts' | 'dcClamp' | 'frequency' | 'ohms' | 'display' | 'temperature';
  readonly scale: string;
  /** One row for each string. */
  readonly eachString?: true;
  readonly where?: Where;
}

const row = (
  visit: CardVisit,
  of: string,
  state: string,
  point: string,
  mode: CardRow['mode'],
  scale: string,
  more: Pick<CardRow, 'eachString' | 'where'> = {},
): CardRow => ({ visit, of, state, point, mode, scale, ...more });

const first = 'firstPowerUp';
const call = 'faultCall';
const twoLegs = { where: 'twoLegs' } as const;

/** In the order in which the points are read. */
export const cardRows: readonly CardRow[] = [
  row(first, 'pre-charge.sides.s1', 'lockedOut', 'S1', 'dcVolts', 'battery-volts'),
  row(first, 'pre-charge.sides.s2', 'lockedOut', 'S2', 'dcVolts', 's2-before'),
  row(first, 'pre-charge.rise.s2', 'mainOpen', 'S2', 'dcVolts', 's2-rise'),
  row(first, 'pre-charge.across.across', 'mainOpen', 'S-across-plus', 'dcVolts', 'across-main'),
  row(first, 'first-power-up.at-i.volts', 'batteryOnly', 'I', 'dcVolts', 'battery-volts'),
  row(first, 'first-power-up.screen.volts', 'batteryOnly', 'display', 'display', 'display-volts'),
  row(first, 'first-power-up.cells.coldest-cell', 'batteryOnly', 'display', 'display', 'charge-cell-temp'),
  row(first, 'first-power-up.cells.lowest-cell', 'batteryOnly', 'display', 'display', 'lowest-cell-volts'),
  row(first, 'ac-output-check.out-two.v12', 'noLoad', 'O-V12', 'acVolts', 'v12', twoLegs),
  row(first, 'ac-output-check.out-two.v1', 'noLoad', 'O-V1', 'acVolts', 'leg-volts'),
  row(first, 'ac-output-check.out-two.v2', 'noLoad', 'O-V2', 'acVolts', 'leg-volts', twoLegs),
  row(first, 'ac-output-check.steadiness.hz', 'noLoad', 'O-V1', 'frequency', 'output-hz'),
  row(first, 'ac-output-check.steadiness.ng', 'noLoad', 'O-NG', 'acVolts', 'n-g'),
  row(first, 'ac-output-check.idle.amps', 'noLoad', 'I-I', 'dcClamp', 'idle-amps'),
  row(first, 'string-check.p1.p1', 'pvOpen', 'P1', 'dcVolts', 'pv-string-volts', { eachString: true }),
  row(first, 'string-check.poles.plus', 'pvOpen', 'PG-plus', 'dcVolts', 'pole-to-ground', {
    eachString: true,
  }),
  row(call, 'battery-link.asleep-volts.volts', 'asFound', 'B', 'dcVolts', 'battery-volts'),
  row(call, 'uneven-legs.both-ends.bus', 'asFound', 'I', 'dcVolts', 'battery-volts'),
  row(call, 'pv-no-start.battery-screen.volts', 'asFound', 'display', 'display', 'battery-screen-volts'),
  row(call, 'uneven-legs.panel-legs.v12', 'asFound', 'D-V12', 'acVolts', 'v12', twoLegs),
  row(call, 'uneven-legs.panel-legs.v1', 'asFound', 'D-V1', 'acVolts', 'legs-leg'),
  row(call, 'uneven-legs.panel-legs.v2', 'asFound', 'D-V2', 'acVolts', 'legs-leg', twoLegs),
  row(call, 'fans-heat.rest-watts.watts', 'asFound', 'display', 'display', 'heat-rest-watts'),
  row(call, 'pv-no-start.volts-still.p1', 'asFound', 'P1', 'dcVolts', 'pv-string-volts', {
    eachString: true,
  }),
  row(call, 'pv-no-start.flowing.volts', 'asFound', 'P2', 'dcVolts', 'pv-loaded-volts', {
    eachString: true,
  }),
  row(call, 'pv-no-start.across-poles.plus', 'asFound', 'P-across-plus', 'dcVolts', 'pv-across-pole', {
    eachString: true,
  }),
  row(call, 'battery-link.on-volts.across', 'lockedOut', 'pack-breaker', 'dcVolts', 'pack-difference', {
    where: 'packs',
  }),
  row(call, 'battery-link.can-pack.high', 'running', 'C', 'dcVolts', 'link-can-pin', { where: 'can' }),
  row(call, 'battery-link.pack-bias.volts', 'running', 'C', 'dcVolts', 'link-serial-idle', {
    where: 'serial',
  }),
  row(call, 'battery-link.ends-ohms.ohms', 'lockedOut', 'C', 'ohms', 'link-ends', { where: 'can' }),
  row(call, 'prove-dead.dc-dead.plus-minus-dc', 'lockedOut', 'I', 'dcVolts', 'dead-dc'),
];

const has: Readonly<Record<Where, (sheet: SiteSheet) => boolean>> = {
  twoLegs: ({ inverter }) => inverter.topology !== 'single-230',
  can: ({ dataLink }) => dataLink.kind === 'can',
  serial: ({ dataLink }) => dataLink.kind === 'serial-485',
  packs: ({ battery }) => battery.packs > 1,
};

/** A row of the card for one site: its band, or the facts that are owed for it. */
export interface CardLine {
  readonly row: CardRow;
  /** Name of the string it is of. */
  readonly string?: string;
  readonly scale?: Scale;
  readonly missing: readonly string[];
}

/** The card for a site. A row whose facts are not known stands there without a band and says what it wants. */
export function cardOf(sheet: SiteSheet): readonly CardLine[] {
  return cardRows
    .filter(({ where }) => where === undefined || has[where](sheet))
    .flatMap((each) => {
      if (!each.eachString) return [lineOf(each, sheet)];
      return sheet.strings.map(({ name }) => lineOf(each, sheet, name));
    });
}

function lineOf(each: CardRow, sheet: SiteSheet, string?: string): CardLine {
  const def = scales[each.scale] as ScaleDef | undefined;
  if (!def) throw new Error(`no expectation is called "${each.scale}"`);
  const of = string === undefined ? {} : { string };
  const built = def.build({
    sheet,
    readings: {},
    outcomes: {},
    ...(string === undefined ? {} : { stringId: string }),
  });
  return built.ok
    ? { row: each, ...of, scale: built.scale, missing: [] }
    : { row: each, ...of, missing: built.missing };
}
