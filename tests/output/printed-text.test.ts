import * as fontkit from 'fontkit';
import { describe, expect, test } from 'vitest';
import { initials } from '../../src/lib/output/initials.ts';
import { nameId } from '../../src/lib/output/name-id.ts';
import { printedDate, startOfDay } from '../../src/lib/output/printed-date.ts';
import { printedText } from '../../src/lib/output/printed-text.ts';
import { textWidth, wrappedText } from '../../src/lib/output/text-width.ts';
import { fontFile } from './support/printed-input.ts';

const face = (weight: 400 | 600) => fontkit.create(Buffer.from(fontFile('latin', weight)));
const faces = { regular: face(400), bold: face(600) };

describe('fractions', () => {
	test.each([
		['3/8″', '3⁄8″'],
		['1 1/4 in', '1\u20091⁄4 in'],
		['corset at 25 3/4', 'corset at 25\u20093⁄4'],
		['11/12/2026', '11/12/2026'],
		['and/or', 'and/or'],
		['toile 2', 'toile 2']
	])('%s is printed %s', (typed, printed) => {
		expect(printedText(typed)).toBe(printed);
	});

	test('the font sets the fraction alone in small figures, and the whole number before it in full', () => {
		const glyphs = faces.regular.layout(printedText('1 3/8″')).glyphs.map(({ name }) => name);
		expect(glyphs.slice(0, 1)).toEqual(['one']);
		expect(glyphs.slice(2, 5)).toEqual(['three.numr', 'fraction', 'eight.dnom']);
	});

	test('printing what is printed changes nothing', () => {
		for (const text of ['1 1/4 in', ' a\u0000b ', 'e\u0301'])
			expect(printedText(printedText(text))).toBe(printedText(text));
	});
});

describe('the width of a line of text', () => {
	const lines = [
		'Side back',
		'cut 1 on the fold',
		'version 12',
		'waist line',
		'Under-arm',
		'Worn under it: corset at 25 3/4″'
	];

	test.each(lines.flatMap((text) => [['regular', text] as const, ['bold', text] as const]))(
		'in %s, “%s” is no less than the font takes, and no more than a tenth over',
		(weight, text) => {
			const font = faces[weight];
			const taken = (font.layout(printedText(text)).advanceWidth / font.unitsPerEm) * 5;
			expect(textWidth(text, 5, weight)).toBeGreaterThanOrEqual(taken * 0.995);
			expect(textWidth(text, 5, weight)).toBeLessThanOrEqual(taken * 1.12);
		}
	);

	test('wrapped lines keep to the width and hold all the words in order', () => {
		const text = 'Lining: the structural layer that the fashion fabric is mounted on, not a loose lining.';
		const wrapped = wrappedText(text, 90, 5.5, 'regular');
		expect(wrapped.length).toBeGreaterThan(1);
		for (const line of wrapped) expect(textWidth(line, 5.5, 'regular')).toBeLessThanOrEqual(90);
		expect(wrapped.join(' ')).toBe(text);
	});
});

test.each([
	['Ines Varrow', 'I. V.'],
	['I. V.', 'I. V.'],
	['  éva  de la Tour', 'É. D. L. T.'],
	['№ 14', ''],
	['', '']
])('of the name “%s” only “%s” is printed', (name, printed) => {
	expect(initials(name)).toBe(printed);
});

describe('days', () => {
	test('are printed in words and begin at midnight, universal time', () => {
		expect(printedDate('2026-03-11')).toBe('11 March 2026');
		expect(startOfDay('2026-03-11').getTime()).toBe(Date.UTC(2026, 2, 11));
	});

	test.each(['11.3.2026', '2026-02-30', '2026-13-01', ''])('%s is none', (day) => {
		expect(() => printedDate(day)).toThrow(/day/);
	});
});

test('different names never get the same id, and ids hold only what XML and PDF names may', () => {
	const names = [
		'front/side',
		'front@left/side',
		'front/left-side',
		'front/left_side',
		'front/left.side',
		'front/left side',
		'front/Ä'
	];
	const ids = names.map((name) => nameId('edge', name));
	expect(new Set(ids).size).toBe(ids.length);
	for (const id of ids) expect(id).toMatch(/^[a-z][\w.-]*$/);
	expect(ids[1]).toBe('edge.front.left.side');
});
