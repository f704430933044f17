import { boltzmannEv, type ModuleParams, referenceK, silicon } from './de-soto.ts';

/** What a module's label gives, at 1000 W/m² and 25 °C cell. */
export interface ModuleLabel {
  vocV: number;
  iscA: number;
  vmpV: number;
  impA: number;
  /** [1/°C], fractions of the label value. */
  vocPerC: number;
  iscPerC: number;
}

/** Three linear conditions for IL, I0 and 1/Rsh: short circuit, open circuit, maximum-power point. */
function linearParams(label: ModuleLabel, slopeV: number, seriesOhm: number) {
  const grows = (volts: number, amps: number) => Math.expm1((volts + amps * seriesOhm) / slopeV);
  const { vocV, iscA, vmpV, impA } = label;
  const [eShort, eOpen, eMax] = [grows(0, iscA), grows(vocV, 0), grows(vmpV, impA)];
  const [uShort, uOpen, uMax] = [iscA * seriesOhm, vocV, vmpV + impA * seriesOhm];
  // Rows less the open-circuit row leave two unknowns, I0 and the shunt's conductance.
  const det = (eOpen - eShort) * (uOpen - uMax) - (eOpen - eMax) * (uOpen - uShort);
  const satA = (iscA * (uOpen - uMax) - impA * (uOpen - uShort)) / det;
  const shuntS = ((eOpen - eShort) * impA - (eOpen - eMax) * iscA) / det;
  return { satA, shuntS, photoA: satA * eOpen + vocV * shuntS, eMax };
}

/** dP/dV at the label's maximum-power point; 0 when it is one. */
function tilt(label: ModuleLabel, slopeV: number, seriesOhm: number): number {
  const { satA, shuntS, eMax } = linearParams(label, slopeV, seriesOhm);
  const conductance = (satA * (eMax + 1)) / slopeV + shuntS;
  return label.impA - (label.vmpV * conductance) / (1 + conductance * seriesOhm);
}

/** Root of a function between two values of unlike sign, by halving. */
function between(f: (x: number) => number, low: number, high: number): number | undefined {
  let [left, right] = [low, high];
  const atLeft = f(left);
  if (!(atLeft * f(right) <= 0)) return undefined;
  for (let round = 0; round < 80; round++) {
    const middle = (left + right) / 2;
    if (f(middle) * atLeft > 0) left = middle;
    else right = middle;
  }
  return (left + right) / 2;
}

/**
 * Single-diode parameters from a module's label. The slope `a` comes from the label's coefficient of open-circuit volts
 * under De Soto's law (its derivative at open circuit, Solar Energy 80, 2006); Rs from the maximum-power condition.
 * Where the label's figures allow no shunt or series resistance (rounded or invented labels), the slope is lowered until
 * they do. Undefined when no slope fits.
 */
export function fitModule(label: ModuleLabel): ModuleParams | undefined {
  const gapTerm =
    3 / referenceK +
    silicon.gapEv / (boltzmannEv * referenceK ** 2) -
    (silicon.gapEv * silicon.gapPerK) / (boltzmannEv * referenceK);
  const first = (label.vocV / referenceK - label.vocV * label.vocPerC) / (gapTerm - label.iscPerC);
  // Past this the maximum-power point would lie at the diode's own open-circuit volts.
  const mostOhm = (0.95 * (label.vocV - label.vmpV)) / label.impA;
  for (let slopeV = first; slopeV > first / 4; slopeV *= 0.985) {
    const seriesOhm = between((ohm) => tilt(label, slopeV, ohm), 0, mostOhm);
    if (seriesOhm === undefined) continue;
    const { satA, shuntS, photoA } = linearParams(label, slopeV, seriesOhm);
    if (!(satA > 0) || !(shuntS >= 0)) continue;
    return {
      photoA,
      satA,
      seriesOhm,
      shuntOhm: shuntS > 0 ? 1 / shuntS : 1e6,
      slopeV,
      iscPerC: label.iscA * label.iscPerC,
    };
  }
  return undefined;
}
