import { allVariants, type Variant } from '../../safety/plant.ts';
import { MachineError } from '../flatten.ts';
import type { Machine } from '../vocabulary.ts';
import { equivalents } from './equivalents.ts';
import { type Mutant, mutantsOf } from './mutate.ts';
import { type Proof, prove } from './prove.ts';

/** What became of the mutants of some machines. */
export interface Campaign {
  mutants: number;
  killed: number;
  equivalents: { id: string; why: string }[];
  survivors: string[];
  /** Mutants caught, by the rule that caught them (a mutant may break several). */
  byRule: Record<string, number>;
  byOperator: Record<string, { mutants: number; killed: number }>;
}

/** Every `of`th mutant, beginning with number `part`: what one of several workers takes on. */
export interface Share {
  part: number;
  of: number;
  /** Of a guide's mutants every so many alone; a procedure's are always all taken. */
  guidesEvery: number;
}

const empty = (): Campaign => ({
  mutants: 0,
  killed: 0,
  equivalents: [],
  survivors: [],
  byRule: {},
  byOperator: {},
});

/** The shares of a campaign put together. */
export function joined(shares: readonly Campaign[]): Campaign {
  const whole = empty();
  for (const share of shares) {
    whole.mutants += share.mutants;
    whole.killed += share.killed;
    whole.equivalents.push(...share.equivalents);
    whole.survivors.push(...share.survivors);
    for (const [rule, count] of Object.entries(share.byRule))
      whole.byRule[rule] = (whole.byRule[rule] ?? 0) + count;
    for (const [operator, { mutants, killed }] of Object.entries(share.byOperator)) {
      const before = whole.byOperator[operator] ?? { mutants: 0, killed: 0 };
      whole.byOperator[operator] = { mutants: before.mutants + mutants, killed: before.killed + killed };
    }
  }
  return whole;
}

/**
 * Does every small harm to every machine, one at a time, and asks the prover to notice.
 * @param proofs of the unharmed machines, from which idle effects are known
 */
export function runCampaign(
  machines: readonly Machine[],
  procedures: Readonly<Record<string, Machine>>,
  proofs: readonly Proof[],
  variants: readonly Variant[] = allVariants(),
  share: Share = { part: 0, of: 1, guidesEvery: 1 },
): Campaign {
  const result = empty();
  let number = 0;
  for (const machine of machines) {
    const proof = proofs.find((p) => p.machine === machine.id);
    const every = machine.kind === 'guide' ? share.guidesEvery : 1;
    for (const [index, mutant] of mutantsOf(machine).entries()) {
      if (index % every !== 0 || number++ % share.of !== share.part) continue;
      result.mutants += 1;
      const tally = result.byOperator[mutant.operator] ?? { mutants: 0, killed: 0 };
      result.byOperator[mutant.operator] = tally;
      tally.mutants += 1;
      const why = equivalents[mutant.id] ?? idleEffect(mutant, proof);
      const broken = why ? new Set<string>() : rulesBroken(mutant, procedures, variants);
      if (why) result.equivalents.push({ id: mutant.id, why });
      else if (broken.size === 0) result.survivors.push(mutant.id);
      else {
        result.killed += 1;
        tally.killed += 1;
        for (const rule of broken) result.byRule[rule] = (result.byRule[rule] ?? 0) + 1;
      }
    }
  }
  return result;
}

function idleEffect(mutant: Mutant, proof: Proof | undefined): string | undefined {
  if (!mutant.removed || !proof) return undefined;
  const { step, outcome, index } = mutant.removed;
  return proof.idle.has(`${step} ${outcome} ${index}`)
    ? 'on every path the state was already so: taking the effect away changes nothing'
    : undefined;
}

function rulesBroken(
  mutant: Mutant,
  procedures: Readonly<Record<string, Machine>>,
  variants: readonly Variant[],
): Set<string> {
  const known =
    mutant.machine.kind === 'procedure' ? { ...procedures, [mutant.machine.id]: mutant.machine } : procedures;
  try {
    return new Set(
      prove(mutant.machine, known, variants, mutant.thorough ? 'plant' : 'first').breaches.map(
        (breach) => breach.rule,
      ),
    );
  } catch (error) {
    if (error instanceof MachineError) return new Set(['shape']);
    throw error;
  }
}
