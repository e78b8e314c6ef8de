import * as fontkit from 'fontkit';
import type { Point } from '../../../src/lib/engine/index.ts';
import type { Group, Primitive, Text } from '../../../src/lib/output/primitive.ts';
import { printedText } from '../../../src/lib/output/printed-text.ts';
import { fontFile } from './printed-input.ts';

const faces = { regular: faceOf(400), bold: faceOf(600) };

function faceOf(weight: 400 | 600): fontkit.Font {
	return fontkit.create(Buffer.from(fontFile('latin', weight)));
}

/** The four corners of the ink of a line of text, from the font's own widths, on the sheet. */
export function corners({ text, at, anchor, size, weight, turn = 0 }: Text): Point[] {
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

export function all(parts: readonly Primitive[]): Exclude<Primitive, Group>[] {
	return parts.flatMap((part) => (part.kind === 'group' ? all(part.parts) : [part]));
}

/** A straight piece of line meets a convex quadrilateral: no side of it keeps the two apart (separating axes). */
export function meets(a: Point, b: Point, box: readonly Point[]): boolean {
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

/** Two lines of text whose ink comes into one another, of a list; nothing if all lie apart. */
export function overlapping(texts: readonly Text[]): readonly [string, string] | undefined {
	const boxes = texts.map((text) => ({ text: text.text, box: corners(text) }));
	for (const [i, one] of boxes.entries()) {
		for (const other of boxes.slice(i + 1)) {
			const sides = other.box.map((from, k) => [from, other.box[(k + 1) % 4]] as const);
			if (sides.some(([from, to]) => meets(from, to, one.box))) return [one.text, other.text];
		}
	}
	return undefined;
}
