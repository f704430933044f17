import { inverterCable } from '../worksheets/battery-dc/inverter-cable.ts';
import { packsForPower } from '../worksheets/battery-dc/packs-for-power.ts';
import { preCharge } from '../worksheets/battery-dc/pre-charge.ts';
import { runByVoltage } from '../worksheets/link/run-by-voltage.ts';
import { editionOf } from '../worksheets/pv/string-amps.ts';
import type { Check, Judged, Unjudged, Worked } from './check.ts';
import { tighter } from './checks-pv.ts';

/**
 * A device breaks this many times a short worked out from the packs' resistance, which a data sheet may print too high.
 * This project's choice.
 */
export const breakTimes = 1.25;
/** More of the lowest volts than this lost in the battery cable asks for a shorter or thicker one. Common practice. */
const mostDropShare = 0.02;

/** What only the code can judge: nothing under one that is not carried. */
const byCode =
  (judge: (worked: Worked) => Judged) =>
  (worked: Worked): Judged | Unjudged =>
    editionOf(worked.given.basis) === undefined ? 'codeBasis' : judge(worked);

const bank = { worksheet: packsForPower, of: 'site', kind: 'current', side: 'atMost' } as const;
const cable = { worksheet: inverterCable, of: 'site', kind: 'current', side: 'atMost' } as const;
const charge = { worksheet: preCharge, of: 'site' } as const;
const device = 'fuse.ratedA';

