import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../../src/lib/engine/alteration/parse.ts';
import { dartLegs } from '../../../../src/lib/engine/draft/dart-legs.ts';
import { findDart, findEdge } from '../../../../src/lib/engine/draft/find.ts';
import { edgeLength } from '../../../../src/lib/engine/draft/length.ts';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { nearestOn } from '../../../../src/lib/engine/geometry/nearest.ts';
import { cornersOf } from '../../../../src/lib/engine/geometry/joints.ts';
import { pathEnd, pathLength, pathStart, pointAt, tangentAt } from '../../../../src/lib/engine/geometry/path.ts';
import type { Path, Point } from '../../../../src/lib/engine/geometry/types.ts';
import { usualBands } from '../../../../src/lib/engine/review/bands.ts';
import { check } from '../../../../src/lib/engine/review/check.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { plainBodice, plainBodiceFile } from '../../../support/plain-bodice.ts';

interface EdgeFile {
	id: string;
	kind: string;
	path: string;
	[field: string]: unknown;
}
interface File {
	pieces: { id: string; cut: string; edges: EdgeFile[]; [field: string]: unknown }[];
	seams: { id: string; [field: string]: unknown }[];
	[field: string]: unknown;
}

function bodiceWith(spoil: (file: File) => void): Draft {
	const file = JSON.parse(JSON.stringify(plainBodiceFile)) as File;
	spoil(file);
	return parseDraft(file);
}
const edgeIn = (file: File, piece: string, edge: string): EdgeFile =>
	file.pieces.find(({ id }) => id === piece)!.edges.find(({ id }) => id === edge)!;

/** A back neck that leaves the shoulder 14° off a right angle, where the front neck stands square to it. */
const cornered = () =>
	bodiceWith((file) => {
		edgeIn(file, 'back', 'neck').path = 'M 210 0 C 213 12 225 20 250 20';
	});

const smooth = (fields: object) => ({ id: 'smooth', kind: 'smooth', edge: 'front/neck', reach: 30, ...fields });
const pathOf = (draft: Draft, name: string): Path => findEdge(draft, name)!.edge.path;

/** Degrees from the first direction to the second, without sign. */
function between([ax, ay]: Point, [bx, by]: Point): number {
	return (Math.acos((ax * bx + ay * by) / Math.hypot(ax, ay) / Math.hypot(bx, by)) * 180) / Math.PI;
}

/** The angle inside a piece at the start of an edge, between it and the edge before; both are less than a half turn here. */
function angleAtStart(draft: Draft, piece: string, edge: string): number {
	const { edges } = draft.pieces.find(({ id }) => id === piece)!;
	const index = edges.findIndex(({ id }) => id === edge);
	const before = edges[(index + edges.length - 1) % edges.length].path;
	const [x, y] = tangentAt(before, pathLength(before), 'before');
	return between([-x, -y], tangentAt(edges[index].path, 0));
}

/** How far the two necks are off one line when the shoulders are laid together, degrees. */
const offAtNeck = (draft: Draft, front = 'front', back = 'back') =>
	angleAtStart(draft, front, 'shoulder') + angleAtStart(draft, back, 'neck') - 180;

