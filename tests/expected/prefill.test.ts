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
