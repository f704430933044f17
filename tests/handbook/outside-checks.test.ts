import { afterAll, describe, expect, it } from 'vitest';
import { worksheets } from '../../src/worksheets/index.ts';
import { outsideChecks } from './checks/index.ts';
import { commonPractice } from './common-practice.ts';
import { allowed } from './tolerances.ts';

const done = new Set<string>();

for (const worksheet of worksheets) {
  describe(worksheet.id, () => {
    for (const check of outsideChecks.filter((each) => each.worksheet === worksheet.id)) {
      it(`${check.id}: ${check.what} (${check.source}; ${check.origin})`, () => {
        const worked = check.worked();
        done.add(check.id);
        expect(worked, 'no value was worked out').toBeTypeOf('number');
        const limit = allowed(check.published, check.tolerance);
        expect(
          Math.abs(worked! - check.published),
          `published ${check.published}, worked ${worked}, allowed ± ${limit} (${check.tolerance})`,
        ).toBeLessThanOrEqual(limit);
      });
    }
  });
}

describe('the table of outside checks', () => {
  it('names every case once', () => {
    const ids = outsideChecks.map((check) => check.id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  it('names only worksheets that exist', () => {
    const known = worksheets.map((worksheet) => worksheet.id);
    expect(
      outsideChecks.filter((check) => !known.includes(check.worksheet)).map((check) => check.id),
    ).toEqual([]);
  });

  const held = worksheets.map(({ id }) => id).filter((id) => commonPractice[id] === undefined);
  it.each(held)('holds %s to a published source', (id) => {
    const published = outsideChecks.filter((check) => check.worksheet === id && check.origin === 'published');
    expect(new Set(published.map((check) => check.source)).size).toBeGreaterThan(0);
  });

  afterAll(() => {
    const skipped = outsideChecks.filter((check) => !done.has(check.id)).map((check) => check.id);
    if (skipped.length > 0) throw new Error(`outside checks that never ran: ${skipped.join(', ')}`);
  });
});
