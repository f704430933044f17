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
  'pv-no-start:no-op:part-plugs.done.handleLive-pvString':
    'parting the plugs, in the same deed, asks for the same and undoes the same',
  'pv-no-start:bypass:mend': repairLeftOut,
  'pv-no-start:cant-goes-on:mend': repairLeftOut,
  'pv-no-start:bypass:land-again': repairLeftOut,
  'pv-no-start:cant-goes-on:land-again': repairLeftOut,
};

/**
 * Mutants that change nothing a rule could speak of, by name, each with the reason. A mutant that only takes away an
 * effect which never changes the state where it stands is found equivalent by the prover itself and is not listed here.
 */
export const equivalents: Readonly<Record<string, string>> = {
  ...pvNoStart,
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
