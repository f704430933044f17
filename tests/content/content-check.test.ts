import { describe, expect, it } from 'vitest';
import { type ContentInput, checkContent } from '../../src/guide/content-check.ts';
import type { Machine } from '../../src/guide/vocabulary.ts';
import { causeWords, fittingInput, machines } from './fixture.ts';

type Change = (input: ContentInput) => ContentInput;

const withWords =
  (id: string, from: string | RegExp, to: string): Change =>
  (input) => {
    const file = input.files.find((each) => each.id === id)!;
    const source = file.source.replace(from, to);
    if (source === file.source) throw new Error(`the fixture has no ${from} to change`);
    return { ...input, files: input.files.map((each) => (each === file ? { ...file, source } : each)) };
  };

const withStep =
  (stepId: string, change: object): Change =>
  (input) => {
    const guide = {
      ...machines.guide,
      steps: { ...machines.guide.steps, [stepId]: { ...machines.guide.steps[stepId], ...change } },
    } as Machine;
    return { ...input, guides: [guide] };
  };

/** Each change to the fitting fixture, and what the one finding must name. */
const changes: readonly [name: string, change: Change, id: string, message: RegExp][] = [
  [
    'a step without words',
    withWords('small-guide', /<Step[^>]*"ready"[\s\S]*?<\/Step>/, ''),
    'ready',
    /has no words/,
  ],
  [
    'words without a step',
    withWords('small-guide', /$/, '<Step of="small-guide" id="ghost" title="Ghost"></Step>'),
    'ghost',
    /no such step/,
  ],
  [
    'a step of another machine',
    withWords('make-safe', 'of="make-safe" id="safe"', 'of="other" id="safe"'),
    'safe',
    /belongs to/,
  ],
  [
    'a title that is only the id',
    withWords('small-guide', 'title="Ready?"', 'title="ready"'),
    'ready',
    /its id for a title/,
  ],
  ['a step without a title', withWords('small-guide', ' title="Ready?"', ''), 'ready', /no title/],
  [
    'an outcome without words',
    withWords('small-guide', /<Outcome id="low".*\n/, ''),
    'volts',
    /outcome "low" has no words/,
  ],
  [
    'words for no outcome',
    withWords('small-guide', 'id="low" label', 'id="lo" label'),
    'volts',
    /outcome "lo"/,
  ],
  ['an outcome without a label', withWords('small-guide', ' label="Low"', ''), 'volts', /"low" has no label/],
  [
    'a reading without words',
    withWords('small-guide', 'Reading id="p1"', 'Reading id="p2"'),
    'volts',
    /reading "p1"/,
  ],
  [
    'an item without words',
    withWords('small-guide', /<Item id="area-closed">.*\n/, ''),
    'away',
    /item "area-closed"/,
  ],
  ['an act without instruction', withWords('make-safe', /<Do>[\s\S]*?<\/Do>/, ''), 'loads-off', /no <Do>/],
  [
    'two steps in one line',
    withWords('make-safe', 'Switch every load off.', 'Switch it off, then wait.'),
    'loads-off',
    /more than one action/,
  ],
  ['a step left open', withWords('small-guide', /<\/Step>\n$/, ''), 'line 36', /"away"> is not closed/],
  [
    'an unknown hazard',
    withStep('volts', { hazards: ['live-metering', 'ghosts'] }),
    'volts',
    /hazard "ghosts" has no words/,
  ],
  [
    'hazards in the wrong order',
    withStep('volts', { hazards: ['live-metering', 'pv-arc'] }),
    'volts',
    /most severe first/,
  ],
  ['a live reading without a hazard', withStep('volts', { hazards: [] }), 'volts', /names no hazard/],
  ['an unknown tool', withStep('volts', { tools: ['wand'] }), 'volts', /tool "wand"/],
  ['an unknown state', withStep('volts', { state: 'limbo' }), 'volts', /state "limbo"/],
  [
    'a cause without a page',
    withStep('verdict', { causes: ['small-cause', 'other-cause'] }),
    'other-cause',
    /has no page/,
  ],
  [
    'a cause that no verdict names',
    (input) => ({
      ...input,
      files: [
        ...input.files,
        {
          path: 'causes/x.mdx',
          kind: 'cause',
          id: 'x',
          source: causeWords,
          sources: [],
          guide: 'small-guide',
        },
      ],
    }),
    'x',
    /no verdict names this cause/,
  ],
  [
    'a cause without its re-test',
    withWords('small-cause', /## Re-test\n/, ''),
    'small-cause',
    /its sections must be/,
  ],
  ['a source that is not listed', (input) => ({ ...input, sources: [] }), 'a-book', /sources\.yaml/],
  [
    'a source cited by a worksheet',
    (input) => ({ ...input, cited: [{ where: 'idle', id: 'no-book' }] }),
    'no-book',
    /sources\.yaml/,
  ],
  [
    'a signal word beyond its severity',
    (input) => ({ ...input, signalWords: { ...input.signalWords, 'pv-arc': 'warning' } }),
    'pv-arc',
    /its severity asks for "warning"/,
  ],
  ['something unfinished', withWords('small-cause', 'Mend it.', 'TODO'), 'line 11', /unfinished/],
  ['a model number', withWords('small-cause', 'Mend it.', 'Fit an XQ-4500.'), 'line 11', /model number/],
  [
    'a maker’s fault code',
    withWords('small-cause', 'Mend it.', 'It shows fault code 61.'),
    'line 11',
    /fault code/,
  ],
];

describe('words and machines', () => {
  it('finds nothing in a fixture that fits', () => {
    expect(checkContent(fittingInput())).toEqual([]);
  });

  it.each(changes)('finds %s', (_name, change, id, message) => {
    const findings = checkContent(change(fittingInput()));
    expect(findings).toContainEqual({
      file: expect.any(String),
      id,
      message: expect.stringMatching(message),
    });
    expect(new Set(findings.map((finding) => finding.id)), JSON.stringify(findings)).toEqual(new Set([id]));
  });

  it('lets standards and test points stand', () => {
    const input = withWords(
      'small-cause',
      'Mend it.',
      'See IEC 62446-1, NFPA 70 and UL-1741. Read P1, V12 and S2.',
    )(fittingInput());
    expect(checkContent(input)).toEqual([]);
  });
});