describe('a corner across a seam smoothed', () => {
	it('the two necks run on across the shoulder, each turned by half', () => {
		const draft = cornered();
		const before = [angleAtStart(draft, 'front', 'shoulder'), angleAtStart(draft, 'back', 'neck')];
		expect(before[0]).toBeCloseTo(90, 9);
		// atan(3 / 12): the back neck leaves 14.04° off the square.
		const off = (Math.atan(3 / 12) * 180) / Math.PI;
		expect(before[1]).toBeCloseTo(90 + off, 6);
		const { draft: after, applied } = carried(draft, smooth({ end: 'finish' }));
		expect(Math.abs(offAtNeck(after))).toBeLessThan(1e-4);
		expect(angleAtStart(after, 'front', 'shoulder')).toBeCloseTo(90 - off / 2, 4);
		expect(angleAtStart(after, 'back', 'neck')).toBeCloseTo(90 + off / 2, 4);
		expect(applied[0].touched.map(({ feature }) => feature).sort()).toEqual(['back/neck', 'front/neck']);
	});

	it('asked from the other piece, it is the same', () => {
		const draft = cornered();
		const [one, other] = [smooth({ end: 'finish' }), smooth({ edge: 'back/neck', end: 'start' })].map(
			(json) => carried(draft, json).draft
		);
		for (const name of ['front/neck', 'back/neck'])
			for (const s of [0, 5, 11, 20, 40])
				expect(nearestOn(pathOf(other, name), pointAt(pathOf(one, name), s), 1e-6).distance).toBeLessThan(1e-9);
	});

	it('corner points stay to the bit, and so does everything beyond the reach', () => {
		const draft = cornered();
		const { draft: after } = carried(draft, smooth({ end: 'finish' }));
		for (const name of ['front/neck', 'back/neck']) {
			expect(pathStart(pathOf(after, name))).toEqual(pathStart(pathOf(draft, name)));
			expect(pathEnd(pathOf(after, name))).toEqual(pathEnd(pathOf(draft, name)));
		}
		const old = pathOf(draft, 'back/neck');
		for (let s = 31; s < pathLength(old); s += 3)
			expect(nearestOn(pathOf(after, 'back/neck'), pointAt(old, s), 1e-6).distance).toBeLessThan(1e-9);
		expect(findEdge(after, 'back/shoulder')!.edge).toBe(findEdge(draft, 'back/shoulder')!.edge);
	});

	// The cubic x (1 − x/R)², whose slope at 0 is 1 and which is level at R, is greatest at R/3, with 4R/27: elementary.
	it('a straight edge moves by at most 4/27 of tan(half the corner) times the reach, a third of the reach from its end', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'front', 'hem').path = 'M 250 450 L 0 490';
			edgeIn(file, 'front', 'centre').path = 'M 0 490 L 0 60';
		});
		const { draft: after, applied } = carried(draft, smooth({ edge: 'back/hem', end: 'finish', reach: 60 }));
		const half = Math.atan(40 / 250) / 2;
		const most = (4 / 27) * Math.tan(half) * 60;
		expect(nearestOn(pathOf(after, 'back/hem'), [20, 450 - most], 1e-6).distance).toBeLessThan(0.002);
		const highest = Math.min(
			...Array.from({ length: 600 }, (_, i) => pointAt(pathOf(after, 'back/hem'), 190 + i / 10)[1])
		);
		expect(highest).toBeCloseTo(450 - most, 2);
		for (const { greatestMove } of applied[0].touched) expect(greatestMove).toBeCloseTo(most, 6);
	});

	it('smoothed again, nothing changes', () => {
		const once = carried(cornered(), smooth({ end: 'finish' })).draft;
		expect(carried(once, smooth({ end: 'finish', reach: 50 })).draft).toBe(once);
	});

	it('at the underarm, armholes run on across the side seam', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, smooth({ edge: 'front/armhole', end: 'finish' }));
		const [x, y] = tangentAt(pathOf(after, 'front/armhole'), edgeLength(after, 'front/armhole'), 'before');
		const [bx, by] = tangentAt(pathOf(after, 'back/armhole'), 0);
		// The sides are plumb, so laid together both pieces keep their directions.
		expect(between([x, y], [bx, by])).toBeLessThan(1e-4);
	});

	it('on the left only: a partner that is still whole is divided, and the right side stays', () => {
		const draft = cornered();
		const { draft: after } = carried(draft, smooth({ end: 'finish', on: 'left' }));
		expect(Math.abs(offAtNeck(after, 'front@left', 'back@left'))).toBeLessThan(1e-4);
		expect(offAtNeck(after, 'front@right', 'back@right')).toBeCloseTo(offAtNeck(draft), 9);
	});

	it('a whole partner that would turn unlike for the two sides becomes two', () => {
		const unlike = carryAlterations(cornered(), [
			parseAlteration({ id: 'left', kind: 'smooth', edge: 'front/neck', at: { end: 'finish' }, reach: 5 })
		]);
		expect(unlike.unplaced).toHaveLength(1);
		const left = carryAlterations(cornered(), [
			parseAlteration({
				id: 'left',
				kind: 'edge',
				edge: 'front/neck',
				on: 'left',
				pins: [
					{ at: { end: 'finish' }, move: 0 },
					{ at: { fraction: 0.6 }, move: 3 }
				]
			})
		]).draft;
		expect(left.pieces.map(({ id }) => id)).toContain('back');
		const before = offAtNeck(left, 'front@left', 'back') - offAtNeck(left, 'front@right', 'back');
		// A pin elsewhere leaves the end level, so the corner is alike still: one back serves both.
		expect(Math.abs(before)).toBeLessThan(1e-6);
		const alike = carried(left, smooth({ end: 'finish' })).draft;
		expect(alike.pieces.map(({ id }) => id)).toContain('back');
		const right = carried(left, smooth({ end: 'finish', on: 'right' })).draft;
		expect(Math.abs(offAtNeck(right, 'front@right', 'back@right'))).toBeLessThan(1e-4);
		const both = carried(right, smooth({ end: 'finish' })).draft;
		expect(Math.abs(offAtNeck(both, 'front@left', 'back@left'))).toBeLessThan(1e-4);
		expect(Math.abs(offAtNeck(both, 'front@right', 'back@right'))).toBeLessThan(1e-4);
	});
});

