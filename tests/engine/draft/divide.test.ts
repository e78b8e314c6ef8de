import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import { pathEnd, pathStart, pointAt } from '../../../src/lib/engine/geometry/path.ts';
import { divide } from '../../../src/lib/engine/draft/divide.ts';
import { findEdge, findNotch, findPiece, findSeam } from '../../../src/lib/engine/draft/find.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { stitchedLength } from '../../../src/lib/engine/draft/length.ts';
import { levelWidth } from '../../../src/lib/engine/draft/level.ts';
import { clothArea, outlineOf } from '../../../src/lib/engine/draft/outline.ts';
import { findPlaceOnSeam } from '../../../src/lib/engine/draft/place.ts';
import { garmentRounds } from '../../../src/lib/engine/draft/round.ts';
import { mateOnSeam, runLength, seamRun, sideOf } from '../../../src/lib/engine/draft/seam.ts';
import { undividedName } from '../../../src/lib/engine/draft/undivided-name.ts';
import { arbitraryDraft } from '../../support/arbitrary-draft.ts';
import { bodice, draftFile, rectangleFile } from '../../support/drafts.ts';

describe('a pair piece divided', () => {
	const draft = divide(bodice, ['front']);

	it('becomes a right and a left one, both as they lay, each cut single', () => {
		expect(draft.pieces.map(({ id }) => id)).toEqual(['back', 'front@right', 'front@left', 'sleeve', 'collar']);
		for (const side of ['right', 'left'] as const) {
			const piece = findPiece(draft, `front@${side}`)!;
			expect(piece).toMatchObject({ cut: 'single', side, name: `Front, ${side}` });
			expect(piece.edges).toEqual(findPiece(bodice, 'front')!.edges);
			expect(piece.darts).toEqual(findPiece(bodice, 'front')!.darts);
		}
	});

	it('has seams of its own on each side; the other piece may stay undivided', () => {
		expect(findSeam(draft, 'side')).toBeUndefined();
		expect(findSeam(draft, 'side@left')).toEqual({
			id: 'side@left',
			name: 'Side seam, left',
			a: [{ edge: 'back/side', reversed: false }],
			b: [{ edge: 'front@left/side', reversed: true }],
			ease: 0
		});
		expect(findSeam(draft, 'armhole@right')?.a.map(({ edge }) => edge)).toEqual([
			'back/armhole',
			'front@right/armhole'
		]);
	});

	it('leaves what it does not touch as it was, to the object', () => {
		expect(findSeam(draft, 'sleeve')).toBe(findSeam(bodice, 'sleeve'));
		expect(findPiece(draft, 'sleeve')).toBe(findPiece(bodice, 'sleeve'));
	});

	it('keeps the round of the garment at every level', () => {
		expect(garmentRounds(draft)).toEqual(garmentRounds(bodice));
	});

	it('keeps the mates of its notches findable on both sides, from both sides', () => {
		for (const side of ['left', 'right']) {
			const seam = findSeam(draft, `side@${side}`)!;
			expect(mateOnSeam(draft, seam, 'a', 'back/side-notch')).toBe(`front@${side}/side-notch`);
			expect(mateOnSeam(draft, seam, 'b', `front@${side}/side-notch`)).toBe('back/side-notch');
			expect(findPlaceOnSeam(draft, `side@${side}`, 'b', { notch: 'side-notch' })).toMatchObject({ s: 111.34 });
		}
		expect(findNotch(draft, 'back/side-notch')?.notch.mate).toBe('front@right/side-notch');
	});

	it('then its neighbour divided too is the same as both at once', () => {
		const later = divide(draft, ['back']);
		const atOnce = divide(bodice, ['front', 'back']);
		expect(later.seams).toEqual(atOnce.seams);
		for (const piece of atOnce.pieces) expect(findPiece(later, piece.id)).toEqual(piece);
		expect(findNotch(later, 'back@left/side-notch')?.notch.mate).toBe('front@left/side-notch');
	});
});

