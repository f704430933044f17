import type { MessageRef } from '../quantity/message.ts';

/** What a calculation gives: an answer, or the reason there is none. Never NaN. */
export type Result<T> = { readonly ok: true; readonly out: T } | Refusal;

export interface Refusal {
  readonly ok: false;
  /** Numbers in its params are inside units; the words of the message say which kind each one is. */
  readonly reason: MessageRef;
}

export const give = <T>(out: T): Result<T> => ({ ok: true, out });

export const refuse = (id: string, params?: MessageRef['params']): Refusal => ({
  ok: false,
  reason: params === undefined ? { id } : { id, params },
});
