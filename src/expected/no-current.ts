import type { MessageRef } from '../quantity/message.ts';
import type { MeterSpec } from '../quantity/meter.ts';
import { cautiousMeter, meterSpecOf } from '../site/meter.ts';
import type { SiteSheet } from '../site/sheet.ts';

export { batteryZeroAmps, pvZeroAmps } from '../worksheets/battery-dc/zero-amps.ts';

/** Last digits that clamps have [A]. */
const clampDigits = { tenths: 0.1, hundredths: 0.01 } as const;

/** The most that a clamp may show while its own error leaves the current within `most` [A]; below zero: it never can. */
function mostShown(spec: MeterSpec, most: number, digitAmps: number): number {
  const shown = (most - spec.counts * digitAmps) / (1 + spec.percentOfReading / 100);
  // A whole number of last digits; the little extra keeps binary fractions from losing one.
  return Math.floor(shown / digitAmps + 1e-6) * digitAmps;
}

/** What this site's clamp must show to show no current, or that it cannot. */
function whatClampShows(sheet: SiteSheet, most: number): MessageRef[] {
  const known = meterSpecOf(sheet, 'dcClamp');
  const spec = known ?? cautiousMeter.dcClamp;
  const tenths = mostShown(spec, most, clampDigits.tenths);
  const hundredths = mostShown(spec, most, clampDigits.hundredths);
  const params = { percent: spec.percentOfReading, counts: spec.counts, tenths, hundredths };
  const kind = tenths >= 0 ? 'shows' : hundredths >= 0 ? 'needsHundredths' : 'cannot';
  return [...(known ? [] : [{ id: 'expected.clamp.assumed' }]), { id: `expected.clamp.${kind}`, params }];
}

/**
 * What every scale that shows "no current" has in common: the whole of what the clamp may be off is added, whichever
 * step asks, and the person is told before the reading what this clamp must show.
 * @param most the current that still counts as none [A]
 * @param why the sentence that says what no current means there
 */
export const noCurrentRule = (sheet: SiteSheet, most: number, why: MessageRef) =>
  ({
    expected: 'zero',
    nominal: 0,
    why: [why, ...whatClampShows(sheet, most)],
    overRange: 'flows',
    error: 'halfWidth',
  }) as const;
