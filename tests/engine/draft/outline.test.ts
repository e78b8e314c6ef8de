import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { clothArea, outlineOf, pieceArea } from '../../../src/lib/engine/draft/outline.ts';
import { bodice, draftFile, hodographFile, pieceOf, rectangleFile } from '../../support/drafts.ts';

describe('area', () => {
	it('of a rectangle is width by height, wherever it lies', () => {
		expect(pieceArea(parseDraft(draftFile([rectangleFile()])), 'panel')).toBeCloseTo(60_000, 6);
		const far = parseDraft(draftFile([rectangleFile({ left: -3000, top: 5000 })]));
		expect(pieceArea(far, 'panel')).toBeCloseTo(60_000, 6);
	});

	it('under a Pythagorean-hodograph cubic is k²/5 beyond the chord from its start (Farouki & Sakkalis 1990)', () => {
		expect(pieceArea(parseDraft(draftFile([hodographFile(90)])), 'panel')).toBeCloseTo((8 * 90 * 90) / 15, 6);
	});

	it('of a polygon is its shoelace sum', () => {
		// (0,0) (200,0) (240,300) (30,260): ½ |Σ xᵢyᵢ₊₁ − xᵢ₊₁yᵢ| = ½ (0 + 60 000 + 53 400 + 0) = 56 700.
		const piece = pieceOf({
			id: 'p',
			cut: 'single',
			edges: [
				{ id: 'a', kind: 'open', path: 'M 0 0 L 200 0 L 240 300' },
				{ id: 'b', kind: 'open', path: 'M 240 300 L 30 260 L 0 0' }
			]
		});
		expect(pieceArea({ name: '', pieces: [piece], seams: [] }, 'p')).toBeCloseTo(56_700, 6);
	});

	it('throws for an unknown piece', () => {
		expect(() => pieceArea(bodice, 'hood')).toThrow('hood');
	});
});

describe('cloth area', () => {
	it('leaves out what darts and fold darts take: triangles of half mouth by depth, and both of a fold dart', () => {
		const piece = pieceOf(
			rectangleFile({
				darts: [{ id: 'd', edge: 'hem', from: 90, to: 110, point: [100, 180] }],
				foldDarts: [
					{
						id: 'f',
						ends: [
							[50, 50],
							[50, 150]
						],
						widest: { at: 0.4, intake: 12 }
					}
				]
			})
		);
		expect(clothArea(piece)).toBeCloseTo(60_000 - (20 * 120) / 2 - (12 * 100) / 2, 6);
	});

	it('counts the mouth as it is drawn: on a curve, its bow as well', () => {
		// Between the arc of a parabola-like curve and its chord lies k²/5; a dart whose mouth is the whole curve takes
		// that and the triangle of chord and point.
		const k = 90;
		const piece = pieceOf(hodographFile(k, { darts: [{ id: 'd', edge: 'curve', from: 0, to: 120, point: [10, 60] }] }));
		const triangle = Math.abs(60 * 60 - 90 * 10) / 2;
		expect(clothArea(piece)).toBeCloseTo((8 * k * k) / 15 - (k * k) / 5 - triangle, 5);
	});
});

describe('outline', () => {
	it('is every edge in order, closed to the bit', () => {
		for (const piece of bodice.pieces) {
			const outline = outlineOf(piece);
			expect(outline.length).toBe(piece.edges.reduce((sum, edge) => sum + edge.path.length, 0));
			outline.forEach((segment, i) => expect(outline[(i + 1) % outline.length].from).toEqual(segment.to));
		}
	});

	it('is the same object when asked again', () => {
		expect(outlineOf(bodice.pieces[0])).toBe(outlineOf(bodice.pieces[0]));
	});
});