/** Packs, their cable and what protects them, pre-charge and limits by volts. */
export const batteryChecks: readonly Check[] = [
  {
    ...bank,
    id: 'packs-continuous',
    severity: 'limits',
    judge: ({ given, out }) => ({
      amount: out.bankAmps,
      limit: given.packs * given.packAmps * given.planShare,
    }),
    lifts: ['battery.packs', 'battery.packContinuousA', 'inverter.ratedW'],
  },
  {
    ...bank,
    id: 'packs-surge',
    severity: 'fails',
    needs: ['inverter.surgeW', 'battery.packPeakA'],
    judge: ({ given, out }) => ({ amount: out.surgeAmps, limit: given.packs * given.packPeakAmps }),
    lifts: ['battery.packs', 'battery.packPeakA'],
  },
  {
    ...bank,
    id: 'one-pack-out',
    severity: 'limits',
    unless: 'packs-continuous',
    applies: ({ battery }) => battery.packs > 1,
    judge: ({ given, out }) => ({ amount: out.ampsPerPackOneGone, limit: given.packAmps }),
    lifts: ['battery.packs', 'battery.packContinuousA'],
  },
  {
    ...bank,
    id: 'pack-breaker-amps',
    severity: 'limits',
    applies: ({ packBreaker }) => packBreaker.fitted !== false,
    needs: ['packBreaker.fitted', 'packBreaker.ratedA'],
    judge: ({ out, sheet }) => ({ amount: 1.25 * out.ampsPerPack, limit: sheet.packBreaker.ratedA ?? 0 }),
    lifts: ['packBreaker.ratedA', 'battery.packs'],
  },
  {
    ...cable,
    id: 'no-pack-breaker',
    severity: 'danger',
    applies: ({ battery, packBreaker }) => battery.packs > 1 && packBreaker.fitted === false,
    needs: ['battery.packResistanceOhm'],
    // With no device in the pack nothing of what the others push into it is stopped.
    judge: ({ out, sheet }) => ({
      amount: out.packBreakAmps,
      limit: sheet.packBreaker.fitted === true ? out.packBreakAmps : 0,
    }),
    lifts: ['packBreaker.fitted'],
  },
  {
    ...cable,
    id: 'no-main-fuse',
    severity: 'danger',
    applies: ({ fuse, mainSwitch }) => fuse.fitted === false && mainSwitch.kind === 'switch',
    needs: ['battery.packResistanceOhm'],
    judge: ({ out, sheet }) => ({
      amount: out.shortAmps,
      limit: sheet.fuse.fitted === true ? out.shortAmps : 0,
    }),
    lifts: ['fuse.fitted'],
  },
  {
    ...cable,
    id: 'main-cable',
    severity: 'danger',
    judge: byCode(({ out }) =>
      tighter(
        { amount: out.ratedAmps, limit: out.plainAmps ?? 0 },
        { amount: out.amps, limit: out.correctedAmps ?? 0 },
      ),
    ),
    lifts: ['batteryCable.areaMm2'],
  },
  {
    ...cable,
    id: 'main-device-small',
    severity: 'limits',
    applies: ({ fuse, mainSwitch }) => fuse.fitted !== false || mainSwitch.kind === 'breaker',
    needs: ['fuse.fitted'],
    judge: byCode(({ given, out }) => ({ amount: out.ratedAmps, limit: given.fuseAmps })),
    lifts: [device, 'mainSwitch.ratedA', 'inverter.ratedW'],
  },
  {
    ...cable,
    id: 'main-device-large',
    severity: 'danger',
    applies: ({ fuse, mainSwitch }) => fuse.fitted !== false || mainSwitch.kind === 'breaker',
    needs: ['fuse.fitted'],
    judge: byCode(({ given, out }) => ({ amount: given.fuseAmps, limit: out.mostFuseAmps ?? 0 })),
    lifts: ['batteryCable.areaMm2', device],
  },
  {
    ...cable,
    id: 'main-breaking',
    severity: 'danger',
    applies: ({ fuse }) => fuse.fitted !== false,
    needs: ['fuse.fitted', 'fuse.interruptingA', 'battery.packResistanceOhm'],
    judge: ({ given, out }) => ({ amount: breakTimes * out.shortAmps, limit: given.interruptingAmps }),
    lifts: ['fuse.interruptingA'],
  },
  {
    ...cable,
    id: 'main-switch-amps',
    severity: 'limits',
    needs: ['mainSwitch.ratedA'],
    judge: ({ out, sheet }) => ({ amount: out.amps, limit: sheet.mainSwitch.ratedA ?? 0 }),
    lifts: ['mainSwitch.ratedA'],
  },
  {
    ...cable,
    id: 'main-switch-volts',
    kind: 'voltage',
    severity: 'danger',
    needs: ['mainSwitch.ratedV'],
    judge: ({ given, sheet }) => ({ amount: given.fullVolts, limit: sheet.mainSwitch.ratedV ?? 0 }),
    lifts: ['mainSwitch.ratedV'],
  },
  {
    ...cable,
    id: 'battery-drop',
    kind: 'ratio',
    severity: 'limits',
    needs: ['batteryCable.lengthM', 'batteryCable.areaMm2'],
    judge: ({ out }) => ({ amount: out.dropShare, limit: mostDropShare }),
    lifts: ['batteryCable.areaMm2', 'batteryCable.lengthM'],
  },
  {
    id: 'bank-over-inverter',
    worksheet: runByVoltage,
    of: 'site',
    severity: 'danger',
    kind: 'voltage',
    side: 'atMost',
    judge: ({ given, out }) => ({ amount: out.topVolts, limit: given.unitMaxVolts }),
    lifts: ['inverter.dcMaxV', 'battery.cellsInSeries'],
  },
  {
    id: 'inverter-stops-first',
    worksheet: runByVoltage,
    of: 'site',
    severity: 'limits',
    kind: 'voltage',
    side: 'atLeast',
    judge: ({ given, out }) => ({ amount: out.cutVolts, limit: given.unitMinVolts }),
    lifts: ['inverter.dcMinV', 'battery.cellsInSeries'],
  },
  {
    ...charge,
    id: 'precharge-pulse',
    severity: 'danger',
    kind: 'energy',
    side: 'atMost',
    needs: ['inverter.busCapacitanceF', 'precharge.resistorOhm', 'precharge.ratedEnergyJ'],
    judge: ({ given, out }) => ({ amount: out.joules, limit: given.pulseJoules }),
    lifts: ['precharge.ratedEnergyJ'],
  },
  {
    ...charge,
    id: 'precharge-amps',
    severity: 'danger',
    kind: 'resistance',
    side: 'atLeast',
    needs: ['inverter.busCapacitanceF', 'precharge.resistorOhm'],
    judge: ({ given, out }) =>
      out.leastOhms === undefined ? 'notOnSheet' : { amount: given.resistorOhms, limit: out.leastOhms },
    lifts: ['precharge.resistorOhm'],
  },
  {
    ...charge,
    id: 'precharge-slow',
    severity: 'fails',
    kind: 'resistance',
    side: 'atMost',
    needs: ['inverter.busCapacitanceF', 'precharge.resistorOhm'],
    judge: ({ given, out }) =>
      out.mostOhms === undefined ? 'notOnSheet' : { amount: given.resistorOhms, limit: out.mostOhms },
    lifts: ['precharge.resistorOhm'],
  },
];
