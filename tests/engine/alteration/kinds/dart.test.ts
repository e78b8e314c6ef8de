import { describe, expect, it } from 'vitest';
import { stitchedLength } from '../../../../src/lib/engine/draft/length.ts';
import { dartLegs } from '../../../../src/lib/engine/draft/dart-legs.ts';
import { findDart } from '../../../../src/lib/engine/draft/find.ts';
import { garmentRounds } from '../../../../src/lib/engine/draft/round.ts';
import { pathLength } from '../../../../src/lib/engine/geometry/path.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';

const fromSide = (intake: number, inwards = 120) => ({
	id: 'under-arm',
	kind: 'dart',
	edge: 'front/side',
	at: { end: 'start', offset: 60 },
	intake,
	point: { from: { edge: 'front/side', end: 'start', offset: 60 }, in: inwards }
});
const fromHem = (intake: number) => ({
	id: 'waist-dart',
	kind: 'dart',
	edge: 'front/hem',
	at: { fraction: 0.5 },
	intake,
	point: { from: { edge: 'front/hem', fraction: 0.5 }, in: 200 }
});
const legs = (draft: Draft, name: string) => {
	const { piece, dart } = findDart(draft, name)!;
	return dartLegs(piece, dart);
};
const round = (draft: Draft, level: string) => garmentRounds(draft).find((one) => one.level === level)!.round;

describe('a new dart', () => {
	it('opens as wide as asked, with its point where asked and legs alike on a straight edge', () => {
		const { draft } = carried(plainBodice(), fromSide(20));
		const found = legs(draft, 'front/under-arm');
		expect(found.intake).toBeCloseTo(20, 8);
		expect(pathLength(found.from)).toBeCloseTo(pathLength(found.to), 8);
		expect(findDart(draft, 'front/under-arm')!.dart.point[0]).toBeCloseTo(130, 9);
		expect(findDart(draft, 'front/under-arm')!.dart.point[1]).toBeCloseTo(210, 9);
	});

	// Chord of a dart w = 2L·sin(α/2), elementary: legs of 200 mm at 20° open 69.459 mm, at 10° 34.862 mm.
	it.each([
		[200, 20, 69.459],
		[200, 10, 34.862],
		[150, 20, 52.094],
		[100, 20, 34.73]
	])('legs of %d mm at %d° open as wide as the chord says', (leg, degrees, chord) => {
		const height = leg * Math.cos(((degrees / 2) * Math.PI) / 180);
		const file = { ...fromHem(chord), point: { from: { edge: 'front/hem', fraction: 0.5 }, in: height } };
		const found = legs(carried(plainBodice(), file).draft, 'front/waist-dart');
		expect((found.angle * 180) / Math.PI).toBeCloseTo(degrees, 2);
		expect(pathLength(found.from)).toBeCloseTo(leg, 2);
	});

	it('takes its width out of the edge it opens on, and twice that off the round', () => {
		const draft = plainBodice();
		const { draft: after, applied } = carried(draft, fromHem(20));
		expect(stitchedLength(after, 'front/hem')).toBeCloseTo(stitchedLength(draft, 'front/hem') - 20, 6);
		// The waist lies half way up the dart.
		expect(round(after, 'waist') - round(draft, 'waist')).toBeCloseTo(-20, 6);
		expect(round(after, 'bust')).toBeCloseTo(round(draft, 'bust'), 9);
		expect(applied[0].touched[0]).toMatchObject({ feature: 'front/waist-dart', before: 0 });
		expect(applied[0].touched[0].after).toBeCloseTo(20, 8);
	});

	it('on the left only, leaves the right front whole', () => {
		const { draft } = carried(plainBodice(), { ...fromSide(20), on: 'left' });
		expect(draft.pieces.find((piece) => piece.id === 'front@left')!.darts).toHaveLength(1);
		expect(draft.pieces.find((piece) => piece.id === 'front@right')!.darts).toHaveLength(0);
	});

	it('keeps its leg lines when its edge is moved afterwards', () => {
		const { draft } = carried(plainBodice(), fromSide(20));
		const taken = { id: 'two', kind: 'seam', seam: 'side', pins: [{ at: { level: 'waist' }, a: -10, b: -10 }] };
		const after = legs(carried(draft, taken).draft, 'front/under-arm');
		// Similar triangles: the mouth 120 mm from the point shrinks to 110/120 of its width.
		expect(after.intake).toBeCloseTo((20 * 110) / 120, 6);
	});

	it('refuses a point outside the piece, a mouth off its edge, and a dart across another', () => {
		expect(notCarried(plainBodice(), fromSide(20, 400)).code).toBe('dart-point-outside');
		const high = { ...fromSide(60), at: { end: 'start', offset: 10 } };
		expect(notCarried(plainBodice(), high).code).toBe('dart-off-edge');
		const { draft } = carried(plainBodice(), fromSide(20));
		const across = {
			...fromHem(20),
			id: 'across',
			at: { fraction: 0.3 },
			point: { from: { edge: 'front/hem', fraction: 0.3 }, in: 300 }
		};
		expect(notCarried(draft, across).code).toBe('dart-crosses');
	});
});

