import { expect, test } from 'vitest';
import { errorSentence } from '../../../src/lib/server/http/error-sentence.ts';

test('every status gets a sentence; only our own mistakes name the line in the log', () => {
	for (const status of [400, 403, 404, 405, 413, 415]) {
		expect(errorSentence(status, 'q7x2')).toMatch(/^[A-Z].*\.$/);
		expect(errorSentence(status, 'q7x2')).not.toContain('q7x2');
	}
	expect(errorSentence(500, 'q7x2')).toContain('q7x2');
});
