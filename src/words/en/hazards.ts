/** A hazard statement: what the hazard is, what it does to you, how to avoid it. */
export interface HazardWords {
  /** Follows from severity and likelihood (`src/safety/hazard-severity.ts`); a test holds the two together. */
  word: 'danger' | 'warning' | 'caution' | 'notice';
  nature: string;
  consequence: string;
  avoid: string;
}

export const hazards: Record<string, HazardWords> = {
  'pv-arc': {
    word: 'danger',
    nature: 'A PV plug, fuse or plain switch opened under current draws an arc that does not go out.',
    consequence: 'It burns you and starts a fire.',
    avoid:
      'Show 0 A first: a zeroed DC clamp on one conductor, under 0.5 A. No plug and no fuse holder under load, ever.',
  },
  'pv-reversed-arc': {
    word: 'danger',
    nature: 'A reversed or shorted string reads about 0 V while its full current flows.',
    consequence: 'Any plug or handle you move now draws an arc that burns you and does not go out.',
    avoid: 'Move nothing. Stand clear. Wait for dark, clamp again, and work only under 0.5 A.',
  },
  'battery-short': {
    word: 'danger',
    nature: 'The battery posts are live in every state. Nothing switches them off.',
    consequence:
      'A tool or a loose cable end across them feeds thousands of amperes: burns, molten metal, fire.',
    avoid:
      'Insulated tools, gloves, eyes and face covered, no metal worn. Cover every post but the one you work on.',
  },
  'ac-backfeed': {
    word: 'danger',
    nature:
      'A second source can make “dead” AC terminals live: a generator that starts itself, another inverter, a cord.',
    consequence: 'The shock kills. Two sources that meet out of step burst into an arc.',
    avoid: 'Stop every source, disable auto-start, lock and tag each one open. Then prove dead.',
  },
  'co-fumes': {
    word: 'danger',
    nature: 'A running engine makes carbon monoxide. You cannot see or smell it.',
    consequence: 'It kills in minutes, also in a half-open shed.',
    avoid: 'Run it outdoors only, clear of doors, windows and vents, with a carbon monoxide alarm inside.',
  },
  'frame-live': {
    word: 'danger',
    nature: 'With an insulation fault the module frames, rails and conduit can stand at string volts.',
    consequence: 'Frame and earth together can kill. A jerk on a roof throws you off it.',
    avoid:
      'Touch no frame, rail or conduit. Keep everyone off the roof until the fault is found and put right.',
  },
  'dc-link': {
    word: 'danger',
    nature:
      'Under the unit’s own cover stands a DC link of hundreds of volts. It stays charged after the lamps go out.',
    consequence: 'A hand or a tool in there is a shock that kills.',
    avoid:
      'Leave that cover on. Fans, fins and sensors inside are work for the maker’s service, isolated and with the link measured.',
  },

  'pv-live-in-light': {
    word: 'warning',
    nature: 'The array side is live in any light. An open isolator does not change that, nor does a cover.',
    consequence: 'A shock at string volts can kill.',
    avoid:
      'Touch nothing on the array side. Keep the shrouds on. Work on the inverter side only, and only proved dead.',
  },
  'pv-shock': {
    word: 'warning',
    nature: 'You put probes on PV conductors at string volts.',
    consequence: 'A slip can shock or burn you.',
    avoid:
      'Gloves and eye protection on. One hand where you can. Leads in the volts jacks, never the current jacks.',
  },
  'battery-arc': {
    word: 'warning',
    nature: 'A battery circuit broken or made under current draws a heavy DC arc.',
    consequence: 'Flash, burns, a welded or burst switch.',
    avoid: 'Clamp it first: 2 A at most. Stand to the side, face turned away, glove on, one firm move.',
  },
  'bus-inrush': {
    word: 'warning',
    nature: 'Empty inverter capacitors are a short circuit for a moment.',
    consequence:
      'Closed without pre-charge, thousands of amperes flash at the switch: burns, welded contacts, dead inverter.',
    avoid: 'Close only after pre-charge has brought both sides within 5 %, with the resistor still on.',
  },
  'stored-charge': {
    word: 'warning',
    nature: 'Capacitors in the inverter stay charged after every source is off.',
    consequence: 'They can shock and burn. The charge can creep back.',
    avoid: 'Wait the label time. Never short them with a tool. Measure, and go by the meter only.',
  },
  'ac-shock': {
    word: 'warning',
    nature: 'The AC terminals carry 120 V to neutral and 240 V between legs. A neutral counts as live.',
    consequence: 'A shock can kill.',
    avoid: 'Gloves and eye protection on. Probes only, no fingers past the guards. Close the cover after.',
  },
  'neutral-open': {
    word: 'warning',
    nature: 'A lost or lifted neutral lets one leg rise toward 240 V while the other sags.',
    consequence: 'Appliances burn out and can catch fire. The loose neutral itself shocks.',
    avoid: 'All 120 V loads off before you energise. Prove both legs with no load, then with one test load.',
  },
  'generator-start': {
    word: 'warning',
    nature: 'A generator or utility feed can come on by itself at any time.',
    consequence: 'Terminals you took for dead go live in your hands. The engine can catch clothing.',
    avoid: 'Stop it, disable auto-start at the machine, lock its isolator open and tag it.',
  },
  'unproved-tester': {
    word: 'warning',
    nature: 'A meter with a flat battery, a broken lead or the wrong range reads 0 on a live part.',
    consequence: 'You touch live parts that you believe are dead.',
    avoid: 'Prove it on a known live source of the same kind before and after. Change nothing in between.',
  },
  'meter-rating': {
    word: 'warning',
    nature: 'A meter, lead or clamp rated below the volts here can burst in your hand.',
    consequence: 'Arc and burns.',
    avoid:
      'Rated for the coldest open-circuit volts, to earth too, meter and leads both. If not: do not measure.',
  },
  'live-metering': {
    word: 'warning',
    nature: 'You measure on live parts.',
    consequence: 'A slip can shock or burn you.',
    avoid:
      'Meter, leads and clamp rated for the volts here. Gloves and eye protection on. Check the jacks before you probe.',
  },
  'roof-fall': {
    word: 'warning',
    nature: 'Roof and ladder work.',
    consequence: 'A fall can kill or cripple you.',
    avoid:
      'Fall protection on, dry roof, no wind, and not alone. If that cannot be had, leave the roof for another day.',
  },
  lifting: {
    word: 'warning',
    nature: 'A pack or an inverter weighs more than one person should lift.',
    consequence: 'A crushed hand or foot, a back hurt for life, a pack dropped and shorted.',
    avoid: 'Over 23 kg (51 lb): two people or lifting gear.',
  },
  'wrong-charge-profile': {
    word: 'warning',
    nature: 'Charge volts above the pack’s label overcharge the cells.',
    consequence: 'Cells swell, vent and can burn.',
    avoid: 'Read the pack’s label. Set no value above it. Never charge on a guess.',
  },
  'cold-charge': {
    word: 'warning',
    nature: 'Charging cells below 0 °C plates lithium inside them.',
    consequence: 'The cells are ruined and may short and burn later, with no sign today.',
    avoid: 'Know the coldest cell. Charge only at or above the label’s minimum, never below 0 °C.',
  },
  'insulation-test-volts': {
    word: 'warning',
    nature: 'An insulation tester puts 250 to 1000 V on the conductors, and they hold it afterwards.',
    consequence: 'A shock at any point of that run. Electronics left connected are destroyed.',
    avoid:
      'Both ends guarded, everyone clear, electronics and surge protectors off. Discharge and prove dead after.',
  },
  're-energise': {
    word: 'warning',
    nature: 'Closing a source makes every part downstream live.',
    consequence: 'Someone with a hand on it is shocked. A forgotten tool shorts it.',
    avoid: 'Covers on, tools and leads out, people clear and told. Only the owner of a lock takes it off.',
  },
  'close-on-fault': {
    word: 'warning',
    nature: 'A breaker or fuse that tripped did so for a reason.',
    consequence: 'Closed onto the same fault it can burst and burn you.',
    avoid: 'Find the cause first, or show the circuit clear by test. One re-close for each finding, no more.',
  },
  'parallel-packs': {
    word: 'warning',
    nature: 'Packs at different charge drive heavy current into each other when they are joined.',
    consequence: 'Arc at the switch, tripped or burnt pack electronics.',
    avoid: 'Join only rested packs within 0.1 V of each other and charged alike.',
  },
  'cell-vent': {
    word: 'warning',
    nature: 'A swollen, hissing or smoking pack gives off gas that burns and poisons.',
    consequence: 'It can kill.',
    avoid:
      'Leave now. Close the area. Call the fire service. Touch nothing on the way but an emergency stop.',
  },

  'resistor-hot': {
    word: 'caution',
    nature: 'The resistor heats up at each try, and fast into a short.',
    consequence: 'It burns the hand that takes it.',
    avoid:
      'Off at the time stated, whatever the meter shows. Hold it by its insulated lead. Let it cool between tries.',
  },
  'hot-surface': {
    word: 'caution',
    nature: 'Heat sinks, lugs and resistors run hot.',
    consequence: 'They burn skin.',
    avoid: 'Let them cool, or measure with a probe and not with a finger.',
  },
  'moving-parts': {
    word: 'caution',
    nature: 'Fans start by themselves.',
    consequence: 'Blades cut fingers.',
    avoid: 'Keep fingers and leads out of the grilles.',
  },

  'data-pins': {
    word: 'notice',
    nature: 'Data pins stand close together, and a supply pin may stand beside them.',
    consequence: 'A slipped probe, a lead of the wrong pin-out or a meter on the wrong range kills the port.',
    avoid:
      'Compare both pin tables before you plug. Use a breakout, never a bare probe in a socket. Battery covers stay on.',
  },
  'equipment-damage': {
    word: 'notice',
    nature: 'The equipment can be damaged here.',
    consequence: 'It may fail now or later, and its warranty may end.',
    avoid: 'Keep to the order of the steps and to the equipment’s own instructions.',
  },
  'input-overvolts': {
    word: 'notice',
    nature:
      'A string above the input’s maximum volts destroys the input, most likely on a cold bright morning.',
    consequence: 'The inverter’s PV input is lost.',
    avoid: 'Leave the isolator open until the string is shortened.',
  },
};
