import type { SiteSheet } from '../site/sheet.ts';
import { parallelStrings } from '../worksheets/pv/parallel-strings.ts';
import { pvRun } from '../worksheets/pv/pv-run.ts';
import { editionOf, nec690 } from '../worksheets/pv/string-amps.ts';
import { stringCurrent } from '../worksheets/pv/string-current.ts';
import { nearMaximumShare, startMargin, stringWindow } from '../worksheets/pv/string-window.ts';
import type { Check, Judged } from './check.ts';

/** Rows of the strings that land on the same tracker as that one. */
const together = (sheet: SiteSheet, row: number): SiteSheet['strings'] =>
  sheet.strings.filter(({ tracker }) => tracker === sheet.strings[row]?.tracker);

const stringsOn = (sheet: SiteSheet, row: number): number =>
  together(sheet, row).reduce((sum, { parallel }) => sum + parallel, 0);

/** All strings of a tracker as that many alike ones: what their short circuits come to is the same. */
function allOnTracker(sheet: SiteSheet, row: number) {
  const strings = stringsOn(sheet, row);
  const amps = together(sheet, row).reduce((sum, { parallel, iscA }) => sum + parallel * iscA, 0);
  return { strings, iscAmps: amps / strings, device: strings > 1 ? 'fitted' : 'none' };
}

const alone = (sheet: SiteSheet, row: number) => ({
  device: (sheet.strings[row]?.parallel ?? 1) > 1 ? 'fitted' : 'none',
});

const isolatorFitted = (sheet: SiteSheet, row: number): boolean =>
  sheet.strings[row]?.isolator.fitted !== false;

/** The tighter of two figures that both have to stay under their limits. */
export const tighter = (one: Judged, other: Judged): Judged =>
  one.amount / one.limit >= other.amount / other.limit ? one : other;

const inWindow = { worksheet: stringWindow, of: 'string', kind: 'voltage' } as const;
const modules = 'string.modulesInSeries';

/** More than this share of the volts lost in the run asks for more copper. NEC 215.2 informational note; common practice. */
const mostDropShare = 0.02;

