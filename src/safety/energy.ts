import type { Effect } from './effects.ts';
import { type Device, devices, type Variant, type Zone, zones } from './plant.ts';

/**
 * What is known of the plant's energy: the fold of everything done and shown so far. Unknown counts as live.
 * Sets are bit masks so that the prover can hold very many of these; use `has` and the named readers.
 */
export interface Energy {
  /** Devices closed when the run began. */
  began: number;
  /** Devices closed (or not known to be open). */
  closed: number;
  /** Open devices held by a lock, or by a tag and one further measure. */
  held: number;
  /** Devices whose current a zeroed clamp has just shown to be none / to flow. */
  zero: number;
  flows: number;
  inverterOn: boolean;
  sourceRuns: boolean;
  autoStart: boolean;
  loadsOn: boolean;
  inletPlugged: boolean;
  resistorOn: boolean;
  plugsParted: boolean;
  charging: boolean;
  /** Zones that may hold stored charge. */
  charged: number;
  /** The tester has been shown to read a known live source, and nothing else was done since. */
  tester: boolean;
  /** Zones measured dead and waiting for the tester to be proved again / proved dead / whose proof was voided. */
  measured: number;
  proved: number;
  voided: number;
  /** Conductors handled since the last proved restore: of the array (`pvString`), of anything else (`invDC`). */
  touched: number;
  /** Devices whose source side and landing are known to be the right way round. */
  polarity: number;
  bothSides: 'unread' | 'alike' | 'apart';
  precharged: boolean;
  packsAlike: boolean;
  inStep: boolean;
  neutral: 'sound' | 'unproved' | 'legsInBand';
  cellsFit: boolean;
  tripped: number;
  explained: number;
  ready: boolean;
  verify: 'notOwed' | 'owed' | 'passed' | 'failed';
  namedPerson: boolean;
  guardedWork: boolean;
  danger: boolean;
}

/** How a run may begin: as the plant is found, or from the state another procedure left it in. */
export type BeginState =
  | 'any'
  | 'asFound'
  | 'running'
  | 'noLoad'
  | 'pvOpen'
  | 'mainOpen'
  | 'batteryOnly'
  | 'lockedOut'
  | 'dead';

const deviceBit = Object.fromEntries(devices.map((device, i) => [device, 1 << i])) as Record<Device, number>;
const zoneBit = Object.fromEntries(zones.map((zone, i) => [zone, 1 << i])) as Record<Zone, number>;

/** The mask of some devices. */
export const maskOf = (...list: Device[]): number =>
  list.reduce((mask, device) => mask | deviceBit[device], 0);
const zoneMask = (...list: Zone[]): number => list.reduce((mask, zone) => mask | zoneBit[zone], 0);
export const hasDevice = (mask: number, device: Device): boolean => (mask & deviceBit[device]) !== 0;
export const hasZone = (mask: number, zone: Zone): boolean => (mask & zoneBit[zone]) !== 0;

const fittedBy = new Map<string, Device[]>();
const isolatorsBy = new Map<string, Device[]>();
const plantOf = (variant: Variant) => `${variant.source}|${variant.inverters}`;

/** The list for a plant, made once: the prover asks for it at every step. */
function once(cache: Map<string, Device[]>, variant: Variant, make: () => Device[]): readonly Device[] {
  const key = plantOf(variant);
  const known = cache.get(key);
  if (known) return known;
  const list = make();
  cache.set(key, list);
  return list;
}

/** Devices that exist on a plant. */
export function fitted(variant: Variant): readonly Device[] {
  return once(fittedBy, variant, () =>
    devices.filter(
      (device) =>
        (device !== 'acIn' || variant.source !== 'none') &&
        (device !== 'others' || variant.inverters === 'several'),
    ),
  );
}

/** Every device that must be open and held before hands go near the inverter's conductors. */
export function isolators(variant: Variant): readonly Device[] {
  return once(isolatorsBy, variant, () =>
    fitted(variant).filter((device) => device !== 'packs' && device !== 'acOut'),
  );
}

const storing: Zone[] = ['invDC', 'pvBus'];

