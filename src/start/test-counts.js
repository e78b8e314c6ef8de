/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Counts tests of one step of `npm test`
 * @typedef {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number }} VitestReport
 * @typedef {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number } }} PlaywrightReport
 */

/**
 * A step that counts no tests: nothing when it went well, one failure when it did not.
 * @param {number} exitCode
 * @returns {Counts}
 */
export const stepCounts = (exitCode) => ({ passed: 0, failed: exitCode === 0 ? 0 : 1, skipped: 0 });

/**
 * A runner that failed without a failed test (a file that does not load, no report at all, no test found) counts as
 * one failure, so that the closing line never says 0 failed of a run that failed.
 * @param {Counts} counts
 * @param {number} exitCode
 * @returns {Counts}
 */
function honest(counts, exitCode) {
	const wrong = exitCode !== 0 || counts.passed + counts.failed === 0;
	return wrong && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
}

/**
 * @param {VitestReport | undefined} report Vitest's JSON report
 * @param {number} exitCode
 * @returns {Counts}
 */
export function vitestCounts(report, exitCode) {
	if (!report) return stepCounts(exitCode || 1);
	const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = report;
	return honest({ passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests + numTodoTests }, exitCode);
}

/**
 * A journey that passed only at a second try has failed.
 * @param {PlaywrightReport | undefined} report Playwright's JSON report
 * @param {number} exitCode
 * @returns {Counts}
 */
export function playwrightCounts(report, exitCode) {
	if (!report) return stepCounts(exitCode || 1);
	const { expected, unexpected, flaky, skipped } = report.stats;
	return honest({ passed: expected, failed: unexpected + flaky, skipped }, exitCode);
}

/**
 * The last line of `npm test`: `12 passed, 0 failed`, with `, 1 skipped` when some were.
 * @param {Counts[]} steps
 * @returns {string}
 */
export function closingLine(steps) {
	/** @param {keyof Counts} key */
	const sum = (key) => steps.reduce((total, counts) => total + counts[key], 0);
	const skipped = sum('skipped');
	return `${sum('passed')} passed, ${sum('failed')} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
