/** Readings taken one after another, with the time of each. */
export { seriesField } from './series-field.ts';
