/** What each stretch of an expected band is called, on the bar under the meter window and in the record. */
const zoneNames: Readonly<Record<string, string>> = {
  ok: 'in band',
  undetermined: 'too close to call',
  low: 'low',
  high: 'high',
  reversed: 'reversed',
  none: 'nothing there',
  dead: 'dead',
  live: 'live',
  zero: 'no current',
  flows: 'current flows',
  absent: 'nothing there',
  apart: 'apart',
  alike: 'alike',
  above: 'above the battery',
  under: 'not there yet',
  charged: 'charged',
  fell: 'fell',
  held: 'held up',
  steady: 'steady',
  rising: 'rising',
  settled: 'settled',
  over: 'over the limit',
  below: 'reads lower',
  deep: 'too deep',
  cold: 'too cold',
  hot: 'too warm',
};

/** A zone that has no name of its own is called by its id, read as words. */
export const zoneName = (id: string): string => zoneNames[id] ?? id.replaceAll('-', ' ');
