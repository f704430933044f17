/**
 * A sentence for a person, named and not yet worded: rooms without a page give these, and `src/words/` turns
 * them into a language. Ids read `room.what`, such as `quantity.notANumber`.
 */
export interface MessageRef {
  id: string;
  params?: Record<string, string | number>;
}