/** The energy state in which a run begins. */
export function initialEnergy(variant: Variant, begins: BeginState): Energy {
  const all = maskOf(...fitted(variant));
  const isolation = maskOf(...isolators(variant));
  const source = variant.source !== 'none';
  const base: Energy = {
    began: all,
    closed: all,
    held: 0,
    zero: 0,
    flows: 0,
    inverterOn: true,
    sourceRuns: source,
    autoStart: variant.source === 'autoStart',
    loadsOn: true,
    inletPlugged: source,
    resistorOn: false,
    plugsParted: false,
    charging: true,
    charged: zoneMask(...storing),
    tester: false,
    measured: 0,
    proved: 0,
    voided: 0,
    touched: 0,
    polarity: all,
    bothSides: 'unread',
    precharged: false,
    packsAlike: variant.packs === 'one',
    inStep: true,
    neutral: 'sound',
    cellsFit: false,
    tripped: 0,
    explained: 0,
    ready: false,
    verify: 'notOwed',
    namedPerson: false,
    guardedWork: false,
    danger: false,
  };
  const off = {
    inverterOn: false,
    loadsOn: false,
    sourceRuns: false,
    autoStart: false,
    charging: false,
    inStep: false,
  };
  switch (begins) {
    case 'any':
    case 'asFound':
    case 'running':
      return base;
    case 'noLoad':
      return { ...base, loadsOn: false, neutral: 'unproved' };
    case 'pvOpen':
      return { ...base, closed: all & ~maskOf('pv'), held: maskOf('pv'), polarity: all & ~maskOf('pv') };
    case 'batteryOnly': {
      const open = (isolation | maskOf('acOut')) & ~maskOf('main');
      return {
        ...base,
        ...off,
        closed: all & ~open,
        held: open,
        polarity: maskOf('main', 'packs'),
        packsAlike: true,
        neutral: 'unproved',
      };
    }
    case 'mainOpen':
    case 'lockedOut':
    case 'dead':
      return {
        ...base,
        ...off,
        closed: all & ~isolation & ~maskOf('acOut'),
        held: isolation | maskOf('acOut'),
        polarity: 0,
        neutral: 'unproved',
        proved: begins === 'dead' ? zoneMask('invDC', 'pvBus', 'acOut', 'acIn') : 0,
        charged: begins === 'dead' ? 0 : base.charged,
      };
  }
}

/** Voids every proof: after a close, an unlock, a source that starts, a new day, or 15 minutes. */
function voidProofs(energy: Energy): Energy {
  return {
    ...energy,
    tester: false,
    voided: energy.voided | energy.proved | energy.measured,
    measured: 0,
    proved: 0,
    precharged: false,
    bothSides: 'unread',
    zero: 0,
  };
}

