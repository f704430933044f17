import { describe, expect, it } from 'vitest';
import { countTests } from '../../src/commands/test-tally.ts';

const report = (
  total: number,
  passed: number,
  files: { status: string; assertionResults: unknown[] }[] = [],
) => JSON.stringify({ numTotalTests: total, numPassedTests: passed, testResults: files });

describe('countTests', () => {
  it('counts what passed and what did not', () => {
    expect(countTests(report(10, 8), 1)).toEqual({ passed: 8, failed: 2 });
    expect(countTests(report(10, 10), 0)).toEqual({ passed: 10, failed: 0 });
  });

  it('counts a skipped test as failed, though Vitest ends well', () => {
    expect(countTests(report(10, 9), 0)).toEqual({ passed: 9, failed: 1 });
  });

  it('counts a file that could not be read', () => {
    const files = [{ status: 'failed', assertionResults: [] }];
    expect(countTests(report(5, 5, files), 1)).toEqual({ passed: 5, failed: 1 });
  });

  it('counts a run that fails outside any test', () => {
    expect(countTests(report(5, 5), 1)).toEqual({ passed: 5, failed: 1 });
  });

  it('counts a run without any test, and one without a report, as failed', () => {
    expect(countTests(report(0, 0), 0)).toEqual({ passed: 0, failed: 1 });
    expect(countTests('', 1)).toEqual({ passed: 0, failed: 1 });
  });
});
