/** How two legs may stand to each other, by the names that the site sheet uses too. */
export const topologies = ['opposed-120-240', 'wye-120-208', 'common-120', 'single-230'] as const;
export type Topology = (typeof topologies)[number];

/** Degrees from leg 1 to leg 2, and the leg's own nominal volts. One line and a neutral has no second leg. */
export const legFacts: Record<Topology, { angle: number | undefined; legVolts: number }> = {
  'opposed-120-240': { angle: 180, legVolts: 120 },
  'wye-120-208': { angle: 120, legVolts: 120 },
  'common-120': { angle: 0, legVolts: 120 },
  'single-230': { angle: undefined, legVolts: 230 },
};
