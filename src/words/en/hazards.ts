/** A hazard statement: what the hazard is, what it does to you, how to avoid it. */
export interface HazardWords {
  word: 'danger' | 'warning' | 'caution' | 'notice';
  nature: string;
  consequence: string;
  avoid: string;
}

export const hazards: Record<string, HazardWords> = {
  'battery-short': {
    word: 'danger',
    nature: 'Bare battery posts. They are live in every state.',
    consequence: 'A tool or a loose cable end across them feeds thousands of amperes: burns, molten metal, fire.',
    avoid: 'Insulated tools, gloves, face protection, no metal worn. Cover every post but the one you work on.',
  },
  'pv-arc': {
    word: 'danger',
    nature: 'A PV plug or switch pulled under current draws an arc that does not go out.',
    consequence: 'Burns and fire.',
    avoid: 'Show 0 A with a zeroed DC clamp on one conductor before you open anything.',
  },
  'live-metering': {
    word: 'warning',
    nature: 'You measure on live parts.',
    consequence: 'A slip can shock or burn you.',
    avoid: 'Meter, leads and clamp rated for the cold open-circuit volts. Gloves and eye protection on.',
  },
};
