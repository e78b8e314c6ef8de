import { describe, expect, it } from 'vitest';
import { DraftError } from '../../../../src/lib/engine/draft/file/draft-error.ts';
import { formatName, formats, inLatestFormat, type Format } from '../../../../src/lib/engine/draft/file/formats.ts';

function refusal(file: unknown, known?: readonly Format[]): string {
	try {
		inLatestFormat(file, known);
	} catch (error) {
		if (error instanceof DraftError) return error.message;
		throw error;
	}
	return 'not refused';
}

describe('the registry of formats', () => {
	it('has every number from 1, and a step into each but the first', () => {
		expect(formats.map(({ number }) => number)).toEqual(formats.map((_, i) => i + 1));
		expect(formats.filter(({ fromBefore }) => fromBefore === undefined)).toEqual([formats[0]]);
		expect(formatName()).toBe('pin-to-paper/draft@1');
	});

	it('takes an old file through every step after its own number', () => {
		const steps: Format[] = [
			{ number: 1 },
			{ number: 2, fromBefore: (file) => ({ ...file, pieces: [...(file.pieces as string[]), 'two'] }) },
			{ number: 3, fromBefore: (file) => ({ ...file, pieces: [...(file.pieces as string[]), 'three'] }) }
		];
		const old = { format: 'pin-to-paper/draft@1', pieces: ['one'] };
		expect(inLatestFormat(old, steps)).toEqual({ format: 'pin-to-paper/draft@3', pieces: ['one', 'two', 'three'] });
		expect(inLatestFormat({ ...old, format: 'pin-to-paper/draft@2' }, steps).pieces).toEqual(['one', 'three']);
		expect(old).toEqual({ format: 'pin-to-paper/draft@1', pieces: ['one'] });
	});

	it('gives a file of the latest format as it is', () => {
		const file = { format: 'pin-to-paper/draft@1', name: 'x' };
		expect(inLatestFormat(file)).toBe(file);
	});

	it('refuses a later format by its number', () => {
		expect(refusal({ format: 'pin-to-paper/draft@7' })).toBe(
			'format: This file is of a later format, draft@7; this release reads draft@1.'
		);
	});

	it.each([
		[null, /is an object/],
		[[], /is an object/],
		['text', /is an object/],
		[{}, /missing.*"pin-to-paper\/draft@1"/],
		[{ format: 1 }, /should be "pin-to-paper\/draft@1"/],
		[{ format: 'pin-to-paper/draft' }, /should be .*not "pin-to-paper\/draft"/],
		[{ format: 'pin-to-paper/draft@0' }, /should be/],
		[{ format: 'pin-to-paper/draft@1.5' }, /should be/],
		[{ format: 'pin-to-paper/draft@01' }, /should be/],
		[{ format: 'other/draft@1' }, /should be/]
	])('refuses %j', (file, sentence) => {
		expect(refusal(file)).toMatch(sentence);
	});
});
