import { parentPort, workerData } from 'node:worker_threads';
import { guides, procedures, proceduresById } from '../../machines/index.ts';
import { runCampaign, type Share } from '../guide/prove/campaign.ts';
import type { Proof } from '../guide/prove/prove.ts';
import { allVariants } from '../safety/plant.ts';

/** One share of the mutants of every guide and procedure, proved in a thread of its own. */

const { proofs, ...share } = workerData as Share & { proofs: readonly Proof[] };
parentPort?.postMessage(
  runCampaign([...guides, ...procedures], proceduresById, proofs, allVariants(), share),
);
