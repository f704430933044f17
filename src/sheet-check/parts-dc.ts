import type { SiteSheet } from '../site/sheet.ts';
import { inverterCable } from '../worksheets/battery-dc/inverter-cable.ts';
import { packsForPower } from '../worksheets/battery-dc/packs-for-power.ts';
import { preCharge } from '../worksheets/battery-dc/pre-charge.ts';
import { emtFor } from '../worksheets/tables/nec-ch9-conduit.ts';
import { ratingAtLeast } from '../worksheets/tables/standard-ratings.ts';
import { breakTimes } from './checks-battery.ts';
import { figures, usedInputs } from './figures.ts';
import { type Part, rating } from './part.ts';

/** Lugs of one battery circuit: post to fuse, fuse to switch, switch to inverter, and the minus back. Common practice. */
const lugsOfCircuit = 8;
/** Lugs that each pack adds where packs meet on two bars: both ends of both leads. */
const lugsOfPack = 4;
/** Lugs that each further inverter adds: both ends of both leads. */
const lugsOfUnit = 4;
/** Two conductors and the grounding conductor, counted at the same size. */
const wiresInRun = 3;
const continuousFactor = 1.25;

/** What a resistor for pre-charge needs, whatever is fitted: worked out with the middle of the usual sizes. */
const trialOhms = 25;

/** Main fuse, disconnect, packs' devices, cable, lugs, bars, conduit and the pre-charge resistor. */
export function dcParts(sheet: SiteSheet): readonly Part[] {
  const { battery, parallelUnits } = sheet;
  const nec = sheet.codeBasis === 'us-nec';
  const cable = figures(inverterCable, sheet, 0);
  const bank = figures(packsForPower, sheet, 0);
  const out = cable.ok ? cable.worked.out : undefined;
  const owed = !cable.ok && cable.why.kind === 'missing' ? cable.why.facts : [];
  const owesOhms = battery.packResistanceOhm === null ? ['battery.packResistanceOhm'] : [];
  const use = cable.ok ? { use: { worksheet: inverterCable.id, inputs: usedInputs(cable.worked) } } : {};
  const open = nec ? {} : { codeOpen: true as const };
  const volts = rating('volts', 'voltage', battery.cellsInSeries * battery.cellMaxV);
  const { lengthM, areaMm2 } = sheet.batteryCable;
  const size = out?.smallestMm2 === undefined ? areaMm2 : Math.max(out.smallestMm2, areaMm2 ?? 0);
  const bars = battery.packs > 1 || parallelUnits > 1;
  const eachAmps = bank.ok ? continuousFactor * bank.worked.out.ampsPerPack : undefined;
  const owesCable = [
    ...(lengthM === null ? ['batteryCable.lengthM'] : []),
    ...(areaMm2 === null ? ['batteryCable.areaMm2'] : []),
  ];
  const fuse: Part = {
    id: 'main-fuse',
    quantity: 1,
    ratings: [
      ...rating('standardAmps', 'current', out?.leastFuseAmps),
      ...volts,
      ...rating('breaks', 'current', out?.shortAmps && breakTimes * out.shortAmps),
    ],
    missing: [...owed, ...owesOhms],
    ...open,
    ...use,
  };
  const tubing = nec && size !== null ? emtFor(size, wiresInRun) : undefined;
  const all: readonly (Part | false)[] = [
    fuse,
    { ...fuse, id: 'spare-fuse' },
    {
      id: 'main-disconnect',
      quantity: 1,
      ratings: [...volts, ...rating('amps', 'current', out?.ratedAmps ?? out?.amps)],
      missing: owed,
      ...open,
      ...use,
    },
    battery.packs > 1 && {
      id: 'pack-device',
      quantity: battery.packs,
      ratings: [
        ...rating(
          'standardAmps',
          'current',
          eachAmps !== undefined && nec ? ratingAtLeast(eachAmps, '2023', 'breaker') : undefined,
        ),
        ...volts,
        ...rating('breaks', 'current', out?.packBreakAmps && breakTimes * out.packBreakAmps),
      ],
      missing: owesOhms,
      ...open,
      ...(bank.ok ? { use: { worksheet: packsForPower.id, inputs: usedInputs(bank.worked) } } : {}),
    },
    bars && {
      id: 'busbar',
      quantity: 2,
      ratings: [...volts, ...rating('amps', 'current', out?.ratedAmps ?? out?.amps)],
      missing: owed,
      ...use,
    },
    {
      id: 'battery-cable',
      ...(lengthM === null ? {} : { quantity: 2 * lengthM * parallelUnits }),
      inLengths: true,
      ratings: rating('wire', 'wireSize', size ?? undefined),
      missing: owesCable,
      ...open,
      ...use,
    },
    {
      id: 'battery-lug',
      quantity: lugsOfCircuit + (bars ? lugsOfPack * battery.packs : 0) + lugsOfUnit * (parallelUnits - 1),
      ratings: rating('wire', 'wireSize', size ?? undefined),
      missing: owesCable.filter((id) => id.endsWith('areaMm2')),
    },
    {
      id: 'battery-conduit',
      ...(lengthM === null ? {} : { quantity: lengthM }),
      inLengths: true,
      ratings: [],
      ...(tubing === undefined ? {} : { trade: tubing }),
      missing: owesCable,
      ...open,
    },
    preChargePart(sheet),
  ];
  return all.filter((part): part is Part => part !== false);
}

function preChargePart(sheet: SiteSheet): Part {
  const sourceVolts = sheet.battery.cellsInSeries * sheet.battery.cellMaxV;
  const found = figures(preCharge, sheet, 0, {
    resistorOhms: sheet.precharge.resistorOhm ?? trialOhms,
    sourceVolts,
  });
  if (sheet.inverter.busCapacitanceF === null || !found.ok) {
    return { id: 'precharge-resistor', quantity: 1, ratings: [], missing: ['inverter.busCapacitanceF'] };
  }
  const { out } = found.worked;
  return {
    id: 'precharge-resistor',
    quantity: 1,
    ratings: [
      ...rating('leastOhms', 'resistance', out.leastOhms),
      ...rating('mostOhms', 'resistance', out.mostOhms),
      ...rating('pulse', 'energy', out.joules),
      ...volts(sourceVolts),
    ],
    missing: [],
    use: { worksheet: preCharge.id, inputs: usedInputs(found.worked) },
  };
}

const volts = (value: number) => rating('volts', 'voltage', value);