describe('a centre seam', () => {
	const draft = divide(bodice, ['back']);

	it('becomes right half to left half under its own name', () => {
		expect(findSeam(draft, 'centre-back')).toEqual({
			...findSeam(bodice, 'centre-back'),
			a: [{ edge: 'back@right/centre-back', reversed: false }],
			b: [{ edge: 'back@left/centre-back', reversed: false }]
		});
	});

	it('has its notches meet each other', () => {
		const seam = findSeam(draft, 'centre-back')!;
		expect(mateOnSeam(draft, seam, 'a', 'back@right/centre-notch')).toBe('back@left/centre-notch');
		expect(mateOnSeam(draft, seam, 'b', 'back@left/centre-notch')).toBe('back@right/centre-notch');
	});

	it('of several pieces divides them all: no edge may be on both of its sides', () => {
		const yoked = parseDraft(
			draftFile(
				[rectangleFile({ id: 'yoke', height: 80 }), rectangleFile({ id: 'back' }), rectangleFile({ id: 'front' })],
				[
					{ id: 'centre', a: [{ edge: 'yoke/centre' }, { edge: 'back/centre' }], b: 'mirror' },
					{ id: 'side', a: [{ edge: 'back/side' }], b: [{ edge: 'front/side' }] }
				]
			)
		);
		const after = divide(yoked, ['back']);
		expect(after.pieces.map(({ id }) => id)).toEqual(['yoke@right', 'yoke@left', 'back@right', 'back@left', 'front']);
		expect(findSeam(after, 'centre')?.b).toEqual([
			{ edge: 'yoke@left/centre', reversed: false },
			{ edge: 'back@left/centre', reversed: false }
		]);
	});
});

describe('a piece on the fold divided', () => {
	// Collar: upper edge 188.19 right, end 40 down, neck back left, fold up at x = 0.
	const draft = divide(bodice, ['collar']);
	const collar = findPiece(draft, 'collar')!;

	it('is opened to one whole piece without the fold', () => {
		expect(collar).toMatchObject({ cut: 'single', side: 'both' });
		expect(collar.edges.map(({ id }) => id)).toEqual([
			'upper@right',
			'end@right',
			'neck@right',
			'neck@left',
			'end@left',
			'upper@left'
		]);
		expect(clothArea(collar)).toBeCloseTo(2 * 188.19 * 40, 6);
	});

	it('closes to the bit, the left half mirrored in the fold', () => {
		const outline = outlineOf(collar);
		outline.forEach((segment, i) => expect(outline[(i + 1) % outline.length].from).toEqual(segment.to));
		expect(pathStart(collar.edges[3].path)).toEqual([0, 40]);
		expect(pathEnd(collar.edges[3].path)).toEqual([-188.19, 40]);
		expect(pathEnd(collar.edges[5].path)).toEqual([0, 0]);
	});

	it('has its seams walked the same way on both sides', () => {
		for (const side of ['left', 'right']) {
			const seam = findSeam(draft, `neck@${side}`)!;
			const [walked] = seamRun(draft, seam, 'b');
			const start = pointAt(walked.edge.path, walked.reversed ? walked.length : 0);
			expect(distance(start, [0, 40])).toBeLessThan(1e-9);
			expect(runLength(draft, sideOf(seam, 'b'))).toBeCloseTo(188.19, 9);
		}
	});

	it('has its notches on both halves, as far from the fold', () => {
		for (const side of ['left', 'right']) {
			const { notch, edge } = findNotch(draft, `collar/shoulder-notch@${side}`)!;
			expect(notch.edge).toBe(`neck@${side}`);
			expect(Math.abs(pointAt(edge.path, notch.at)[0])).toBeCloseTo(188.19 - 113.7, 9);
		}
	});

	const skirt = parseDraft(
		draftFile([
			{
				id: 'skirt',
				cut: 'fold',
				edges: [
					{ id: 'waist', kind: 'seam', path: 'M 0 0 L 100 0' },
					{ id: 'side', kind: 'seam', path: 'M 100 0 L 130 300' },
					{ id: 'hem', kind: 'open', path: 'M 130 300 L 0 300', turn: true },
					{ id: 'fold', kind: 'fold', path: 'M 0 300 L 0 0' }
				],
				darts: [{ id: 'dart', edge: 'waist', from: 40, to: 60, point: [50, 90], press: 'from' }],
				foldDarts: [
					{
						id: 'tuck',
						ends: [
							[60, 150],
							[60, 250]
						],
						widest: { at: 0.5, intake: 8 }
					}
				],
				notches: [{ id: 'middle', edge: 'fold', at: 300 }],
				levels: [
					{
						level: 'hip',
						line: [
							[20, 60],
							[60, 60]
						]
					},
					{
						level: 'slant',
						line: [
							[20, 200],
							[60, 210]
						]
					},
					{ level: 'hem', edge: 'hem' }
				],
				marks: [
					{ id: 'm', kind: 'point', at: [30, 30] },
					{ id: 'on-fold', kind: 'button', at: [0, 100] }
				],
				pleats: [{ id: 'pleat', edge: 'hem', from: 20, to: 60, turned: 10 }],
				grain: [
					[20, 20],
					[20, 250]
				]
			}
		])
	);
	const open = divide(skirt, ['skirt']).pieces[0];

	it('is twice as wide at every level, darts and pleats on both halves', () => {
		for (const level of ['hip', 'slant', 'hem']) {
			expect(levelWidth(open, level)).toBeCloseTo(2 * levelWidth(skirt.pieces[0], level)!, 9);
		}
		expect(clothArea(open)).toBeCloseTo(2 * clothArea(skirt.pieces[0]), 6);
		expect(open.darts.map(({ id, edge, press }) => [id, edge, press])).toEqual([
			['dart@right', 'waist@right', 'from'],
			['dart@left', 'waist@left', 'to']
		]);
	});

	it('has its balance lines drawn across in one', () => {
		expect(open.levels.filter(({ level }) => level === 'slant')).toHaveLength(1);
	});

	it('keeps a mark on the fold once, and a notch there as a mark; the grain stays', () => {
		expect(open.marks.map(({ id, at }) => [id, at])).toEqual([
			['on-fold', [0, 100]],
			['m@right', [30, 30]],
			['m@left', [-30, 30]],
			['middle', [0, 0]]
		]);
		expect(open.notches).toEqual([]);
		expect(open.grain).toEqual([
			[20, 20],
			[20, 250]
		]);
	});
});

