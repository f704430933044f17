/** Which edition a sheet was checked by, with the clause numbers of that edition. A test holds them to the data. */
export const pvBasisSays: Readonly<Record<string, string>> = {
  'nec-2023':
    'Checked by NEC 2023: 690.8(A)(1)(a), 690.8(B), 690.9(B)(1); Table 310.16, Table 310.15(B)(1)(1), Table 310.15(C)(1), 240.6(A). Your local code and its edition govern.',
  'nec-2020':
    'Checked by NEC 2020: 690.8(A)(1)(a), 690.8(B), 690.9(B)(1); Table 310.16, Table 310.15(B)(1), Table 310.15(C)(1), 240.6(A). Your local code and its edition govern.',
  'nec-2017':
    'Checked by NEC 2017: 690.8(A)(1), 690.8(B), 690.9(B); Table 310.15(B)(16), Table 310.15(B)(2)(a), Table 310.15(B)(3)(a), 240.6(A). Clause numbers from memory. Your local code and its edition govern.',
};

/** The same for the need of a fuse in each string. */
export const fuseBasisSays: Readonly<Record<string, string>> = {
  'nec-2023': 'Checked by NEC 2023: 690.9(A), 690.9(B)(1), 240.6(A). Your local code and its edition govern.',
  'nec-2020': 'Checked by NEC 2020: 690.9(A), 690.9(B)(1), 240.6(A). Your local code and its edition govern.',
  'nec-2017':
    'Checked by NEC 2017: 690.9(A), 690.9(B), 240.6(A). Clause numbers from memory. Your local code and its edition govern.',
  iec: 'Checked by IEC 60364-7-712, 712.431, as a national edition of 2020 gives it. Your local code and its edition govern.',
};
