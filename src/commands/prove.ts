import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { guides, procedures, proceduresById } from '../../machines/index.ts';
import { scales } from '../expected/index.ts';
import { flatten, MachineError } from '../guide/flatten.ts';
import { type Campaign, joined } from '../guide/prove/campaign.ts';
import type { Breach } from '../guide/prove/explore.ts';
import { loadMachine } from '../guide/prove/load.ts';
import { type Proof, prove } from '../guide/prove/prove.ts';
import { checkTotality } from '../guide/prove/totality.ts';
import type { Machine } from '../guide/vocabulary.ts';
import { allVariants } from '../safety/plant.ts';
import { ruleIds } from '../safety/rules/rule.ts';

const { values } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    guide: { type: 'string' },
    'no-mutants': { type: 'boolean', default: false },
    'guides-every': { type: 'string', default: '1' },
  },
});

const shapeBreach = (machine: Machine, reason: string): Proof => ({
  machine: machine.id,
  states: 0,
  breaches: [{ rule: 'shape', reason, machine: machine.id, step: machine.start, path: [] }],
  unreached: [],
  idle: new Set(),
});

/** Proof of one machine, with what is wrong in its shape reported as a breach too. */
function proofOf(machine: Machine): Proof {
  try {
    checkTotality(flatten(machine, proceduresById), (id) => scales[id]?.zones);
    const proof = prove(machine, proceduresById);
    const lost = proof.unreached.map(
      (step): Breach => ({
        rule: 'shape',
        reason: 'no path leads here',
        machine: machine.id,
        step,
        path: [],
      }),
    );
    return { ...proof, breaches: [...proof.breaches, ...lost] };
  } catch (error) {
    if (error instanceof MachineError) return shapeBreach(machine, error.message);
    throw error;
  }
}

function show(breach: Breach): string {
  const way = breach.path.map(({ step, outcome }) => `${step} [${outcome}]`).join(' → ');
  const plant = breach.variant
    ? `\n    plant: ${Object.entries(breach.variant)
        .map(([key, value]) => `${key}=${value}`)
        .join(' ')}`
    : '';
  return `  ${breach.rule} at ${breach.machine}: ${breach.step}: ${breach.reason}${way ? `\n    way: ${way}` : ''}${plant}`;
}

/** The mutants of every guide and procedure, shared out among as many workers as the machine has cores. */
async function campaign(proofs: readonly Proof[]): Promise<Campaign> {
  const of = availableParallelism();
  const share = (part: number) =>
    new Promise<Campaign>((resolve, reject) => {
      const worker = new Worker(new URL('./prove-worker.ts', import.meta.url), {
        workerData: { part, of, guidesEvery, proofs },
      });
      worker.once('message', resolve);
      worker.once('error', reject);
    });
  return joined(await Promise.all(Array.from({ length: of }, (_, part) => share(part))));
}

/** A test run takes a sample of the guides' mutants: all of them are minutes of work. */
const guidesEvery = Math.max(1, Math.trunc(Number(values['guides-every'])) || 1);
const variants = allVariants();
const one = values.guide ? await loadMachine(values.guide) : undefined;
const machines = one ? [one] : [...guides, ...procedures];
const proofs = machines.map(proofOf);
const breaches = proofs.flatMap((proof) => proof.breaches);
const mutants = one || values['no-mutants'] ? undefined : await campaign(proofs);

if (values.json) {
  const report = {
    guides: machines.filter((machine) => machine.kind === 'guide').length,
    procedures: machines.filter((machine) => machine.kind === 'procedure').length,
    variants: variants.length,
    productStates: proofs.reduce((sum, proof) => sum + proof.states, 0),
    breaches,
    mutants: mutants?.mutants ?? 0,
    killed: mutants?.killed ?? 0,
    equivalents: mutants?.equivalents ?? [],
    survivors: mutants?.survivors ?? [],
    byRule: Object.fromEntries(ruleIds.map((id) => [id, mutants?.byRule[id] ?? 0])),
    byOperator: mutants?.byOperator ?? {},
  };
  console.log(JSON.stringify(report, null, 2));
} else {
  console.log(`${'machine'.padEnd(20)}${'states'.padStart(10)}${'breaches'.padStart(10)}`);
  for (const proof of proofs)
    console.log(
      `${proof.machine.padEnd(20)}${String(proof.states).padStart(10)}${String(proof.breaches.length).padStart(10)}`,
    );
  console.log(`\n${variants.length} plant variants`);
  const seen = new Set<string>();
  for (const breach of breaches) {
    const key = `${breach.rule} ${breach.machine} ${breach.step} ${breach.reason}`;
    if (seen.has(key)) continue;
    seen.add(key);
    console.log(show(breach));
  }
  if (mutants) {
    console.log(
      `\nmutants${guidesEvery > 1 ? ` (of the guides, every ${guidesEvery}th)` : ''} ${mutants.mutants}, killed ${mutants.killed}, equivalent ${mutants.equivalents.length}, survivors ${mutants.survivors.length}`,
    );
    for (const id of mutants.survivors) console.log(`  survivor ${id}`);
    console.log(`\nkilled by rule: ${ruleIds.map((id) => `${id} ${mutants.byRule[id] ?? 0}`).join('  ')}`);
    for (const [operator, tally] of Object.entries(mutants.byOperator))
      console.log(`  ${operator.padEnd(22)}${tally.killed} of ${tally.mutants}`);
  }
}
const toleratedShare = 0.05;
const bad =
  breaches.length > 0 ||
  (mutants !== undefined &&
    (mutants.survivors.length > 0 || mutants.equivalents.length > toleratedShare * mutants.mutants));
process.exitCode = bad ? 1 : 0;
