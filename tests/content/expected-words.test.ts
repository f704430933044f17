import { expect, test } from 'vitest';
import { expectedWords } from '../../src/words/en/expected.ts';
import { expectedWordsOf } from '../../src/words/en/expected-of.ts';

test('the browser finds the words of every expectation where it looks for them', async () => {
  for (const [id, words] of Object.entries(expectedWords))
    expect([id, await expectedWordsOf(id)]).toEqual([id, words]);
});
