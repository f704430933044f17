import type { MessageRef } from '../../quantity/message.ts';

/** A worksheet's reason for having no answer, under the id by which its words are found. */
export const refusalOf = (worksheet: string, { id, params }: MessageRef): MessageRef => ({
  id: `worksheet.${worksheet}.${id.slice(id.lastIndexOf('.') + 1)}`,
  ...(params ? { params } : {}),
});
