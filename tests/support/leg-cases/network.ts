/**
 * The physics that the readings of the leg cases come from: two phasor sources behind a common star, a feeder, and a load on
 * each leg, solved by Millman's theorem for the panel's neutral. It shares nothing with the bands, the works or the worksheets.
 */

interface Complex {
  re: number;
  im: number;
}
const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
const sub = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
const mul = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
const div = (a: Complex, b: Complex): Complex => {
  const d = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / d, im: (a.im * b.re - a.re * b.im) / d };
};
const abs = (a: Complex) => Math.hypot(a.re, a.im);
const real = (re: number): Complex => ({ re, im: 0 });
const turned = (size: number, degrees: number): Complex => ({
  re: size * Math.cos((degrees * Math.PI) / 180),
  im: size * Math.sin((degrees * Math.PI) / 180),
});

/** A plant as it is, its fault included. Ohms are of one conductor, joints included. */
export interface Plant {
  volts: number;
  /** Degrees from leg 1 to leg 2; `undefined`: one line. */
  angle: number | undefined;
  sourceOhms: number;
  sourceNeutralOhms: number;
  hot1Ohms: number;
  hot2Ohms: number;
  neutralOhms: number;
}

/** Open: what leaks over a burnt gap. */
export const open = 1e12;
const meterOhms = 1e7;

export interface Seen {
  d: { v1: number; v2: number; v12: number };
  o: { v1: number; v2: number; v12: number };
  i1: number;
  i2: number;
  neutral: number;
  ng: number;
}

/** Resistance of a heater by its nameplate [Ω]. */
const heater = (watts: number, volts: number) => (watts <= 0 ? meterOhms : volts ** 2 / watts);

/** What meters at panel and output show with these watts on the legs; `volts` of the nameplate is the nominal leg. */
export function seen(plant: Plant, watts1: number, watts2: number, nominal: number, lag2 = 0): Seen {
  const e1 = turned(plant.volts, 0);
  const two = plant.angle !== undefined;
  const e2 = turned(two ? plant.volts : 0, plant.angle ?? 0);
  const z1 = real(heater(watts1, nominal));
  const z2 = two ? turned(heater(watts2, nominal), lag2) : real(open);
  const leg1 = add(real(plant.sourceOhms + plant.hot1Ohms), z1);
  const leg2 = add(real(plant.sourceOhms + plant.hot2Ohms), z2);
  const back = real(plant.neutralOhms + plant.sourceNeutralOhms);
  const y = (z: Complex) => div(real(1), z);
  const top = add(mul(e1, y(leg1)), mul(e2, y(leg2)));
  const star = div(top, add(add(y(leg1), y(leg2)), y(back)));
  const c1 = div(sub(e1, star), leg1);
  const c2 = div(sub(e2, star), leg2);
  const cn = div(star, back);
  const on = mul(cn, real(plant.sourceNeutralOhms));
  const o1 = sub(e1, mul(c1, real(plant.sourceOhms)));
  const o2 = sub(e2, mul(c2, real(plant.sourceOhms)));
  const d1 = add(star, mul(c1, z1));
  const d2 = add(star, mul(c2, z2));
  return {
    d: { v1: abs(sub(d1, star)), v2: abs(sub(d2, star)), v12: abs(sub(d1, d2)) },
    o: { v1: abs(sub(o1, on)), v2: abs(sub(o2, on)), v12: abs(sub(o1, o2)) },
    i1: abs(c1),
    i2: two ? abs(c2) : 0,
    neutral: abs(cn),
    ng: abs(sub(star, on)),
  };
}

/** A dead leg at the panel, joined to the live one through a two-pole heater and with loads of its own. */
export function backFed(volts: number, twoPoleOhms: number, ownOhms: number) {
  const dead = (volts * ownOhms) / (ownOhms + twoPoleOhms);
  return { v1: volts, v2: dead, v12: volts - dead };
}
