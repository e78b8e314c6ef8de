/** What a dart is: an angle about its point. Facts of trade theory and of elementary geometry, on pieces that show them plainly. */
import { describe, expect, it } from 'vitest';
import { dartLegs } from '../../../src/lib/engine/draft/dart-legs.ts';
import { findDart } from '../../../src/lib/engine/draft/find.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { stitchedLength } from '../../../src/lib/engine/draft/length.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';
import { carried } from '../../support/alteration-law.ts';
import { draftsApart } from '../../support/apart.ts';
import { plainBodice } from '../../support/plain-bodice.ts';

const degrees = (radians: number) => (radians * 180) / Math.PI;
const radians = (angle: number) => (angle * Math.PI) / 180;
const legsOf = (draft: Draft, name: string) => {
	const { piece, dart } = findDart(draft, name)!;
	return dartLegs(piece, dart);
};
const angles = (draft: Draft) =>
	draft.pieces[0].darts.reduce((sum, dart) => sum + dartLegs(draft.pieces[0], dart).angle, 0);

/** A round of cloth as four quarters, each the usual cubic: 0.01403 % longer than the circle (published error). */
function disc(radius: number): Draft {
	const k = 0.5522847498 * radius;
	const r = radius;
	return parseDraft({
		format: 'pin-to-paper/draft@1',
		name: 'Round',
		pieces: [
			{
				id: 'round',
				cut: 'single',
				edges: [
					{ id: 'one', kind: 'open', path: `M ${r} 0 C ${r} ${k} ${k} ${r} 0 ${r}` },
					{ id: 'two', kind: 'open', path: `M 0 ${r} C ${-k} ${r} ${-r} ${k} ${-r} 0` },
					{ id: 'three', kind: 'open', path: `M ${-r} 0 C ${-r} ${-k} ${-k} ${-r} 0 ${-r}` },
					{ id: 'four', kind: 'open', path: `M 0 ${-r} C ${k} ${-r} ${r} ${-k} ${r} 0` }
				]
			}
		],
		seams: []
	});
}
const rim = (draft: Draft) =>
	['one', 'two', 'three', 'four'].reduce((sum, id) => sum + stitchedLength(draft, `round/${id}`), 0);

/** A dart of so many degrees from the rim to the middle, which opens by the chord 2r·sin(α/2). */
const toMiddle = (radius: number, angle: number) => ({
	id: 'dart',
	kind: 'dart',
	edge: 'round/one',
	at: { fraction: 0.5 },
	intake: 2 * radius * Math.sin(radians(angle) / 2),
	point: [0, 0]
});

// A cone's flat sector is 360° × sin of its half angle, a blacksmith's cone layout page; the figures are worked from that. A round
// of radius 100 with a dart of α sewn is a cone with sin φ = 1 − α/360.
describe('a round of cloth with a dart to its middle is a cone', () => {
	it.each([
		[10, 76.464, 97.222, 23.406],
		[15, 73.402, 95.833, 28.565],
		[20, 70.812, 94.444, 32.867],
		[30, 66.444, 91.667, 39.965]
	])('of %d°: half angle %d°, base %d, height %d', (angle, half, base, height) => {
		const { draft } = carried(disc(100), toMiddle(100, angle), { bareCoordinates: true });
		expect(degrees(legsOf(draft, 'round/dart').angle)).toBeCloseTo(angle, 1);
		const radius = rim(draft) / (2 * Math.PI);
		// The cubics are 0.014 % too long, and the mouth's ends up to 0.027 % too far out.
		expect(Math.abs(radius / base - 1)).toBeLessThan(3e-4);
		expect(Math.abs(degrees(Math.asin(radius / 100)) - half)).toBeLessThan(0.1);
		expect(Math.abs(Math.sqrt(100 * 100 - radius * radius) - height)).toBeLessThan(0.1);
	});
});

