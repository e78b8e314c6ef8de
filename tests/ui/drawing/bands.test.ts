import { describe, expect, it } from 'vitest';
import { layTable } from '../../../src/lib/ui/drawing/lay-table.ts';
import { rectangle } from './rectangle.ts';
import { areaOf, boxOfText, cornersOf, distanceTo, partsOf } from './read-path.ts';
import type { Xy } from './read-path.ts';
import { jacket } from '../jacket.ts';
import { carry } from '../../../src/lib/engine/review/carry-and-check.ts';

const one = (before: Parameters<typeof rectangle>[0], after: Parameters<typeof rectangle>[0]) => {
	const scene = layTable(rectangle(after), { unit: 'in', before: rectangle(before) });
	return { scene, piece: scene.pieces[0], scale: scene.scale };
};

describe('a band between the line before and the line after', () => {
	it('is as large as the cloth that was added', () => {
		const { piece, scale } = one({}, { right: 12 });
		expect(piece.bands).toHaveLength(1);
		const [band] = piece.bands;
		expect(band).toMatchObject({ edge: 'front/right', way: 'out' });
		// Coordinates are written to a hundredth of a px.
		expect(areaOf(cornersOf(band.area)) / (200 * 12 * scale * scale)).toBeCloseTo(1, 2);
	});

	it('is as large as the cloth that was taken away', () => {
		const { piece, scale } = one({ right: 8 }, {});
		expect(piece.bands.map(({ way }) => way)).toEqual(['in']);
		// Coordinates are written to a hundredth of a px.
		expect(areaOf(cornersOf(piece.bands[0].area)) / (200 * 8 * scale * scale)).toBeCloseTo(1, 2);
	});

	it('is hatched by a stroke every 4.6 px, each running 2 px past both lines', () => {
		const { piece, scale } = one({ right: 8 }, {});
		const [band] = piece.bands;
		const [newX, oldX] = [boxOfText(band.area).left, boxOfText(band.area).right];
		const strokes = partsOf(band.strokes, 1000);
		expect(strokes).toHaveLength(band.count);
		expect(Math.abs(band.count - (200 * scale) / 4.6)).toBeLessThanOrEqual(2);
		for (const stroke of strokes) {
			const xs = stroke.map(([x]) => x);
			expect(Math.min(...xs)).toBeLessThan(newX - 1.5);
			expect(Math.max(...xs)).toBeGreaterThan(oldX + 1.5);
			// As the hatch is drawn, slantwise: 2 px along the stroke are a little less straight across.
			expect(Math.min(...xs)).toBeGreaterThan(newX - 2.05);
			expect(Math.max(...xs)).toBeLessThan(oldX + 2.05);
		}
	});

	it('is caught by one zigzag with a turn every 4.6 px, on the two lines by turns', () => {
		const { piece, scale } = one({}, { right: 12 });
		const [band] = piece.bands;
		const { left, right } = boxOfText(band.area);
		expect(band.strokes.match(/M/g)).toHaveLength(1);
		const turns = cornersOf(band.strokes);
		expect(turns).toHaveLength(band.count);
		expect(Math.abs(band.count - (200 * scale) / 4.6)).toBeLessThanOrEqual(2);
		turns.forEach(([x, y], i) => {
			expect(x).toBeCloseTo(i % 2 === 0 ? left : right, 1);
			if (i > 0) expect(y - turns[i - 1][1]).toBeCloseTo(4.6, 1);
		});
	});

	it('is not drawn where nothing moved', () => {
		const { piece } = one({}, {});
		expect(piece.bands).toEqual([]);
		expect(piece.after).toBe('');
		expect(piece.before).toBe('');
	});
});

describe('a seam of true curves, let out above and below and taken in at the waist', () => {
	const [out, taken] = [8, -5];
	const { draft, unplaced } = carry(jacket, [
		{
			id: 'a1',
			kind: 'seam',
			on: 'both',
			seam: 'side-back',
			pins: [
				{ at: { level: 'bust' }, a: out, b: out },
				{ at: { level: 'waist' }, a: taken, b: taken },
				{ at: { end: 'finish' }, a: out, b: out }
			]
		}
	] as never);
	const scene = layTable(draft, { unit: 'in', before: jacket });

	it('has a band for each way, in the order of the seam', () => {
		expect(unplaced).toEqual([]);
		const back = scene.pieces.find(({ id }) => id === 'back')!;
		expect(back.bands.filter(({ edge }) => edge === 'back/side-back').map(({ way }) => way)).toEqual([
			'out',
			'in',
			'out'
		]);
	});

	it('has its bands between the lines: every point of their rims lies on one of the two, but for the ends', () => {
		const plain = layTable(jacket, { unit: 'in', cut: [] });
		expect(plain.scale).toBeGreaterThan(0);
		for (const piece of scene.pieces) {
			for (const band of piece.bands) {
				const lines: Xy[][] = [...partsOf(piece.cloth[0] + (piece.cloth[1] ?? ''), 0.5)];
				const rim = partsOf(band.area, 1)[0];
				const off = rim.filter((point) => Math.min(...lines.map((line) => distanceTo(point, line))) > 0.3);
				const deep = Math.max(out, -taken) * scene.scale;
				expect(off.length).toBeLessThanOrEqual(2 * deep + 2);
			}
		}
	});

	it('draws the line after pricked only where it left the line before, and the rest firm', () => {
		const side = scene.pieces.find(({ id }) => id === 'under-arm')!;
		expect(side.after).toBe('');
		const back = scene.pieces.find(({ id }) => id === 'back')!;
		const before = partsOf(back.cloth[0], 0.5)[0];
		const moved = partsOf(back.after, 4).flat();
		expect(moved.length).toBeGreaterThan(20);
		// A step of 2.5 px on each side belongs to the moved stretch.
		const near = moved.filter((point) => distanceTo(point, before) < 0.05).length;
		expect(near).toBeLessThan(moved.length * 0.2);
		for (const point of partsOf(back.stitching, 4).flat()) expect(distanceTo(point, before)).toBeLessThan(0.4);
	});
});
