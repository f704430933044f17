import { describe, expect, it } from 'vitest';
import * as machineIndex from '../../machines/index.ts';
import { cardOf, cardRows } from '../../src/expected/card.ts';
import type { Machine } from '../../src/guide/vocabulary.ts';
import { demoSites, sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { cardWords } from '../../src/words/en/card.ts';
import { states } from '../../src/words/en/states.ts';

const machines = Object.values(machineIndex).flat() as readonly Machine[];

interface AnyStep {
  state?: string;
  readings?: Record<string, { point: string; mode: string; scale: string }>;
}

describe('the card of expected readings', () => {
  it.each(cardRows)('$of is a reading that its machine takes, as the card says', (row) => {
    const [machine, step, reading] = row.of.split('.') as [string, string, string];
    const found = machines.find(({ id }) => id === machine)?.steps[step] as AnyStep | undefined;
    expect(found?.readings?.[reading]).toMatchObject({ point: row.point, mode: row.mode, scale: row.scale });
    if (found?.state !== undefined) expect(row.state).toBe(found.state);
  });

  it('has words for every row, state and mode', () => {
    for (const { of, state, mode } of cardRows) {
      expect(cardWords.what[of], of).toBeTruthy();
      expect(states[state], state).toBeDefined();
      expect(cardWords.modes[mode], mode).toBeTruthy();
    }
    expect(Object.keys(cardWords.what).toSorted()).toEqual(cardRows.map(({ of }) => of).toSorted());
  });

  it('has a row for each string and only the link that is fitted', () => {
    const lines = cardOf(sallowCreek);
    expect(lines.filter(({ row }) => row.of === 'string-check.p1.p1').map(({ string }) => string)).toEqual([
      'East',
      'West',
    ]);
    expect(lines.some(({ row }) => row.scale === 'link-serial-idle')).toBe(false);
    expect(cardOf(ternLedge).some(({ row }) => row.scale === 'link-can-pin')).toBe(false);
    expect(cardOf(ternLedge).some(({ row }) => row.scale === 'pack-difference')).toBe(false);
  });

  it('gives bands of the site: sixteen cells of 2.5 to 3.65 V, half of the volts gone nowhere', () => {
    const atI = cardOf(sallowCreek).find(({ row }) => row.of === 'first-power-up.at-i.volts')!.scale!;
    const band = atI.zones.find(({ id }) => id === atI.expected)!;
    expect(band.min).toBeCloseTo(40, 9);
    expect(band.max).toBeCloseTo(58.4, 9);
    const third = cardOf(ternLedge).find(({ row }) => row.of === 'ac-output-check.out-two.v12')!.scale!;
    // Legs in step: nothing between them.
    expect(third.zones.find(({ id }) => id === third.expected)!.max).toBeLessThan(6);
  });

  it('names what it wants where a fact is not known, and gives no band', () => {
    const unknown = { ...sallowCreek, trackers: [] };
    const open = cardOf(unknown).find(({ row }) => row.of === 'string-check.p1.p1')!;
    expect(open.scale).toBeUndefined();
    expect(open.missing).toContain('trackers');
  });

  it('fills every row of both demonstration sites', () => {
    for (const sheet of demoSites)
      for (const line of cardOf(sheet)) expect(line.scale, line.row.of).toBeDefined();
  });
});
