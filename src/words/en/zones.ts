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
};

/** A zone that has no name of its own is called by its id, read as words. */
export const zoneName = (id: string): string => zoneNames[id] ?? id.replaceAll('-', ' ');