describe('dividing', () => {
	it('keeps rounds, lengths and kinds, and names nothing that is not there, for any draft', () => {
		fc.assert(
			fc.property(arbitraryDraft, fc.nat(4), (draft, k) => {
				const id = draft.pieces[k % draft.pieces.length].id;
				const divided = divide(draft, [id]);
				const rounds = garmentRounds(divided);
				garmentRounds(draft).forEach(({ round }, i) => expect(rounds[i].round).toBeCloseTo(round, 5));
				for (const seam of divided.seams) {
					const before = findSeam(draft, undividedName(seam.id))!;
					expect(runLength(divided, seam.a)).toBeCloseTo(runLength(draft, before.a), 6);
					expect(runLength(divided, sideOf(seam, 'b'))).toBeCloseTo(runLength(draft, sideOf(before, 'b')), 6);
				}
				for (const piece of divided.pieces) {
					for (const edge of piece.edges) {
						const whole = undividedName(`${piece.id}/${edge.id}`);
						expect(stitchedLength(divided, `${piece.id}/${edge.id}`)).toBeCloseTo(stitchedLength(draft, whole), 6);
						expect(findEdge(draft, whole)?.edge.kind).toBe(edge.kind);
					}
					for (const { mate } of piece.notches) if (mate) expect(findNotch(divided, mate)).toBeDefined();
				}
			}),
			{ seed: 20_003, numRuns: 100 }
		);
	});

	it('throws for a piece that is not there or is cut single', () => {
		expect(() => divide(bodice, ['hood'])).toThrow('hood');
		expect(() => divide(divide(bodice, ['front']), ['front@left'])).toThrow('single');
	});
});
