/** The part of vitest's JSON report that is counted. */
export interface TestReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly TestFile[];
}

interface TestFile {
  readonly status: string;
  readonly assertionResults: readonly { readonly status: string }[];
}

export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

/** Counts a report. A file that could not be loaded holds no tests, so it counts as one failure. */
export function countReport(report: TestReport): Count {
  const fallen = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((each) => each.status === 'failed'),
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + fallen.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** A run with a non-zero exit code never counts as green, whatever its report says. */
export function countEnding(count: Count, exitCode: number): Count {
  const green = count.failed === 0;
  return exitCode !== 0 && green ? { ...count, failed: 1 } : count;
}

export function closingLine({ passed, failed, skipped }: Count): string {
  const line = `${passed} passed, ${failed} failed`;
  return skipped > 0 ? `${line}, ${skipped} skipped` : line;
}