describe('an edge made square', () => {
	it.each([
		['a centre seam', 'seam'],
		['a fold', 'fold']
	])('to %s', (_, kind) => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'back', 'neck').path = 'M 210 0 C 212 12 225 24 250 20';
			edgeIn(file, 'back', 'centre').kind = kind;
			if (kind !== 'fold') return;
			file.pieces[1].cut = 'fold';
			file.seams.pop();
		});
		const { draft: after } = carried(draft, smooth({ edge: 'back/neck', end: 'finish' }));
		const neck = pathOf(after, 'back/neck');
		expect(between(tangentAt(neck, pathLength(neck), 'before'), [0, 1])).toBeCloseTo(90, 4);
		expect(after.pieces[1].edges[2]).toBe(draft.pieces[1].edges[2]);
	});

	it('the fold itself is not smoothed', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'back', 'centre').kind = 'fold';
			file.pieces[1].cut = 'fold';
			file.seams.pop();
		});
		expect(notCarried(draft, smooth({ edge: 'back/centre', end: 'start' })).code).toBe('fold-fixed');
	});
});

describe('a corner on one piece smoothed', () => {
	/** An armhole drawn in two edges that meet at a corner of a few degrees. */
	const inTwo = () =>
		bodiceWith((file) => {
			file.pieces[0].edges.splice(
				1,
				1,
				{ id: 'upper', kind: 'open', path: 'M 160 0 C 156 30 158 70 175 110' },
				{ id: 'armhole', kind: 'open', path: 'M 175 110 C 200 140 225 146 250 150' }
			);
		});

	it('between two edges, each turns by half and the corner point stays', () => {
		const draft = inTwo();
		const [upper, armhole] = [pathOf(draft, 'front/upper'), pathOf(draft, 'front/armhole')];
		const before = [tangentAt(upper, pathLength(upper), 'before'), tangentAt(armhole, 0)];
		const corner = between(before[0], before[1]);
		expect(corner).toBeGreaterThan(10);
		const { draft: after } = carried(draft, smooth({ edge: 'front/upper', end: 'finish' }));
		const now = pathOf(after, 'front/upper');
		expect(pathEnd(now)).toEqual([175, 110]);
		const tangent = tangentAt(now, pathLength(now), 'before');
		expect(between(tangent, tangentAt(pathOf(after, 'front/armhole'), 0))).toBeLessThan(1e-4);
		expect(between(tangent, before[0])).toBeCloseTo(corner / 2, 4);
	});

	it('inside an edge, the corner point stays and the corner is gone', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'front', 'armhole').path = 'M 160 0 C 156 30 158 70 175 110 C 200 140 225 146 250 150';
			file.pieces[0].notches = [...(file.pieces[0].notches as object[]), { id: 'n2', edge: 'armhole', at: 60 }];
		});
		const at = cornersOf(pathOf(draft, 'front/armhole'))[0];
		const json = smooth({ edge: 'front/armhole', at: { end: 'start', offset: at - 4 }, reach: 25 });
		const { draft: after } = carried(draft, json);
		const now = pathOf(after, 'front/armhole');
		expect(cornersOf(now)).toEqual([]);
		expect(nearestOn(now, [175, 110], 1e-6).distance).toBeLessThan(1e-9);
		expect(after.pieces[0].notches.find(({ id }) => id === 'n2')!.at).toBeCloseTo(60, 6);
		// Nothing is left to smooth there.
		expect(notCarried(after, json).code).toBe('no-corner');
	});

	it('the bridge that a slash leaves becomes one line with the edge', () => {
		const slashed = carryAlterations(plainBodice(), [
			parseAlteration({
				id: 'slash',
				kind: 'spread',
				cuts: [
					{
						piece: 'front',
						from: { edge: 'front/armhole', fraction: 0.6 },
						to: { edge: 'front/hem', fraction: 0.3 },
						gapFrom: 12.7,
						gapTo: 12.7,
						keep: 'front/centre'
					}
				]
			})
		]).draft;
		const old = pathOf(slashed, 'front/armhole');
		const corners = cornersOf(old);
		expect(corners).toHaveLength(2);
		const json = smooth({ edge: 'front/armhole', at: { end: 'start', offset: corners[0] + 6 }, reach: 30 });
		const { draft: after } = carried(slashed, json);
		const now = pathOf(after, 'front/armhole');
		expect(cornersOf(now)).toEqual([]);
		for (const s of corners) expect(nearestOn(now, pointAt(old, s), 1e-6).distance).toBeLessThan(5);
		for (let s = 0; s < corners[0] - 31; s += 4)
			expect(nearestOn(now, pointAt(old, s), 1e-6).distance).toBeLessThan(1e-9);
	});

	it('the corners of a dart mouth are left alone, and a dart in the way shortens the reach', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'front', 'hem').path = 'M 250 450 L 150 455 L 0 450';
			file.pieces[0].darts = [{ id: 'dart', edge: 'hem', from: 120, to: 140, point: [120, 330] }];
		});
		const at = cornersOf(pathOf(draft, 'front/hem'))[0];
		const json = smooth({ edge: 'front/hem', at: { end: 'start', offset: at }, reach: 60 });
		const { draft: after } = carried(draft, json);
		const legs = (one: Draft) => {
			const { piece, dart } = findDart(one, 'front/dart')!;
			return dartLegs(piece, dart);
		};
		expect(legs(after).intake).toBeCloseTo(legs(draft).intake, 6);
		expect(legs(after).mouthFrom[0]).toBeCloseTo(legs(draft).mouthFrom[0], 6);
		const trued = carryAlterations(draft, [
			parseAlteration({ id: 'true', kind: 'true-dart', dart: 'front/dart', reach: 15 })
		]).draft;
		const { dart } = findDart(trued, 'front/dart')!;
		const peak = smooth({ edge: 'front/hem', at: { end: 'start', offset: dart.from }, reach: 5 });
		expect(notCarried(trued, peak).code).toBe('no-corner');
	});
});

