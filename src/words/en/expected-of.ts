type Words = Readonly<Record<string, string>>;

/** The words of expectations in parts, by the group that a message id names: `expected.legs.found` is of `legs`. */
const parts: Readonly<Record<string, () => Promise<Words>>> = {
  heat: async () => (await import('./expected-heat.ts')).expectedHeat,
  legs: async () => (await import('./expected-legs.ts')).expectedLegs,
  link: async () => (await import('./expected-link.ts')).expectedLink,
  pv: async () => (await import('./expected-pv.ts')).expectedPv,
};

/** The words of one expectation, fetched with those of its group; `undefined` where there are none. */
export async function expectedWordsOf(id: string): Promise<string | undefined> {
  const group = id.split('.')[1] ?? '';
  const words = await (parts[group]?.() ??
    import('./expected-procedures.ts').then((all) => all.expectedProcedures));
  return words[id];
}