describe('a dart set anew', () => {
	const withDart = () => carried(plainBodice(), fromHem(20)).draft;

	// A dart widened by e on each leg takes 2e out of its edge, and 4e out of a garment cut twice: plain arithmetic.
	it('widened by 3 mm on each leg takes 12 mm off the hem round and nothing above its point', () => {
		const draft = withDart();
		const { draft: after } = carried(draft, { id: 'wider', kind: 'dart-set', dart: 'front/waist-dart', intake: 26 });
		expect(2 * (stitchedLength(after, 'front/hem') - stitchedLength(draft, 'front/hem'))).toBeCloseTo(-12, 6);
		expect(round(after, 'bust')).toBeCloseTo(round(draft, 'bust'), 9);
	});

	// Shortening only the point keeps the opening and widens the angle; figures worked from the chord: 200 mm legs at 20°, point
	// back 12.7 mm gives 21.348°, 25 mm 22.836°, 25.4 mm 22.888°.
	it.each([
		[12.7, 21.348],
		[25, 22.836],
		[25.4, 22.888]
	])('with its point %d mm nearer the mouth it opens at %d°', (back, degrees) => {
		const height = 200 * Math.cos(Math.PI / 18);
		const inwards = (mm: number) => ({ from: { edge: 'front/hem', fraction: 0.5 }, in: mm });
		const { draft } = carried(plainBodice(), { ...fromHem(69.459), point: inwards(height) });
		const after = carried(draft, {
			id: 'shorter',
			kind: 'dart-set',
			dart: 'front/waist-dart',
			point: { from: { edge: 'front/hem', end: 'start', offset: (250 - 69.459) / 2 }, in: height - back }
		});
		const found = legs(after.draft, 'front/waist-dart');
		expect(found.intake).toBeCloseTo(69.459, 6);
		// The place at the mouth's beginning is half a mouth aside of the middle, so the point is compared by its height.
		expect(after.draft.pieces[0].darts[0].point[1]).toBeCloseTo(450 - height + back, 6);
		const straightAngle = 2 * Math.atan(69.459 / 2 / (height - back));
		expect((straightAngle * 180) / Math.PI).toBeCloseTo(degrees, 3);
	});

	it('of no width is taken out, and the hem is as long as before the dart', () => {
		const { draft } = carried(withDart(), { id: 'out', kind: 'dart-set', dart: 'front/waist-dart', intake: 0 });
		expect(draft.pieces[0].darts).toEqual([]);
		expect(stitchedLength(draft, 'front/hem')).toBeCloseTo(250, 9);
	});

	it('refuses a dart that is not there and a width beyond its edge', () => {
		expect(notCarried(plainBodice(), { id: 'x', kind: 'dart-set', dart: 'front/none', intake: 3 }).why).toBe(
			'no-place'
		);
		expect(notCarried(withDart(), { id: 'x', kind: 'dart-set', dart: 'front/waist-dart', intake: 400 }).code).toBe(
			'dart-off-edge'
		);
	});
});
