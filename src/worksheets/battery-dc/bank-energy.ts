/** Volts of a cell that go with its rated ampere-hours. Common practice: 3.2 V for lithium iron phosphate. */
export const energyCellV = 3.2;

/** Share of a bank's rated ampere-hours that is commonly used. Common practice, 0.8 to 0.95. */
export const usualUsableShare = 0.9;

export interface Bank {
  readonly cells: number;
  readonly cellVolts: number;
  /** Rated ampere-hours of one pack. */
  readonly packAh: number;
  readonly packs: number;
}

/** Rated energy of the whole bank [J]: volts times ampere-hours. */
export function nominalJoules({ cells, cellVolts, packAh, packs }: Bank): number {
  return cells * cellVolts * packAh * packs * 3600;
}

/** What of that is there to be used [J]: what age and cold have left, and the part of it that is used. */
export function usableJoules(joules: number, healthShare: number, usableShare: number): number {
  return joules * healthShare * usableShare;
}

/** Seconds that an energy lasts at a steady draw; the draw must be above zero. */
export function lastsS(joules: number, watts: number): number {
  return joules / watts;
}

/** Rated energy [J] that covers some days of a daily draw [J] out of the battery. */
export function neededJoules(
  days: number,
  dayJoules: number,
  healthShare: number,
  usableShare: number,
): number {
  return (days * dayJoules) / (healthShare * usableShare);
}
