import { type Flat, MachineError } from '../flatten.ts';
import { rowFits } from '../judge.ts';

/**
 * Every combination of zones that the readings of a step can fall in has its outcome, and every outcome has a combination.
 * @param zonesOf zones of a scale by its id; `undefined` when there is no such scale
 * @throws MachineError naming the step and the combination
 */
export function checkTotality(flat: Flat, zonesOf: (scale: string) => readonly string[] | undefined): void {
  for (const node of flat.nodes.values()) {
    const { step } = node;
    if (step.kind !== 'measure' && step.kind !== 'display') continue;
    const readings = Object.entries(step.readings).map(([id, reading]) => {
      const zones = zonesOf(reading.scale);
      if (!zones) throw new MachineError(`${node.path}: there is no scale ${reading.scale}`);
      return { id, zones: [...zones, 'undetermined'] };
    });
    const edges = node.edges.filter((edge) => edge.when);
    for (const edge of edges)
      for (const [id, wanted] of Object.entries(edge.when!)) {
        const reading = readings.find((r) => r.id === id);
        if (!reading) throw new MachineError(`${node.path}, ${edge.outcome}: there is no reading ${id}`);
        const strange = [wanted].flat().find((zone) => !reading.zones.includes(zone));
        if (strange) throw new MachineError(`${node.path}, ${edge.outcome}: ${id} has no zone ${strange}`);
      }
    const used = new Set<string>();
    for (const outcomes of combinations(readings)) {
      const edge = edges.find((candidate) => rowFits(candidate.when!, outcomes));
      if (!edge) throw new MachineError(`${node.path}: nothing is said of ${JSON.stringify(outcomes)}`);
      used.add(edge.outcome);
    }
    const idle = edges.find((edge) => !used.has(edge.outcome));
    if (idle) throw new MachineError(`${node.path}: outcome ${idle.outcome} can never be taken`);
  }
}

function* combinations(
  readings: readonly { id: string; zones: readonly string[] }[],
): Generator<Record<string, string>> {
  const [first, ...rest] = readings;
  if (!first) {
    yield {};
    return;
  }
  for (const tail of combinations(rest)) for (const zone of first.zones) yield { ...tail, [first.id]: zone };
}
