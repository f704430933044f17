import type { APIRoute } from 'astro';
import { guides, proceduresById } from '../../../../machines/index.ts';
import { familyOfEach } from '../../../expected/families.ts';
import { leanGuide } from '../../../guide/lean.ts';

export const getStaticPaths = () =>
  guides.map((machine) => ({ params: { id: machine.id }, props: { machine } }));

/** The machine as a run in the browser fetches it. */
export const GET: APIRoute = async ({ props }) =>
  Response.json(leanGuide(props.machine, proceduresById, await familyOfEach()));
