import { insulationPosition } from '../../worksheets/pv/insulation-position.ts';
import type { ExpectContext, WorkDef } from '../context.ts';
import { refusalOf } from './refusal.ts';
import { type RunString, runString } from './site.ts';

/** Light moves this much between three readings taken in a row. Common practice. */
const lightDrift = 0.01;
/** A meter's volts input where the sheet does not know it [Ω]. Common practice. */
const usualMeterOhms = 1e7;

/** Inputs of the insulation worksheet from the three readings of a step. */
function insulationInputs(context: ExpectContext, { string }: RunString, block: string) {
  const { sheet, readings } = context;
  const vocVolts = readings[`${block}.voc`];
  const positiveVolts = readings[`${block}.plus`];
  const negativeVolts = readings[`${block}.minus`];
  if (vocVolts === undefined || positiveVolts === undefined || negativeVolts === undefined) return undefined;
  const { ofReading, counts } = sheet.meter.dcVolts;
  return {
    vocVolts,
    positiveVolts,
    negativeVolts,
    modules: string.modulesInSeries,
    vocRatedVolts: string.modulesInSeries * string.vocV,
    meterOhms: sheet.meter.inputOhm ?? usualMeterOhms,
    meterShare: ofReading ?? 0.01,
    meterVolts: 0.1 * (counts ?? 3),
    lightDrift,
    ...(sheet.inverter.insulationLimitOhm === null
      ? {}
      : { ownLimitOhms: sheet.inverter.insulationLimitOhm }),
  };
}

function insulationWork(
  id: string,
  block: string,
  answers: readonly string[],
  answerOf: (verdict: string, place: string) => string,
): WorkDef {
  return {
    id,
    answers,
    work(context) {
      const run = runString(context);
      if (!run.ok) return run;
      const inputs = insulationInputs(context, run, block);
      if (!inputs) return { ok: false, missing: [] };
      const result = insulationPosition.compute({ ownLimitOhms: undefined, ...inputs });
      const refusal = answerOf('refused', 'none');
      return result.ok
        ? {
            ok: true,
            outcome: answerOf(result.out.verdict ?? 'cannotTell', result.out.place ?? 'none'),
            use: { worksheet: 'insulation-position', inputs },
            says: insulationPosition.remarks?.({ ownLimitOhms: undefined, ...inputs }, result.out) ?? [],
          }
        : {
            ok: true,
            outcome: refusal,
            use: { worksheet: 'insulation-position', inputs },
            says: [refusalOf('insulation-position', result.reason)],
          };
    },
  };
}

const placeAnswers: Record<string, string> = {
  positiveLead: 'leak-at-positive',
  negativeLead: 'leak-at-negative',
  between: 'leak-between',
  none: 'leak-between',
};

const insulation = insulationWork(
  'pv-insulation',
  'pole-ground',
  ['sound', 'leak-between', 'leak-at-positive', 'leak-at-negative', 'cannot-tell', 'refused'],
  (verdict, place) =>
    verdict === 'sound'
      ? 'sound'
      : verdict === 'leak'
        ? placeAnswers[place]!
        : verdict === 'cannotTell'
          ? 'cannot-tell'
          : 'refused',
);

const insulationAfter = insulationWork(
  'pv-insulation-after',
  'retest-ground',
  ['sound', 'not-sound'],
  (verdict) => (verdict === 'sound' ? 'sound' : 'not-sound'),
);

/** Arithmetic on the readings to ground. */
export const groundWorks: readonly WorkDef[] = [insulation, insulationAfter];
