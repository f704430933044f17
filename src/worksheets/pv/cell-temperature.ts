import { defineWorksheet, type Plot } from '../define.ts';
import { give } from '../result.ts';
import { say } from '../say.ts';
import {
  type CellTemps,
  cellTempsOf,
  rossByMounting,
  samAddedC,
  sandiaByMounting,
  spreadOf,
} from './cell-temp.ts';

/** Models that part by more than this leave the choice to the reader. Common practice. */
const wideSpreadC = 15;
/** Above this the wind does most of the cooling and a gust moves the volts. Common practice. */
const windyMs = 5;

const modelIds = [
  'noctC',
  'rossC',
  'faimanC',
  'sandiaC',
  'samC',
] as const satisfies readonly (keyof CellTemps)[];

export const cellTemperature = defineWorksheet({
  id: 'cell-temperature',
  group: 'pv',
  hazards: ['pv-live-in-light'],
  inputs: {
    irradiance: { kind: 'irradiance', min: 0, max: 1500, default: 1000 },
    airC: { kind: 'temperature', min: -50, max: 55, signed: true, from: ['climate.usualHighC'] },
    windMs: { kind: 'speed', min: 0, max: 30, default: 1 },
    mounting: {
      options: ['open-rack', 'roof-gap', 'roof-flush'],
      default: 'roof-gap',
      from: ['string.mounting'],
    },
    noctC: { kind: 'temperature', min: 35, max: 60, default: 45 },
    efficiency: { kind: 'ratio', min: 0, max: 0.3, default: 0.2 },
  },
  outputs: {
    likelyC: { kind: 'temperature', headline: true },
    hottestC: { kind: 'temperature', headline: true },
    coolestC: { kind: 'temperature' },
    riseC: { kind: 'temperatureDifference' },
    noctC: { kind: 'temperature' },
    rossC: { kind: 'temperature' },
    faimanC: { kind: 'temperature' },
    sandiaC: { kind: 'temperature' },
    samC: { kind: 'temperature' },
  },
  compute(given) {
    const temps = cellTempsOf(given, given);
    const spread = spreadOf(temps);
    return give({
      ...spread,
      riseC: spread.hottestC - given.airC,
      noctC: temps.noctC,
      rossC: temps.rossC,
      faimanC: temps.faimanC,
      sandiaC: temps.sandiaC,
      samC: temps.samC,
    });
  },
  working(given, out) {
    const { a, b, deltaC } = sandiaByMounting[given.mounting];
    const { irradiance, airC, windMs, efficiency } = given;
    const weather = { irradiance, airC, windMs, efficiency };
    return [
      ...(out.noctC === undefined
        ? []
        : [say('noct', weather, { noctOfModuleC: given.noctC, cellC: out.noctC })]),
      say('ross', weather, out, { perWattC: rossByMounting[given.mounting] }),
      ...(out.faimanC === undefined ? [] : [say('faiman', weather, out)]),
      say('sandia', weather, out, { a, b, deltaC }),
      say('sam', weather, out, { noctPlacedC: given.noctC + samAddedC[given.mounting] }),
      say('likely', out),
    ];
  },
  remarks(given, out) {
    const spreadC = (out.hottestC ?? 0) - (out.coolestC ?? 0);
    const ids = [
      'design',
      ...(given.mounting === 'roof-flush' ? ['flush'] : []),
      ...(spreadC > wideSpreadC ? ['apart'] : []),
      ...(given.windMs > windyMs ? ['windy'] : []),
    ];
    return ids.map((id) => say(`worksheet.cell-temperature.${id}`, given, out, { spreadC }));
  },
  plot(given, out): Plot {
    const top = Math.max(1000, given.irradiance);
    const ends = [0, top].map((irradiance) => ({
      irradiance,
      temps: cellTempsOf({ ...given, irradiance }, given),
    }));
    // Every model is a straight line in the light.
    const curves = modelIds.flatMap((id) => {
      const points = ends.flatMap(({ irradiance, temps }) =>
        temps[id] === undefined ? [] : [[irradiance, temps[id]] as const],
      );
      return points.length === 2 ? [{ id, points }] : [];
    });
    const hottest = Math.max(...curves.flatMap(({ points }) => points.map(([, tempC]) => tempC)));
    return {
      x: { kind: 'irradiance', low: 0, high: top },
      y: { kind: 'temperature', low: given.airC - 5, high: hottest + 5 },
      curves,
      levels: [{ id: 'air', axis: 'y', at: given.airC }],
      marks: [{ id: 'likely', x: given.irradiance, y: out.likelyC! }],
    };
  },
  sources: [
    { id: 'ross-1976' },
    { id: 'skoplaki-palyvos-2009' },
    { id: 'faiman-2008' },
    { id: 'sandia-2004-3535', clause: 'module temperature' },
    { id: 'sam-noct' },
    { id: 'common-practice' },
  ],
});
