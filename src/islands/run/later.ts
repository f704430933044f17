/** What `fetch-later.ts` fetches, in one file. */
export { sayRun } from '../../words/en/run.ts';
export { barPanel } from './bar.ts';
export { ending } from './ending.ts';
export { factsPanel } from './facts-panel.ts';
export { hold } from './hold.ts';
export { misfitPanel } from './misfit-panel.ts';
export { showProblems } from './problems.ts';
export { pairing } from './pairing.ts';
export { readingPanel } from './reading-panel.ts';
export { seriesField } from './series-field.ts';
export { verdict } from './verdict.ts';
export { exportVisit, visitMenu } from './visit-menu.ts';
export { wait } from './wait.ts';
export { work } from './work.ts';
