/** How many tests passed, failed and were skipped, from the JSON report of Vitest; "" (no report) counts as none. */
export interface TestCount {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

interface Report {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  numTodoTests: number;
  testResults: { status: string; assertionResults: unknown[] }[];
}

export function countTests(text: string): TestCount {
  if (text === "") return { passed: 0, failed: 0, skipped: 0 };
  const report = JSON.parse(text) as Report;
  // A file that could not even be loaded has no tests, and counts as one that failed.
  const broken = report.testResults.filter((file) => file.status === "failed" && file.assertionResults.length === 0);
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + broken.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}
