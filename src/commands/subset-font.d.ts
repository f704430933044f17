declare module 'subset-font' {
  /** Cut a font to the characters of `text`. The package ships no types of its own. */
  export default function subsetFont(
    font: Buffer,
    text: string,
    options: { targetFormat: 'woff2' },
  ): Promise<Buffer>;
}
