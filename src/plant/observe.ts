import { cellExtremes } from './battery/spec.ts';
import type { Random } from './numeric/random.ts';
import type { Subject } from './places.ts';
import { terminal } from './pv/build.ts';
import { cellTemp, moduleCount } from './pv/spec.ts';
import type { TrackerDoing } from './pv/tracker.ts';
import { settle } from './settle.ts';
import type { Plant, PlantEvent } from './spec.ts';

/** What the screens of unit and packs show; undefined: the screen is dark, or has no such figure just now. */
export interface Displays {
  lit: boolean;
  batteryV: number | undefined;
  /** Into the battery counts positive [A]. */
  batteryA: number | undefined;
  pvV: number | undefined;
  pvW: number | undefined;
  /** Of the string's own tracker. */
  tracker: TrackerDoing | undefined;
  outputW: number | undefined;
  outputVa: number | undefined;
  chargeW: number | undefined;
  sinkC: number | undefined;
  /** From the packs, over the link. */
  permittedChargeA: number | undefined;
  percent: number | undefined;
  packsSeen: number | undefined;
  /** On the packs' own screens. */
  coldestC: number;
  hottestC: number;
  highestCellV: number;
  lowestCellV: number;
  events: PlantEvent[];
}

const rounded = (value: number, step: number): number => Math.round(value / step) * step;

/** Events that the plant as it stands has written, gravest first. */
export function eventsOf(plant: Plant): PlantEvent[] {
  const { spec } = plant;
  const settled = settle(plant);
  const doing = (what: TrackerDoing) => settled.pv.trackers.some((tracker) => tracker.doing === what);
  const list: [PlantEvent, boolean][] = [
    ['ground-latched', spec.unit.latched.includes('ground-fault')],
    ['insulation', doing('insulation')],
    ['arc-latched', spec.unit.latched.includes('arc')],
    ['over-volts', doing('over-volts')],
    [
      'battery-link',
      spec.link.kind !== 'none' && settled.lit && (!settled.link.up || settled.link.drops !== 'never'),
    ],
    ['overload', settled.unit === 'overload'],
    ['low-battery', settled.unit === 'low-battery'],
  ];
  return list.flatMap(([event, there]) => (there ? [event] : []));
}

/** The screen's PV figures are those of tracker `own`: the one a person believes the string to be on. */
export function displays(
  plant: Plant,
  subject: Subject,
  own = plant.spec.runs[subject.run]?.plusTo.tracker ?? 0,
): Displays {
  const { spec, state } = plant;
  const settled = settle(plant);
  const { lit, link } = settled;
  const tracker = settled.pv.trackers[own];
  const { circuit, point } = settled.pv;
  const at = (pole: '+' | '-') => (point.ok ? point.volts[circuit.nodeOf.get(terminal(own, pole))!]! : 0);
  const when = <T>(shown: boolean, value: T): T | undefined => (shown ? value : undefined);
  const intoBattery = -settled.busA;
  const cells = spec.packs.map((pack, i) => cellExtremes(pack, -settled.packA[i]!));
  return {
    lit,
    batteryV: when(lit, rounded(settled.busV, 0.1)),
    batteryA: when(lit, rounded(intoBattery, 0.1)),
    pvV: when(lit, Math.max(0, rounded(at('+') - at('-'), 0.1))),
    pvW: when(lit, rounded(tracker?.watts ?? 0, 1)),
    tracker: when(lit, tracker?.doing),
    outputW: when(lit, Math.max(0, rounded(settled.outW, 1))),
    outputVa: when(lit, rounded(settled.outVa, 1)),
    chargeW: when(lit, Math.max(0, rounded(intoBattery * settled.busV, 1))),
    sinkC: when(lit, rounded(settled.heat[subject.unit]?.shownC ?? 0, 1)),
    permittedChargeA: when(link.up, rounded(settled.permittedA ?? 0, 1)),
    percent: when(link.up, rounded(100 * spec.packs[0]!.charge, 1)),
    packsSeen: when(link.up, link.packsSeen),
    coldestC: rounded(Math.min(...spec.packs.map((pack) => pack.coldestC)), 1),
    hottestC: rounded(Math.max(...spec.packs.map((pack) => pack.hottestC)), 1),
    highestCellV: rounded(Math.max(...cells.map(({ highestV }) => highestV)), 0.001),
    lowestCellV: rounded(Math.min(...cells.map(({ lowestV }) => lowestV)), 0.001),
    events: state.unitOn ? eventsOf(plant) : [],
  };
}