// The curvature at a cone's point is its missing angle (Gauss–Bonnet; university notes on surfaces with singular points), so it
// stays the same however the dart is split, moved and put together again.
describe('the angles about a point', () => {
	it('add up to the same when a dart is split, moved on and merged again', () => {
		let draft = carried(disc(200), toMiddle(200, 20), { bareCoordinates: true }).draft;
		const total = angles(draft);
		expect(degrees(total)).toBeCloseTo(20, 1);
		const swing = (id: string, dart: string, edge: string, share: number) => ({
			id,
			kind: 'dart-swing',
			dart: `round/${dart}`,
			edge: `round/${edge}`,
			at: { fraction: 0.4 },
			share
		});
		for (const one of [
			swing('second', 'dart', 'two', 0.5),
			swing('third', 'second', 'three', 0.3),
			swing('x', 'dart', 'four', 1),
			swing('y', 'third', 'one', 1)
		]) {
			draft = carried(draft, one).draft;
			expect(angles(draft)).toBeCloseTo(total, 9);
		}
		expect(draft.pieces[0].darts).toHaveLength(3);
	});

	// Angles add, widths do not: 20° on 200 mm open 69.459 mm, two of 10° 34.862 each and 69.725 together (chord, elementary).
	it('halve with a dart that is split, and its widths do not', () => {
		const { draft } = carried(disc(200), toMiddle(200, 20), { bareCoordinates: true });
		const { draft: after } = carried(draft, {
			id: 'half',
			kind: 'dart-swing',
			dart: 'round/dart',
			edge: 'round/three',
			at: { fraction: 0.5 },
			share: 0.5
		});
		const [first, second] = ['round/dart', 'round/half'].map((name) => legsOf(after, name));
		expect(first.angle).toBeCloseTo(second.angle, 9);
		for (const { intake } of [first, second]) expect(Math.abs(intake - 34.862)).toBeLessThan(0.02);
		expect(legsOf(draft, 'round/dart').intake).toBeCloseTo(69.459, 3);
		expect(Math.abs(first.intake + second.intake - 69.459 - 0.265)).toBeLessThan(0.03);
	});

	// A slash that stops inside a piece and is opened by β takes β from the angle there: it lies flat only if a dart at the same point
	// opens by as much.
	it('a slash to a dart’s point is taken up by the dart: by as much as the part turns', () => {
		const { draft } = carried(plainBodice(), {
			id: 'dart',
			kind: 'dart',
			edge: 'front/hem',
			at: { fraction: 0.5 },
			intake: 30,
			point: { from: { edge: 'front/hem', fraction: 0.5 }, in: 250 }
		});
		const slash = (gapFrom: number) => ({
			id: 'slash',
			kind: 'spread',
			cuts: [
				{
					piece: 'front',
					from: { edge: 'front/shoulder', fraction: 0.5 },
					to: { dart: 'front/dart' },
					gapFrom,
					gapTo: 0,
					keep: 'front/centre'
				}
			]
		});
		const heading = (one: Draft) => {
			const { from, to } = one.pieces[0].edges[2].path[0];
			return Math.atan2(to[1] - from[1], to[0] - from[0]);
		};
		for (const gap of [6, -6]) {
			const { draft: after } = carried(draft, slash(gap));
			const turned = heading(after) - heading(draft);
			expect(Math.abs(turned)).toBeGreaterThan(0.01);
			// Opened, the slash takes from the dart; folded, it adds to it.
			expect(angles(draft) - angles(after)).toBeCloseTo(Math.sign(gap) * Math.abs(turned), 9);
			// A gap of 6 mm between two lines to a point 25 mm aside and 200 below.
			expect(Math.abs(turned)).toBeCloseTo(2 * Math.atan(3 / Math.hypot(25, 200)), 6);
		}
	});
});

// Moved round its point a dart keeps its angle, and sewn, the piece is the same whichever way it lies: Dress Making (trade theory,
// National Instructional Media Institute), p. 180; Erwin, Practical Dress Design (rev. 1954), p. 31.
it('a dart swung away and back again leaves the piece as it was', () => {
	const at = { fraction: 0.5 };
	const { draft } = carried(plainBodice(), {
		id: 'dart',
		kind: 'dart',
		edge: 'front/hem',
		at,
		intake: 40,
		point: { from: { edge: 'front/hem', ...at }, in: 200 }
	});
	const swing = (edge: string, place: object) => ({
		id: 'swung',
		kind: 'dart-swing',
		dart: 'front/dart',
		edge,
		at: place,
		share: 1
	});
	const { draft: away } = carried(draft, swing('front/side', { end: 'start', offset: 90 }));
	const mouth = draft.pieces[0].darts[0];
	const { draft: back } = carried(away, swing('front/hem', { end: 'start', offset: mouth.from }));
	expect(draftsApart(back, draft, 16)).toBeLessThan(1e-6);
	expect(back.pieces[0].darts[0].from).toBeCloseTo(mouth.from, 6);
	expect(back.pieces[0].darts[0].to).toBeCloseTo(mouth.to, 6);
});
