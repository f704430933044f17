const parted =
  'parting or joining the plug is a further measure behind the locked isolator: no rule leans on it';
const clampDecides = 'whether the unit has stopped is shown by the clamp, never by its switch';
const optionalTest =
  'the insulation test is a choice of the person: what it may not do is ruled, that it is done is not';
const alreadyOn =
  'the plant is begun with the unit on; first power-up, which begins with it off, notices the loss';
const outputOpen =
  'all loads are off at the panel: opening the output as well spares them a wrong voltage, which no rule speaks of';
const chargingChoice = 'allowing charging is a choice: left off, the battery only gives';
const screenAwake =
  'a screen that needs the unit on cannot be read without it; the output check, which follows, switches it on itself';
const unitResistor =
  'the model knows the resistor across the main switch only: across another unit it is held by the page';
const eitherOrder = 'both orders are safe: with the loads off neither act moves a current';

/** Leaving a repair out, or its record, is no danger: the string is proved right before it is closed again. */
const repairLeftOut =
  'the repair is left out: what follows proves the string before it is closed, repaired or not';

const pvNoStart: Readonly<Record<string, string>> = {
  'pv-no-start:bypass-hold:ready-battery':
    'no rule knows of a meter looked over: each measurement names its rating itself',
  'pv-no-start:bypass-hold:ready-string':
    'no rule knows of a meter looked over: each measurement names its rating itself',
  'pv-no-start:bypass-hold:ready-volts':
    'no rule knows of a meter looked over: each measurement names its rating itself',
  'pv-no-start:bypass-hold:alarm-ready':
    'no rule knows of a meter looked over: each measurement names its rating itself',
  'pv-no-start:bypass-hold:over-ready':
    'no rule knows of a meter looked over: each measurement names its rating itself',
  'pv-no-start:bypass-hold:mode-ready':
    'settings move no energy: whether the unit allows one with PV connected is its instructions’ word',
  'pv-no-start:bypass-hold:release-ready':
    'the rules know no module shutdown: a string counts as live in light whatever holds it off, and nobody touches it here',
  'pv-no-start:no-op:part-plugs.done.handleLive-pvString':
    'parting the plugs, in the same deed, asks for the same and undoes the same',
  'pv-no-start:bypass:mend': repairLeftOut,
  'pv-no-start:cant-goes-on:mend': repairLeftOut,
  'pv-no-start:bypass:land-again': repairLeftOut,
  'pv-no-start:cant-goes-on:land-again': repairLeftOut,
};

const lookedOver = 'no rule knows of a meter looked over: each measurement names its rating itself';
const saidAgain =
  'what the hold asks was done by an act before it, which the rules hold: the hold has it looked at once more';
const coversBack =
  'the rules know who touched what and that it is proved again; that covers and people are ready is held by the page';
const settingsOnly =
  'settings move no energy, and the old ones can be put back: what a wrong one may do is ruled where it runs';
const ownBreakers =
  'the rules know the DC and AC isolators of another unit as one: what its own AC breaker parts, and joins in step, is held by the page';
const nothingSwitched = 'nothing is switched or touched by what follows: the hold readies the person';
const provedAnyway =
  'whatever is found here, the way on leaves the output open or proves the neutral before it is closed onto loads';
const guardedEitherWay =
  'the way of one who cannot reach the breaker ends guarded, with the unit off or on: its switch isolates nothing';
const secondLeg =
  'the neutral was proved by the heater on the first leg: what the second shows is heat in a joint, which no rule speaks of';
const provedAgain =
  'the repair is left out: what follows proves the part again before it is used, repaired or not';