/** What eyes, ears and nose find, each from the plant's own state. */
export interface Looks {
  light: 'bright' | 'weak' | 'dark';
  isolatorHandle: 'on' | 'off';
  shutdown: 'none' | 'told-to-run' | 'pressed' | 'no-signal';
  stringFuse: 'fitted' | 'none';
  modules: number;
  /** A joint hot enough to smell, crackle or scorch when it is seen: what it turns into heat [W]. */
  jointW: number;
  unitScreen: 'dark' | 'steady';
  packLights: ('on' | 'off')[];
  /** By unit. */
  fans: { asked: number; speed: 'silent' | 'slow' | 'full'; oneSilent: boolean; scrapes: boolean }[];
  grille: 'clean' | 'clogged';
  airPath: 'free' | 'comes-round';
  overAnother: boolean;
  upright: boolean;
  sunOnCase: boolean;
  fanSetting: 'auto' | 'full' | 'quiet';
  /** Heat or height takes power away that is being asked for. */
  derating: boolean;
  /** Lamps: pulsing in the output's own rhythm, blinking with a relay, or steady. */
  lamps: 'steady' | 'pulsing' | 'blinking-with-relay' | 'out';
  dataPlugs: 'seated' | 'half-in';
  secondMaster: boolean;
  dataLeadAlongPower: boolean;
}

/** Light in which a string gives what its label promises, and below which there is none to speak of [W/m²]. Common practice. */
const lightBands = { bright: 400, dark: 20 } as const;

export function looks(plant: Plant, subject: Subject): Looks {
  const { spec, state } = plant;
  const settled = settle(plant);
  const run = spec.runs[subject.run]!;
  const heat = spec.heat[subject.unit] ?? spec.heat[0]!;
  const { lightWm2 } = spec.sky;
  const tracker = settled.pv.trackers[run.plusTo.tracker];
  const branch = run.branches[subject.branch] ?? run.branches[0]!;
  return {
    light: lightWm2 >= lightBands.bright ? 'bright' : lightWm2 > lightBands.dark ? 'weak' : 'dark',
    isolatorHandle: state.isolators[subject.run] ? 'on' : 'off',
    shutdown:
      run.shutdown === 'none'
        ? 'none'
        : run.shutdown === 'running'
          ? 'told-to-run'
          : run.shutdownPressed
            ? 'pressed'
            : 'no-signal',
    stringFuse: run.fuseFitted ? 'fitted' : 'none',
    modules: moduleCount(run),
    jointW:
      ((tracker?.amps ?? 0) / run.branches.length) ** 2 * (Number.isFinite(branch.joint) ? branch.joint : 0),
    unitScreen: settled.lit ? 'steady' : 'dark',
    packLights: spec.packs.map((pack) => (pack.awake ? 'on' : 'off')),
    fans: spec.heat.map((each, k) => {
      const { asked, turning } = settled.heat[k]!;
      const on = settled.lit ? turning : 0;
      return {
        asked: settled.lit ? asked : 0,
        speed: on < 0.02 ? 'silent' : on < 0.6 ? 'slow' : 'full',
        oneSilent: settled.lit && asked > 0.02 && each.fansWork > 0 && each.fansWork < 1,
        scrapes: each.fanScrapes && on > 0,
      };
    }),
    grille: heat.openShare < 0.75 ? 'clogged' : 'clean',
    airPath: heat.recirculation > 0.15 ? 'comes-round' : 'free',
    overAnother: heat.overAnother,
    upright: heat.upright,
    sunOnCase: heat.sunW > 0,
    fanSetting: heat.fanMode,
    derating:
      (settled.heat[subject.unit]?.powerShare ?? 1) * spec.unit.ratedW < (settled.unitW[subject.unit] ?? 0),
    lamps:
      settled.unit === 'searching'
        ? 'pulsing'
        : spec.source.flips && state.sourceRunning && state.acInOn
          ? 'blinking-with-relay'
          : settled.unit === 'running'
            ? 'steady'
            : 'out',
    dataPlugs: spec.link.lead.touchy ? 'half-in' : 'seated',
    secondMaster: spec.link.secondMaster,
    dataLeadAlongPower: spec.link.noiseVPerA > 0.004,
  };
}

export type ThermometerPlace =
  | 'module'
  | 'room'
  | 'inlet'
  | 'outlet'
  | 'outlet-below'
  | 'case'
  | 'jacket'
  | 'jacket-twin';

/** A contact or air thermometer: ±1 °C. Common practice. */
export function temperature(
  plant: Plant,
  place: ThermometerPlace,
  subject: Subject,
  random: Random,
  errs: boolean,
): number {
  const { sky, heat } = plant.spec;
  const result = settle(plant).heat[subject.unit]!;
  const room = heat[subject.unit]!.roomC;
  const physical: Record<ThermometerPlace, number> = {
    module: cellTemp(sky),
    room,
    inlet: result.inletC,
    outlet: result.outletC,
    'outlet-below': heat[subject.unit]!.overAnother ? result.inletC : room,
    case: result.sinkC,
    jacket: result.terminalC,
    'jacket-twin': result.twinC,
  };
  const value = physical[place];
  return errs ? rounded(value + random.normal() * 0.5, 0.1) : value;
}

/** The same plant under another sky: what the owner says of mornings, heat and rain comes from here. */
export const underSky = (plant: Plant, sky: Partial<Plant['spec']['sky']>): Plant => ({
  ...plant,
  spec: { ...plant.spec, sky: { ...plant.spec.sky, ...sky } },
});
