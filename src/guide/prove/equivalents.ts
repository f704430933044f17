/**
 * Mutants that change nothing a rule could speak of, by name, each with the reason. A mutant that only takes away an
 * effect which never changes the state where it stands is found equivalent by the prover itself and is not listed here.
 */
export const equivalents: Readonly<Record<string, string>> = {};
