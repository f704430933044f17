import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { autonomy } from '../../src/worksheets/battery-dc/autonomy.ts';
import { runtime } from '../../src/worksheets/battery-dc/runtime.ts';

const bank = { packAh: 200, packs: 2, cells: 16, cellVolts: 3.2, healthShare: 1, usableShare: 0.9 };
type Run = Parameters<typeof runtime.compute>[0];
type Days = Parameters<typeof autonomy.compute>[0];
const running: Run = { ...bank, loadWatts: 1000, efficiency: 0.93, idleWatts: 100 };
const dark: Days = {
  ...bank,
  dayJoules: 8 * 3.6e6,
  efficiency: 0.93,
  idleWatts: 100,
  poorDayJoules: 0,
  wantedDays: 2,
};

function runOut(change: Partial<Run>) {
  const result = runtime.compute({ ...running, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}
function daysOut(change: Partial<Days>) {
  const result = autonomy.compute({ ...dark, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}
const share = fc.double({ min: 0.3, max: 1, noNaN: true });

describe('runtime', () => {
  it('gives the hours of the usable energy at the draw', () => {
    const out = runOut({});
    expect(out.nominalJoules! / 3.6e6).toBeCloseTo(20.48, 9);
    expect(out.runtimeS! / 3600).toBeCloseTo((20_480 * 0.9) / (1000 / 0.93 + 100), 9);
  });

  it('puts idle on the battery’s side: half the load lasts less than twice as long', () => {
    expect(runOut({ loadWatts: 500 }).runtimeS).toBeLessThan(2 * runOut({}).runtimeS!);
  });

  it('grows with what the bank has and falls with what is drawn', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 1, max: 9000, noNaN: true }), (healthShare, loadWatts) => {
        const here = runOut({ healthShare, loadWatts }).runtimeS!;
        expect(runOut({ healthShare: healthShare * 0.9, loadWatts }).runtimeS).toBeLessThan(here);
        expect(runOut({ healthShare, loadWatts: loadWatts * 1.1 }).runtimeS).toBeLessThan(here);
        expect(runOut({ healthShare, loadWatts, packs: 4 }).runtimeS).toBeCloseTo(2 * here, 3);
      }),
    );
  });

  it('keeps the energy: sockets, losses and idle add up to what the bank gave', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 9000, noNaN: true }), (loadWatts) => {
        const out = runOut({ loadWatts });
        const spent = out.acJoules! / running.efficiency + running.idleWatts * out.runtimeS!;
        expect(spent / out.usableJoules!).toBeCloseTo(1, 9);
      }),
    );
  });

  it('says so when nothing is drawn', () => {
    const result = runtime.compute({ ...running, loadWatts: 0, idleWatts: 0 });
    expect(!result.ok && result.reason.id).toBe('worksheet.runtime.nothingDrawn');
  });
});

describe('days without sun', () => {
  it('carries the days of its usable energy', () => {
    const out = daysOut({});
    expect(out.heldDays).toBeCloseTo((20.48 * 0.9) / (8 / 0.93 + 2.4), 9);
    expect(out.verdict).toBe('short');
    expect(daysOut({ wantedDays: 1 }).verdict).toBe('holds');
  });

  it('asks for packs that hold the days, and not one fewer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 14 }),
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        share,
        (wantedDays, kWh, healthShare) => {
          const given = { wantedDays, dayJoules: kWh * 3.6e6, healthShare };
          const { neededPacks } = daysOut(given);
          expect(daysOut({ ...given, packs: neededPacks! }).verdict).toBe('holds');
          if (neededPacks! > 1) expect(daysOut({ ...given, packs: neededPacks! - 1 }).verdict).toBe('short');
        },
      ),
    );
  });

  it('gives no count of days when the dark day’s sun covers the draw', () => {
    const out = daysOut({ poorDayJoules: 20 * 3.6e6 });
    expect(out.verdict).toBe('sunCarries');
    expect(out.heldDays).toBeUndefined();
  });
});
