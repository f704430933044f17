/** Devices as people call them. */
export const deviceNames: Readonly<Record<string, string>> = {
  packs: 'pack breakers',
  main: 'battery main switch',
  pv: 'PV isolator of this string',
  pvOther: 'PV isolators of the other strings',
  acOut: 'AC output breaker',
  acIn: 'AC input isolator',
  others: 'isolators of the other inverters',
};
