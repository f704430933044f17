/** Steps that are more than a choice or a reading. */
export { hold } from './hold.ts';
export { wait } from './wait.ts';
export { work } from './work.ts';
