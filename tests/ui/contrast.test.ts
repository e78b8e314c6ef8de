import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/*
 * Contrast by the formula of the Web Content Accessibility Guidelines 2.2 (W3C, 2023): relative luminance, and
 * (L1 + 0.05) / (L2 + 0.05); at least 4.5 for text, 3 for lines that say something.
 */
const css = readFileSync(new URL('../../src/lib/ui/look/tokens.css', import.meta.url), 'utf8');
const [lightText, dimText] = css.split(':root:has(.page-dim)');

function tokensOf(text: string): Record<string, string> {
	return Object.fromEntries(
		[...text.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, colour]) => [name, colour])
	);
}

const light = tokensOf(lightText);
const dim = { ...light, ...tokensOf(dimText) };

function luminance(colour: string): number {
	const [r, g, b] = [1, 3, 5].map((at) => {
		const c = parseInt(colour.slice(at, at + 2), 16) / 255;
		return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
	const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x);
	return (high + 0.05) / (low + 0.05);
}

describe.each([
	['light', light],
	['dim', dim]
])('%s', (_, tokens) => {
	it.each([
		['ink', 'page'],
		['ink-2', 'page'],
		['table-ink', 'table'],
		['table-ink', 'table-2'],
		['ink', 'slip'],
		['ink', 'allow'],
		['ink', 'paper'],
		['ink', 'calico'],
		['ink-2', 'cloth'],
		['brass-number', 'brass'],
		['page', 'ink']
	])('%s on %s can be read as text', (front, ground) => {
		expect(contrast(tokens[front], tokens[ground])).toBeGreaterThanOrEqual(4.5);
	});

	it.each([
		['red', 'cloth'],
		['red', 'allow'],
		['red', 'table'],
		['blue', 'cloth'],
		['blue', 'table'],
		['thread', 'cloth'],
		['thread', 'allow'],
		['rule-2', 'page'],
		['ink', 'cloth']
	])('a line in %s is seen on %s', (front, ground) => {
		expect(contrast(tokens[front], tokens[ground])).toBeGreaterThanOrEqual(3);
	});
});

it('words on the table are never red or blue, which are for lines only there', () => {
	expect(contrast(light.red, light.table)).toBeLessThan(4.5);
	expect(contrast(light.blue, light.table)).toBeLessThan(4.5);
	const drawing = readFileSync(new URL('../../src/lib/ui/look/drawing.css', import.meta.url), 'utf8');
	for (const rule of drawing.split('}').filter((part) => /word-|label|number/.test(part))) {
		expect(rule).not.toMatch(/fill: var\(--(red|blue)\)/);
	}
});
