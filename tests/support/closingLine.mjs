/**
 * How the closing line of `npm test` is counted. Its rules, quoted by the tests:
 * C1 Every test that ran counts once, as passed or failed; a flaky one failed.
 * C2 A test file that could not be loaded is one failure.
 * C3 A step that broke without a failed test is one failure.
 * C4 A test step whose report is missing or can't be read is one failure.
 * C5 A test step in which no test ran is one failure.
 */

/**
 * @typedef {{ passed: number, failed: number }} Counts
 * @typedef {{ broke: boolean, counts?: Counts | undefined, tests: boolean }} Outcome
 *   broke: the step ended with an error; tests: it was to run tests; counts: from its report, undefined when there is none.
 */

/**
 * @param {{ testResults: { status: string, assertionResults: { status: string }[] }[] }} report Vitest's JSON report.
 * @returns {Counts}
 */
export function countVitest(report) {
  let passed = 0;
  let failed = 0;
  for (const { status, assertionResults } of report.testResults) {
    const failedHere = assertionResults.filter((test) => test.status === 'failed').length;
    passed += assertionResults.filter((test) => test.status === 'passed').length;
    failed += failedHere === 0 && status === 'failed' ? 1 : failedHere;
  }
  return { passed, failed };
}

/**
 * @param {{ stats: { expected: number, unexpected: number, flaky: number } }} report Playwright's JSON report.
 * @returns {Counts}
 */
export function countPlaywright({ stats }) {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky };
}

/**
 * @param {Outcome} outcome
 * @returns {Counts}
 */
export function countOutcome({ broke, counts, tests }) {
  if (!tests) return { passed: 0, failed: broke ? 1 : 0 };
  if (counts === undefined) return { passed: 0, failed: 1 };
  const { passed, failed } = counts;
  const brokeUnseen = failed === 0 && (broke || passed === 0);
  return { passed, failed: brokeUnseen ? 1 : failed };
}

/**
 * @param {Outcome[]} outcomes All steps that were to run.
 * @returns {Counts}
 */
export function addUp(outcomes) {
  return outcomes
    .map(countOutcome)
    .reduce(
      (sum, next) => ({ passed: sum.passed + next.passed, failed: sum.failed + next.failed }),
      { passed: 0, failed: 0 },
    );
}

/** @param {Counts} counts */
export const closingLine = ({ passed, failed }) => `${passed} passed, ${failed} failed`;
