import { expect, test } from 'vitest';
import { closingLine, playwrightCounts, stepCounts, vitestCounts } from '../../src/start/test-counts.js';

const unit = { numPassedTests: 10, numFailedTests: 0, numPendingTests: 1, numTodoTests: 0 };
const journeys = { stats: { expected: 4, unexpected: 0, flaky: 0, skipped: 0 } };

test('the closing line sums what the runners counted', () => {
	expect(
		closingLine([stepCounts(0), vitestCounts({ ...unit, numPendingTests: 0 }, 0), playwrightCounts(journeys, 0)])
	).toBe('14 passed, 0 failed');
	expect(closingLine([vitestCounts(unit, 0)])).toBe('10 passed, 0 failed, 1 skipped');
});

test('a step that failed counts as one failure', () => {
	expect(closingLine([stepCounts(2), vitestCounts({ ...unit, numPendingTests: 0 }, 0)])).toBe('10 passed, 1 failed');
});

test('a runner that failed without a failed test, left no report or ran no test is a failure all the same', () => {
	expect(vitestCounts(unit, 1).failed).toBe(1);
	expect(vitestCounts(undefined, 0).failed).toBe(1);
	expect(playwrightCounts({ stats: { expected: 0, unexpected: 0, flaky: 0, skipped: 3 } }, 0).failed).toBe(1);
});

test('a journey that needed a second try has failed', () => {
	expect(playwrightCounts({ stats: { ...journeys.stats, flaky: 2 } }, 0).failed).toBe(2);
});
