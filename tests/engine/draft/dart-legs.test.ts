import { describe, expect, it } from 'vitest';
import { derivativeOn, pointOn } from '../../../src/lib/engine/geometry/segment.ts';
import { pathEnd, pathStart } from '../../../src/lib/engine/geometry/path.ts';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import type { Path } from '../../../src/lib/engine/geometry/types.ts';
import { dartLegs, foldDartLegs, legsBetween } from '../../../src/lib/engine/draft/dart-legs.ts';
import type { DartWidth, FoldDart } from '../../../src/lib/engine/draft/types.ts';
import { pieceOf, rectangleFile } from '../../support/drafts.ts';

function sampled(path: Path, steps = 50) {
	return path.flatMap((segment) => Array.from({ length: steps + 1 }, (_, i) => pointOn(segment, i / steps)));
}

/** Where a leg over an upright fold line is at height y, by bisection. */
function acrossAt(path: Path, y: number): number {
	const segment = path.find(({ from, to }) => (from[1] - y) * (to[1] - y) <= 0)!;
	let [low, high] = [0, 1];
	for (let i = 0; i < 60; i++) {
		const middle = (low + high) / 2;
		if ((pointOn(segment, middle)[1] - y) * (segment.from[1] - y) > 0) low = middle;
		else high = middle;
	}
	return pointOn(segment, low)[0];
}

describe('a dart without widths', () => {
	// A hem runs right to left on a clockwise outline, so `from` is on the right.
	const piece = pieceOf(rectangleFile({ darts: [{ id: 'd', edge: 'hem', from: 90, to: 110, point: [100, 180] }] }));
	const legs = dartLegs(piece, piece.darts[0]);

	it('has straight legs from mouth to point, of one length when the point is over the middle', () => {
		expect(legs.from).toHaveLength(1);
		expect(distance(pathStart(legs.from), [110, 300])).toBeLessThan(1e-9);
		expect(distance(pathStart(legs.to), [90, 300])).toBeLessThan(1e-9);
		expect(pathEnd(legs.from)).toEqual([100, 180]);
		expect(distance(legs.mouthFrom, [100, 180])).toBeCloseTo(Math.hypot(10, 120), 9);
	});

	it('has the intake of its mouth and the angle of its triangle', () => {
		expect(legs.intake).toBeCloseTo(20, 9);
		expect(legs.angle).toBeCloseTo(2 * Math.atan(10 / 120), 12);
		expect(legs.foldAt[0]).toBeCloseTo(100, 9);
	});

	it('20° at 200 mm opens 69.459 mm (2 · 200 · sin 10°)', () => {
		const half = (10 * Math.PI) / 180;
		const at = (side: number) => [200 * Math.sin(side * half), 200 * Math.cos(half)] as const;
		expect(legsBetween(at(1), at(-1), [0, 0]).intake).toBeCloseTo(69.459, 3);
	});

	it('its fold line halves the angle at the point when the legs are unlike', () => {
		const { foldAt, angle } = legsBetween([30, 100], [-10, 60], [0, 0]);
		const turn = (p: readonly [number, number]) => Math.atan2(p[1], p[0]);
		expect(turn(foldAt) - turn([30, 100])).toBeCloseTo(angle / 2, 12);
		expect(turn([-10, 60]) - turn(foldAt)).toBeCloseTo(angle / 2, 12);
	});
});

describe('the waist dart of a basque', () => {
	// Mouth at the hem, y = 200; point at y = 0; widest at the waist, 120 above the hem. Mouth and point on x = 0.
	const widths: DartWidth[] = [
		{ at: 0.3, left: 6, right: 8 },
		{ at: 0.6, left: 10, right: 16 }
	];
	const legs = legsBetween([4, 200], [-4, 200], [0, 0], widths);

	it('runs through its half-widths, left and right as one looks from the mouth to the point', () => {
		expect(acrossAt(legs.to, 140)).toBeCloseTo(-6, 9);
		expect(acrossAt(legs.from, 140)).toBeCloseTo(8, 9);
		expect(acrossAt(legs.to, 80)).toBeCloseTo(-10, 9);
		expect(acrossAt(legs.from, 80)).toBeCloseTo(16, 9);
	});

	it('ends at the mouth and the point to the bit', () => {
		expect(pathStart(legs.from)).toEqual([4, 200]);
		expect(pathStart(legs.to)).toEqual([-4, 200]);
		expect(pathEnd(legs.from)).toEqual([0, 0]);
		expect(pathEnd(legs.to)).toEqual([0, 0]);
	});

	it('never swings wider than the widest width and has no corner', () => {
		expect(Math.max(...sampled(legs.from).map(([x]) => x))).toBeCloseTo(16, 9);
		expect(Math.min(...sampled(legs.to).map(([x]) => x))).toBeCloseTo(-10, 9);
		for (const leg of [legs.from, legs.to]) {
			for (let i = 1; i < leg.length; i++) {
				const [before, after] = [derivativeOn(leg[i - 1], 1), derivativeOn(leg[i], 0)];
				expect(Math.atan2(before[1], before[0])).toBeCloseTo(Math.atan2(after[1], after[0]), 9);
			}
		}
	});

	it('stays straight where the widths lie on straight legs', () => {
		const straight = legsBetween(
			[9, 300],
			[-9, 300],
			[0, 0],
			[
				{ at: 1 / 3, left: 6, right: 6 },
				{ at: 0.5, left: 4.5, right: 4.5 }
			]
		);
		for (const [x, y] of sampled(straight.from)) expect(x).toBeCloseTo((9 * y) / 300, 9);
		for (const [x, y] of sampled(straight.to)) expect(x).toBeCloseTo((-9 * y) / 300, 9);
	});

	it('runs along the fold line where it is widest', () => {
		expect(derivativeOn(legs.from[1], 1)[0]).toBeCloseTo(0, 9);
		expect(derivativeOn(legs.to[1], 1)[0]).toBeCloseTo(0, 9);
	});

	it('passes over a width that the mouth has been cut back beyond', () => {
		// The unlike mouth reaches past the first width on one leg only.
		const cut = legsBetween([4, 200], [-4, 120], [0, 0], [{ at: 0.05, left: 5, right: 5 }]);
		expect(cut.to.length + cut.from.length).toBeLessThan(4);
		expect(pathEnd(cut.to)).toEqual([0, 0]);
	});
});

describe('a fold dart', () => {
	const plain: FoldDart = {
		id: 'f',
		name: 'F',
		ends: [
			[0, 100],
			[0, 0]
		],
		widest: { at: 0.4, intake: 12 },
		widths: []
	};

	it('without widths is straight from each end to the widest', () => {
		const { left, right } = foldDartLegs(plain);
		expect(left.map(({ kind }) => kind)).toEqual(['line', 'line']);
		expect(left[0].to).toEqual([-6, 60]);
		expect(right[0].to).toEqual([6, 60]);
	});

	it('with widths is smooth through them and through the widest', () => {
		const { left, right } = foldDartLegs({ ...plain, widths: [{ at: 0.7, left: 2, right: 4 }] });
		expect(acrossAt(left, 60)).toBeCloseTo(-6, 9);
		expect(acrossAt(left, 30)).toBeCloseTo(-2, 9);
		expect(acrossAt(right, 30)).toBeCloseTo(4, 9);
	});

	it('takes the half-widths that are said for the widest place', () => {
		const { left, right } = foldDartLegs({ ...plain, widths: [{ at: 0.4, left: 5, right: 7 }] });
		expect(acrossAt(left, 60)).toBeCloseTo(-5, 9);
		expect(acrossAt(right, 60)).toBeCloseTo(7, 9);
	});
});
