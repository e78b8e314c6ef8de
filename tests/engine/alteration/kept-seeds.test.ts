/** Cases in which a law once failed, by the seed and path that found them, with what was wrong. */
import { describe, expect, it } from 'vitest';
import { laws } from '../../support/laws.ts';
import { rigidLaws } from '../../support/rigid-laws.ts';

const kept = [
	{ law: '[MIRROR]', seed: 20785, path: '283', was: 'a notch in a corner inside an edge went with the line before it' },
	{ law: '[MIRROR]', seed: 20785, path: '119', was: 'a step of a fit led astray where handles hardly matter' },
	{ law: '[MIRROR]', seed: 20785, path: '1518', was: 'a line turned back on itself at the very end of a curve' },
	{ law: '[MIRROR]', seed: 20785, path: '7206', was: 'a line shorter than the turns beside it ran backwards' },
	{ law: '[MIRROR]', seed: 20785, path: '7818', was: 'a notch at a turn that was passed over went to one side' },
	{
		law: '[MIRROR]',
		seed: 20785,
		path: '772',
		was: 'a place a hair inside a mouth at an edge’s start was beyond the mouth'
	}
];

describe('a case that failed once', () => {
	it.each(kept)('$law, seed $seed, path $path: $was', ({ law: name, seed, path }) => {
		const found = [...laws, ...rigidLaws].filter((law) => law.name.startsWith(name));
		expect(found).toHaveLength(1);
		found[0].hold({ seed, path, numRuns: 1 });
	});
});
