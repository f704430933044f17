import type { ContentFinding } from './content-finding.ts';

/**
 * Reads the built page of a guide as a person without a script would: on every step the hazards stand open and before
 * the action, every answer leads to a step that is on the page, and the parts keep their order.
 */

const order = ['state', 'hazards', 'drawing', 'do', 'expect', 'sign', 'readings', 'items', 'outcomes'];

interface BuiltStep {
  block: string;
  html: string;
}

/** The steps of a built page, each with its own HTML. */
export function builtSteps(html: string): BuiltStep[] {
  const starts = [...html.matchAll(/<section\b[^>]*\bdata-block="([^"]+)"[^>]*>/g)];
  return starts.map((match, at) => ({
    block: match[1]!,
    html: html.slice(match.index, starts[at + 1]?.index ?? html.length),
  }));
}

/** What is wrong with the built page of a guide or procedure. */
export function checkPage(file: string, html: string): ContentFinding[] {
  const findings: ContentFinding[] = [];
  const say = (id: string, message: string) => findings.push({ file, id, message });
  const ids = [...html.matchAll(/\bid="([^"]+)"/g)].map((match) => match[1]!);
  const known = new Set(ids);
  for (const id of known) if (ids.indexOf(id) !== ids.lastIndexOf(id)) say(id, 'stands twice on the page');
  const steps = builtSteps(html);
  if (steps.length === 0) say(file, 'holds no steps');
  for (const { block, html: step } of steps) {
    const roles = [...step.matchAll(/\bdata-role="(\w+)"/g)]
      .map((match) => match[1]!)
      .filter((role) => order.includes(role));
    const sorted = [...roles].sort((a, b) => order.indexOf(a) - order.indexOf(b));
    if (roles.join() !== sorted.join())
      say(block, `its parts stand as ${roles.join(', ')}; the order is ${sorted.join(', ')}`);
    const hazard = step.indexOf('class="hazard"');
    const lastHazard = step.lastIndexOf('class="hazard"');
    const action = step.indexOf('data-role="do"');
    if (hazard >= 0 && action >= 0 && lastHazard > action) say(block, 'a hazard stands after the action');
    if (hazard >= 0 && /<details\b[^>]*>(?:(?!<\/details>)[\s\S])*class="hazard"/.test(step))
      say(block, 'a hazard can be folded away');
    for (const [, target] of step.matchAll(/href="#([^"]+)"/g))
      if (!known.has(target!)) say(block, `links to #${target}, which is not on the page`);
    for (const [, outcome, body] of step.matchAll(
      /<li\b[^>]*\bdata-outcome="([^"]+)"[^>]*>([\s\S]*?)<\/li>/g,
    ))
      if (!/<a\b[^>]*href="[^"]*#/.test(body!)) say(block, `the outcome "${outcome}" leads nowhere`);
    if (/\bstyle="/.test(step)) say(block, 'has a style attribute, which the content policy blocks');
  }
  return findings;
}