const each = (why: string, ...ids: string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(ids.map((id) => [id, why]));

const fansHeat: Readonly<Record<string, string>> = {
  ...each(lookedOver, 'fans-heat:bypass-hold:clamp-ready'),
  ...each(nothingSwitched, 'fans-heat:bypass-hold:clean-ready', 'fans-heat:bypass-hold:jackets-ready'),
  ...each(
    provedAgain,
    'fans-heat:bypass:dc-joint',
    'fans-heat:cant-goes-on:dc-joint',
    'fans-heat:bypass:ac-joint',
    'fans-heat:cant-goes-on:ac-joint',
  ),
};

const batteryLink: Readonly<Record<string, string>> = {
  ...each(
    lookedOver,
    'battery-link:bypass-hold:share-ready',
    'battery-link:bypass-hold:permit-ready',
    'battery-link:bypass-hold:again-ready',
    'battery-link:bypass-hold:asleep-ready',
    'battery-link:bypass-hold:on-gear',
  ),
  ...each(
    settingsOnly,
    'battery-link:bypass-hold:settings-noted',
    'battery-link:bypass-hold:swap-early-ready',
    'battery-link:bypass-hold:swap-early-back',
    'battery-link:bypass-hold:swap-late-ready',
    'battery-link:bypass-hold:swap-late-back',
  ),
  ...each(nothingSwitched, 'battery-link:bypass-hold:unplug-ready'),
};

const unevenLegs: Readonly<Record<string, string>> = {
  ...each(
    lookedOver,
    'uneven-legs:bypass-hold:meter-ready',
    'uneven-legs:bypass-hold:out-ready',
    'uneven-legs:bypass-hold:line-ready',
    'uneven-legs:bypass-hold:retest-ready',
    'uneven-legs:bypass-hold:retest-ready-one',
    'uneven-legs:bypass-hold:pair-rest-ready',
  ),
  ...each(saidAgain, 'uneven-legs:bypass-hold:close-ready', 'uneven-legs:bypass-hold:line-close-ready'),
  ...each(coversBack, 'uneven-legs:bypass-hold:loads-ready', 'uneven-legs:bypass-hold:line-loads-ready'),
  ...each(ownBreakers, 'uneven-legs:bypass-hold:set-ready', 'uneven-legs:bypass-hold:set-join-ready'),
  ...each(
    provedAnyway,
    ...[
      'loads-away.done',
      'step-moved.neutral-open',
      'step-moved.output-collapses',
      'step-moved.neutral-joint',
      'step-moved.at-output',
      'step-moved.line-or-neutral',
      'step-moved.both-joints',
      'step-work.neutral-joint',
      'step-work.ground-carries',
      'step-work.both-joints',
      'step-2-work.see-saw',
      'line-work.both-joints',
      'line-work.neutral-joint',
      'line-moved.neutral-open',
      'line-moved.neutral-joint',
      'line-moved.ground-carries',
      'retest-off.done',
    ].map((place) => `uneven-legs:no-op:${place}.neutral-inDoubt`),
  ),
  ...each(
    guardedEitherWay,
    'uneven-legs:no-op:unit-off.done.inverter-off',
    'uneven-legs:bypass:unit-off',
    'uneven-legs:cant-goes-on:unit-off',
  ),
  ...each(secondLeg, 'uneven-legs:bypass:step-2-work', 'uneven-legs:cant-goes-on:step-2-work'),
  ...each(
    provedAgain,
    'uneven-legs:bypass:mend-output',
    'uneven-legs:cant-goes-on:mend-output',
    'uneven-legs:bypass:mend-panel',
    'uneven-legs:cant-goes-on:mend-panel',
  ),
};

/**
 * Mutants that change nothing a rule could speak of, by name, each with the reason. A mutant that only takes away an
 * effect which never changes the state where it stands is found equivalent by the prover itself and is not listed here.
 */
export const equivalents: Readonly<Record<string, string>> = {
  ...pvNoStart,
  ...fansHeat,
  ...batteryLink,
  ...unevenLegs,
  'isolate:bypass:inlet-unplug': parted,
  'isolate:no-op:inlet-unplug.done.inlet-unplugged': parted,
  'isolate:cant-goes-on:inlet-unplug': parted,
  'restore:bypass:inlet-plug': parted,
  'restore:no-op:inlet-plug.done.inlet-plugged': parted,
  'restore:cant-goes-on:inlet-plug': parted,
  'restore:drop-procedure:units-dc':
    'the model holds the DC and the AC isolators of another unit as one device; the order within is held by the page',
  'open-string:bypass:stop-unit': clampDecides,
  'open-string:no-op:stop-unit.done.inverter-off': clampDecides,
  'open-string:cant-goes-on:stop-unit': clampDecides,
  'pre-charge:two-actions:clip-on':
    'clipping the leads on is no switching: the two together still move one thing',
  'first-power-up:bypass-hold:ready':
    'pre-charge, which follows at once, holds with its own list before anything is closed',
  'first-power-up:no-op:ready.done.namedPerson-true':
    'pre-charge, which follows at once, asks for the same person',
  'first-power-up:bypass-hold:settings':
    'settings move no energy: charging stays off until the cells are known to be fit',
  'first-power-up:bypass:charging-on': chargingChoice,
  'first-power-up:no-op:charging-on.done.enableCharging-true': chargingChoice,
  'first-power-up:cant-goes-on:charging-on': chargingChoice,
  'string-check:bypass:test': optionalTest,
  'string-check:cant-goes-on:test': optionalTest,
  'first-power-up:bypass:inverter-on': screenAwake,
  'first-power-up:no-op:inverter-on.done.inverter-on': screenAwake,
  'first-power-up:cant-goes-on:inverter-on': screenAwake,
  'ac-output-check:bypass:out-open': outputOpen,
  'ac-output-check:no-op:out-open.done.open-acOut': outputOpen,
  'ac-output-check:cant-goes-on:out-open': outputOpen,
  'ac-output-check:swap:out-open~inverter-on': eitherOrder,
  'ac-output-check:bypass:inverter-on': alreadyOn,
  'ac-output-check:no-op:inverter-on.done.inverter-on': alreadyOn,
  'ac-output-check:cant-goes-on:inverter-on': alreadyOn,
  'ac-output-check:swap:loads-back-off~off-running': eitherOrder,
  'restore-ac:swap:shut-down~off-after-loads': eitherOrder,
  'join-unit-dc:two-actions:resistor-off-leave': unitResistor,
  'join-unit-dc:swap:resistor-off-leave~relock': unitResistor,
  'join-unit-dc:bypass-hold:close-ready':
    'the model holds the DC and the AC isolators of another unit as one device; the hold is kept by the page',
};
