import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../../src/lib/engine/alteration/parse.ts';
import { dartLegs } from '../../../../src/lib/engine/draft/dart-legs.ts';
import { findDart, findEdge } from '../../../../src/lib/engine/draft/find.ts';
import { stitchedLength } from '../../../../src/lib/engine/draft/length.ts';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { nearestOn } from '../../../../src/lib/engine/geometry/nearest.ts';
import { pathLength, pointAt, portion, startTangent, tangentAt } from '../../../../src/lib/engine/geometry/path.ts';
import { angleBetween, distance, mirrored } from '../../../../src/lib/engine/geometry/point.ts';
import type { Point } from '../../../../src/lib/engine/geometry/types.ts';
import { check } from '../../../../src/lib/engine/review/check.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';

const degree = Math.PI / 180;

/** A panel 240 wide and 300 high with darts in its lower edge, which runs from the right corner to the left one. */
function panel(
	darts: readonly object[],
	fields: { hem?: string; notches?: object[]; foldDarts?: object[] } = {}
): Draft {
	const { hem = 'M 240 300 L 0 300', ...rest } = fields;
	return parseDraft({
		format: 'pin-to-paper/draft@1',
		name: 'Panel',
		pieces: [
			{
				id: 'front',
				name: 'Front',
				cut: 'pair',
				edges: [
					{ id: 'top', name: 'Top', kind: 'open', path: 'M 0 0 L 240 0' },
					{ id: 'side', name: 'Side', kind: 'seam', path: 'M 240 0 L 240 300' },
					{ id: 'waist', name: 'Waist', kind: 'open', path: hem },
					{ id: 'centre', name: 'Centre', kind: 'open', path: 'M 0 300 L 0 0' }
				],
				darts,
				grain: [
					[40, 60],
					[40, 240]
				],
				...rest
			}
		]
	});
}

const square = { id: 'dart', name: 'Waist dart', edge: 'waist', from: 108, to: 132, point: [120, 180] };
/** Its point lies 30 mm aside of the middle of its mouth: the legs are 14 mm unlike. */
const slanting = { ...square, point: [150, 180] };
const shaped = {
	...square,
	point: [135, 120],
	widths: [
		{ at: 0.3, left: 9, right: 13 },
		{ at: 0.7, left: 3, right: 5 }
	]
};
const trueDart = (reach = 40, dart = 'front/dart') => ({ id: 'true', kind: 'true-dart', dart, reach });
const truing = (draft: Draft, json: object) => carryAlterations(draft, [parseAlteration(json)]).draft;

function read(draft: Draft, name = 'front/dart') {
	const { piece, dart, edge } = findDart(draft, name)!;
	const legs = dartLegs(piece, dart);
	return { piece, dart, edge, legs, from: pathLength(legs.from), to: pathLength(legs.to) };
}

/** How far the edge turns where the two legs come together when the dart is sewn, degrees: the two angles beside the legs less 180. */
function cornerWhenSewn(draft: Draft, name = 'front/dart'): number {
	const { edge, dart, legs } = read(draft, name);
	const beside = angleBetween(tangentAt(edge.path, dart.from, 'before'), startTangent(legs.from));
	const beyond = angleBetween(startTangent(legs.to), tangentAt(edge.path, dart.to, 'after'));
	return (beside + beyond) / degree;
}

/** The peak of a mouth: where its two halves meet. */
function peakOf(draft: Draft): Point {
	const { edge, dart } = read(draft);
	return pointAt(edge.path, (dart.from + dart.to) / 2);
}

