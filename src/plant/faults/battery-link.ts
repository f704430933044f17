import { cellOpenVolts } from '../battery/open-circuit.ts';
import type { LinkSpec } from '../link/spec.ts';
import type { Fault, Making, Severity } from './fault.ts';

const linked = ({ dataLink }: Making['sheet']) => dataLink.kind !== 'none';
const packed = (sheet: Making['sheet']) => linked(sheet) && sheet.battery.packs > 1;

/** Most causes of this group are one change of the link alone. */
function onLink(
  id: string,
  cause: string,
  frequency: Fault['frequency'],
  change: (link: LinkSpec, making: Making) => Severity,
  fits: NonNullable<Fault['fits']> = linked,
): Fault {
  return { id, cause, group: 'b', frequency, fits, make: ({ spec }, making) => change(spec.link, making) };
}

/** Causes of *battery-management link lost or never established*. */
export const batteryLink: readonly Fault[] = [
  onLink('b1', 'pairing-wrong', 'common', (link, { random }) => {
    const side = random.pick(['unit', 'pack'] as const);
    link.protocol[side] = random.whole(2, 6);
    return { side };
  }),
  onLink('b2', 'end-resistors-wrong', 'common', (link, { random }) => {
    const form = random.pick(['none', 'unit-missing', 'pack-missing', 'extra', 'two-extra'] as const);
    if (form === 'none' || form === 'unit-missing') link.unit.end = false;
    if (form === 'none' || form === 'pack-missing') link.pack.end = false;
    if (form === 'extra') link.extraEnds = 1;
    if (form === 'two-extra') link.extraEnds = 2;
    // A short lead forgives much: the complaint comes with a long one.
    link.lead.lengthM = Math.max(link.lead.lengthM, random.between(3, 20));
    return { form, lengthM: link.lead.lengthM };
  }),
  onLink('b3', 'lead-pins-wrong', 'common', (link, { random }) => {
    const form = random.pick(['crossed', 'stray', 'both'] as const);
    link.lead.crossed = form !== 'stray';
    link.lead.stray = form !== 'crossed';
    if (form === 'stray') link.lead.high = Number.POSITIVE_INFINITY;
    return { form };
  }),
  onLink('b4', 'wrong-socket-or-bus', 'common', (link) => {
    link.wrongSocket = true;
    return {};
  }),
  onLink('b5', 'address-or-host', 'occasional', (link, { random }) => {
    const form =
      link.addresses.length > 1 ? random.pick(['no-host', 'two-hosts', 'same'] as const) : 'no-host';
    if (form === 'no-host') link.addresses = link.addresses.map((address) => address + 1);
    else if (form === 'two-hosts') link.addresses = link.addresses.map(() => 1);
    else link.addresses[link.addresses.length - 1] = link.addresses[link.addresses.length - 2]!;
    return { form };
  }),
  onLink('b6', 'bus-speed-mismatch', 'occasional', (link, { random }) => {
    link.speed[random.pick(['unit', 'pack'] as const)] = 2;
    return {};
  }),
  onLink('b7', 'revision-mismatch', 'rare', (link) => {
    link.revision.pack = 0;
    return {};
  }),
  {
    id: 'b8',
    cause: 'pack-asleep',
    group: 'b',
    frequency: 'common',
    fits: linked,
    make({ spec }, { random }) {
      // The first pack speaks for all: where it sleeps, nothing is heard.
      const asleep = random.whole(1, spec.packs.length);
      spec.packs.slice(0, asleep).forEach((pack) => {
        pack.awake = false;
        pack.charge = random.between(0.01, 0.4);
      });
      return { asleep };
    },
  },
  onLink(
    'b9',
    'pack-chain-broken',
    'occasional',
    (link, { random }) => {
      link.chainBrokenAfter = random.whole(1, link.addresses.length - 1);
      return { after: link.chainBrokenAfter };
    },
    packed,
  ),
  onLink('b10', 'link-noise', 'occasional', (link, { random }) => {
    link.noiseVPerA = random.logBetween(0.015, 0.08);
    return { voltsPerAmp: link.noiseVPerA };
  }),
  onLink(
    'b11',
    'second-master',
    'occasional',
    (link) => {
      link.secondMaster = true;
      return {};
    },
    ({ dataLink }) => dataLink.kind === 'serial-485',
  ),
  onLink('b12', 'link-plug-or-lead', 'occasional', (link, { random }) => {
    const form = random.pick(['half-in', 'high-open', 'low-open', 'shorted', 'corroded'] as const);
    if (form === 'half-in') link.lead.touchy = true;
    else if (form === 'high-open') link.lead.high = Number.POSITIVE_INFINITY;
    else if (form === 'low-open') link.lead.low = Number.POSITIVE_INFINITY;
    else if (form === 'shorted') link.lead.short = random.logBetween(0.1, 5);
    else link.lead.high = random.logBetween(100, 5e4);
    return { form };
  }),
  onLink('b13', 'link-port-dead', 'rare', (link, { random }) => {
    const side = random.pick(['unit', 'pack'] as const);
    link[side].alive = false;
    const shorted = random.chance(0.4);
    if (shorted) link[side].short = random.logBetween(0.2, 5);
    return { side, shorted: String(shorted) };
  }),
  {
    id: 'b14',
    cause: 'limits-not-obeyed',
    group: 'b',
    frequency: 'occasional',
    fits: linked,
    conditions: ({ random }) => ({ lightWm2: random.between(700, 1000), charge: random.between(0.3, 0.7) }),
    make({ spec, state }, { random }) {
      spec.link.obeys = false;
      // The packs ask for less than the sun gives: cells near their cold limit, or one of them high.
      const share = random.between(0.02, 0.25);
      for (const pack of spec.packs)
        pack.highestCellOffV =
          pack.cellMaxV - cellOpenVolts(pack.charge) - share * (pack.cellMaxV - pack.cellChargeV);
      state.loadsOn = state.loadsOn.map(() => false);
      return { share };
    },
  },
];
