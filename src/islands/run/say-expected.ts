import type { UnitSystem } from '../../quantity/kinds.ts';
import type { MessageRef } from '../../quantity/message.ts';
import { expectedWordsOf } from '../../words/en/expected-of.ts';
import { worksheetWordsOf } from '../../words/en/worksheet-words.ts';
import { fill } from '../worksheet/say.ts';

/** Why a band is where it is, or what a worksheet says, with this site's numbers. */
export async function sayExpected({ id, params }: MessageRef, units: UnitSystem): Promise<string> {
  const template = await (id.startsWith('worksheet.') ? ofWorksheet(id) : expectedWordsOf(id));
  if (template === undefined) throw new Error(`no words for ${id}`);
  return fill(template, params ?? {}, units);
}

/** What a worksheet remarks on its result: `worksheet.pre-charge.shortLimit` is `shortLimit` of that worksheet's words. */
async function ofWorksheet(id: string): Promise<string | undefined> {
  const [, worksheet = '', remark = ''] = /^worksheet\.([^.]+)\.(.+)$/.exec(id) ?? [];
  return (await worksheetWordsOf[worksheet]?.())?.says[remark];
}
