import type { MessageRef } from '../../quantity/message.ts';
import { visitMessages } from '../../words/en/visit.ts';

/** The sentence of a message about a visit. */
export function sayVisit({ id, params }: MessageRef): string {
  const words = visitMessages[id];
  if (!words) throw new Error(`no words for ${id}`);
  return words(params ?? {});
}

const dayAndTime = new Intl.DateTimeFormat('en', { dateStyle: 'medium', timeStyle: 'short' });
const timeOfDay = new Intl.DateTimeFormat('en', { timeStyle: 'medium', hourCycle: 'h23' });

/** Day and time as people at this phone read them. */
export const whenText = (iso: string): string => dayAndTime.format(new Date(iso));
export const clockText = (iso: string): string => timeOfDay.format(new Date(iso));
