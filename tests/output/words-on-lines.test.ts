import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { drawSheet } from '../../src/lib/output/draw-sheet.ts';
import type { PatternSheetInput } from '../../src/lib/output/pattern-input.ts';
import type { Group, Line, Text } from '../../src/lib/output/primitive.ts';
import { layPatternSheet } from '../../src/lib/output/sheet.ts';
import { flatten, parseDraft } from '../../src/lib/engine/index.ts';
import type { Path } from '../../src/lib/engine/index.ts';
import { dividedDraft } from './support/printed-draft.ts';
import { printedInput } from './support/printed-input.ts';
import { all, corners, meets, overlapping } from './support/text-box.ts';

const demo = parseDraft(JSON.parse(readFileSync('src/lib/intake/demo-draft.json', 'utf8')));

const inputs: readonly (readonly [string, PatternSheetInput])[] = [
	['with allowances', printedInput],
	['stitching only', { ...printedInput, lines: 'stitching only' }],
	['with a piece divided', { ...printedInput, draft: dividedDraft }],
	['the demo’s jacket', { ...printedInput, draft: demo, allowances: { default: 19.05 } }],
	['the demo’s jacket, stitching only', { ...printedInput, draft: demo, lines: 'stitching only' }]
];

test.each(inputs)('no word lies on a line or on another word, %s', (_, input) => {
	for (const group of drawSheet(layPatternSheet(input)) as Group[]) {
		const parts = all(group.parts);
		const texts = parts
			.filter((part): part is Text => part.kind === 'text')
			.map((text) => ({ text, box: corners(text) }));
		const drawn = parts.filter((part) => part.kind === 'line' || part.kind === 'dots') as (Line & { path: Path })[];
		for (const { text, box } of texts) {
			for (const { path, id } of drawn) {
				const points = flatten(path, 0.05);
				const on = points.slice(1).some((to, i) => meets(points[i], to, box));
				expect(on, `“${text.text}” on ${id} in ${group.id}`).toBe(false);
			}
		}
		expect(overlapping(texts.map(({ text }) => text)), group.id).toBeUndefined();
	}
});

test('nothing printed is smaller than 8.5 pt', () => {
	const texts = all(drawSheet(layPatternSheet(printedInput))).filter((part): part is Text => part.kind === 'text');
	for (const { text, size } of texts) expect(size / (25.4 / 72), text).toBeGreaterThanOrEqual(8.5 - 0.01);
});
