import type { ExpectContext, Missing, ScaleDef } from '../context.ts';
import type { Scale } from '../scale.ts';
import { scaleOf } from './build.ts';
import { type CellRange, cellRange, lightIsWeak, type RunString, runString, stringVoc } from './site.ts';

/** A string's volts against what its label makes at this cell temperature: within 5 %. IEC 62446-1, from memory. */
export const vocTolerance = 0.05;
/** In weak light open-circuit volts fall by up to about an eighth (logarithm of the light; own reckoning, 50 W/m²). */
const weakLightShare = 0.88;
/** Below this a plus pole is not just off by the meter's last digits but negative. Common practice. */
export const offsetVolts = 0.35;
/** A reversed string held down by diodes stands at −0.5 to −2 V; beyond this it is not held down. Common practice. */
export const heldDownVolts = 5;
/** Module shutdown devices that hold off let about 1 V or less a module through; some let nothing through. Common practice. */
export const shutdownVoltsEach = { low: 0.1, high: 2 };
/** Up to this a string shows nothing, however short it is [V]: the last digits of a meter. Common practice. */
const nothingVolts = 0.5;
/** Working volts as a share of open-circuit volts: under 0.6 collapsed, under 0.75 dragged down, 0.9 and over not loaded. Common practice. */
export const loadedShares = { collapsed: 0.6, dragged: 0.75, tracking: 0.9, open: 1.05 };
/** Across an open pole stands nearly the whole string; this share of it is enough. Common practice. */
const acrossShare = 0.8;
/** Across each of two open poles the string floats somewhere; under this share of it a reading says nothing. Common practice. */
const floatingShare = 0.1;
/** Across a closed pole at no current nothing stands; a meter's offset and pick-up stay under this [V]. Common practice. */
const closedPoleVolts = 2;

export interface Run extends RunString {
  cells: CellRange;
  context: ExpectContext;
}

function withRun(make: (run: Run) => Scale): ScaleDef['build'] {
  return (context): { ok: true; scale: Scale } | Missing => {
    const run = runString(context);
    if (!run.ok) return run;
    return { ok: true, scale: make({ ...run, context, cells: cellRange(context, run.string) }) };
  };
}

const facts = ({ string, tracker, cells }: Run) => ({
  modules: string.modulesInSeries,
  vocVolts: string.vocV,
  vocPerC: string.vocPerC,
  cellLowC: cells.lowC,
  cellHighC: cells.highC,
  maxVolts: tracker.maxV,
});

const temperatureWhy = ({ cells }: Run) => (cells.read ? 'expected.pv.cellRead' : 'expected.pv.cellNotRead');

/** Band of a whole string's open-circuit volts [V]. */
function vocBand({ string, cells, context }: Run): { low: number; high: number; nominal: number } {
  const light = lightIsWeak(context) ? weakLightShare : 1;
  return {
    low: stringVoc(string, cells.highC) * (1 - vocTolerance) * light,
    high: stringVoc(string, cells.lowC) * (1 + vocTolerance),
    nominal: stringVoc(string, cells.likelyC),
  };
}

const stringVolts: ScaleDef = {
  id: 'pv-string-volts',
  kind: 'voltage',
  zones: ['reversed', 'slightly-negative', 'near-zero', 'held-off', 'low', 'ok', 'high', 'over'],
  build: withRun((run) => {
    const { string, tracker } = run;
    const { low, high, nominal } = vocBand(run);
    return scaleOf(
      'pv-string-volts',
      'voltage',
      [
        ['reversed', -heldDownVolts],
        ['slightly-negative', -offsetVolts],
        ['near-zero', nothingTop(string.modulesInSeries)],
        ['held-off', shutdownVoltsEach.high * string.modulesInSeries],
        ['low', Math.min(low, tracker.maxV)],
        ['ok', Math.min(high, tracker.maxV)],
        ['high', tracker.maxV],
        ['over', null],
      ],
      {
        expected: 'ok',
        nominal,
        why: [
          { id: 'expected.pv.stringVolts', params: { ...facts(run), low, high, nominal } },
          { id: temperatureWhy(run), params: facts(run) },
          ...(lightIsWeak(run.context) ? [{ id: 'expected.pv.weakLight', params: { low } }] : []),
        ],
        uses: facts(run),
        overRange: 'over',
      },
    );
  }),
};

