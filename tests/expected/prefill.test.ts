import { describe, expect, it } from 'vitest';
import { prefill, worksheetFact } from '../../src/expected/prefill.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { checkInputs } from '../../src/worksheets/check-inputs.ts';
import type { Field } from '../../src/worksheets/define.ts';
import { worksheetById, worksheets } from '../../src/worksheets/index.ts';

const sites = [sallowCreek, ternLedge];

describe('filling a worksheet from the site sheet', () => {
  it.each(worksheets.map((worksheet) => worksheet.id))('asks in %s only for facts that exist', (id) => {
    for (const field of Object.values(worksheetById(id).inputs as Record<string, Field>)) {
      for (const fact of 'from' in field ? (field.from ?? []) : []) {
        for (const sheet of sites) expect(() => worksheetFact(sheet, 0, fact), fact).not.toThrow();
      }
    }
  });

  it('throws on a fact that does not exist, and gives nothing for a string that does not', () => {
    expect(() => worksheetFact(sallowCreek, 0, 'battery.colour')).toThrow(/battery.colour/);
    expect(worksheetFact(sallowCreek, 7, 'string.vocV')).toBeUndefined();
    expect(worksheetFact(sallowCreek, 7, 'tracker.startV')).toBeUndefined();
  });

  it.each(sites.map((sheet) => ({ name: sheet.name, sheet })))(
    'fills the whole string window at $name',
    ({ sheet }) => {
      const worksheet = worksheetById('string-window');
      const checked = checkInputs(worksheet, { hotMargin: 0.03, ...prefill(worksheet, sheet, 0) });
      expect(checked.ok, JSON.stringify(checked)).toBe(true);
      expect(checked.ok && worksheet.compute(checked.inputs).ok).toBe(true);
    },
  );

  it('counts the capacitance of every unit on the bus', () => {
    const twoUnits = { ...sallowCreek, parallelUnits: 2 };
    expect(prefill(worksheetById('pre-charge'), twoUnits, 0).capacitanceF).toBe(
      2 * sallowCreek.inverter.busCapacitanceF!,
    );
  });

  it('counts watts and idle draw of every unit, and leaves them empty where one is not known', () => {
    const { inverter } = sallowCreek;
    const two = { ...sallowCreek, parallelUnits: 2 };
    const filled = prefill(worksheetById('packs-for-power'), two, 0);
    expect(filled).toMatchObject({ acWatts: 2 * inverter.ratedW, surgeWatts: 2 * inverter.surgeW! });
    expect(filled.idleWatts).toBe(2 * inverter.idleW!);
    const unknown = { ...two, inverter: { ...inverter, surgeW: null, idleW: null } };
    const left = prefill(worksheetById('packs-for-power'), unknown, 0);
    expect(left.surgeWatts).toBeUndefined();
    expect(left.idleWatts).toBeUndefined();
  });

  it('takes for the cable’s protection what is fitted: a fuse, else a breaker, never a plain switch', () => {
    const cable = worksheetById('inverter-cable');
    const noFuse = { ...sallowCreek, fuse: { ...sallowCreek.fuse, fitted: false } };
    const breaker = { ...noFuse.mainSwitch, kind: 'breaker' as const, ratedA: 250 };
    expect(prefill(cable, sallowCreek, 0).fuseAmps).toBe(200);
    expect(prefill(cable, noFuse, 0).fuseAmps).toBeUndefined();
    const behindBreaker = prefill(cable, { ...noFuse, mainSwitch: breaker }, 0);
    expect(behindBreaker.fuseAmps).toBe(250);
    expect(behindBreaker.interruptingAmps).toBeUndefined();
  });

  it.each(
    [
      'runtime',
      'autonomy',
      'packs-for-power',
      'inverter-cable',
      'joint-millivolts',
      'pack-sharing',
      'rest-voltage',
      'clamp-zero',
      'run-by-voltage',
    ].flatMap((id) => sites.map((sheet) => ({ id, name: sheet.name, sheet }))),
  )('fills $id at $name up to what is read on the spot', ({ id, sheet }) => {
    const read: Readonly<Record<string, object>> = {
      runtime: { loadWatts: 800 },
      autonomy: { dayJoules: 5 * 3.6e6 },
      'joint-millivolts': { volts: 0.01, amps: 80 },
      'pack-sharing': { packAmps: [{ amps: 40 }, { amps: 38 }] },
      'rest-voltage': { volts: sheet.battery.cellsInSeries * 3.3 },
      'clamp-zero': { readAmps: 12 },
    };
    const worksheet = worksheetById(id);
    const fields = Object.entries(worksheet.inputs as Record<string, Field>);
    const defaults = fields.map(([name, field]) => [name, 'default' in field ? field.default : undefined]);
    const given = { ...Object.fromEntries(defaults), ...prefill(worksheet, sheet, 0), ...read[id] };
    const checked = checkInputs(worksheet, given);
    expect(checked.ok, JSON.stringify(checked)).toBe(true);
    expect(checked.ok && worksheet.compute(checked.inputs).ok).toBe(true);
  });

  it('leaves a field empty where the sheet does not know', () => {
    const unknown = { ...sallowCreek, precharge: { resistorOhm: null, ratedW: null, ratedEnergyJ: null } };
    expect(prefill(worksheetById('pre-charge'), unknown, 0).resistorOhms).toBeUndefined();
  });

  it('takes the tracker that the string lands on', () => {
    const second = { ...sallowCreek.trackers[1]!, startV: 222 };
    const sheet = { ...sallowCreek, trackers: [sallowCreek.trackers[0]!, second] };
    expect(worksheetFact(sheet, 1, 'tracker.startV')).toBe(222);
    expect(worksheetFact(sheet, 0, 'tracker.startV')).toBe(sallowCreek.trackers[0]!.startV);
  });
});
