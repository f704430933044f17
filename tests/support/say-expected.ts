import type { ScaleDef } from '../../src/expected/context.ts';
import { fill } from '../../src/islands/worksheet/say.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';
import { expectedWords } from '../../src/words/en/expected.ts';

/** Why a band stands where it does on a site, in the words that a reader sees. */
export function sayExpected(def: ScaleDef, sheet: SiteSheet): string {
  const built = def.build({ sheet, stringId: sheet.strings[0]?.name ?? '', readings: {}, outcomes: {} });
  if (!built.ok) throw new Error(`${def.id} lacks ${built.missing.join(', ')}`);
  return built.scale.why
    .map(({ id, params }) => fill(expectedWords[id] ?? id, params ?? {}, sheet.units))
    .join(' ');
}
