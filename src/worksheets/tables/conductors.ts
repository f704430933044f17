/**
 * Resistance of copper and aluminium conductors. Published families, each with its own base temperature and its own
 * coefficient: never take one family's coefficient to the other's table.
 */

/**
 * NEC 2023 chapter 9 table 8: class B stranded copper and aluminium, DC, Ω per 1000 ft at 75 °C. `gauge` 0 is 1/0,
 * −3 is 4/0. `coefficientPerC` is copper's; aluminium has its own (note 2 of the table).
 */
export const necTable8 = {
  source: 'nec-2023',
  clause: 'Chapter 9 Table 8',
  baseC: 75,
  coefficientPerC: 0.00323,
  aluminiumPerC: 0.0033,
  rows: [
    { gauge: 14, plain: 3.14, tinned: 3.26, aluminium: 5.17 },
    { gauge: 12, plain: 1.98, tinned: 2.05, aluminium: 3.25 },
    { gauge: 10, plain: 1.24, tinned: 1.29, aluminium: 2.04 },
    { gauge: 8, plain: 0.778, tinned: 0.809, aluminium: 1.28 },
    { gauge: 6, plain: 0.491, tinned: 0.51, aluminium: 0.808 },
    { gauge: 4, plain: 0.308, tinned: 0.321, aluminium: 0.508 },
    { gauge: 3, plain: 0.245, aluminium: 0.403 },
    { gauge: 2, plain: 0.194, aluminium: 0.319 },
    { gauge: 1, plain: 0.154, aluminium: 0.253 },
    { gauge: 0, plain: 0.122, aluminium: 0.201 },
    { gauge: -1, plain: 0.0967, tinned: 0.101, aluminium: 0.159 },
    { gauge: -2, plain: 0.0766, aluminium: 0.126 },
    { gauge: -3, plain: 0.0608, tinned: 0.0626, aluminium: 0.1 },
  ] as readonly { gauge: number; plain: number; tinned?: number; aluminium: number }[],
} as const;

/** IEC 60228:2004 table 3: greatest resistance of class 5 flexible copper, Ω/km at 20 °C. */
export const iec60228class5 = {
  source: 'iec-60228-2004',
  clause: 'Table 3 (class 5)',
  baseC: 20,
  coefficientPerC: 0.00393,
  rows: [
    { areaMm2: 1.5, plain: 13.3, tinned: 13.7 },
    { areaMm2: 2.5, plain: 7.98, tinned: 8.21 },
    { areaMm2: 4, plain: 4.95, tinned: 5.09 },
    { areaMm2: 6, plain: 3.3, tinned: 3.39 },
    { areaMm2: 10, plain: 1.91, tinned: 1.95 },
    { areaMm2: 16, plain: 1.21, tinned: 1.24 },
    { areaMm2: 25, plain: 0.78, tinned: 0.795 },
    { areaMm2: 35, plain: 0.554, tinned: 0.565 },
    { areaMm2: 50, plain: 0.386, tinned: 0.393 },
    { areaMm2: 70, plain: 0.272, tinned: 0.277 },
    { areaMm2: 95, plain: 0.206, tinned: 0.21 },
    { areaMm2: 120, plain: 0.161, tinned: 0.164 },
  ] as readonly { areaMm2: number; plain: number; tinned: number }[],
} as const;

/**
 * IEC 60228:2004 table 2: greatest resistance of class 2 stranded aluminium, Ω/km at 20 °C. From memory; the
 * cables of the Modelica Buildings library (ECM type, 45 °C) agree at 16, 25 and 120 mm².
 */
export const iec60228aluminium = {
  source: 'iec-60228-2004-al',
  clause: 'Table 2 (class 2, aluminium)',
  baseC: 20,
  coefficientPerC: 0.00403,
  rows: [
    { areaMm2: 10, aluminium: 3.08 },
    { areaMm2: 16, aluminium: 1.91 },
    { areaMm2: 25, aluminium: 1.2 },
    { areaMm2: 35, aluminium: 0.868 },
    { areaMm2: 50, aluminium: 0.641 },
    { areaMm2: 70, aluminium: 0.443 },
    { areaMm2: 95, aluminium: 0.32 },
    { areaMm2: 120, aluminium: 0.253 },
    { areaMm2: 150, aluminium: 0.206 },
    { areaMm2: 185, aluminium: 0.164 },
    { areaMm2: 240, aluminium: 0.125 },
  ] as readonly { areaMm2: number; aluminium: number }[],
} as const;

/** Copper of 100 % IACS: Ω·mm²/km at 20 °C, the figure NEC chapter 9 table 8 note 4 rests on. */
export const copperResistivity = 17.241;
/** Aluminium of 61 % IACS, as drawn for cable: Ω·mm²/km at 20 °C (IEC 60287-1-1 table 1 gives 28.26). */
export const aluminiumResistivity = 28.264;
/** A stranded conductor's wires run a little longer than the cable; Table 8 shows 1.8 to 2.6 %. */
export const strandingFactor = 1.02;
