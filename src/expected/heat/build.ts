import type { ExpectContext, Missing, ScaleDef } from '../context.ts';
import { type Edge, scaleOf } from '../pv/build.ts';

/**
 * What a scale of this family is made from. Before the earlier reading it stands on is taken, an ordinary figure stands in:
 * on paper the band is still to be shown.
 */
interface Made {
  edges: readonly Edge[];
  expected: string;
  nominal?: number;
  why: string;
  params: Readonly<Record<string, number>>;
}

/** A scale definition from its zones and what the site makes of them. */
export function heatScale(
  id: string,
  kind: ScaleDef['kind'],
  zones: readonly string[],
  make: (context: ExpectContext) => Made | Missing,
): ScaleDef {
  return {
    id,
    kind,
    zones,
    build(context) {
      const made = make(context);
      if ('missing' in made) return made;
      const { edges, expected, nominal, why, params } = made;
      return {
        ok: true,
        scale: scaleOf(id, kind, edges, {
          expected,
          ...(nominal === undefined ? {} : { nominal }),
          why: [{ id: why, params }],
          uses: params,
        }),
      };
    },
  };
}
