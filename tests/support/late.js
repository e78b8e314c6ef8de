/**
 * Answers as a bad network lets it: half of what is asked at once, the rest up to `most` milliseconds later, each by chance, so that
 * what was asked later may be answered first.
 * @param {import('../../src/start/serve.js').Handler} handler
 * @param {number} most 0: everything at once
 * @returns {import('../../src/start/serve.js').Handler}
 */
export function late(handler, most) {
	if (most === 0) return handler;
	return (request, response) => {
		setTimeout(() => handler(request, response), Math.random() < 0.5 ? 0 : Math.random() * most);
	};
}
