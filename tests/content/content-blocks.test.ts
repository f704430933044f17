import { describe, expect, it } from 'vitest';
import { readBlocks } from '../../src/guide/content-blocks.ts';

describe('reading step blocks', () => {
  it('reads parts, their attributes and their lines', () => {
    const { blocks, problems } = readBlocks(
      '\n<Step of="g" id="a" title="A">\n<Do>\n1. Look.\n</Do>\n<Outcome id="ok" label="Yes" />\n</Step>\n',
    );
    expect(problems).toEqual([]);
    expect(blocks).toMatchObject([{ of: 'g', id: 'a', title: 'A', line: 2 }]);
    expect(blocks[0]!.parts).toEqual([
      { tag: 'Do', attributes: {}, text: '1. Look.', line: 3 },
      { tag: 'Outcome', attributes: { id: 'ok', label: 'Yes' }, text: '', line: 6 },
    ]);
  });

  it('keeps a tag inside a part with that part', () => {
    const { blocks } = readBlocks(
      '<Step of="g" id="a" title="A"><Do>Look at the <Term id="voc">volts</Term>.</Do></Step>',
    );
    expect(blocks[0]!.parts).toHaveLength(1);
    expect(blocks[0]!.parts[0]!.text).toContain('<Term id="voc">volts</Term>');
  });

  it('gives the words outside any part', () => {
    expect(
      readBlocks('<Step of="g" id="a" title="A">So it is.<Item id="x">X</Item> Well.</Step>').blocks[0]!
        .stray,
    ).toBe('So it is. Well.');
  });

  it('passes over comments', () => {
    expect(readBlocks('{/* <Step of="g" id="a" title="A"> */}').blocks).toEqual([]);
  });

  it.each([
    ['a step left open', '<Step of="g" id="a" title="A">', 'is not closed'],
    [
      'a step in a step',
      '<Step of="g" id="a" title="A"><Step of="g" id="b" title="B"></Step>',
      'not closed before the next',
    ],
    ['a part left open', '<Step of="g" id="a" title="A"><Do>x</Step>', '<Do> is not closed'],
    ['a part never opened', '<Step of="g" id="a" title="A"></Do></Step>', '</Do> without <Do>'],
  ])('complains of %s', (_name, source, message) => {
    expect(readBlocks(source).problems).toContainEqual({
      line: 1,
      message: expect.stringContaining(message),
    });
  });
});
