/** What a run needs when it does not simply go on: something refused, barred, missing, or looked up. */
export { sayRun } from '../../words/en/run.ts';
export { barPanel } from './bar.ts';
export { factsPanel } from './facts-panel.ts';
export { misfitPanel } from './misfit-panel.ts';
export { showProblems } from './problems.ts';
export { readingPanel } from './reading-panel.ts';
export { exportVisit, visitMenu } from './visit-menu.ts';
