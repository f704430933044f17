import type { WorksheetUse } from '../expected/context.ts';
import type { SiteSheet } from '../site/sheet.ts';
import { legLimit } from '../worksheets/ac/leg-limit.ts';
import { inverterCable } from '../worksheets/battery-dc/inverter-cable.ts';
import { packsForPower } from '../worksheets/battery-dc/packs-for-power.ts';
import { heldWatts } from '../worksheets/battery-dc/packs-needed.ts';
import type { AnyWorksheet } from '../worksheets/define.ts';
import type { Worked } from './check.ts';
import { figures, usedInputs } from './figures.ts';

/** Continuous load through a fuse or breaker: its rating over this. NEC 706.30, 210.20(A); common practice elsewhere. */
const continuousFactor = 1.25;

/** What each part of the way from the packs to the loads lets through for good. */
const parts = ['inverter', 'legs', 'packs', 'packBreakers', 'mainDevice', 'mainSwitch', 'cable'] as const;
export type PowerPart = (typeof parts)[number];

export interface Ceiling {
  readonly by: PowerPart;
  /** AC power [W]; missing where a fact is not known or the code is not carried. */
  readonly watts?: number;
  readonly use?: WorksheetUse;
}

/** AC power of so many battery amps at the lowest volts. */
const ofAmps = ({ given }: Worked, amps: number): number =>
  heldWatts(amps, given.lowVolts, given.efficiency, given.idleWatts);

type Ask = readonly [AnyWorksheet, (worked: Worked) => number | undefined];

const asks: Readonly<Record<PowerPart, Ask>> = {
  inverter: [packsForPower, ({ given }) => given.acWatts],
  legs: [
    legLimit,
    ({ out, sheet }) =>
      sheet.inverter.topology !== 'single-230' && sheet.inverter.legLimitW === null
        ? undefined
        : out.mostWatts,
  ],
  packs: [packsForPower, ({ out }) => out.heldWatts],
  packBreakers: [
    packsForPower,
    (worked) => {
      const { packBreaker, battery } = worked.sheet;
      return packBreaker.ratedA === null || packBreaker.fitted !== true
        ? undefined
        : ofAmps(worked, (battery.packs * packBreaker.ratedA) / continuousFactor);
    },
  ],
  mainDevice: [
    inverterCable,
    (worked) =>
      worked.given.fuseAmps === undefined
        ? undefined
        : ofAmps(worked, worked.given.fuseAmps / continuousFactor),
  ],
  mainSwitch: [
    inverterCable,
    (worked) =>
      worked.sheet.mainSwitch.ratedA === null ? undefined : ofAmps(worked, worked.sheet.mainSwitch.ratedA),
  ],
  cable: [
    inverterCable,
    (worked) => {
      const { plainAmps, correctedAmps } = worked.out;
      return plainAmps === undefined || correctedAmps === undefined
        ? undefined
        : ofAmps(worked, Math.min(plainAmps / continuousFactor, correctedAmps));
    },
  ],
};

/** A part that this site has no such thing of: nothing to know and nothing to limit. */
function absent(by: PowerPart, { packBreaker, fuse, mainSwitch }: SiteSheet): boolean {
  if (by === 'packBreakers') return packBreaker.fitted === false;
  return by === 'mainDevice' && fuse.fitted === false && mainSwitch.kind === 'switch';
}

/** The most AC power for good, by each part that can limit it, the least first and the unknown last. */
export function powerCeilings(sheet: SiteSheet): readonly Ceiling[] {
  const ceilings = parts
    .filter((by) => !absent(by, sheet))
    .map((by): Ceiling => {
      const [worksheet, ask] = asks[by];
      const found = figures(worksheet, sheet, 0);
      const watts = found.ok ? ask(found.worked) : undefined;
      return found.ok && watts !== undefined
        ? { by, watts, use: { worksheet: worksheet.id, inputs: usedInputs(found.worked) } }
        : { by };
    });
  return ceilings.toSorted((a, b) => (a.watts ?? Infinity) - (b.watts ?? Infinity));
}