/** The same behind an isolator or at the unit: a few volts there are ghosts, and their sign says nothing. */
const inverterSideVolts: ScaleDef = {
  id: 'pv-inverter-side-volts',
  kind: 'voltage',
  zones: ['reversed', 'none', 'low', 'ok', 'high', 'over'],
  build: withRun((run) => {
    const { string, tracker } = run;
    const { low, high, nominal } = vocBand(run);
    return scaleOf(
      'pv-inverter-side-volts',
      'voltage',
      [
        ['reversed', -heldDownVolts],
        ['none', shutdownVoltsEach.high * string.modulesInSeries],
        ['low', Math.min(low, tracker.maxV)],
        ['ok', Math.min(high, tracker.maxV)],
        ['high', tracker.maxV],
        ['over', null],
      ],
      {
        expected: 'ok',
        nominal,
        why: [{ id: 'expected.pv.inverterSide', params: { ...facts(run), low, high, nominal } }],
        uses: facts(run),
        overRange: 'over',
      },
    );
  }),
};

/** Upper end of what counts as nothing at the array side [V]. */
export const nothingTop = (modules: number): number =>
  Math.max(nothingVolts, shutdownVoltsEach.low * modules);

/** Open-circuit volts that working volts are compared with: what was read at P1, else the label at the likeliest cells. */
export function openVolts(run: Run): { volts: number; read: boolean } {
  const label = stringVoc(run.string, run.cells.likelyC);
  const read = run.context.readings['volts-still.p1'];
  return read !== undefined && read > 0.5 * label
    ? { volts: read, read: true }
    : { volts: label, read: false };
}

const loadedVolts: ScaleDef = {
  id: 'pv-loaded-volts',
  kind: 'voltage',
  zones: ['reversed', 'near-zero', 'collapsed', 'dragged', 'tracking', 'held', 'high'],
  build: withRun((run) => {
    const { volts, read } = openVolts(run);
    const params = {
      ...facts(run),
      openVolts: volts,
      collapsed: loadedShares.collapsed * volts,
      low: loadedShares.dragged * volts,
      high: loadedShares.tracking * volts,
    };
    return scaleOf(
      'pv-loaded-volts',
      'voltage',
      [
        ['reversed', -heldDownVolts],
        ['near-zero', shutdownVoltsEach.high * run.string.modulesInSeries],
        ['collapsed', params.collapsed],
        ['dragged', params.low],
        ['tracking', params.high],
        ['held', loadedShares.open * volts],
        ['high', null],
      ],
      {
        expected: 'tracking',
        nominal: run.string.modulesInSeries * run.string.vmpV,
        why: [
          { id: 'expected.pv.loadedVolts', params },
          { id: read ? 'expected.pv.openRead' : 'expected.pv.openFromLabel', params },
        ],
        uses: params,
        overRange: 'high',
      },
    );
  }),
};

/** The same on the unit's own screen, where no open-circuit reading stands beside it: limits give room for the cells. */
const runningVolts: ScaleDef = {
  id: 'pv-running-volts',
  kind: 'voltage',
  zones: ['none', 'collapsed', 'dragged', 'tracking', 'held', 'high'],
  build: withRun((run) => {
    const { volts, read } = openVolts(run);
    const hot = read ? volts : stringVoc(run.string, run.cells.highC);
    const cold = read ? volts : stringVoc(run.string, run.cells.lowC);
    const params = {
      ...facts(run),
      openVolts: volts,
      low: loadedShares.dragged * hot,
      high: loadedShares.tracking * cold,
    };
    return scaleOf(
      'pv-running-volts',
      'voltage',
      [
        ['none', shutdownVoltsEach.high * run.string.modulesInSeries],
        ['collapsed', loadedShares.collapsed * hot],
        ['dragged', params.low],
        ['tracking', params.high],
        ['held', loadedShares.open * cold],
        ['high', null],
      ],
      {
        expected: 'tracking',
        nominal: run.string.modulesInSeries * run.string.vmpV,
        why: [{ id: 'expected.pv.runningVolts', params }],
        uses: params,
      },
    );
  }),
};

