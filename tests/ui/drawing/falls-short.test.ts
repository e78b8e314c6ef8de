import { expect, test } from 'vitest';
import { parsePathData } from '../../../src/lib/engine/index.ts';
import type { Path } from '../../../src/lib/engine/index.ts';
import { fallsShort } from '../../../src/lib/ui/drawing/falls-short.ts';
import { areaOf, cornersOf, isIn } from './read-path.ts';

/** A closed rectangle, clockwise as seen. */
function box(left: number, top: number, right: number, bottom: number): Path {
	const read = parsePathData(
		`M ${left} ${top} L ${right} ${top} L ${right} ${bottom} L ${left} ${bottom} L ${left} ${top}`
	);
	if ('problem' in read) throw new Error(read.problem);
	return read.path;
}

const cloth = box(0, 0, 200, 300);
const areas = (wanted: Path) =>
	(fallsShort(cloth, wanted)?.area ?? '')
		.split(/(?=M)/)
		.filter((part) => part !== '')
		.map((part) => areaOf(cornersOf(part.replace('Z', ''))));

test('a line wanted inside the cloth, or on its edge, falls short nowhere', () => {
	expect(fallsShort(cloth, box(10, 10, 190, 290))).toBeUndefined();
	expect(fallsShort(cloth, cloth)).toBeUndefined();
});

test('what is wanted beyond one edge is crossed out: 20 px over a length of 200', () => {
	const [area, ...others] = areas(box(10, 50, 220, 250));
	expect(others).toEqual([]);
	// The places where the line leaves the cloth are found to within a step of 6.5 px.
	expect(Math.abs(area - 20 * 200)).toBeLessThan(2 * 6.5 * 20);
});

test('what is wanted round a corner is crossed out in one, wherever the outlines begin', () => {
	for (const wanted of [box(-15, -15, 150, 200), box(50, 50, 230, 320)]) {
		const found = areas(wanted);
		expect(found).toHaveLength(1);
	}
	const [area] = areas(box(-15, -15, 150, 200));
	expect(Math.abs(area - (165 * 215 - 150 * 200))).toBeLessThan(2 * 6.5 * 15 + 15 * 15);
});

test('two places apart are crossed out apart, and every cross lies off the cloth', () => {
	const wanted = box(-12, 100, 212, 150);
	expect(areas(wanted)).toHaveLength(2);
	const corners = cornersOf('M0 0L200 0L200 300L0 300');
	for (const [x, y] of cornersOf(fallsShort(cloth, wanted)!.strokes)) {
		const inwards = isIn([x, y], corners) ? Math.min(x, 200 - x, y, 300 - y) : 0;
		expect(inwards).toBeLessThan(0.01);
	}
});
