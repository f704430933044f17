import { sallowCreek, ternLedge } from '../../../src/site/demo.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import { isolate, restore } from '../pv-cases/procedures.ts';
import { circulatingA, dcAmps, heatOf, jacketC, lossAt, mixedInletC, type Unit } from './physics.ts';

/** One visit: the site as its sheet has it, what was answered, and what a good fault-finder comes to. */
export interface HeatCase {
  id: string;
  sheet: SiteSheet;
  answers: Record<string, unknown>;
  causes: readonly string[] | null;
  end: string;
  leaves: string | null;
}

/** A demo site and the unit that really hangs there. */
interface Place {
  name: string;
  sheet: SiteSheet;
  unit: Unit;
  /** A load at which it works hard. */
  hardW: number;
  batteryV: number;
}

const places: readonly Place[] = [
  {
    name: 'sallow',
    sheet: sallowCreek,
    unit: { ratedW: 6000, idleW: 98, airflowM3s: 0.034, altitudeM: 366 },
    hardW: 4500,
    batteryV: 52.8,
  },
  {
    name: 'tern',
    sheet: ternLedge,
    unit: { ratedW: 3000, idleW: 47, airflowM3s: 0.02, altitudeM: 40 },
    hardW: 2200,
    batteryV: 49.5,
  },
];

const c = (degrees: number) => `${degrees.toFixed(1)} °C`;
const w = (watts: number) => watts.toFixed(0);
const a = (amps: number) => amps.toFixed(2);
const change = (sheet: SiteSheet, inverter: Partial<SiteSheet['inverter']>): SiteSheet => ({
  ...sheet,
  inverter: { ...sheet.inverter, ...inverter },
});

const arrive = { 'first-look': 'quiet' };

/** Loud fans, at a load. */
const loud = (watts: number, charge = '0') => ({
  ...arrive,
  complaint: 'fans-run',
  numbers: { watts: w(watts), charge },
});

/** Hot or cutting back, at the hard load, mounted right and in shade. */
const hotAt = ({ hardW }: Place, conditions: string) => ({
  ...arrive,
  complaint: 'hot-derates',
  conditions,
  numbers: { watts: w(hardW), charge: '0' },
  mount: 'upright',
  sun: 'shade',
  'fans-turn': 'all-blow',
  stack: 'alone',
});

/** Room, inlet and outlet as they are. */
const airOf = (roomC: number, inletC: number, outletC: number) => ({
  'room-air': c(roomC),
  'inlet-air': c(inletC),
  'outlet-air': c(outletC),
});

const soundJoint = 0.0001;
/** Two jackets of the pair, the plus lug with a joint of its own. */
function pairOf({ unit, batteryV }: Place, watts: number, roomC: number, jointOhm: number) {
  const amps = dcAmps(unit, watts, batteryV);
  return {
    'jackets-ready': 'done',
    'twin-heat': c(jacketC(roomC, amps, soundJoint)),
    'joint-heat': c(jacketC(roomC, amps, jointOhm)),
  };
}

/** Everything off for a quarter of an hour, and the fans go on as before. */
const restSame = {
  normal: 'not-known',
  'ease-off': 'done',
  'ease-wait': 'done',
  eased: { watts: '0', charge: '0' },
  'fans-eased': 'same',
  'base-design': 'full-speed',
};
/** The sheet does not say what turns the fans on. */
const unknownRule = (sheet: SiteSheet): SiteSheet => change(sheet, { fanRule: null });

/** The load and heat of the complaint, again, and it holds. */
const retestAir = ({ hardW }: Place, roomC: number, inletC: number, outletC: number) => ({
  'retest-choose': 'like-then',
  'retest-wait': 'done',
  'retest-numbers': { watts: w(hardW * 0.97), charge: '0' },
  'retest-held': 'holds',
  'retest-room': c(roomC),
  'retest-inlet': c(inletC),
  'retest-outlet': c(outletC),
});

