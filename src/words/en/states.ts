/** What the plant is like while a step is done: a name for the plate, what is live, and what is not. */
export interface StateWords {
  label: string;
  live: string;
  safe: string;
}

export const states: Readonly<Record<string, StateWords>> = {
  any: {
    label: 'As it stands',
    live: 'Take every part as live.',
    safe: 'Nothing is proved dead.',
  },
  asFound: {
    label: 'As found',
    live: 'Nothing has been switched yet. Take every source and every terminal as live.',
    safe: 'Nothing is proved dead.',
  },
  running: {
    label: 'Running',
    live: 'Battery, PV and AC output are live, and so is the AC input if a second source is on.',
    safe: 'Nothing is proved dead.',
  },
  noLoad: {
    label: 'Inverter on, no load',
    live: 'Battery side, DC posts and AC output terminals are live, with no load on them. So are PV and AC input if they are closed.',
    safe: 'Past the open output breaker the load panel has no feed from this inverter. It is not proved dead.',
  },
  pvOpen: {
    label: 'PV isolators open and locked',
    live: 'The array side is live in any light. Battery and AC are live.',
    safe: 'No PV current flows through the isolators. The inverter side is not proved dead.',
  },
  mainOpen: {
    label: 'Battery main switch open and locked',
    live: 'The battery is live up to its main switch. The array side is live in any light. Inverter capacitors may hold charge.',
    safe: 'PV and AC input are locked off and the inverter is off. None of it is proved dead.',
  },
  batteryOnly: {
    label: 'Battery only',
    live: 'Battery and inverter DC posts are live, and the AC terminals when the inverter is on. The array side is live in any light.',
    safe: 'PV and AC input are locked off. Nothing is proved dead.',
  },
  lockedOut: {
    label: 'Locked out, not proved dead',
    live: 'Battery posts are live. The array side is live in any light. Capacitors may hold charge.',
    safe: 'Every source is open and locked. Until you have proved it dead, work as if it were live.',
  },
  dead: {
    label: 'Locked out and proved dead here',
    live: 'Battery posts stay live. The array side stays live in any light.',
    safe: 'The place you work at is locked out and proved dead. The proof ends at the posted time, or when anything is switched.',
  },
};

/** Where hands or probes are. */
export const zones: Readonly<Record<string, string>> = {
  packPost: 'Battery posts (always live)',
  battBus: 'Battery side of the main switch (S1)',
  invDC: 'Inverter side of the main switch and DC posts (S2, I)',
  pvString: 'Array side of the PV isolator (P1, live in any light)',
  pvBus: 'Inverter side of the PV isolator (P2)',
  pvRun: 'PV run with both ends parted and capped',
  acOut: 'Inverter AC output terminals (O)',
  loadPanel: 'Load panel (D)',
  acIn: 'AC input terminals (A)',
  inlet: 'Generator inlet',
  control: 'Data and control leads (C)',
};
