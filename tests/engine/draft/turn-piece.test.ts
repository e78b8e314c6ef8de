import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compose, reflection, rotation, translation } from '../../../src/lib/engine/geometry/motion.ts';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import { pathStart, pointAt } from '../../../src/lib/engine/geometry/path.ts';
import { dartLegs } from '../../../src/lib/engine/draft/dart-legs.ts';
import { findEdge, findPiece } from '../../../src/lib/engine/draft/find.ts';
import { edgeStitchedLength } from '../../../src/lib/engine/draft/length.ts';
import { levelWidth } from '../../../src/lib/engine/draft/level.ts';
import { clothArea, pieceArea } from '../../../src/lib/engine/draft/outline.ts';
import { seamRun } from '../../../src/lib/engine/draft/seam.ts';
import { mirrorDraft, movePiece, turnedRound } from '../../../src/lib/engine/draft/turn-piece.ts';
import { arbitraryDraft } from '../../support/arbitrary-draft.ts';
import { bodice, pieceOf, rectangleFile } from '../../support/drafts.ts';

const panel = pieceOf(
	rectangleFile({
		darts: [
			{
				id: 'd',
				edge: 'hem',
				from: 40,
				to: 60,
				point: [150, 200],
				press: 'from',
				widths: [{ at: 0.5, left: 4, right: 7 }]
			}
		],
		notches: [{ id: 'n', edge: 'side', at: 80 }],
		pleats: [{ id: 'p', edge: 'hem', from: 100, to: 160, turned: 30 }],
		levels: [
			{
				level: 'waist',
				line: [
					[10, 120],
					[20, 120]
				]
			}
		],
		marks: [{ id: 'm', kind: 'button', at: [20, 30] }],
		grain: [
			[10, 10],
			[10, 90]
		]
	})
);

describe('a mirror image', () => {
	const mirrored = movePiece(panel, reflection([0, 0], [0, 1]));

	it('has every point at −x and still runs clockwise', () => {
		expect(pieceArea({ name: '', pieces: [mirrored], seams: [] }, 'panel')).toBeCloseTo(60_000, 6);
		expect(mirrored.edges.map(({ id }) => id)).toEqual(['centre', 'hem', 'side', 'top']);
		expect(pathStart(mirrored.edges[0].path)).toEqual([0, 0]);
		expect(mirrored.darts[0].point).toEqual([-150, 200]);
		expect(mirrored.levels[0]).toMatchObject({
			line: [
				[-10, 120],
				[-20, 120]
			]
		});
		expect(mirrored.marks[0].at).toEqual([-20, 30]);
		expect(mirrored.grain).toEqual([
			[-10, 10],
			[-10, 90]
		]);
	});

	it('counts places on its edges from their new starts', () => {
		expect(mirrored.darts[0]).toMatchObject({ from: 140, to: 160, press: 'to' });
		expect(mirrored.notches[0].at).toBe(220);
		expect(mirrored.pleats[0]).toMatchObject({ from: 40, to: 100, turned: 30 });
	});

	it('has its dart legs where the mirror puts them', () => {
		const [before, after] = [dartLegs(panel, panel.darts[0]), dartLegs(mirrored, mirrored.darts[0])];
		for (const t of [0, 0.25, 0.5, 0.75, 1]) {
			const s = t * 90;
			const [x, y] = pointAt(before.from, s);
			expect(distance(pointAt(after.to, s), [-x, y])).toBeLessThan(1e-9);
		}
	});

	it('of a mirror image is the draft again', () => {
		fc.assert(
			fc.property(arbitraryDraft, (draft) => {
				const twice = mirrorDraft(mirrorDraft(draft));
				expect(twice.seams).toEqual(draft.seams);
				twice.pieces.forEach((piece, i) => {
					const before = draft.pieces[i];
					expect(piece.edges).toEqual(before.edges);
					expect(piece.levels).toEqual(before.levels);
					piece.darts.forEach((dart, k) => {
						expect(dart.point).toEqual(before.darts[k].point);
						expect(dart.from).toBeCloseTo(before.darts[k].from, 9);
						expect(dart.to).toBeCloseTo(before.darts[k].to, 9);
					});
					piece.notches.forEach((notch, k) => expect(notch.at).toBeCloseTo(before.notches[k].at, 9));
				});
			}),
			{ seed: 20_001, numRuns: 100 }
		);
	});

	it('walks its seams from the same end: the first edge starts where it did', () => {
		const mirror = mirrorDraft(bodice);
		for (const seam of bodice.seams) {
			const after = mirror.seams.find(({ id }) => id === seam.id)!;
			for (const side of ['a', 'b'] as const) {
				seamRun(bodice, seam, side).forEach((walked, i) => {
					const turned = seamRun(mirror, after, side)[i];
					const start = (entry: typeof walked) => pointAt(entry.edge.path, entry.reversed ? entry.length : 0);
					const [x, y] = start(walked);
					expect(turned.name).toBe(walked.name);
					expect(distance(start(turned), [-x, y])).toBeLessThan(1e-9);
				});
			}
		}
	});
});

describe('turned or shifted pieces', () => {
	it('keep areas, stitched lengths and level widths, mirrored or not', () => {
		fc.assert(
			fc.property(arbitraryDraft, fc.double({ min: -4, max: 4, noNaN: true }), fc.boolean(), (draft, angle, mirror) => {
				const turn = compose(rotation(angle, [10, 20]), translation(33, -70));
				const motion = mirror ? compose(reflection([5, 0], [0, 7]), turn) : turn;
				for (const piece of draft.pieces) {
					const moved = movePiece(piece, motion);
					expect(clothArea(moved)).toBeCloseTo(clothArea(piece), 5);
					for (const edge of moved.edges) {
						const before = piece.edges.find(({ id }) => id === edge.id)!;
						expect(edgeStitchedLength(moved, edge)).toBeCloseTo(edgeStitchedLength(piece, before), 6);
					}
					expect(levelWidth(moved, 'waist')).toBeCloseTo(levelWidth(piece, 'waist')!, 5);
				}
			}),
			{ seed: 20_002, numRuns: 60 }
		);
	});
});

describe('an outline walked the other way', () => {
	it('keeps every notch and mouth where it lies on the table', () => {
		const back = findPiece(bodice, 'back')!;
		const turned = turnedRound(back);
		for (const notch of turned.notches) {
			const before = back.notches.find(({ id }) => id === notch.id)!;
			const at = (piece: typeof back, { edge, at: s }: typeof notch) =>
				pointAt(piece.edges.find(({ id }) => id === edge)!.path, s);
			expect(distance(at(turned, notch), at(back, before))).toBeLessThan(1e-6);
		}
		expect(turned.edges.map(({ id }) => id)).toEqual([...back.edges.map(({ id }) => id)].reverse());
		expect(findEdge({ name: '', pieces: [turned], seams: [] }, 'back/neck')?.index).toBe(5);
	});
});
