import { arrayWatts, joulesPerDay, usualChargePath } from '../../worksheets/battery-dc/idle.ts';
import type { ExpectContext, WorkDef } from '../context.ts';
import { allowedWattsOf, bankVoltsOf, chargeEfficiency, idleOf, lossOf, throughputOf } from './site.ts';

/** Nearer to its threshold than this, a load neither asks for fans nor lets them rest. Common practice. */
const nearThreshold = 0.1;
/** A label that says nothing gives full power up to here at least [m]. Common practice. */
const silentFullPowerM = 1000;
/** Hours of good sun for which the price of idle is told [h]. */
const sunHours = [4, 5] as const;

/** The heat-rise worksheet's inputs for the load last read; what the sheet does not know is left as it starts. */
function riseInputs(context: ExpectContext): Record<string, number> {
  const { sheet } = context;
  const { acWatts, chargeWatts } = throughputOf(context);
  const { efficiency, fanAirflowM3s } = sheet.inverter;
  return {
    acWatts,
    chargeWatts,
    chargeEfficiency,
    idleWatts: idleOf(sheet).watts,
    inletC: sheet.climate.usualHighC,
    ...(efficiency === null ? {} : { efficiency }),
    ...(sheet.altitudeM === null ? {} : { altitudeM: sheet.altitudeM }),
    ...(fanAirflowM3s === null ? {} : { airflowM3s: fanAirflowM3s }),
  };
}

type Asked = 'by-design' | 'load-asks' | 'charge-asks' | 'heat-decides' | 'should-rest' | 'not-known';

/** Do the fans do at this load what the sheet says turns them on? */
function whatFansAreAsked(context: ExpectContext, { acWatts, chargeWatts } = throughputOf(context)): Asked {
  const { fanRule, fanStartLoad, ratedW } = context.sheet.inverter;
  if (fanRule === 'always') return 'by-design';
  if (fanRule === 'temperature') return 'heat-decides';
  if (fanRule === null || fanStartLoad === null) return 'not-known';
  const startWatts = fanStartLoad * ratedW;
  const clearly = (1 + nearThreshold) * startWatts;
  if (acWatts >= clearly) return 'load-asks';
  if (acWatts + chargeWatts >= clearly) return chargeWatts > 0 ? 'charge-asks' : 'load-asks';
  if (acWatts + chargeWatts > (1 - nearThreshold) * startWatts) return 'not-known';
  return fanRule === 'load' ? 'should-rest' : 'heat-decides';
}

const normal: WorkDef = {
  id: 'heat-normal',
  answers: ['by-design', 'load-asks', 'charge-asks', 'heat-decides', 'should-rest', 'not-known'],
  work(context) {
    const { fanStartLoad, ratedW } = context.sheet.inverter;
    const { acWatts, chargeWatts } = throughputOf(context);
    const outcome = whatFansAreAsked(context);
    const params = {
      acWatts,
      chargeWatts,
      lossWatts: lossOf(context).likely,
      startWatts: (fanStartLoad ?? 0) * ratedW,
    };
    return {
      ok: true,
      outcome,
      use: { worksheet: 'heat-rise', inputs: riseInputs(context) },
      says: [
        { id: 'expected.heat.makesHeat', params },
        { id: `expected.heat.asked.${outcome}`, params },
      ],
    };
  },
};

/** Do silent fans have to turn, by the sheet's own rule for load? Only then do they need no temperature to be wrong. */
const silent: WorkDef = {
  id: 'heat-silent',
  answers: ['due', 'not-asked', 'heat-decides'],
  work(context) {
    const { fanRule, fanStartLoad, ratedW } = context.sheet.inverter;
    const through = throughputOf(context);
    // With a generator on, the loads may come straight from it and ask for nothing here.
    const passed = context.outcomes['charge-from'] === 'ac-source';
    const counted = { ...through, acWatts: passed ? 0 : through.acWatts };
    const asked = whatFansAreAsked(context, counted);
    const due = asked === 'by-design' || asked === 'load-asks' || asked === 'charge-asks';
    const outcome = due ? 'due' : fanRule === 'load' ? 'not-asked' : 'heat-decides';
    const params = { ...counted, startWatts: (fanStartLoad ?? 0) * ratedW };
    const how = asked === 'by-design' ? 'always' : outcome;
    return { ok: true, outcome, says: [{ id: `expected.heat.silent.${how}`, params }] };
  },
};

const height: WorkDef = {
  id: 'heat-height',
  answers: ['over-derated', 'within', 'not-known'],
  work(context) {
    const { altitudeM, inverter } = context.sheet;
    if (altitudeM === null) return { ok: false, missing: ['altitudeM'] };
    const known = inverter.fullPowerToM;
    const fullToM = known ?? silentFullPowerM;
    const overM = Math.max(0, altitudeM - fullToM);
    const allowedWatts = allowedWattsOf(context.sheet, altitudeM, fullToM);
    const { acWatts } = throughputOf(context);
    const outcome =
      overM === 0
        ? 'within'
        : known === null
          ? 'not-known'
          : acWatts > allowedWatts
            ? 'over-derated'
            : 'within';
    const params = { altitudeM, fullToM, allowedWatts, acWatts };
    return {
      ok: true,
      outcome,
      use: { worksheet: 'heat-rise', inputs: riseInputs(context) },
      says: [{ id: `expected.heat.height.${overM === 0 ? 'below' : outcome}`, params }],
    };
  },
};

/** What idle costs in a day, and how much array it eats at 4 and at 5 hours of sun. */
const idleCost: WorkDef = {
  id: 'heat-idle',
  answers: ['counted', 'assumed'],
  work({ sheet }) {
    const idle = idleOf(sheet);
    const watts = idle.watts * sheet.parallelUnits;
    const busVolts = bankVoltsOf(sheet);
    const dayJoules = joulesPerDay(watts);
    const chargePath = usualChargePath;
    const [lossless4, lossless5] = sunHours.map((hours) => arrayWatts(dayJoules, hours * 3600, 1));
    const [eaten4, eaten5] = sunHours.map((hours) => arrayWatts(dayJoules, hours * 3600, chargePath));
    const params = {
      watts,
      dayJoules,
      chargePath,
      lossless4: lossless4!,
      lossless5: lossless5!,
      eaten4: eaten4!,
      eaten5: eaten5!,
    };
    return {
      ok: true,
      outcome: idle.assumed ? 'assumed' : 'counted',
      use: {
        worksheet: 'idle-draw',
        inputs: { busVolts, amps: watts / busVolts, windowS: sunHours[0] * 3600, chargePath },
      },
      says: [
        { id: idle.assumed ? 'expected.heat.idleAssumed' : 'expected.heat.idle', params },
        { id: 'expected.heat.idleArray', params },
      ],
    };
  },
};

/** Arithmetic of the guide to hot units and loud fans. */
export const heatWorks: readonly WorkDef[] = [normal, silent, height, idleCost];
