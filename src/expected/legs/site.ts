import { readingUncertainty } from '../../quantity/meter.ts';
import { acNominal } from '../../site/ac.ts';
import { cautiousMeter, meterSpecOf } from '../../site/meter.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { legFacts } from '../../worksheets/ac/topology.ts';
import { cableResistance } from '../../worksheets/battery-dc/cable-resistance.ts';
import { testLoadWatts } from '../ac.ts';

/** Service volts may stand this far from nominal. ANSI C84.1, range A. */
export const bandShare = 0.05;
/** Under this share of its nominal a leg is dead, whatever a meter's input makes of it. Common practice. */
export const deadShare = 0.1;
/** A feeder conductor above this many times what its length makes has a bad joint in it. Common practice. */
export const poorTimes = 1.5;
/** Two lugs, a bar and a breaker pole: what the ends of a sound conductor have [Ω]. Common practice. */
export const endsOhms = 0.005;
/** A neutral whose volts move a leg by more than this share of it is open, or as good as open. Common practice: tens of volts. */
export const openShare = 0.25;
/** Legs of a sound output under one load stay this close [V]. Common practice. */
export const apartVolts = 3;
/** Temperature that the feeder's copper is taken at [°C]: hand-warm. */
const feederC = 40;
/** Digits that a hand-held meter shows of mains volts, and of a few volts [V]. */
const mainsDigit = 0.1;
const fewVoltsDigit = 0.01;

export const nominalLeg = (sheet: SiteSheet): number => acNominal[sheet.inverter.topology].legToNeutralV;

/** Cosine of the angle from leg 1 to leg 2; one line has none. */
export function legsCosine(sheet: SiteSheet): number | undefined {
  const { angle } = legFacts[sheet.inverter.topology];
  return angle === undefined ? undefined : Math.cos((angle * Math.PI) / 180);
}

/** Continuous amps that a leg of one unit may give [A]: the label's, else half of the unit's power where there are two legs. */
export function legLimitAmps(sheet: SiteSheet): number {
  const { legLimitW, ratedW, topology } = sheet.inverter;
  const watts = legLimitW ?? ratedW / acNominal[topology].legs;
  return (watts * sheet.parallelUnits) / nominalLeg(sheet);
}

/** Continuous amps that all legs together may draw, whatever the angle between them: watts are watts [A]. */
export const sumLimitAmps = ({ inverter, parallelUnits }: SiteSheet): number =>
  (inverter.ratedW * parallelUnits) / acNominal[inverter.topology].legToNeutralV;

export const testAmps = (sheet: SiteSheet): number => testLoadWatts / nominalLeg(sheet);

/** One conductor of the feeder, one way [Ω]; `undefined` while length or size is not known. */
export function feederOhms({ outputFeeder: { lengthM, areaMm2 } }: SiteSheet): number | undefined {
  return lengthM === null || areaMm2 === null
    ? undefined
    : lengthM * cableResistance(areaMm2, feederC).ohmsPerM;
}

const acSpec = (sheet: SiteSheet) => meterSpecOf(sheet, 'acVolts') ?? cautiousMeter.acVolts;

/** Half-width of the meter's interval for one reading of mains volts [V]. */
export function voltsError(sheet: SiteSheet, volts: number): number {
  const { percentOfReading, counts } = acSpec(sheet);
  return (percentOfReading / 100) * Math.abs(volts) + counts * mainsDigit;
}

/** Expanded uncertainty of one reading of mains volts [V]. */
export const voltsU = (sheet: SiteSheet, volts: number): number =>
  readingUncertainty(volts, acSpec(sheet), mainsDigit).expanded;

/**
 * Expanded uncertainty of a sum or difference of `count` readings that one meter took minutes apart [V]. The part of its
 * error that grows with the reading is the same in all of them and takes itself away; the last digits do not.
 */
export function changeU(sheet: SiteSheet, change: number, count: number): number {
  const { percentOfReading, counts } = acSpec(sheet);
  const digits = (2 * counts * mainsDigit * Math.sqrt(count)) / Math.sqrt(3);
  return digits + (percentOfReading / 100) * Math.abs(change);
}

/** Expanded uncertainty of a few volts, neutral to ground or end to end [V]. */
export const fewVoltsU = (sheet: SiteSheet, volts: number): number =>
  readingUncertainty(volts, acSpec(sheet), fewVoltsDigit).expanded;

/** Expanded uncertainty of an AC clamp [A]. */
export const ampsU = (sheet: SiteSheet, amps: number): number =>
  readingUncertainty(amps, meterSpecOf(sheet, 'acClamp') ?? cautiousMeter.acClamp, 0.1).expanded;

/** A figure with how far it may be off either way. */
export interface Range {
  low: number;
  best: number;
  high: number;
}

/** Volts over amps, each with its uncertainty [Ω]. */
export function ohmsOf(volts: number, uVolts: number, amps: number, uAmps: number): Range {
  const best = volts / amps;
  const u = Math.abs(best) * Math.hypot(uAmps / amps, volts === 0 ? 0 : uVolts / volts);
  const width = volts === 0 ? uVolts / amps : u;
  return { low: best - width, best, high: best + width };
}
