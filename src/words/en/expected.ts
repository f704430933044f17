import { expectedHeat } from './expected-heat.ts';
import { expectedLegs } from './expected-legs.ts';
import { expectedLink } from './expected-link.ts';
import { expectedProcedures } from './expected-procedures.ts';
import { expectedPv } from './expected-pv.ts';

/** The words of every expectation, by message id. */
export const expectedWords: Readonly<Record<string, string>> = {
  ...expectedLink,
  ...expectedProcedures,
  ...expectedPv,
  ...expectedHeat,
  ...expectedLegs,
};