/** The plant after something was done or shown. Rules are judged elsewhere: this only says what follows. */
export function applyEffect(e: Energy, effect: Effect): Energy {
  const key = Object.keys(effect)[0] as string;
  const clean: Energy =
    key === 'testerProved' || key === 'measuredDead' || !e.tester ? e : { ...e, tester: false, measured: 0 };
  if ('open' in effect) {
    const bit = maskOf(effect.open);
    const fresh = effect.open === 'main' ? { bothSides: 'unread' as const, precharged: false } : {};
    return {
      ...clean,
      ...fresh,
      closed: e.closed & ~bit,
      zero: e.zero & ~bit,
      flows: e.flows & ~bit,
      inStep: effect.open === 'others' ? false : e.inStep,
    };
  }
  if ('close' in effect) {
    const bit = maskOf(effect.close);
    return {
      ...voidProofs(clean),
      closed: e.closed | bit,
      held: e.held & ~bit,
      charged: e.charged | zoneMask(...storing),
      explained: e.explained & ~bit,
      tripped: e.explained & bit ? e.tripped & ~bit : e.tripped,
      verify: 'owed',
    };
  }
  if ('lock' in effect) return { ...clean, held: e.held | maskOf(effect.lock) };
  if ('tagPlus' in effect) return { ...clean, held: e.held | maskOf(effect.tagPlus) };
  if ('unlock' in effect) {
    const { bothSides, precharged } = e;
    const charged = e.charged | zoneMask(...storing);
    return { ...voidProofs(clean), bothSides, precharged, charged, held: e.held & ~maskOf(effect.unlock) };
  }
  if ('inverter' in effect) {
    const on = effect.inverter === 'on';
    return on ? { ...voidProofs(clean), inverterOn: true, verify: 'owed' } : { ...clean, inverterOn: false };
  }
  if ('source' in effect) {
    const runs = effect.source === 'running';
    return runs ? { ...voidProofs(clean), sourceRuns: true } : { ...clean, sourceRuns: false };
  }
  if ('autoStart' in effect) return { ...clean, autoStart: effect.autoStart === 'enabled' };
  if ('loads' in effect)
    return { ...clean, loadsOn: effect.loads === 'on', zero: effect.loads === 'on' ? 0 : e.zero };
  if ('inlet' in effect) return { ...clean, inletPlugged: effect.inlet === 'plugged' };
  if ('bleed' in effect) return { ...clean, charged: e.charged & ~zoneBit[effect.bleed] };
  if ('waited' in effect) return { ...clean, charged: e.charged & ~zoneBit[effect.waited] };
  if ('touch' in effect) return handled(clean, effect.touch);
  if ('handleLive' in effect) return handled(clean, effect.handleLive);
  if ('plugs' in effect)
    return {
      ...clean,
      plugsParted: effect.plugs === 'parted',
      polarity: e.polarity & ~maskOf('pv'),
      proved: e.proved & ~zoneBit.pvRun,
    };
  if ('liftNeutral' in effect) return { ...clean, neutral: 'unproved' };
  if ('resistor' in effect) {
    const on = effect.resistor === 'on';
    const early = !on && !hasDevice(e.closed, 'main');
    return {
      ...clean,
      resistorOn: on,
      charged: on ? e.charged | zoneBit.invDC : e.charged,
      precharged: early ? false : e.precharged,
    };
  }
  if ('insulationTest' in effect) {
    const bit = zoneBit[effect.insulationTest];
    return {
      ...clean,
      proved: e.proved & ~bit,
      voided: e.voided | (e.proved & bit),
      charged: e.charged | bit,
    };
  }
  if ('enableCharging' in effect) return { ...clean, charging: true };
  if ('lift' in effect) return clean;
  if ('zeroShown' in effect) {
    const bit = maskOf(effect.zeroShown);
    return { ...clean, zero: e.zero | bit, flows: e.flows & ~bit };
  }
  if ('currentFlows' in effect) {
    const bit = maskOf(effect.currentFlows);
    return { ...clean, flows: e.flows | bit, zero: e.zero & ~bit };
  }
  if ('testerProved' in effect)
    return { ...e, tester: true, proved: e.proved | e.measured, voided: e.voided & ~e.measured, measured: 0 };
  if ('measuredDead' in effect)
    return {
      ...e,
      measured:
        e.tester && standsApart(e, effect.measuredDead)
          ? e.measured | zoneBit[effect.measuredDead]
          : e.measured,
    };
  if ('measuredLive' in effect) {
    const bit = zoneBit[effect.measuredLive];
    return {
      ...clean,
      measured: clean.measured & ~bit,
      proved: e.proved & ~bit,
      charged: e.charged | (bit & zoneMask(...storing)),
    };
  }
  if ('polarityProved' in effect) return { ...clean, polarity: e.polarity | maskOf(effect.polarityProved) };
  if ('bothSidesRead' in effect) return { ...clean, bothSides: effect.bothSidesRead };
  if ('precharged' in effect) return { ...clean, precharged: e.resistorOn };
  if ('packsAlike' in effect) return { ...clean, packsAlike: true };
  if ('inStep' in effect) return { ...clean, inStep: true };
  if ('neutral' in effect) {
    if (effect.neutral === 'inDoubt') return { ...clean, neutral: 'unproved' };
    if (effect.neutral === 'legsInBand')
      return { ...clean, neutral: e.neutral === 'unproved' ? 'legsInBand' : e.neutral };
    return { ...clean, neutral: e.neutral === 'unproved' ? 'unproved' : 'sound' };
  }
  if ('cellsFitToCharge' in effect) return { ...clean, cellsFit: true };
  if ('tripped' in effect)
    return {
      ...clean,
      closed: e.closed & ~maskOf(effect.tripped),
      tripped: e.tripped | maskOf(effect.tripped),
      explained: e.explained & ~maskOf(effect.tripped),
    };
  if ('tripExplained' in effect) return { ...clean, explained: e.explained | maskOf(effect.tripExplained) };
  if ('readyToRestore' in effect) return { ...clean, ready: true };
  if ('verified' in effect) return { ...clean, verify: 'passed', touched: 0, ready: false };
  if ('verifyFailed' in effect) return { ...clean, verify: 'failed' };
  if ('namedPerson' in effect) return { ...clean, namedPerson: true };
  if ('guardedWork' in effect) return { ...clean, guardedWork: true };
  if ('dangerFound' in effect) return { ...clean, danger: true };
  return { ...clean, danger: false };
}

