import { describe, expect, it } from 'vitest';
import { layTable } from '../../../src/lib/ui/drawing/lay-table.ts';
import { boxOfText, cornersOf, partsOf } from './read-path.ts';
import { rectangle } from './rectangle.ts';

const dart = (from: number, to: number) => ({ id: 'dart', edge: 'top', from, to, point: [50, 80] });
const darts = (before?: object, after?: object) => {
	const [was, is] = [before, after].map((one) => rectangle({ darts: one ? [one] : [] }));
	const scene = layTable(is, { unit: 'in', before: was });
	return { scene, darts: scene.pieces[0].darts };
};

describe('a dart', () => {
	it('that stays as it was has two legs, a crease and one awl hole at its point, and no strokes', () => {
		const [one] = darts(dart(44, 56), dart(44, 56)).darts;
		expect(one.state).toBe('as it was');
		expect(partsOf(one.legs)).toHaveLength(2);
		expect(one.awls).toHaveLength(1);
		expect(one.strokes).toBeUndefined();
	});

	it('that is new is hatched between its legs, by a stroke every 4.6 px of its length while there is room', () => {
		const { scene, darts: found } = darts(undefined, dart(44, 56));
		expect(found[0].state).toBe('new');
		const strokes = partsOf(found[0].strokes!, 1000);
		const along = (80 * scene.scale) / 4.6;
		expect(strokes.length).toBeGreaterThan(along * 0.7);
		expect(strokes.length).toBeLessThanOrEqual(along + 1);
	});

	it('that was made wider shows its legs before, so much narrower at the mouth', () => {
		const { scene, darts: found } = darts(dart(44, 56), dart(40, 60));
		expect(found[0].state).toBe('changed');
		const width = (text: string) => boxOfText(text).right - boxOfText(text).left;
		expect((width(found[0].legs) - width(found[0].before!)) / scene.scale).toBeCloseTo(8, 1);
	});

	it('that was taken out is caught back and forth between its old legs', () => {
		const found = darts(dart(44, 56), undefined).darts;
		expect(found.map(({ state }) => state)).toEqual(['gone']);
		expect(cornersOf(found[0].strokes!).length).toBeGreaterThan(8);
	});
});
