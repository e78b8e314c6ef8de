import { describe, expect, test } from 'vitest';
import { asAlterations, readAlteration } from '../../../../src/lib/ui/fitting/form/read-alteration.ts';
import { readShorthandLine } from '../../../../src/lib/ui/fitting/form/shorthand-line.ts';
import { alterationTitle } from '../../../../src/lib/ui/fitting/words/alteration.ts';
import { jacket } from '../drafts.ts';

describe('a line of shorthand becomes the form, and the form the alteration that was meant:', () => {
	test.each([
		['side R in 1/4 waist, 1/8 hip, 0 hem', 'Side seam, took in 1/4″ at the waist, right side only'],
		['side in fold 1/2 waist', 'Side seam, took in 1/4″ at the waist, both sides'],
		['let out side-back 1/4 hem both sides', 'Side-back seam, let out 1/4″ at the hem, both sides'],
		['side in 1/4 waist, out 1/8 hip', 'Side seam, took in 1/4″ at the waist, let out 1/8″ at the hip, both sides'],
		['centre back in 1/8 all along', 'Centre-back seam, took in 1/8″ all along'],
		['side forward 1/8 waist', 'Side seam, moved 1/8″ towards the front at the waist, both sides'],
		['side back 1/8 backward waist', 'Side-back seam, moved 1/8″ towards the back at the waist, both sides'],
		['front neck lower 3/8 front edge', 'Front neck, chalked 3/8″ lower at the front edge, both sides'],
		['front dart L wider 1/4', 'Front dart, made 1/4″ wider, to 9/16″, left side only'],
		['side in 6 mm waist', 'Side seam, took in about 1/4″ at the waist, both sides']
	])('%s', (line, sentence) => {
		const read = readShorthandLine(jacket, line, 'in');
		if ('problem' in read) throw new Error(read.problem);
		const form = readAlteration(jacket, read.typed, 'in');
		if ('problems' in form) throw new Error(JSON.stringify(form.problems));
		const [intent] = asAlterations(form.read.intents);
		expect(alterationTitle(jacket, intent, 'in')).toBe(sentence.replace('about ', ''));
	});

	test('ends that are not named stay where they are, and an act without amounts waits for them', () => {
		const read = readShorthandLine(jacket, 'side in 1/4 waist', 'in');
		expect(read).toEqual({
			typed: {
				act: 'took-in',
				seam: 'side',
				measured: 'one-layer',
				places: 'end:start level:waist end:finish',
				'amount.end:start': '0',
				'amount.level:waist': '1/4',
				'amount.end:finish': '0'
			}
		});
		expect(readShorthandLine(jacket, 'side in waist', 'in')).toEqual({
			typed: { act: 'took-in', seam: 'side', measured: 'one-layer', places: 'level:waist' }
		});
	});
});

test.each([
	['sdie in 1/4 waist', 'No seam, edge or dart of this draft is named'],
	['side in 1/4 knee', 'Places on this seam: '],
	['side 1/4 waist', 'In or out'],
	['side in 1/0 waist', '1/0'],
	['side in 1/4', 'Where?'],
	['', 'Write what was pinned']
])('%j is answered with what would be right', (line, part) => {
	expect(readShorthandLine(jacket, line, 'in')).toMatchObject({ problem: expect.stringContaining(part) });
});
