/**
 * Locked-rotor code letters of motors: kVA a horsepower with the rotor held, at rated volts. NEC Table 430.7(B).
 * A letter is a range; I, O and Q are not used. It is not the design letter, which tells torque.
 */
export const nec430_7B = {
  source: 'nec-430-7-b',
  clause: 'Table 430.7(B)',
  rows: [
    { letter: 'A', from: 0, to: 3.14 },
    { letter: 'B', from: 3.15, to: 3.54 },
    { letter: 'C', from: 3.55, to: 3.99 },
    { letter: 'D', from: 4, to: 4.49 },
    { letter: 'E', from: 4.5, to: 4.99 },
    { letter: 'F', from: 5, to: 5.59 },
    { letter: 'G', from: 5.6, to: 6.29 },
    { letter: 'H', from: 6.3, to: 7.09 },
    { letter: 'J', from: 7.1, to: 7.99 },
    { letter: 'K', from: 8, to: 8.99 },
    { letter: 'L', from: 9, to: 9.99 },
    { letter: 'M', from: 10, to: 11.19 },
    { letter: 'N', from: 11.2, to: 12.49 },
    { letter: 'P', from: 12.5, to: 13.99 },
    { letter: 'R', from: 14, to: 15.99 },
    { letter: 'S', from: 16, to: 17.99 },
    { letter: 'T', from: 18, to: 19.99 },
    { letter: 'U', from: 20, to: 22.39 },
    /** No upper end. */
    { letter: 'V', from: 22.4 },
  ] as readonly { letter: string; from: number; to?: number }[],
} as const;

export const codeLetters = nec430_7B.rows.map((row) => row.letter);

/** Both ends of a letter's range [VA a horsepower]; `to` is missing for V. */
export function codeLetterVa(letter: string): { from: number; to: number | undefined } | undefined {
  const row = nec430_7B.rows.find((each) => each.letter === letter);
  return row && { from: 1000 * row.from, to: row.to === undefined ? undefined : 1000 * row.to };
}
