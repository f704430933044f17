import type { ScaleDef, WaitDef, WorkDef } from './context.ts';

/** What one module of expectations holds. */
export interface Family {
  scales?: readonly ScaleDef[];
  works?: readonly WorkDef[];
  waits?: readonly WaitDef[];
}

/**
 * The expectations in parts, each fetched when a run first comes to a step that needs it. `src/expected/index.ts` has all
 * of them at once; a test holds the two to the same ids.
 */
export const families: Readonly<Record<string, () => Promise<Family>>> = {
  dead: async () => ({ scales: (await import('./dead.ts')).deadScales }),
  battery: async () => ({ scales: (await import('./battery.ts')).batteryScales }),
  ac: async () => ({ scales: (await import('./ac.ts')).acScales }),
  strings: async () => ({ scales: (await import('./strings.ts')).stringScales }),
  currents: async () => {
    const { currentScales, currentWorks } = await import('./currents.ts');
    return { scales: currentScales, works: currentWorks };
  },
  'pre-charge': async () => {
    const { preChargeScales } = await import('./pre-charge.ts');
    const { preChargeWorks } = await import('./pre-charge-works.ts');
    return { scales: preChargeScales, works: preChargeWorks };
  },
  'pv-volts': async () => ({ scales: (await import('./pv/volts.ts')).voltScales }),
  'pv-amps': async () => ({ scales: (await import('./pv/amps.ts')).otherScales }),
  'pv-battery': async () => ({ scales: (await import('./pv/battery.ts')).batteryScales }),
  'pv-string': async () => ({ works: (await import('./pv/works.ts')).stringWorks }),
  'pv-ground': async () => ({ works: (await import('./pv/ground-works.ts')).groundWorks }),
  'pv-between': async () => ({ works: (await import('./pv/between.ts')).betweenWorks }),
  'heat-air': async () => ({ scales: (await import('./heat/air.ts')).airScales }),
  'heat-parts': async () => ({ scales: (await import('./heat/parts.ts')).partScales }),
  'heat-works': async () => ({ works: (await import('./heat/works.ts')).heatWorks }),
  'heat-waits': async () => ({ waits: (await import('./heat/waits.ts')).heatWaits }),
  'link-pair': async () => ({ scales: (await import('./link/pair.ts')).pairScales }),
  'link-proof': async () => {
    const { proofScales, linkWaits } = await import('./link/proof.ts');
    return { scales: proofScales, waits: linkWaits };
  },
  'link-by-voltage': async () => {
    const { byVoltageScales, linkWorks } = await import('./link/by-voltage.ts');
    return { scales: byVoltageScales, works: linkWorks };
  },
  'legs-bands': async () => ({ scales: (await import('./legs/scales.ts')).legScales }),
  'legs-found': async () => ({ works: (await import('./legs/found-works.ts')).foundWorks }),
  'legs-step': async () => ({ works: (await import('./legs/step-works.ts')).stepWorks }),
  'legs-line': async () => ({ works: (await import('./legs/line-works.ts')).lineWorks }),
  'legs-retest': async () => ({ works: (await import('./legs/retest-works.ts')).retestWorks }),
  waits: async () => ({ waits: (await import('./waits.ts')).waitList }),
};

/** Which family holds each expectation, by `scale:`, `work:` or `wait:` and its id. */
export async function familyOfEach(): Promise<Readonly<Record<string, string>>> {
  const pairs = await Promise.all(
    Object.entries(families).map(async ([family, load]) => {
      const { scales = [], works = [], waits = [] } = await load();
      const keys = [
        ...scales.map(({ id }) => `scale:${id}`),
        ...works.map(({ id }) => `work:${id}`),
        ...waits.map(({ id }) => `wait:${id}`),
      ];
      return keys.map((key) => [key, family] as const);
    }),
  );
  return Object.fromEntries(pairs.flat());
}