/** Strings against their tracker, their isolator, their conductors and the meter. */
export const pvChecks: readonly Check[] = [
  {
    ...inWindow,
    id: 'string-over-maximum',
    severity: 'danger',
    side: 'atMost',
    judge: ({ given, out }) => ({ amount: out.vocColdVolts, limit: given.maxVolts }),
    lifts: [modules, 'tracker.maxV'],
  },
  {
    ...inWindow,
    id: 'string-near-maximum',
    severity: 'limits',
    side: 'atMost',
    unless: 'string-over-maximum',
    judge: ({ given, out }) => ({ amount: out.vocColdVolts, limit: nearMaximumShare * given.maxVolts }),
    lifts: [modules, 'tracker.maxV'],
  },
  {
    ...inWindow,
    id: 'string-starts',
    severity: 'fails',
    side: 'atLeast',
    judge: ({ given, out }) => ({ amount: out.vocHotVolts, limit: given.startVolts }),
    lifts: [modules, 'tracker.startV'],
  },
  {
    ...inWindow,
    id: 'string-starts-late',
    severity: 'limits',
    side: 'atLeast',
    unless: 'string-starts',
    judge: ({ given, out }) => ({ amount: out.vocHotVolts, limit: startMargin * given.startVolts }),
    lifts: [modules, 'tracker.startV'],
  },
  {
    ...inWindow,
    id: 'string-tracks-hot',
    severity: 'fails',
    side: 'atLeast',
    judge: ({ given, out }) => ({ amount: out.vmpHotSafeVolts, limit: given.trackLowVolts }),
    lifts: [modules, 'tracker.trackMinV'],
  },
  {
    ...inWindow,
    id: 'string-tracks-cool',
    severity: 'limits',
    side: 'atMost',
    judge: ({ given }) => ({ amount: given.modules * given.vmpVolts, limit: given.trackHighVolts }),
    lifts: [modules, 'tracker.trackMaxV'],
  },
  {
    ...inWindow,
    id: 'isolator-volts',
    severity: 'danger',
    side: 'atMost',
    applies: isolatorFitted,
    needs: ['string.isolator.fitted', 'string.isolator.ratedV'],
    judge: ({ out, sheet, row }) => ({
      amount: out.vocColdVolts,
      limit: sheet.strings[row]?.isolator.ratedV ?? 0,
    }),
    lifts: ['string.isolator.ratedV', modules],
  },
  {
    ...inWindow,
    id: 'meter-volts',
    severity: 'danger',
    side: 'atMost',
    needs: ['meter.categoryV'],
    judge: ({ out, sheet }) => ({ amount: out.vocColdVolts, limit: sheet.meter.categoryV ?? 0 }),
    lifts: ['meter.categoryV'],
  },
  {
    id: 'tracker-short-circuit',
    worksheet: stringCurrent,
    of: 'tracker',
    severity: 'danger',
    kind: 'current',
    side: 'atMost',
    needs: ['tracker.shortCircuitMaxA'],
    inputs: allOnTracker,
    judge: ({ given, out }) => ({
      amount: nec690.maximumFactor * out.totalIscAmps,
      limit: given.shortCircuitAmps,
    }),
    lifts: ['string.parallel', 'tracker.shortCircuitMaxA'],
  },
  {
    id: 'tracker-clips',
    worksheet: stringCurrent,
    of: 'tracker',
    severity: 'limits',
    kind: 'current',
    side: 'atMost',
    unless: 'tracker-short-circuit',
    inputs: allOnTracker,
    judge: ({ given, out }) => ({ amount: out.totalIscAmps, limit: given.usableAmps }),
    lifts: ['string.parallel', 'tracker.usableA'],
  },
  {
    id: 'string-conductor',
    worksheet: stringCurrent,
    of: 'string',
    severity: 'danger',
    kind: 'current',
    side: 'atMost',
    inputs: alone,
    judge: ({ given, out }) => {
      if (editionOf(given.basis) === undefined) return 'codeBasis';
      return tighter(
        { amount: out.ratedAmps, limit: out.plainAmps ?? 0 },
        { amount: out.maximumAmps, limit: out.correctedAmps ?? 0 },
      );
    },
    lifts: ['string.areaMm2'],
  },
  {
    id: 'isolator-amps',
    worksheet: stringCurrent,
    of: 'string',
    severity: 'danger',
    kind: 'current',
    side: 'atMost',
    applies: isolatorFitted,
    needs: ['string.isolator.fitted', 'string.isolator.ratedA'],
    inputs: alone,
    judge: ({ given, out, sheet, row }) =>
      editionOf(given.basis) === undefined
        ? 'codeBasis'
        : { amount: out.maximumAmps, limit: sheet.strings[row]?.isolator.ratedA ?? 0 },
    lifts: ['string.isolator.ratedA'],
  },
  {
    id: 'string-fuses',
    worksheet: parallelStrings,
    of: 'tracker',
    severity: 'danger',
    kind: 'current',
    side: 'atMost',
    applies: (sheet, row) => stringsOn(sheet, row) > 1,
    inputs: (sheet, row) => ({ strings: stringsOn(sheet, row) }),
    judge: ({ out }) => (out.faultAmps === undefined ? 'codeBasis' : 'notOnSheet'),
    lifts: [],
  },
  {
    id: 'string-drop',
    worksheet: pvRun,
    of: 'string',
    severity: 'limits',
    kind: 'ratio',
    side: 'atMost',
    needs: ['string.lengthM', 'string.areaMm2'],
    judge: ({ out }) => ({ amount: out.dropShare, limit: mostDropShare }),
    lifts: ['string.areaMm2', 'string.lengthM'],
  },
];
