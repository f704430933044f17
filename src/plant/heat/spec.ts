/** What turns one unit's fans. */
export type FanRule = 'temperature' | 'load' | 'temperature-or-load' | 'always';

export interface HeatSpec {
  /** Air of the room. */
  roomC: number;
  /** Sun on the case [W]. */
  sunW: number;
  altitudeM: number;
  /** Fins stand as the label asks. */
  upright: boolean;
  fanRule: FanRule;
  fanStartC: number;
  fanStartLoad: number;
  /** A setting that overrules the law. */
  fanMode: 'auto' | 'full' | 'quiet';
  /** Speed the fans keep at rest by design, as a share. */
  baseSpeed: number;
  /** Air at full speed, sea level, clean filter [m³/s]. */
  fullM3s: number;
  /** Share of the fans that turn. */
  fansWork: number;
  /** A bearing that scrapes. */
  fanScrapes: boolean;
  /** Share of the air that filter and fins still let through. */
  openShare: number;
  /** Share of the outlet's air that comes back in. */
  recirculation: number;
  /** Outlet of a unit below stands under this one's inlet. */
  overAnother: boolean;
  /** What screen and fan law see above the true heatsink temperature [°C]; a stuck driver runs the fans whatever they see. */
  sensorOffC: number;
  driverStuck: boolean;
  /** A poor terminal beside the sensor [Ω], on the DC or the AC side. */
  terminalOhm: number;
  terminalSide: 'dc' | 'ac';
  /** Air at the inlet from which power is taken away, and the height up to which the label gives it all. */
  derateStartC: number;
  fullPowerToM: number;
}

/** What the electrical side makes of one unit. */
export interface HeatLoad {
  lossW: number;
  /** Output as a share of the rating. */
  loadShare: number;
  dcA: number;
  acA: number;
}

export interface HeatResult {
  inletC: number;
  outletC: number;
  sinkC: number;
  /** What the screen shows for it. */
  shownC: number;
  /** Of full speed, as the driver asks; what turns is `turning`. */
  asked: number;
  turning: number;
  flowM3s: number;
  /** The poor terminal, and its sound twin. */
  terminalC: number;
  twinC: number;
  /** Output it still gives, as a share of the rating. */
  powerShare: number;
}