const screenVolts: ScaleDef = {
  id: 'pv-screen-volts',
  kind: 'voltage',
  zones: ['none', 'part', 'present', 'over'],
  build: withRun((run) => {
    const { string, tracker } = run;
    const { low, high } = vocBand(run);
    const params = { ...facts(run), low, high };
    return scaleOf(
      'pv-screen-volts',
      'voltage',
      [
        ['none', shutdownVoltsEach.high * string.modulesInSeries],
        ['part', Math.min(low * loadedShares.dragged, tracker.maxV)],
        ['present', tracker.maxV],
        ['over', null],
      ],
      {
        expected: 'present',
        why: [{ id: 'expected.pv.screenVolts', params }],
        uses: params,
      },
    );
  }),
};

const acrossPole: ScaleDef = {
  id: 'pv-across-pole',
  kind: 'voltage',
  zones: ['closed', 'little', 'part', 'open'],
  build: withRun((run) => {
    const open =
      acrossShare * stringVoc(run.string, run.cells.highC) * (lightIsWeak(run.context) ? weakLightShare : 1);
    const params = { ...facts(run), closed: closedPoleVolts, open };
    return scaleOf(
      'pv-across-pole',
      'voltage',
      [
        ['closed', closedPoleVolts],
        ['little', (floatingShare / acrossShare) * open],
        ['part', open],
        ['open', null],
      ],
      {
        expected: 'closed',
        nominal: 0,
        why: [{ id: 'expected.pv.acrossPole', params }],
        uses: params,
        overRange: 'open',
      },
    );
  }),
};

/** Half a tenth of the string, either way of nothing, is near enough to nothing for a pole that floats. Common practice. */
const poleShares = { nearZero: 0.05, wrongSign: 0.02 };

const plusToGround: ScaleDef = {
  id: 'pv-plus-to-ground',
  kind: 'voltage',
  zones: ['wrong-sign', 'near-zero', 'part', 'whole'],
  build: withRun((run) => {
    const { low, nominal } = vocBand(run);
    const params = { ...facts(run), nominal };
    return scaleOf(
      'pv-plus-to-ground',
      'voltage',
      [
        ['wrong-sign', -poleShares.wrongSign * nominal],
        ['near-zero', poleShares.nearZero * nominal],
        ['part', low],
        ['whole', null],
      ],
      {
        expected: 'near-zero',
        why: [{ id: 'expected.pv.plusToGround', params }],
        uses: params,
        overRange: 'whole',
      },
    );
  }),
};

const minusToGround: ScaleDef = {
  id: 'pv-minus-to-ground',
  kind: 'voltage',
  zones: ['whole', 'part', 'near-zero', 'wrong-sign'],
  build: withRun((run) => {
    const { low, nominal } = vocBand(run);
    const params = { ...facts(run), nominal };
    return scaleOf(
      'pv-minus-to-ground',
      'voltage',
      [
        ['whole', -low],
        ['part', -poleShares.nearZero * nominal],
        ['near-zero', poleShares.wrongSign * nominal],
        ['wrong-sign', null],
      ],
      {
        expected: 'near-zero',
        why: [{ id: 'expected.pv.minusToGround', params }],
        uses: params,
        overRange: 'whole',
      },
    );
  }),
};

/** Volts of a PV string at every place a guide reads them. */
export const voltScales: readonly ScaleDef[] = [
  stringVolts,
  inverterSideVolts,
  loadedVolts,
  runningVolts,
  screenVolts,
  acrossPole,
  plusToGround,
  minusToGround,
];
