import { expect, it } from 'vitest';
import { saidInTwo } from '../../../src/lib/ui/garment/said-in-two.ts';

it.each([
	[
		'Under-arm seam: the under-arm is 1/16″ longer than the side back.',
		'Under-arm seam',
		'the under-arm is 1/16″ longer than the side back.'
	],
	[
		'The waist is smaller than the body. Lace no tighter than the wearer can breathe in.',
		'The waist is smaller than the body.',
		'Lace no tighter than the wearer can breathe in.'
	]
])('“%s” has a heading and what follows it', (sentence, head, rest) => {
	expect(saidInTwo(sentence, 'in')).toEqual({ head, rest });
});

it('a single sentence is all heading', () => {
	const sentence = 'The two legs of the front dart differ by 1/8″.';
	expect(saidInTwo(sentence, 'in')).toEqual({ head: sentence });
});

it('nothing is lost, whatever the sentence', () => {
	for (const sentence of ['', 'Short', 'A: b: c. D? E!', 'At the waist the pieces measure 13 1/4″: half. Was it?']) {
		const { head, rest = '' } = saidInTwo(sentence, 'in');
		const letters = (text: string) => text.replace(/[:\s]/g, '');
		expect(letters(head + rest)).toBe(letters(sentence));
	}
});
