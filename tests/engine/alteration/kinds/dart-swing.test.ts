import { describe, expect, it } from 'vitest';
import { stitchedLength } from '../../../../src/lib/engine/draft/length.ts';
import { clothArea } from '../../../../src/lib/engine/draft/outline.ts';
import { dartLegs } from '../../../../src/lib/engine/draft/dart-legs.ts';
import { findDart, findPiece } from '../../../../src/lib/engine/draft/find.ts';
import { pathLength } from '../../../../src/lib/engine/geometry/path.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';

const withDart = () =>
	carried(plainBodice(), {
		id: 'waist-dart',
		kind: 'dart',
		edge: 'front/hem',
		at: { fraction: 0.5 },
		intake: 40,
		point: { from: { edge: 'front/hem', fraction: 0.5 }, in: 200 }
	}).draft;
const swing = (edge: string, at: object, share = 1) => ({
	id: 'swung',
	kind: 'dart-swing',
	dart: 'front/waist-dart',
	edge,
	at,
	share
});
const legs = (draft: Draft, name: string) => {
	const { piece, dart } = findDart(draft, name)!;
	return dartLegs(piece, dart);
};
const degrees = (radians: number) => (radians * 180) / Math.PI;

// Moving a dart round its point keeps its angle, wider where the edge is farther and narrower where it is nearer; the sewn edges
// keep their lengths: Dress Making (trade theory, National Instructional Media Institute), p. 180; Erwin, Practical Dress
// Design (rev. 1954), p. 31. Each goes through `carried`, which also holds [TURNED].
describe('a dart swung to another edge', () => {
	it.each([
		['front/side', { end: 'start', offset: 80 }],
		['front/shoulder', { fraction: 0.5 }],
		['front/centre', { fraction: 0.4 }],
		['front/hem', { fraction: 0.1 }]
	])('[RIGID] to %s keeps angle, stitched lengths and cloth', (edge, at) => {
		const draft = withDart();
		const before = legs(draft, 'front/waist-dart');
		const { draft: after } = carried(draft, swing(edge, at));
		const found = legs(after, 'front/waist-dart');
		expect(found.angle).toBeCloseTo(before.angle, 9);
		for (const one of ['shoulder', 'armhole', 'side', 'hem', 'centre', 'neck'])
			expect(stitchedLength(after, `front/${one}`)).toBeCloseTo(stitchedLength(draft, `front/${one}`), 6);
		expect(clothArea(findPiece(after, 'front')!)).toBeCloseTo(clothArea(findPiece(draft, 'front')!), 4);
		// Widths go as the legs: w2/w1 = L2/L1.
		expect(found.intake / before.intake).toBeCloseTo(pathLength(found.from) / pathLength(before.from), 9);
	});

	// The curvature at a cone's point is its missing angle (Gauss–Bonnet; university notes on surfaces with singular points): the
	// sum of the dart angles about one point stays the same under splitting, moving and merging.
	it('in part: the two angles add up to what the one was', () => {
		const draft = withDart();
		const total = legs(draft, 'front/waist-dart').angle;
		const { draft: after } = carried(draft, swing('front/side', { end: 'start', offset: 80 }, 0.4));
		expect(degrees(legs(after, 'front/swung').angle)).toBeCloseTo(degrees(total) * 0.4, 6);
		expect(degrees(legs(after, 'front/waist-dart').angle)).toBeCloseTo(degrees(total) * 0.6, 6);
		const merged = carried(after, {
			id: 'back',
			kind: 'dart-swing',
			dart: 'front/swung',
			edge: 'front/hem',
			at: { fraction: 0.9 },
			share: 1
		});
		const sum = ['front/swung', 'front/waist-dart'].reduce((angle, name) => angle + legs(merged.draft, name).angle, 0);
		expect(sum).toBeCloseTo(total, 9);
	});

	// Two darts of half the angle open a little wider together than the one: 20° on 200 mm legs opens 69.459 mm, two of 10° open
	// 34.862 each, 69.725 together (chord 2L·sin(α/2), elementary).
	it('in halves: the angle halves, the widths do not', () => {
		const height = 200 * Math.cos(Math.PI / 18);
		const { draft } = carried(plainBodice(), {
			id: 'waist-dart',
			kind: 'dart',
			edge: 'front/hem',
			at: { fraction: 0.5 },
			intake: 69.459,
			point: { from: { edge: 'front/hem', fraction: 0.5 }, in: height }
		});
		const { draft: after } = carried(draft, swing('front/hem', { end: 'finish', offset: 30 }, 0.5));
		const [kept, swung] = [legs(after, 'front/waist-dart'), legs(after, 'front/swung')];
		expect(kept.intake).toBeCloseTo(34.862, 3);
		expect(degrees(swung.angle)).toBeCloseTo(10, 3);
		expect(kept.intake * 2).toBeGreaterThan(69.459);
	});

	it('leaves the part with the grain line where it was', () => {
		const { draft } = carried(withDart(), swing('front/side', { end: 'start', offset: 80 }));
		expect(findPiece(draft, 'front')!.grain).toEqual(findPiece(withDart(), 'front')!.grain);
		expect(findPiece(draft, 'front')!.edges[5]).toEqual(findPiece(withDart(), 'front')!.edges[5]);
	});

	it('refuses a line that crosses another dart, that lies in its own mouth, or that is on another piece', () => {
		expect(notCarried(withDart(), swing('front/hem', { fraction: 0.5 })).code).toBe('swing-in-mouth');
		const second = carried(withDart(), {
			id: 'second',
			kind: 'dart',
			edge: 'front/side',
			at: { end: 'start', offset: 120 },
			intake: 40,
			point: { from: { edge: 'front/side', end: 'start', offset: 120 }, in: 100 }
		}).draft;
		expect(notCarried(second, swing('front/side', { end: 'start', offset: 101 })).sentence).toMatch(/cross Side dart/);
		expect(notCarried(withDart(), swing('back/side', { fraction: 0.2 })).why).toBe('no-place');
	});
});
