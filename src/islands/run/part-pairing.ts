/** Pairs of settings, tried one after another. */
export { pairing } from './pairing.ts';
