import { expect, test } from "vitest";
import { countTests } from "../../scripts/count-tests.ts";

const report = (testResults: { status: string; assertionResults: unknown[] }[]): string =>
  JSON.stringify({ numPassedTests: 5, numFailedTests: 1, numPendingTests: 2, numTodoTests: 1, testResults });

// report, passed, failed, skipped
test.each([
  ["", 0, 0, 0],
  [report([{ status: "failed", assertionResults: [{}] }]), 5, 1, 3],
  [report([{ status: "failed", assertionResults: [] }]), 5, 2, 3], // a file that could not be loaded
  [report([{ status: "passed", assertionResults: [] }]), 5, 1, 3],
])("%s", (text, passed, failed, skipped) => {
  expect(countTests(text)).toEqual({ passed, failed, skipped });
});