describe('smoothing is refused', () => {
	it('where there is no corner, with how near it looked', () => {
		const waiting = notCarried(plainBodice(), smooth({ at: { fraction: 0.5 }, reach: 25.4 }));
		expect(waiting.code).toBe('no-corner');
		expect(waiting.sentence).toContain('1″');
	});

	it('where the corner is too sharp to be meant', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'front', 'hem').path = 'M 250 450 L 230 250 L 0 450';
			file.seams.splice(0, 1);
			edgeIn(file, 'front', 'side').kind = 'open';
			edgeIn(file, 'back', 'side').kind = 'open';
			file.pieces[0].notches = [];
			file.pieces[1].notches = [];
		});
		expect(notCarried(draft, smooth({ edge: 'front/hem', end: 'start' })).code).toBe('corner-sharp');
	});

	it('where a dart opens right at the corner, and for an edge that is not there', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'back', 'neck').path = 'M 210 0 C 213 12 225 20 250 20';
			file.pieces[1].darts = [{ id: 'dart', edge: 'neck', from: 0, to: 8, point: [190, 60] }];
		});
		expect(notCarried(draft, smooth({ end: 'finish' })).code).toBe('mouth-at-corner');
		expect(notCarried(plainBodice(), smooth({ edge: 'front/none', end: 'start' })).why).toBe('no-place');
		expect(notCarried(plainBodice(), smooth({ at: { level: 'knee' } })).why).toBe('no-place');
	});

	it('without an end or a place, or with both', () => {
		expect(() => parseAlteration(smooth({}))).toThrow(/either an end/);
		expect(() => parseAlteration(smooth({ end: 'start', at: { fraction: 0.5 } }))).toThrow(/either an end/);
	});
});

describe('the query about corners across a seam', () => {
	/** The queries where corners are off by more than half a degree, by what they would have smoothed. */
	const corners = (draft: Draft, edge: string, end: string) =>
		check(draft, { bands: { seamCorner: { ...usualBands.seamCorner, silent: 0.5, armhole: 0.5 } } }).filter(
			({ code, settle: [one] }) => {
				const offered = one as unknown as { edge: string; end: string };
				return code === 'seam-corner' && offered.edge === edge && offered.end === end;
			}
		);

	it('is settled by its own suggestion, to within half a degree', () => {
		// The necks at the shoulder, and the armholes at the underarm.
		for (const where of ['front/neck', 'front/armhole']) {
			const query = check(cornered()).find((one) => one.code === 'seam-corner' && one.where === where)!;
			expect(query.settle).toHaveLength(1);
			const { draft: after } = carried(cornered(), query.settle[0]);
			expect(corners(cornered(), where, 'finish')).toHaveLength(1);
			expect(corners(after, where, 'finish')).toEqual([]);
		}
	});

	it('is settled at a centre seam and at a fold', () => {
		for (const kind of ['seam', 'fold']) {
			const draft = bodiceWith((file) => {
				edgeIn(file, 'back', 'neck').path = 'M 210 0 C 212 12 225 24 250 20';
				edgeIn(file, 'back', 'centre').kind = kind;
				if (kind !== 'fold') return;
				file.pieces[1].cut = 'fold';
				file.seams.pop();
			});
			const [query] = corners(draft, 'back/neck', 'finish');
			const { draft: after } = carried(draft, query.settle[0]);
			expect(corners(after, 'back/neck', 'finish')).toEqual([]);
		}
	});
});
