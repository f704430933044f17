/** What a run comes to. */
export { ending } from './ending.ts';
export { verdict } from './verdict.ts';
