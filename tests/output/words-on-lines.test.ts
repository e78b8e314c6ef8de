import { readFileSync } from 'node:fs';
import * as fontkit from 'fontkit';
import { expect, test } from 'vitest';
import { drawSheet } from '../../src/lib/output/draw-sheet.ts';
import type { PatternSheetInput } from '../../src/lib/output/pattern-input.ts';
import type { Group, Line, Primitive, Text } from '../../src/lib/output/primitive.ts';
import { printedText } from '../../src/lib/output/printed-text.ts';
import { layPatternSheet } from '../../src/lib/output/sheet.ts';
import { flatten, parseDraft } from '../../src/lib/engine/index.ts';
import type { Path, Point } from '../../src/lib/engine/index.ts';
import { dividedDraft } from './support/printed-draft.ts';
import { fontFile, printedInput } from './support/printed-input.ts';

const faces = { regular: faceOf(400), bold: faceOf(600) };

function faceOf(weight: 400 | 600): fontkit.Font {
	return fontkit.create(Buffer.from(fontFile('latin', weight)));
}

/** The four corners of the ink of a line of text, from the font's own widths, on the sheet. */
function corners({ text, at, anchor, size, weight, turn = 0 }: Text): Point[] {
	const face = faces[weight];
	const em = size / face.unitsPerEm;
	const width = face.layout(printedText(text)).advanceWidth * em;
	const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
	const radians = (turn * Math.PI) / 180;
	const box: Point[] = [
		[left, -face.capHeight * em],
		[left + width, -face.capHeight * em],
		[left + width, 0],
		[left, 0]
	];
	return box.map(([u, v]) => [
		at[0] + u * Math.cos(radians) - v * Math.sin(radians),
		at[1] + u * Math.sin(radians) + v * Math.cos(radians)
	]);
}

function all(parts: readonly Primitive[]): Exclude<Primitive, Group>[] {
	return parts.flatMap((part) => (part.kind === 'group' ? all(part.parts) : [part]));
}

/** A straight piece of line meets a convex quadrilateral: no side of it keeps the two apart (separating axes). */
function meets(a: Point, b: Point, box: readonly Point[]): boolean {
	const axes: Point[] = [
		[box[1][0] - box[0][0], box[1][1] - box[0][1]],
		[box[2][0] - box[1][0], box[2][1] - box[1][1]],
		[b[1] - a[1], a[0] - b[0]]
	];
	return axes.every((axis) => {
		const along = (points: readonly Point[]) => points.map(([x, y]) => x * axis[0] + y * axis[1]);
		const [line, words] = [along([a, b]), along(box)];
		return Math.max(...line) >= Math.min(...words) && Math.max(...words) >= Math.min(...line);
	});
}

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
			for (const other of texts) {
				if (other.text === text) continue;
				const sides = other.box.map((from, i) => [from, other.box[(i + 1) % 4]] as const);
				const on = sides.some(([from, to]) => meets(from, to, box));
				expect(on, `“${text.text}” on “${other.text.text}” in ${group.id}`).toBe(false);
			}
		}
	}
});

test('nothing printed is smaller than 8.5 pt', () => {
	const texts = all(drawSheet(layPatternSheet(printedInput))).filter((part): part is Text => part.kind === 'text');
	for (const { text, size } of texts) expect(size / (25.4 / 72), text).toBeGreaterThanOrEqual(8.5 - 0.01);
});
