/**
 * Cut the two typefaces down to the characters that the English and Spanish texts use.
 * Run by hand after a font package changes; its results are committed, so a build needs no font tool.
 */
import { copyFile, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';

const ascii = String.fromCharCode(...Array.from({ length: 95 }, (_, i) => 0x20 + i));
const accents = '¡¿ÁÉÍÑÓÚÜáéíñóúüªº';
/** Marks for readings and sentences. Ω, µ, arrows and ≤ ≥ are not in these packages: the system face shows them. */
const marks = '\u00a0§°±²³·×÷½¼¾–—‘’“”…•−€©';
const characters = ascii + accents + marks;

const cuts = [
  { family: 'atkinson-hyperlegible-next', weight: 400, name: 'text-400' },
  { family: 'atkinson-hyperlegible-next', weight: 700, name: 'text-700' },
  { family: 'atkinson-hyperlegible-mono', weight: 400, name: 'mono-400' },
  { family: 'atkinson-hyperlegible-mono', weight: 600, name: 'mono-600' },
] as const;

const packages = new URL('../../node_modules/@fontsource/', import.meta.url);
const target = new URL('../styles/fonts/', import.meta.url);

let total = 0;
for (const { family, weight, name } of cuts) {
  const source = await readFile(new URL(`${family}/files/${family}-latin-${weight}-normal.woff2`, packages));
  const subset = await subsetFont(source, characters, { targetFormat: 'woff2' });
  await writeFile(new URL(`${name}.woff2`, target), subset);
  total += subset.length;
  console.log(`${name}.woff2  ${subset.length} bytes`);
}
await copyFile(new URL('atkinson-hyperlegible-next/LICENSE', packages), new URL('LICENSE.txt', target));
console.log(`${(total / 1024).toFixed(1)} kB in ${fileURLToPath(target)}`);
