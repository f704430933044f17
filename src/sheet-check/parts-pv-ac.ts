import type { SiteSheet } from '../site/sheet.ts';
import { legLimit } from '../worksheets/ac/leg-limit.ts';
import { legFacts } from '../worksheets/ac/topology.ts';
import { nec690 } from '../worksheets/pv/string-amps.ts';
import { stringWindow } from '../worksheets/pv/string-window.ts';
import { emtFor } from '../worksheets/tables/nec-ch9-conduit.ts';
import { ratingAtLeast } from '../worksheets/tables/standard-ratings.ts';
import { figures, usedInputs } from './figures.ts';
import { type Part, rating } from './part.ts';

const continuousFactor = 1.25;
/** Both conductors of a string and the grounding conductor, counted at the same size. */
const wiresOfString = 3;

/** Isolator, plug pairs, cable and conduit of each string. */
export function pvParts(sheet: SiteSheet): readonly Part[] {
  const nec = sheet.codeBasis === 'us-nec';
  return sheet.strings.flatMap((string, row): Part[] => {
    const found = figures(stringWindow, sheet, row);
    const coldVolts = found.ok ? (found.worked.out.vocColdVolts as number) : undefined;
    const amps = nec690.maximumFactor * string.iscA * string.parallel;
    const { lengthM, areaMm2, name: of } = string;
    const owes = [
      ...(lengthM === null ? [`strings[${row}].lengthM`] : []),
      ...(areaMm2 === null ? [`strings[${row}].areaMm2`] : []),
    ];
    const use = found.ok ? { use: { worksheet: stringWindow.id, inputs: usedInputs(found.worked) } } : {};
    const wire = rating('wire', 'wireSize', areaMm2 ?? undefined);
    const length = lengthM === null ? {} : { quantity: lengthM };
    const tubing = nec && areaMm2 !== null ? emtFor(areaMm2, wiresOfString) : undefined;
    return [
      {
        id: 'pv-isolator',
        of,
        quantity: 1,
        ratings: [...rating('volts', 'voltage', coldVolts), ...rating('amps', 'current', amps)],
        missing: [],
        ...use,
      },
      {
        id: 'pv-plugs',
        of,
        quantity: 2 * string.parallel,
        ratings: [
          ...rating('volts', 'voltage', coldVolts),
          ...rating('amps', 'current', nec690.maximumFactor * string.iscA),
        ],
        missing: [],
        ...use,
      },
      {
        id: 'pv-cable',
        of,
        ...(lengthM === null ? {} : { quantity: 2 * lengthM }),
        inLengths: true,
        ratings: [...wire, ...rating('volts', 'voltage', coldVolts)],
        missing: owes,
      },
      {
        id: 'pv-conduit',
        of,
        ...length,
        inLengths: true,
        ratings: [],
        ...(tubing === undefined ? {} : { trade: tubing }),
        missing: owes,
        ...(nec ? {} : { codeOpen: true as const }),
      },
    ];
  });
}

/** Output breaker, feeder and its conduit, and what a second source needs. */
export function acParts(sheet: SiteSheet): readonly Part[] {
  const { inverter, parallelUnits, outputFeeder, secondSource } = sheet;
  const nec = sheet.codeBasis === 'us-nec';
  const { angle, legVolts } = legFacts[inverter.topology];
  const poles = angle === undefined ? 1 : 2;
  const legWatts = inverter.legLimitW ?? inverter.ratedW / poles;
  // Legs in step may each be asked for all that the unit gives.
  const legAmps = (angle === 0 ? Math.min(legWatts, inverter.ratedW) : legWatts) / legVolts;
  const found = figures(legLimit, sheet, 0);
  const { lengthM, areaMm2 } = outputFeeder;
  const owes = [
    ...(lengthM === null ? ['outputFeeder.lengthM'] : []),
    ...(areaMm2 === null ? ['outputFeeder.areaMm2'] : []),
  ];
  // Hots, neutral and ground.
  const wires = poles + 2;
  const tubing = nec && areaMm2 !== null ? emtFor(areaMm2, wires) : undefined;
  const open = nec ? {} : { codeOpen: true as const };
  const parts: Part[] = [
    {
      id: 'output-breaker',
      quantity: parallelUnits,
      ratings: [
        ...rating('poles', 'count', poles),
        ...rating(
          'standardAmps',
          'current',
          nec ? ratingAtLeast(continuousFactor * legAmps, '2023', 'breaker') : undefined,
        ),
        ...rating(
          'volts',
          'voltage',
          angle === undefined || angle === 0 ? legVolts : angle === 180 ? 240 : 208,
        ),
      ],
      missing: [],
      ...open,
      ...(found.ok ? { use: { worksheet: legLimit.id, inputs: usedInputs(found.worked) } } : {}),
    },
    {
      id: 'feeder-cable',
      ...(lengthM === null ? {} : { quantity: wires * lengthM }),
      inLengths: true,
      ratings: rating('wire', 'wireSize', areaMm2 ?? undefined),
      missing: owes,
    },
    {
      id: 'feeder-conduit',
      ...(lengthM === null ? {} : { quantity: lengthM }),
      inLengths: true,
      ratings: [],
      ...(tubing === undefined ? {} : { trade: tubing }),
      missing: owes,
      ...open,
    },
  ];
  if (secondSource.kind === 'none') return parts;
  const amps = secondSource.ratedW === null ? undefined : secondSource.ratedW / (poles * legVolts);
  return [
    ...parts,
    {
      id: 'source-breaker',
      quantity: 1,
      ratings: [
        ...rating('poles', 'count', poles),
        ...rating(
          'standardAmps',
          'current',
          nec && amps !== undefined ? ratingAtLeast(continuousFactor * amps, '2023', 'breaker') : undefined,
        ),
      ],
      missing: secondSource.ratedW === null ? ['secondSource.ratedW'] : [],
      ...open,
    },
  ];
}