function casesOf(place: Place): HeatCase[] {
  const { name, sheet, unit, hardW } = place;
  const at = (id: string) => `${name}: ${id}`;
  const roomC = 30;
  const sound = heatOf(unit, hardW, roomC + 1);
  const air = airOf(roomC, sound.inletC, sound.outletC);
  const choked = heatOf(unit, hardW, roomC + 1, 0.3);
  const rest = heatOf(unit, 0, 24);
  const pair = pairOf(place, hardW, roomC, soundJoint);
  const hot = hotAt(place, 'like-then');
  const idleAll = unit.idleW * sheet.parallelUnits;
  const byHeat = sheet.inverter.fanRule === 'temperature' ? sheet : change(sheet, { fanRule: 'temperature' });
  const two: SiteSheet = { ...unknownRule(sheet), parallelUnits: 2 };
  const apart = circulatingA(2.4, 0.4);
  const withSource: SiteSheet = {
    ...sheet,
    secondSource: { kind: 'generator-manual', ratedW: 3500, neutralBonded: true },
  };
  return [
    {
      id: at('normal, the load asks'),
      sheet: change(sheet, { fanRule: 'load', fanStartLoad: 0.4 }),
      answers: { ...loud(hardW), 'v-normal-load': 'explained' },
      causes: ['fans-normal'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('normal, always on by design'),
      sheet: change(sheet, { fanRule: 'always' }),
      answers: { ...loud(80), 'v-normal-design': 'explained' },
      causes: ['fans-normal'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('normal, noon charge from PV'),
      sheet: change(sheet, { fanRule: 'load', fanStartLoad: 0.3 }),
      answers: {
        ...loud(sheet.inverter.ratedW * 0.1, '40'),
        'charge-from': 'pv',
        'v-normal-charge': 'explained',
      },
      causes: ['fans-normal'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('normal, they stop with the load'),
      sheet: unknownRule(sheet),
      answers: {
        ...loud(900),
        'ease-off': 'done',
        'ease-wait': 'done',
        eased: { watts: '20', charge: '0' },
        'fans-eased': 'stopped',
        'v-normal-eased': 'explained',
      },
      causes: ['fans-normal'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('normal, a base speed that is written down'),
      sheet: unknownRule(sheet),
      answers: {
        ...loud(0),
        ...restSame,
        'base-design': 'low-and-written',
        'v-normal-base': 'explained',
      },
      causes: ['fans-normal'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('normal, as warm as its work makes it'),
      sheet: change(sheet, { fanRule: 'temperature' }),
      answers: {
        ...loud(hardW),
        'sink-running': c(sound.insideC + 5),
        stack: 'alone',
        ...air,
        'v-normal-warm': 'explained',
      },
      causes: ['fans-normal'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('nothing wrong at this load and heat'),
      sheet,
      answers: { ...hot, ...air, ...pair, 'v-nothing': 'explained' },
      causes: ['heat-nothing-wrong'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('a mild hour is never called healthy'),
      sheet,
      answers: { ...hotAt(place, 'milder'), ...air, ...pair },
      causes: null,
      end: 'unresolved',
      leaves: 'untouched',
    },
    {
      id: at('an inlet not read is never called healthy'),
      sheet,
      answers: {
        ...hot,
        ...air,
        'inlet-air': 'cant',
        'air-path': 'cant',
        ...pair,
        'outlet-air': 'cant',
        'grille-look': 'clean',
      },
      causes: null,
      end: 'unresolved',
      leaves: 'untouched',
    },
    {
      id: at('hot room, vented and shown'),
      sheet,
      answers: {
        ...hot,
        'room-air': c(49),
        'v-hot-room': 'put-right',
        ...retestAir(place, 36, 37, heatOf(unit, hardW * 0.97, 37).outletC),
      },
      causes: ['hot-room-or-sun'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('sun on the case'),
      sheet,
      answers: {
        ...hot,
        sun: 'sun-on-case',
        'shade-test': 'done',
        'shade-wait': 'done',
        'shade-result': 'recovers',
        'v-sun': 'refer',
      },
      causes: ['hot-room-or-sun'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('stacked, breathing the exhaust below'),
      sheet,
      answers: {
        ...hot,
        stack: 'over-another',
        'room-air': c(roomC),
        'below-outlet': c(choked.outletC),
        'inlet-air': c(mixedInletC(roomC, choked.outletC, 0.85)),
        'v-recirculated': 'refer',
      },
      causes: ['blocked-or-recirculated'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('an upper inlet hotter than any exhaust is heated by something else'),
      sheet,
      answers: {
        ...hot,
        stack: 'over-another',
        'room-air': c(roomC),
        'below-outlet': c(roomC + 4),
        'inlet-air': c(roomC + 16),
        'air-path': 'blocked',
        'v-blocked': 'refer',
      },
      causes: ['blocked-or-recirculated'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('an inlet past the limit, and fresh air on its way: something heats it'),
      sheet,
      answers: {
        ...hot,
        stack: 'over-another',
        'room-air': c(roomC),
        'below-outlet': c(roomC + 2),
        'inlet-air': c(roomC + 17),
        'air-path': 'free',
        'v-inlet-heated': 'put-right',
        ...retestAir(place, roomC, roomC + 1, heatOf(unit, hardW * 0.97, roomC + 1).outletC),
      },
      causes: ['hot-room-or-sun'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('an inlet hotter than any exhaust, below the limit, is never called healthy'),
      sheet,
      answers: {
        ...hot,
        stack: 'over-another',
        'room-air': c(20),
        'below-outlet': c(21),
        'inlet-air': c(32),
        'air-path': 'free',
        'outlet-air': c(heatOf(unit, hardW, 32).outletC),
        ...pair,
      },
      causes: null,
      end: 'unresolved',
      leaves: 'untouched',
    },
    {
      id: at('an inlet too close to call, and the strip shows air coming round'),
      sheet,
      answers: {
        ...hot,
        'room-air': c(roomC),
        'inlet-air': c(roomC + 4.5),
        'air-path': 'comes-round',
        'v-recirculated-seen': 'put-right',
        ...retestAir(place, roomC, roomC + 1, heatOf(unit, hardW * 0.97, roomC + 1).outletC),
      },
      causes: ['blocked-or-recirculated'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('dust'),
      sheet,
      answers: {
        ...hot,
        ...airOf(roomC, choked.inletC, choked.outletC),
        'grille-hot': 'clogged',
        'v-dust': 'refer',
      },
      causes: ['dust-clogged'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('too little air, grilles clean'),
      sheet,
      answers: {
        ...hot,
        ...airOf(roomC, choked.inletC, choked.outletC),
        'grille-hot': 'clean',
        'v-weak-flow': 'refer',
      },
      causes: ['dust-clogged', 'fan-failed'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a hot joint'),
      sheet,
      answers: {
        ...hot,
        ...air,
        ...pairOf(place, hardW, roomC, name === 'sallow' ? 0.0025 : 0.009),
        'v-hot-joint': 'refer',
      },
      causes: ['hot-joint'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a pair too close to call twice is not called sound'),
      sheet,
      answers: {
        ...hot,
        ...air,
        'jackets-ready': 'done',
        'twin-heat': '38 °C',
        'joint-heat': '46 °C',
      },
      causes: null,
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a hidden load on a branch'),
      sheet: unknownRule(sheet),
      answers: {
        ...loud(40),
        ...restSame,
        'sink-rest': c(rest.insideC),
        'rest-watts': w(idleAll + 320),
        'branches-ready': 'done',
        'branches-off': 'done',
        'bare-watts': w(idleAll + 8),
        'v-hidden-load': 'put-right',
        'loads-back-retest': 'done',
        'retest-hidden-wait': 'done',
        'retest-watts': w(idleAll + 8),
        'retest-rest': 'follow-load',
      },
      causes: ['hidden-or-circulating'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('a hidden load taken off, and the battery gives far more all the same'),
      sheet: unknownRule(sheet),
      answers: {
        ...loud(40),
        ...restSame,
        'sink-rest': c(rest.insideC),
        'rest-watts': w(idleAll + 320),
        'branches-ready': 'done',
        'branches-off': 'done',
        'bare-watts': w(idleAll + 8),
        'v-hidden-load': 'put-right',
        'loads-back-retest': 'done',
        'retest-hidden-wait': 'done',
        'retest-watts': w(idleAll + 280),
      },
      causes: ['hidden-or-circulating'],
      end: 'unresolved',
      leaves: 'untouched',
    },
    {
      id: at('two units that drive current into each other'),
      sheet: two,
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': 'cant',
        'rest-watts': w(2 * unit.idleW + 300),
        'branches-ready': 'done',
        'branches-off': 'done',
        'bare-watts': w(2 * unit.idleW + 300),
        'clamp-ready': 'done',
        'clamp-one': a(apart),
        'clamp-together': a(0.12),
        'v-circulating': 'refer',
        'loads-back-refer': 'done',
      },
      causes: ['hidden-or-circulating'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('two units and a load ahead of the branches'),
      sheet: two,
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': 'cant',
        'rest-watts': w(2 * unit.idleW + 700),
        'branches-ready': 'done',
        'branches-off': 'done',
        'bare-watts': w(2 * unit.idleW + 700),
        'clamp-ready': 'done',
        'clamp-one': a(700 / 120 / 2),
        'clamp-together': a(700 / 120),
        'v-feeder-load': 'refer',
        'loads-back-refer': 'done',
      },
      causes: ['hidden-or-circulating'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a load ahead of the branches, off, and the clamp shows it'),
      sheet: two,
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': 'cant',
        'rest-watts': w(2 * unit.idleW + 700),
        'branches-ready': 'done',
        'branches-off': 'done',
        'bare-watts': w(2 * unit.idleW + 700),
        'clamp-ready': 'done',
        'clamp-one': a(700 / 120 / 2),
        'clamp-together': a(700 / 120),
        'v-feeder-load': 'put-right',
        'retest-clamp': a(0.3),
        'loads-back-clamped': 'done',
        'retest-rest-wait': 'done',
        'retest-rest': 'follow-load',
      },
      causes: ['hidden-or-circulating'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('a load ahead of the branches, and amps on the clamp all the same'),
      sheet: two,
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': 'cant',
        'rest-watts': w(2 * unit.idleW + 700),
        'branches-ready': 'done',
        'branches-off': 'done',
        'bare-watts': w(2 * unit.idleW + 700),
        'clamp-ready': 'done',
        'clamp-one': a(700 / 120 / 2),
        'clamp-together': a(700 / 120),
        'v-feeder-load': 'put-right',
        'retest-clamp': a(2.4),
        'loads-back-refer': 'done',
      },
      causes: ['hidden-or-circulating'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('amps near a coarse clamp’s last digits are not called'),
      sheet: two,
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': 'cant',
        'rest-watts': w(2 * unit.idleW + 300),
        'branches-ready': 'done',
        'branches-off': 'done',
        'bare-watts': w(2 * unit.idleW + 300),
        'clamp-ready': 'done',
        'clamp-one': ['1.3', '1.2'],
        'loads-back-refer': 'done',
      },
      causes: null,
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('units whose screen counts nothing are clamped, and found at peace'),
      sheet: two,
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': 'cant',
        'rest-watts': '0',
        'branches-ready': 'done',
        'branches-off': 'done',
        'bare-watts': '0',
        'clamp-ready': 'done',
        'clamp-one': a(0.35),
        'loads-back-go-on': 'done',
        'fan-setting': 'came-with-update',
        'v-setting': 'refer',
      },
      causes: ['fan-setting'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a bearing that howls'),
      sheet,
      answers: { ...arrive, complaint: 'scrapes', 'v-bearing': 'refer' },
      causes: ['fan-failed'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('poor power factor'),
      sheet: change(sheet, { fanRule: 'load', fanStartLoad: 0.4 }),
      answers: {
        ...loud(sheet.inverter.ratedW * 0.12),
        'va-screen': `${w(sheet.inverter.ratedW * 0.52)} VA`,
        'v-power-factor': 'explained',
      },
      causes: ['hidden-or-circulating'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('poor power factor, that load off, and the volt-amps show it'),
      sheet: change(sheet, { fanRule: 'load', fanStartLoad: 0.4 }),
      answers: {
        ...loud(sheet.inverter.ratedW * 0.12),
        'va-screen': `${w(sheet.inverter.ratedW * 0.52)} VA`,
        'v-power-factor': 'put-right',
        'retest-va': `${w(sheet.inverter.ratedW * 0.13)} VA`,
        'retest-rest-wait': 'done',
        'retest-rest': 'follow-load',
      },
      causes: ['hidden-or-circulating'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('poor power factor, a load off, and the volt-amps as before'),
      sheet: change(sheet, { fanRule: 'load', fanStartLoad: 0.4 }),
      answers: {
        ...loud(sheet.inverter.ratedW * 0.12),
        'va-screen': `${w(sheet.inverter.ratedW * 0.52)} VA`,
        'v-power-factor': 'put-right',
        'retest-va': `${w(sheet.inverter.ratedW * 0.5)} VA`,
      },
      causes: ['hidden-or-circulating'],
      end: 'unresolved',
      leaves: 'untouched',
    },
    {
      id: at('charging hard from a generator'),
      sheet: withSource,
      answers: {
        ...loud(300, '60'),
        'charge-from': 'ac-source',
        'charge-down': 'done',
        'charge-wait': 'done',
        'fans-charge': 'slower',
        'v-charging': 'keep-lower',
        'retest-charge': 'quiet',
      },
      causes: ['charging-hard'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('hot while it charges from a generator, and clogged: half the charge mends nothing'),
      sheet: withSource,
      answers: {
        ...hotAt(place, 'at-it'),
        numbers: { watts: w(hardW), charge: '20' },
        'charge-from': 'ac-source',
        ...airOf(roomC, choked.inletC, choked.outletC + 25),
        'grille-hot': 'clogged',
        'v-dust': 'refer',
      },
      causes: ['dust-clogged'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a fan that does not turn'),
      sheet: byHeat,
      answers: {
        ...hotAt(place, 'at-it'),
        'fans-turn': 'silent',
        'sink-silent': c(heatOf(unit, hardW, roomC, 0.15).insideC),
        'v-fan-failed': 'refer',
      },
      causes: ['fan-failed'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('silent fans that the load asks for, in a unit that reads cool'),
      sheet: change(sheet, { fanRule: 'temperature-or-load', fanStartLoad: 0.4 }),
      answers: { ...hotAt(place, 'at-it'), 'fans-turn': 'silent', 'v-fan-due': 'refer' },
      causes: ['fan-failed'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('silent and hot, the fans’ start not known: no fan is condemned'),
      sheet: change(sheet, { fanRule: 'temperature', fanStartC: null }),
      answers: {
        ...hotAt(place, 'at-it'),
        'fans-turn': 'silent',
        'sink-silent': c(heatOf(unit, hardW, roomC, 0.15).insideC),
      },
      causes: null,
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('hot and silent, no figure on the screen, the fans’ start not known'),
      sheet: change(sheet, { fanRule: null, fanStartC: null }),
      answers: {
        ...hotAt(place, 'at-it'),
        'fans-turn': 'silent',
        'sink-silent': 'cant',
        'fin-alone': c(heatOf(unit, hardW, roomC, 0.15).finC),
      },
      causes: null,
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('hot and silent, no figure on the screen'),
      sheet: byHeat,
      answers: {
        ...hotAt(place, 'at-it'),
        'fans-turn': 'silent',
        'sink-silent': 'cant',
        'fin-alone': c(heatOf(unit, hardW, roomC, 0.15).finC),
        'v-fan-or-sensor': 'refer',
      },
      causes: ['fan-failed', 'fan-sensor-stuck'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a sensor that reads high'),
      sheet: unknownRule(sheet),
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': c(rest.insideC + 50),
        'fin-rest': c(rest.finC),
        'v-sensor-high': 'refer',
      },
      causes: ['fan-sensor-stuck'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a figure too high, but below the fans’ start, is not what drives them'),
      sheet: change(unknownRule(sheet), { fanStartC: 50 }),
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': c(42),
        'rest-watts': w(lossAt(unit, 0)),
        'fan-setting': 'set-always',
        'v-setting': 'refer',
      },
      causes: ['fan-setting'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a sensor that reads low keeps the fans off'),
      sheet: byHeat,
      answers: {
        ...hotAt(place, 'at-it'),
        'fans-turn': 'silent',
        'sink-silent': c(26),
        'fin-silent': c(heatOf(unit, hardW, roomC, 0.15).finC),
        'v-sensor-low': 'refer',
      },
      causes: ['fan-sensor-stuck'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a sensor that reads high and cuts back for nothing'),
      sheet,
      answers: {
        ...hotAt(place, 'at-it'),
        ...air,
        ...pair,
        'sink-at-it': c(sound.insideC + 55),
        'fin-at-it': c(sound.finC),
        'v-sensor-hot': 'refer',
      },
      causes: ['fan-sensor-stuck'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('a driver stuck at full speed'),
      sheet: unknownRule(sheet),
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': c(rest.insideC),
        'rest-watts': w(lossAt(unit, 0)),
        'fan-setting': 'as-it-should',
        'cold-start': 'full-at-once',
        'v-driver-stuck': 'refer',
      },
      causes: ['fan-sensor-stuck'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('hung flat'),
      sheet,
      answers: { ...hot, mount: 'not-as-told', 'v-mounting': 'refer' },
      causes: ['height-or-mounting'],
      end: 'referred',
      leaves: 'untouched',
    },
    {
      id: at('more load than the height allows'),
      sheet: { ...change(sheet, { fullPowerToM: 1500 }), altitudeM: 3150 },
      answers: {
        ...hot,
        numbers: { watts: w(sheet.inverter.ratedW * 0.9), charge: '0' },
        'v-height': 'explained',
      },
      causes: ['height-or-mounting'],
      end: 'healthy',
      leaves: 'untouched',
    },
    {
      id: at('a load cut to what the height leaves, and shown there'),
      sheet: { ...change(sheet, { fullPowerToM: 2000 }), altitudeM: 3150 },
      answers: {
        ...hot,
        numbers: { watts: w(sheet.inverter.ratedW), charge: '0' },
        'v-height': 'load-cut',
        ...retestAir(
          place,
          20,
          21,
          heatOf({ ...unit, altitudeM: 3150 }, sheet.inverter.ratedW * 0.85, 21).outletC,
        ),
        'retest-numbers': { watts: w(sheet.inverter.ratedW * 0.85), charge: '0' },
      },
      causes: ['height-or-mounting'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('a bearing replaced, and no load to test it at, is not called mended'),
      sheet,
      answers: {
        ...arrive,
        complaint: 'scrapes',
        'v-bearing': 'service-did',
        'retest-choose': 'like-then',
        'retest-wait': 'done',
        'retest-numbers': { watts: '0', charge: '0' },
      },
      causes: ['fan-failed'],
      end: 'unresolved',
      leaves: 'untouched',
    },
    {
      id: at('a bearing replaced, and shown at full load'),
      sheet,
      answers: {
        ...arrive,
        complaint: 'scrapes',
        'v-bearing': 'service-did',
        ...retestAir(place, roomC, roomC + 1, heatOf(unit, sheet.inverter.ratedW * 0.95, roomC + 1).outletC),
        'retest-numbers': { watts: w(sheet.inverter.ratedW * 0.95), charge: '0' },
      },
      causes: ['fan-failed'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('set to always on'),
      sheet: unknownRule(sheet),
      answers: {
        ...loud(0),
        ...restSame,
        'sink-rest': c(rest.insideC),
        'rest-watts': w(lossAt(unit, 0)),
        'fan-setting': 'set-always',
        'v-setting': 'set-it',
        'set-fans': 'done',
        'retest-rest-wait': 'done',
        'retest-rest': 'follow-load',
      },
      causes: ['fan-setting'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('a quiet mode, set back and shown at the load of the complaint'),
      sheet,
      answers: {
        ...hot,
        'fans-turn': 'slow',
        'quiet-mode': 'held-low',
        'v-quiet-mode': 'set-it',
        'set-fans-hot': 'done',
        ...retestAir(place, roomC, roomC + 1, heatOf(unit, hardW * 0.97, roomC + 1).outletC),
      },
      causes: ['fan-setting'],
      end: 'fixed',
      leaves: 'untouched',
    },
    {
      id: at('a re-test at half the load proves nothing'),
      sheet,
      answers: {
        ...hot,
        'room-air': c(49),
        'v-hot-room': 'put-right',
        'retest-choose': 'like-then',
        'retest-wait': 'done',
        'retest-numbers': { watts: w(hardW / 2), charge: '0' },
      },
      causes: ['hot-room-or-sun'],
      end: 'unresolved',
      leaves: 'untouched',
    },
  ];
}

/** The whole of a mend, on the site whose procedures' answers are at hand. */
function mendedCases(place: Place): HeatCase[] {
  const { name, sheet, unit, hardW } = place;
  const roomC = 30;
  const p1 = '336.0';
  const choked = heatOf(unit, hardW, roomC + 1, 0.3);
  const clean = heatOf(unit, hardW * 0.97, roomC + 1);
  const sound = heatOf(unit, hardW, roomC + 1);
  const amps = dcAmps(unit, hardW, place.batteryV);
  return [
    {
      id: `${name}: dust, cleaned isolated and shown at the load of the complaint`,
      sheet,
      answers: {
        ...hotAt(place, 'at-it'),
        ...airOf(roomC, choked.inletC, choked.outletC),
        'grille-hot': 'clogged',
        'v-dust': 'make-safe',
        ...isolate,
        'which-work': 'outside',
        'clean-ready': 'done',
        clean: 'done',
        ...restore(p1),
        ...retestAir(place, roomC, clean.inletC, clean.outletC),
      },
      causes: ['dust-clogged'],
      end: 'fixed',
      leaves: 'restored',
    },
    {
      id: `${name}: a hot joint, made new and shown alike`,
      sheet,
      answers: {
        ...hotAt(place, 'at-it'),
        ...airOf(roomC, sound.inletC, sound.outletC),
        ...pairOf(place, hardW, roomC, 0.0025),
        'v-hot-joint': 'make-safe',
        ...isolate,
        'which-work': 'dc-posts',
        'dc-ready': 'done',
        'dc-joint': 'done',
        ...restore(p1),
        ...retestAir(place, roomC, clean.inletC, clean.outletC),
        'retest-twin': c(jacketC(roomC, amps, soundJoint)),
        'retest-joint': c(jacketC(roomC, amps, 2 * soundJoint)),
      },
      causes: ['hot-joint'],
      end: 'fixed',
      leaves: 'restored',
    },
  ];
}

export const heatCases: readonly HeatCase[] = [...places.flatMap(casesOf), ...mendedCases(places[0]!)];
