import { defineWorksheet, type Plot, type ResultsOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { bankWirings, sourceAmps, wiredShares } from './parallel-packs.ts';

/** Packs share evenly while each is within this of its part. Common practice. */
const evenWithin = 0.1;
/** A pack that carries nothing is only seen where its part would be well above the clamp's error. */
const seenTimes = 3;

const inputs = {
  packAmps: {
    rows: { amps: { kind: 'current', min: -1000, max: 1000, signed: true } },
    mostRows: 16,
  },
  clampError: { kind: 'current', min: 0, max: 50, default: 1 },
  labelAmps: { kind: 'current', min: 1, max: 1000, from: ['battery.packContinuousA'] },
  wiring: { options: bankWirings, default: 'equalLeads' },
  packOhms: {
    kind: 'resistance',
    min: 0.0005,
    max: 0.5,
    default: 0.015,
    unit: 'mΩ',
    from: ['battery.packResistanceOhm'],
  },
  linkOhms: { kind: 'resistance', min: 0, max: 0.02, default: 0.0003, unit: 'mΩ' },
  apartVolts: { kind: 'voltage', min: 0, max: 20, optional: true },
} as const;
const outputs = {
  verdict: { verdicts: ['even', 'asWired', 'uneven', 'silent', 'backwards'], headline: true },
  mostPack: { kind: 'count' },
  mostShare: { kind: 'ratio', headline: true },
  leastShare: { kind: 'ratio', headline: true },
  fairShare: { kind: 'ratio' },
  wiredMostShare: { kind: 'ratio' },
  wiredLeastShare: { kind: 'ratio' },
  totalAmps: { kind: 'current' },
  paperAmps: { kind: 'current' },
  bankAmps: { kind: 'current', headline: true },
  joiningAmps: { kind: 'current' },
} as const;
type Out = ResultsOf<typeof outputs>;

/** How parallel packs share a current, what that leaves of the bank, and what flows when packs are joined. */
export const packSharing = defineWorksheet({
  id: 'pack-sharing',
  group: 'battery-dc',
  hazards: ['parallel-packs', 'live-metering'],
  inputs,
  outputs,
  compute(given) {
    const { clampError, labelAmps, packOhms, apartVolts } = given;
    const amps = given.packAmps.map((row) => row.amps);
    const packs = amps.length;
    if (packs < 2) return refuse('worksheet.pack-sharing.fewPacks', { packs });
    const totalAmps = amps.reduce((sum, each) => sum + each, 0);
    // Each reading carries the clamp's error; at or under their sum nothing is known of who carries what.
    if (Math.abs(totalAmps) <= packs * Math.max(clampError, 0.1))
      return refuse('worksheet.pack-sharing.littleCurrent', { totalAmps, leastAmps: packs * clampError });
    const along = amps.map((each) => each * Math.sign(totalAmps));
    const shares = along.map((each) => each / Math.abs(totalAmps));
    const wired = wiredShares(packs, given.wiring, packOhms, given.linkOhms);
    const mostShare = Math.max(...shares);
    return give({
      verdict: verdictOf(along, wired, clampError),
      mostPack: shares.indexOf(mostShare) + 1,
      mostShare,
      leastShare: Math.min(...shares),
      fairShare: 1 / packs,
      wiredMostShare: Math.max(...wired),
      wiredLeastShare: Math.min(...wired),
      totalAmps,
      paperAmps: packs * labelAmps,
      bankAmps: labelAmps / mostShare,
      joiningAmps:
        apartVolts === undefined
          ? undefined
          : sourceAmps(
              [
                { volts: apartVolts, ohms: packOhms },
                { volts: 0, ohms: packOhms },
              ],
              0,
            )[0],
    });
  },
  working(given, out) {
    const counted = { packs: given.packAmps.length };
    const most = { mostAmps: Math.abs((out.totalAmps ?? 0) * (out.mostShare ?? 0)) };
    return [
      say('total', given, out, counted),
      say('fair', given, out, counted),
      say('most', given, out, counted, most, { totalAmps: Math.abs(out.totalAmps ?? 0) }),
      say('bank', given, out, counted),
      ...(given.wiring === 'equalLeads' ? [] : [say('wired', given, out, counted)]),
      ...(out.joiningAmps === undefined ? [] : [say('joining', given, out, counted)]),
    ];
  },
  remarks(given, out) {
    const over = given.packAmps.some(({ amps }) => Math.abs(amps) > given.labelAmps);
    const ids = [
      out.verdict,
      ...(over ? ['overLabel'] : []),
      ...((out.joiningAmps ?? 0) > given.labelAmps ? ['joinTrips'] : out.joiningAmps ? ['join'] : []),
      'ends',
    ];
    return ids.map((id) => say(`worksheet.pack-sharing.${id}`, given, out, { packs: given.packAmps.length }));
  },
  plot(given, out): Plot {
    const packs = given.packAmps.length;
    const total = Math.abs(out.totalAmps ?? 0);
    const along = given.packAmps.map(({ amps }) => amps * Math.sign(out.totalAmps ?? 1));
    const wired = wiredShares(packs, given.wiring, given.packOhms, given.linkOhms);
    const points = (each: readonly number[]) => each.map((amps, at) => [at + 1, amps] as const);
    return {
      x: { kind: 'count', low: 1, high: packs },
      y: {
        kind: 'current',
        low: Math.min(0, ...along),
        high: 1.1 * Math.max(given.labelAmps, ...along, total * Math.max(...wired)),
      },
      curves: [
        { id: 'read', points: points(along) },
        { id: 'wired', points: points(wired.map((share) => share * total)) },
      ],
      levels: [
        { id: 'fair', axis: 'y', at: total / packs },
        { id: 'label', axis: 'y', at: given.labelAmps },
      ],
      marks: [],
    };
  },
  sources: [
    { id: 'kuphaldt-dc', clause: 'chapter 10, Millman’s theorem' },
    { id: 'parallel-banks' },
    { id: 'common-practice' },
  ],
});

/**
 * Which of the verdicts fits, the most serious first.
 * @param along amps of each pack, positive in the direction of the whole bank [A]
 */
function verdictOf(along: readonly number[], wired: readonly number[], error: number): Out['verdict'] {
  const total = along.reduce((sum, each) => sum + each, 0);
  const fair = total / along.length;
  if (along.some((amps) => amps < -error)) return 'backwards';
  if (fair > seenTimes * error && along.some((amps) => amps <= error)) return 'silent';
  const within = (expected: (at: number) => number): boolean =>
    along.every((amps, at) => Math.abs(amps - expected(at)) <= evenWithin * fair + error);
  if (within(() => fair)) return 'even';
  return within((at) => total * wired[at]!) ? 'asWired' : 'uneven';
}
