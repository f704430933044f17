/** How many checks of a stage were good and how many were not. */
export interface Tally {
  passed: number;
  failed: number;
}

/** The part of Vitest's JSON report that is read. */
interface Report {
  numTotalTests: number;
  numPassedTests: number;
  testResults: { status: string; assertionResults: unknown[] }[];
}

/**
 * Count the tests of a Vitest report. A test that was skipped proves nothing and counts as failed; so does a file that
 * could not be read at all, a run that fails outside any test, and a report that is missing or empty.
 */
export function countTests(report: string, exitCode: number): Tally {
  let read: Report;
  try {
    read = JSON.parse(report) as Report;
  } catch {
    return { passed: 0, failed: 1 };
  }
  const passed = read.numPassedTests;
  const broken = read.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  ).length;
  const failed = read.numTotalTests - passed + broken;
  const lost = failed === 0 && (exitCode !== 0 || passed === 0);
  return { passed, failed: lost ? 1 : failed };
}
