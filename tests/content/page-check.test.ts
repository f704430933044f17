import { describe, expect, it } from 'vitest';
import { checkPage } from '../../src/guide/page-check.ts';

const step = (inside: string, id = 'a') =>
  `<section class="plate" id="${id}" data-block="${id}">${inside}</section>`;
const hazards = '<div data-role="hazards"><div class="hazard">Hot.</div></div>';
const action = '<div data-role="do">Open it.</div>';
const outcomes = '<ul data-role="outcomes"><li data-outcome="done"><a href="#b">Done</a></li></ul>';
const sound = step(`<div data-role="state"></div>${hazards}${action}${outcomes}`) + step('<p>End</p>', 'b');
const messages = (html: string) => checkPage('page', html).map(({ id, message }) => `${id} ${message}`);

describe('the built page', () => {
  it('passes when hazards stand first and every link leads somewhere', () => {
    expect(messages(sound)).toEqual([]);
  });

  it.each([
    [
      'a hazard after the action',
      sound.replace(hazards + action, action + hazards),
      /a hazard stands after the action/,
    ],
    ['a hazard that folds away', sound.replace(hazards, `<details>${hazards}</details>`), /folded away/],
    ['a link to nowhere', sound.replace('#b', '#c'), /links to #c/],
    ['an outcome without a link', sound.replace('<a href="#b">Done</a>', 'Done'), /"done" leads nowhere/],
    ['an anchor that stands twice', sound + step('', 'b'), /b stands twice/],
    [
      'a style attribute',
      sound.replace('class="hazard"', 'class="hazard" style="color:red"'),
      /style attribute/,
    ],
    ['a page without steps', '<main></main>', /holds no steps/],
  ])('finds %s', (_name, html, message) => {
    expect(messages(html).join('\n')).toMatch(message);
  });
});