describe('a trued dart', () => {
	// Fold the dart as it will be pressed, draw the edge through the fold, cut, unfold: common practice, no source.
	it.each([
		['square to its edge', square, undefined],
		['aslant', slanting, undefined],
		['on a curved edge', slanting, 'M 240 300 C 160 285 90 320 0 300'],
		['with shaped legs', shaped, 'M 240 300 C 160 285 90 320 0 300'],
		['pressed towards its first leg', { ...slanting, press: 'from' }, 'M 240 300 C 160 285 90 320 0 300']
	])('%s has legs alike and, sewn, one smooth edge', (_, dart, hem) => {
		const draft = panel([dart], { hem });
		const { draft: after, applied } = carried(draft, trueDart());
		const found = read(after);
		expect(Math.abs(found.from - found.to)).toBeLessThan(1e-6);
		expect(Math.abs(cornerWhenSewn(after))).toBeLessThan(0.5);
		expect(Math.abs(cornerWhenSewn(draft))).toBeGreaterThan(2);
		// Beyond the mouth there is no corner left either, also where the redrawn line begins.
		const { edge } = found;
		const length = pathLength(edge.path);
		for (let s = 2; s < length - 2; s += 0.5) {
			if (s > found.dart.from - 1 && s < found.dart.to + 1) continue;
			const turn = angleBetween(tangentAt(edge.path, s - 0.5), tangentAt(edge.path, s + 0.5)) / degree;
			expect(Math.abs(turn)).toBeLessThan(2.5);
		}
		expect(applied[0].touched.map(({ feature }) => feature)).toEqual(['front/dart', 'front/waist']);
		expect(applied[0].touched[0].greatestMove).toBeGreaterThan(0.5);
	});

	// Where two straight lines that turn by 2α are drawn on into each other from R on either side, the round touches both and its
	// middle lies R · tan(α/2) off their corner (elementary). A square dart of half-angle α in a straight edge closes to such lines.
	it('square to a straight edge gets longer legs by reach × tan(α/2)', () => {
		const alpha = Math.atan(12 / 120);
		const leg = Math.hypot(12, 120) + 40 * Math.tan(alpha / 2);
		const { draft } = carried(panel([square]), trueDart(40));
		expect(read(draft).from).toBeCloseTo(leg, 6);
		expect(read(draft).to).toBeCloseTo(leg, 6);
		// The mouth goes on along the same round, mirrored in the leg, to where it meets the fold line: by the law of cosines.
		const radius = 40 / Math.tan(alpha);
		const centre = leg + radius;
		const peak = centre * Math.cos(alpha) - Math.sqrt(radius ** 2 - (centre * Math.sin(alpha)) ** 2);
		expect(peakOf(draft)[0]).toBeCloseTo(120, 6);
		expect(peakOf(draft)[1]).toBeCloseTo(180 + peak, 3);
	});

	it.each(['from', 'to'] as const)(
		'pressed towards its leg "%s", its peak is on the fold line and, folded, on the edge',
		(press) => {
			const { draft } = carried(panel([{ ...slanting, press }]), trueDart(60));
			const { legs, edge, dart } = read(draft);
			const peak = peakOf(draft);
			const fold = (p: Point): number => distance(p, mirrored(p, legs.foldAt, dart.point)) / 2;
			expect(fold(peak)).toBeLessThan(1e-6);
			const turn = angleBetween(
				tangentAt(edge.path, (dart.from + dart.to) / 2, 'before'),
				tangentAt(edge.path, (dart.from + dart.to) / 2, 'after')
			);
			// A slanting dart peaks if it is pressed to one side and dips if it is pressed to the other.
			expect(press === 'to' ? turn : -turn).toBeGreaterThan(0.05);
			const leg = press === 'from' ? legs.mouthFrom : legs.mouthTo;
			const own =
				press === 'from' ? portion(edge.path, 0, dart.from) : portion(edge.path, dart.to, pathLength(edge.path));
			expect(nearestOn(own, mirrored(peak, leg, dart.point), 1e-6).distance).toBeLessThan(1e-6);
			// The other half of the mouth is the mirror image of this one in the fold line.
			for (const aside of [2, 5, 9]) {
				const middle = (dart.from + dart.to) / 2;
				const image = mirrored(pointAt(edge.path, middle + aside), legs.foldAt, dart.point);
				expect(distance(pointAt(edge.path, middle - aside), image)).toBeLessThan(1e-5);
			}
		}
	);

	it('keeps its point, and the edge beyond the reach to the bit', () => {
		const hem = 'M 240 300 L 200 305 C 160 290 90 320 40 305 L 0 300';
		const draft = panel([slanting], { hem });
		const { draft: after } = carried(draft, trueDart(40));
		expect(read(after).dart.point).toEqual([150, 180]);
		const [before, now] = [read(draft).edge.path, read(after).edge.path];
		expect(now[0]).toEqual(before[0]);
		expect(now[now.length - 1]).toEqual(before[before.length - 1]);
		expect(after.pieces[0].edges[1]).toBe(draft.pieces[0].edges[1]);
		expect(after.pieces[0].edges[3]).toBe(draft.pieces[0].edges[3]);
	});

	it('trued again is left as it is, over any reach', () => {
		const once = truing(panel([slanting], { hem: 'M 240 300 C 160 285 90 320 0 300' }), trueDart());
		expect(carried(once, trueDart()).draft).toBe(once);
		expect(carried(once, trueDart(80)).draft).toBe(once);
	});

	it('with only its mouth untrue gets the mouth, and the edge stays', () => {
		// Both sides leave their legs at a right angle, so the closed edge is straight already; the peak lies L / cos α from the point.
		const alpha = 0.1;
		const [x, y] = [120 * Math.sin(alpha), 120 * Math.cos(alpha)];
		const at = (k: number) => `${120 + x + k * Math.cos(alpha)} ${180 + y - k * Math.sin(alpha)}`;
		const other = (k: number) => `${120 - x - k * Math.cos(alpha)} ${180 + y - k * Math.sin(alpha)}`;
		const hem = `M ${at(90)} L ${at(0)} L ${other(0)} L ${other(90)}`;
		const draft = parseDraft({
			format: 'pin-to-paper/draft@1',
			name: 'Panel',
			pieces: [
				{
					id: 'front',
					cut: 'pair',
					edges: [
						{ id: 'waist', kind: 'open', path: hem },
						{ id: 'rest', kind: 'open', path: `M ${other(90)} L 20 0 L 220 0 L ${at(90)}` }
					],
					darts: [{ id: 'dart', edge: 'waist', from: 90, to: 90 + 2 * x, point: [120, 180] }]
				}
			]
		});
		const { draft: after } = carried(draft, trueDart());
		expect(peakOf(after)[1]).toBeCloseTo(180 + 120 / Math.cos(alpha), 6);
		expect(read(after).from).toBeCloseTo(120, 9);
		expect(stitchedLength(after, 'front/waist')).toBeCloseTo(180, 6);
	});

	it('with another dart on its edge leaves that one as it is', () => {
		const near = { ...square, id: 'near', name: 'Second dart', from: 145, to: 165, point: [88, 190] };
		const draft = panel([slanting, near]);
		const before = read(draft, 'front/near').legs;
		const { draft: after } = carried(draft, trueDart(60));
		const now = read(after, 'front/near').legs;
		expect(distance(before.mouthFrom, now.mouthFrom)).toBeLessThan(1e-6);
		expect(distance(before.mouthTo, now.mouthTo)).toBeLessThan(1e-6);
		expect(Math.abs(read(after).from - read(after).to)).toBeLessThan(1e-6);
		const both = carried(after, trueDart(60, 'front/near')).draft;
		expect(Math.abs(read(both, 'front/near').from - read(both, 'front/near').to)).toBeLessThan(1e-6);
		expect(Math.abs(read(both).from - read(both).to)).toBeLessThan(1e-6);
		expect(Math.abs(cornerWhenSewn(both, 'front/near'))).toBeLessThan(0.5);
	});

	it('lets notches ride: those beyond the reach stay where they are', () => {
		const notches = [
			{ id: 'n1', edge: 'waist', at: 30 },
			{ id: 'n2', edge: 'waist', at: 100 },
			{ id: 'n3', edge: 'waist', at: 220 }
		];
		const draft = panel([slanting], { notches });
		const { draft: after } = carried(draft, trueDart(40));
		const at = (one: Draft, id: string): Point => {
			const piece = one.pieces[0];
			return pointAt(findEdge(one, 'front/waist')!.edge.path, piece.notches.find((notch) => notch.id === id)!.at);
		};
		expect(distance(at(draft, 'n1'), at(after, 'n1'))).toBeLessThan(1e-6);
		expect(distance(at(draft, 'n3'), at(after, 'n3'))).toBeLessThan(1e-6);
		expect(distance(at(draft, 'n2'), at(after, 'n2'))).toBeLessThan(8);
	});

	it('that was swung to another edge is trued there', () => {
		const swung = truing(panel([{ ...square, point: [120, 150] }]), {
			id: 'swing',
			kind: 'dart-swing',
			dart: 'front/dart',
			edge: 'front/side',
			at: { end: 'start', offset: 110 },
			share: 1
		});
		const { draft } = carried(swung, trueDart(30));
		expect(read(draft).dart.edge).toBe('side');
		expect(Math.abs(read(draft).from - read(draft).to)).toBeLessThan(1e-6);
		expect(Math.abs(cornerWhenSewn(draft))).toBeLessThan(0.5);
	});

	it('on the left only leaves the right as it was', () => {
		const { draft } = carried(panel([slanting]), { ...trueDart(), on: 'left' });
		expect(Math.abs(read(draft, 'front@left/dart').from - read(draft, 'front@left/dart').to)).toBeLessThan(1e-6);
		expect(Math.abs(read(draft, 'front@right/dart').from - read(draft, 'front@right/dart').to)).toBeGreaterThan(5);
	});

	it('settles the query about unlike legs by its own suggestion', () => {
		const draft = panel([slanting]);
		const query = check(draft).find(({ code }) => code === 'dart-legs')!;
		expect(query.settle).toHaveLength(1);
		const { draft: after } = carried(draft, query.settle[0]);
		expect(check(after).filter(({ code }) => code === 'dart-legs')).toEqual([]);
	});

	it('is refused where there is nothing to draw on from, for a fold and for a dart that is not there', () => {
		const corner = { ...square, from: 0, to: 20, point: [225, 200] };
		expect(notCarried(panel([corner]), trueDart()).code).toBe('no-room');
		const beside = { ...square, id: 'beside', from: 132, to: 150, point: [95, 200] };
		expect(notCarried(panel([square, beside]), trueDart()).code).toBe('no-room');
		const fold = {
			id: 'fold',
			ends: [
				[100, 60],
				[100, 160]
			],
			widest: { at: 0.5, intake: 10 }
		};
		expect(notCarried(panel([], { foldDarts: [fold] }), trueDart(40, 'front/fold')).code).toBe('no-mouth');
		expect(notCarried(panel([]), trueDart()).why).toBe('no-place');
	});

	it('asks for a reach of 1 mm or more', () => {
		expect(() => parseAlteration(trueDart(0))).toThrow(/reach/);
		expect(() => parseAlteration({ ...trueDart(), reach: undefined })).toThrow(/reach/);
	});
});
