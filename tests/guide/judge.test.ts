import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Scale } from '../../src/expected/scale.ts';
import { judge, rowFits } from '../../src/guide/judge.ts';

const scale: Scale = {
  id: 's',
  kind: 'voltage',
  expected: 'ok',
  why: [],
  uses: {},
  zones: [
    { id: 'reversed', min: null, max: -3 },
    { id: 'none', min: -3, max: 3 },
    { id: 'low', min: 3, max: 300 },
    { id: 'ok', min: 300, max: 400 },
    { id: 'high', min: 400, max: null },
  ],
};

describe('judging a reading', () => {
  test.each([
    [350, 1, 'ok'],
    [-350, 1, 'reversed'],
    [0, 1, 'none'],
    [3, 0, 'none'],
    [400, 0, 'ok'],
    [1e6, 10, 'high'],
  ])('%d V with U = %d is %s', (value, u, outcome) => {
    expect(judge(value, u, scale)).toEqual({ outcome });
  });

  test('is undetermined when the uncertainty reaches over a limit, and says between what', () => {
    expect(judge(399.5, 1, scale)).toEqual({ outcome: 'undetermined', between: ['ok', 'high'] });
    expect(judge(400.5, 1, scale)).toEqual({ outcome: 'undetermined', between: ['ok', 'high'] });
    expect(judge(0, 500, scale)).toEqual({ outcome: 'undetermined', between: ['reversed', 'high'] });
  });

  test('takes over range for the zone the scale names, else for the highest', () => {
    expect(judge('overRange', 0, scale)).toEqual({ outcome: 'high' });
    expect(judge('overRange', 0, { ...scale, overRange: 'none' })).toEqual({ outcome: 'none' });
  });

  test('never gives a value to a zone that its interval leaves', () => {
    const finite = fc.double({ min: -1000, max: 1000, noNaN: true });
    fc.assert(
      fc.property(finite, fc.double({ min: 0, max: 200, noNaN: true }), (value, u) => {
        const { outcome } = judge(value, u, scale);
        if (outcome === 'undetermined') return;
        const zone = scale.zones.find((each) => each.id === outcome)!;
        expect(value - u).toBeGreaterThanOrEqual(zone.min ?? -Infinity);
        expect(value + u).toBeLessThanOrEqual(zone.max ?? Infinity);
      }),
    );
  });
});

describe('a row', () => {
  test('fits when each reading it names has one of its outcomes', () => {
    expect(rowFits({ p1: 'ok', p2: ['low', 'none'] }, { p1: 'ok', p2: 'none', p3: 'high' })).toBe(true);
    expect(rowFits({ p1: 'ok' }, { p1: 'undetermined' })).toBe(false);
    expect(rowFits({ p4: 'ok' }, { p1: 'ok' })).toBe(false);
    expect(rowFits({}, {})).toBe(true);
  });
});