/** A run of PV conductors is a zone of its own only while both its ends are parted. */
const standsApart = (e: Energy, zone: Zone) => zone !== 'pvRun' || e.plugsParted;

/** Hands on conductors: what they land on is unproved again, covers are off, and a neutral among them is in doubt. */
function handled(e: Energy, zone: Zone): Energy {
  const moved =
    zone === 'invDC' || zone === 'battBus' || zone === 'packPost'
      ? maskOf('main', 'packs')
      : zone.startsWith('pv')
        ? maskOf('pv')
        : 0;
  const neutral = zone === 'acOut' || zone === 'loadPanel' ? 'unproved' : e.neutral;
  return {
    ...e,
    touched: e.touched | (zone.startsWith('pv') && zone !== 'pvBus' ? zoneBit.pvString : zoneBit.invDC),
    polarity: e.polarity & ~moved,
    neutral,
    ready: false,
    guardedWork: false,
    verify: 'owed',
  };
}

/** What may happen without the person: a proof grows old, a generator starts by itself. */
export function environmentEvents(e: Energy, variant: Variant): { event: string; energy: Energy }[] {
  const list: { event: string; energy: Energy }[] = [];
  if (e.proved || e.measured || e.tester || e.precharged || e.zero)
    list.push({ event: 'proof-expires', energy: voidProofs(e) });
  if (variant.source === 'autoStart' && e.autoStart && !e.sourceRuns)
    list.push({ event: 'generator-starts', energy: voidProofs({ ...e, sourceRuns: true }) });
  return list;
}

/**
 * What going back to an earlier question, or taking an act back, does to findings that do not keep: current, tester,
 * half-made proofs, both sides of a switch and pre-charge are to be shown again. A finished proof stands.
 */
export function forgetFresh(e: Energy): Energy {
  return { ...e, tester: false, measured: 0, zero: 0, bothSides: 'unread', precharged: false };
}

const flags = [
  'inverterOn',
  'sourceRuns',
  'autoStart',
  'loadsOn',
  'resistorOn',
  'plugsParted',
  'charging',
  'tester',
  'precharged',
  'packsAlike',
  'inStep',
  'cellsFit',
  'ready',
  'namedPerson',
  'guardedWork',
  'danger',
] as const;

/**
 * Where every handle, plug and switch stands. Going back to a question is open only while this is as it was when the
 * question was answered: answers can be corrected, deeds only reversed.
 */
export function standing(e: Energy): string {
  const { inverterOn, sourceRuns, autoStart, loadsOn, resistorOn, plugsParted } = e;
  const switches = [inverterOn, sourceRuns, autoStart, loadsOn, resistorOn, plugsParted];
  return `${e.closed},${e.held},${switches.map(Number).join('')}`;
}

/** A short text that is the same for states that the rules cannot tell apart (which voided proofs there were is told, never judged). */
export function energyKey(e: Energy): string {
  let bits = 0;
  for (let i = 0; i < flags.length; i++) if (e[flags[i]!]) bits |= 1 << i;
  return `${e.began},${e.closed},${e.held},${e.zero},${e.flows},${bits},${e.charged},${e.measured},${e.proved},${e.touched},${e.polarity},${e.tripped},${e.explained},${e.bothSides[0]}${e.bothSides[2]}${e.neutral[0]}${e.verify[0]}`;
}
