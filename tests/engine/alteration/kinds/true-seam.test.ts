import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../../src/lib/engine/alteration/parse.ts';
import { findEdge, findNotch, findPiece } from '../../../../src/lib/engine/draft/find.ts';
import { edgeLength, stitchedLength } from '../../../../src/lib/engine/draft/length.ts';
import { levelWidth } from '../../../../src/lib/engine/draft/level.ts';
import { pieceArea } from '../../../../src/lib/engine/draft/outline.ts';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { nearestOn } from '../../../../src/lib/engine/geometry/nearest.ts';
import { pathEnd, pathStart, pointAt } from '../../../../src/lib/engine/geometry/path.ts';
import { distance } from '../../../../src/lib/engine/geometry/point.ts';
import { check } from '../../../../src/lib/engine/review/check.ts';
import { walk } from '../../../../src/lib/engine/review/walk.ts';
import { carried, expectSound, notCarried } from '../../../support/alteration-law.ts';
import { arbitraryDraft } from '../../../support/arbitrary-draft.ts';
import { plainBodice, plainBodiceFile } from '../../../support/plain-bodice.ts';

interface EdgeFile {
	id: string;
	kind: string;
	path: string;
	[field: string]: unknown;
}
interface File {
	pieces: { id: string; cut: string; edges: EdgeFile[]; [field: string]: unknown }[];
	seams: { id: string; ease: number; [field: string]: unknown }[];
	[field: string]: unknown;
}

/** The plain bodice with its file spoilt first. */
function bodiceWith(spoil: (file: File) => void): Draft {
	const file = JSON.parse(JSON.stringify(plainBodiceFile)) as File;
	spoil(file);
	return parseDraft(file);
}
const edgeIn = (file: File, piece: string, edge: string): EdgeFile =>
	file.pieces.find(({ id }) => id === piece)!.edges.find(({ id }) => id === edge)!;

/** The back's shoulder begins 8 mm farther out: 128 mm against the front's 120. */
const longBackShoulder = (more = 8) =>
	bodiceWith((file) => {
		edgeIn(file, 'back', 'shoulder').path = `M ${90 - more} 0 L 210 0`;
		edgeIn(file, 'back', 'armhole').path = `M 0 150 C 80 130 ${90 - more} 60 ${90 - more} 0`;
	});

const trueSeam = (fields: object) => ({ id: 'true', kind: 'true-seam', seam: 'shoulder', end: 'finish', ...fields });
const differenceOf = (draft: Draft, seam = 'shoulder') => walk(draft).find((one) => one.seam === seam)!.difference;
const path = (draft: Draft, name: string) => findEdge(draft, name)!.edge.path;

describe('a seam walked and corrected at an end', () => {
	it.each([
		['a', 128, 128],
		['b', 120, 120],
		['half', 124, 124]
	])('taking "%s", its two sides are the same', (take, a, b) => {
		const { draft, applied } = carried(longBackShoulder(), trueSeam({ take }));
		expect(Math.abs(differenceOf(draft))).toBeLessThan(1e-6);
		expect(stitchedLength(draft, 'front/shoulder')).toBeCloseTo(a, 6);
		expect(stitchedLength(draft, 'back/shoulder')).toBeCloseTo(b, 6);
		expect(applied[0].touched.map(({ feature }) => feature).sort()).toEqual(
			[
				...(take === 'b' ? [] : ['front/armhole', 'front/shoulder']),
				...(take === 'a' ? [] : ['back/armhole', 'back/shoulder'])
			].sort()
		);
	});

	// The New Dressmaker (1921), chapter 4: for a broad back the back is slashed from shoulder to bottom and spread by s; half of the
	// s by which its shoulder is then too long is taken off at the armhole, and half is added to the front's.
	it('broad back: of a spread of 1/2 in, 1/4 in goes off the back armhole and 1/4 in onto the front, and the shoulders meet', () => {
		const draft = plainBodice();
		const spread = carryAlterations(draft, [
			parseAlteration({
				id: 'broad-back',
				kind: 'spread',
				cuts: [
					{
						piece: 'back',
						from: { edge: 'back/shoulder', end: 'start', offset: 60 },
						to: { edge: 'back/hem', end: 'start', offset: 100 },
						gapFrom: 12.7,
						gapTo: 12.7,
						keep: 'back/centre'
					}
				]
			})
		]).draft;
		expect(differenceOf(spread)).toBeCloseTo(12.7, 6);
		const { draft: after } = carried(spread, trueSeam({ take: 'half' }));
		expect(stitchedLength(after, 'front/shoulder') - stitchedLength(draft, 'front/shoulder')).toBeCloseTo(6.35, 6);
		expect(stitchedLength(after, 'back/shoulder') - stitchedLength(draft, 'back/shoulder')).toBeCloseTo(6.35, 6);
		expect(Math.abs(differenceOf(after))).toBeLessThan(1e-6);
		const wider = (level: string) =>
			levelWidth(findPiece(after, 'back')!, level)! - levelWidth(findPiece(draft, 'back')!, level)!;
		expect(wider('waist')).toBeCloseTo(12.7, 3);
		expect(wider('bust')).toBeCloseTo(12.7, 3);
	});

	it('the edge runs straight on, the corner goes with it, and its neighbour follows and fades to nothing at 150 mm', () => {
		const draft = longBackShoulder();
		const { draft: after } = carried(draft, trueSeam({ take: 'a' }));
		expect(pathEnd(path(after, 'front/shoulder'))).toEqual([168, 0]);
		expect(path(after, 'front/shoulder')).toHaveLength(1);
		const [before, now] = [path(draft, 'front/armhole'), path(after, 'front/armhole')];
		expect(pathStart(now)).toEqual([168, 0]);
		expect(pathEnd(now)).toEqual([250, 150]);
		// 1 − (3t² − 2t³): halfway along, half of the corner's 8 mm; at a quarter, 27/32 of it.
		for (const [share, rest] of [
			[0.25, 27 / 32],
			[0.5, 0.5],
			[0.75, 5 / 32]
		]) {
			const [x, y] = pointAt(before, share * 150);
			expect(nearestOn(now, [x + 8 * rest, y], 1e-6).distance).toBeLessThan(0.002);
		}
		expect(nearestOn(now, pointAt(before, 155), 1e-6).distance).toBeLessThan(1e-6);
		expect(findEdge(after, 'front/side')!.edge).toBe(findEdge(draft, 'front/side')!.edge);
	});

	it('a neighbour shorter than 150 mm follows over its whole length', () => {
		const draft = longBackShoulder();
		const { draft: after } = carried(draft, trueSeam({ take: 'a', end: 'start' }));
		const [before, now] = [path(draft, 'front/neck'), path(after, 'front/neck')];
		const length = edgeLength(draft, 'front/neck');
		expect(length).toBeLessThan(100);
		const [x, y] = pointAt(before, length / 2);
		expect(nearestOn(now, [x - 4, y], 1e-6).distance).toBeLessThan(0.002);
		expect(pathStart(now)).toEqual([0, 60]);
		expect(pathEnd(now)).toEqual([32, 0]);
	});

	it.each([
		['run on along the end of a curve', 'a'],
		['cut back', 'b']
	])('curved edges too are the same afterwards: %s', (_, take) => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'front', 'shoulder').path = 'M 40 0 C 80 8 120 8 160 0';
			edgeIn(file, 'back', 'shoulder').path = 'M 82 0 C 120 -10 170 -6 210 0';
			edgeIn(file, 'back', 'armhole').path = 'M 0 150 C 80 130 82 60 82 0';
		});
		for (const end of ['start', 'finish']) {
			const { draft: after } = carried(draft, trueSeam({ take, end }));
			expect(Math.abs(differenceOf(after))).toBeLessThan(1e-6);
		}
	});

	it('fullness that is meant is left', () => {
		const draft = bodiceWith((file) => {
			file.seams[1].ease = 6.35;
		});
		// Baldt, Clothing for Women (1916): the back shoulder is 1/4 in longer than the front and eased in.
		const { draft: after } = carried(draft, trueSeam({ take: 'b' }));
		expect(stitchedLength(after, 'back/shoulder') - stitchedLength(after, 'front/shoulder')).toBeCloseTo(6.35, 6);
	});

	it('a seam that walks is left as it is', () => {
		const draft = plainBodice();
		expect(carried(draft, trueSeam({ take: 'half' })).draft).toBe(draft);
		expect(carried(draft, trueSeam({ take: 'a', seam: 'centre-back', on: 'left' })).draft).toBe(draft);
	});

	it('a difference of a hundred-thousandth of a millimetre is corrected without a sliver', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'back', 'shoulder').path = 'M 89.99999 0 C 120 0 180 0 210 0';
			edgeIn(file, 'back', 'armhole').path = 'M 0 150 C 80 130 90 60 89.99999 0';
			edgeIn(file, 'front', 'shoulder').path = 'M 40 0 C 80 0 120 0 160 0';
		});
		expect(differenceOf(draft)).toBeGreaterThan(9e-6);
		const { draft: after } = carried(draft, trueSeam({ take: 'a' }));
		expect(Math.abs(differenceOf(after))).toBeLessThan(1e-6);
		expect(path(after, 'front/shoulder')).toHaveLength(1);
	});

	it('notches of the edge stay where they are on the cloth; one in what is cut off is lost, and said so', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'front', 'side').path = 'M 250 150 L 250 460';
			edgeIn(file, 'front', 'hem').path = 'M 250 460 L 0 450';
		});
		const side = (fields: object) => trueSeam({ seam: 'side', take: 'a', ...fields });
		const { draft: after } = carried(draft, side({ end: 'start' }));
		const notch = findNotch(after, 'front/n1')!;
		expect(distance(pointAt(notch.edge.path, notch.notch.at), [250, 250])).toBeLessThan(1e-9);
		expect(notch.notch.at).toBeCloseTo(90, 9);
		const near = bodiceWith((file) => {
			edgeIn(file, 'front', 'side').path = 'M 250 150 L 250 460';
			edgeIn(file, 'front', 'hem').path = 'M 250 460 L 0 450';
			file.pieces[0].notches = [{ id: 'n1', edge: 'side', at: 305, mate: 'back/n1' }];
		});
		const lost = carried(near, side({ end: 'finish' }));
		expect(lost.remarks.map(({ code, where }) => [code, where])).toEqual([['notch-lost', 'front/n1']]);
	});

	it('a dart of the neighbour keeps its leg lines', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'back', 'side').path = 'M 0 462 L 0 150';
			edgeIn(file, 'back', 'hem').path = 'M 250 450 L 0 462';
			file.pieces[0].darts = [{ id: 'dart', edge: 'hem', from: 60, to: 80, point: [180, 330] }];
		});
		const { draft: after } = carried(draft, trueSeam({ seam: 'side', take: 'a' }));
		const { piece, edge } = findEdge(after, 'front/hem')!;
		const { from, to } = piece.darts[0];
		// The legs were 190 to 180 and 170 to 180 across, both 120 down.
		for (const [s, x] of [
			[from, 190],
			[to, 170]
		]) {
			const [px, py] = pointAt(edge.path, s);
			expect((px - 180) / (py - 330)).toBeCloseTo((x - 180) / 120, 6);
			expect(py).toBeGreaterThan(451);
		}
	});

	it('a side of three edges is corrected at the outermost of them', () => {
		const draft = bodiceWith((file) => {
			const front = file.pieces[0];
			front.edges.splice(
				2,
				1,
				{ id: 'side-1', kind: 'seam', path: 'M 250 150 L 250 250' },
				{ id: 'side-2', kind: 'seam', path: 'M 250 250 L 250 350' },
				{ id: 'side-3', kind: 'seam', path: 'M 250 350 L 250 455' }
			);
			edgeIn(file, 'front', 'hem').path = 'M 250 455 L 0 450';
			front.notches = [];
			file.pieces[1].notches = [];
			file.seams[0].a = ['side-1', 'side-2', 'side-3'].map((id) => ({ edge: `front/${id}` }));
		});
		const { draft: after } = carried(draft, trueSeam({ seam: 'side', take: 'a' }));
		expect(edgeLength(after, 'front/side-3')).toBeCloseTo(100, 6);
		expect(edgeLength(after, 'front/side-1')).toBe(100);
		const { draft: top } = carried(draft, trueSeam({ seam: 'side', take: 'b', end: 'start' }));
		expect(Math.abs(differenceOf(top, 'side'))).toBeLessThan(1e-6);
	});

	it('on the left only leaves the right side of the wearer as it was, also after the seam was divided', () => {
		const draft = longBackShoulder();
		const { draft: after } = carried(draft, trueSeam({ take: 'a', on: 'left' }));
		expect(Math.abs(differenceOf(after, 'shoulder@left'))).toBeLessThan(1e-6);
		expect(differenceOf(after, 'shoulder@right')).toBeCloseTo(8, 6);
		// The back, still whole, is to change for the right side alone: it becomes two.
		const { draft: both } = carried(
			carryAlterations(draft, [
				parseAlteration({
					id: 'x',
					kind: 'edge',
					edge: 'front/hem',
					on: 'left',
					pins: [{ at: { fraction: 0.5 }, move: 5 }]
				})
			]).draft,
			trueSeam({ take: 'b', on: 'right' })
		);
		expect(Math.abs(differenceOf(both, 'shoulder@right'))).toBeLessThan(1e-6);
		expect(differenceOf(both, 'shoulder@left')).toBeCloseTo(8, 6);
		expect(both.pieces.map(({ id }) => id)).toContain('back@left');
		const whole = carried(both, trueSeam({ take: 'b' })).draft;
		expect(Math.abs(differenceOf(whole, 'shoulder@left'))).toBeLessThan(1e-6);
	});

	it('a whole piece that is to change unlike for the two sides becomes two; alike, it stays one', () => {
		const left = (move: number) =>
			carryAlterations(longBackShoulder(), [
				parseAlteration({
					id: 'x',
					kind: 'edge',
					edge: 'front/neck',
					on: 'left',
					pins: [
						{ at: { end: 'start' }, move: 0 },
						{ at: { end: 'finish' }, move }
					]
				})
			]).draft;
		const unlike = carried(left(-3), trueSeam({ take: 'b' })).draft;
		expect(Math.abs(differenceOf(unlike, 'shoulder@left'))).toBeLessThan(1e-6);
		expect(Math.abs(differenceOf(unlike, 'shoulder@right'))).toBeLessThan(1e-6);
		expect(unlike.pieces.map(({ id }) => id)).toContain('back@right');
		const hem = { id: 'x', kind: 'edge', edge: 'front/hem', on: 'left', pins: [{ at: { fraction: 0.5 }, move: 5 }] };
		const alike = carried(
			carryAlterations(longBackShoulder(), [parseAlteration(hem)]).draft,
			trueSeam({ take: 'b' })
		).draft;
		expect(alike.pieces.map(({ id }) => id)).toContain('back');
		expect(Math.abs(differenceOf(alike, 'shoulder@left'))).toBeLessThan(1e-6);
	});

	it('is refused where a dart would be cut off, an edge used up, or the neighbour is too short', () => {
		const withDart = bodiceWith((file) => {
			edgeIn(file, 'back', 'shoulder').path = 'M 70 0 L 210 0';
			edgeIn(file, 'back', 'armhole').path = 'M 0 150 C 80 130 70 60 70 0';
			file.pieces[1].darts = [{ id: 'dart', edge: 'shoulder', from: 4, to: 12, point: [80, 60] }];
		});
		expect(notCarried(withDart, trueSeam({ take: 'b' })).code).toBe('end-used-up');
		const used = bodiceWith((file) => {
			edgeIn(file, 'front', 'shoulder').path = 'M 155 0 L 160 0';
			edgeIn(file, 'front', 'neck').path = 'M 0 60 C 30 60 155 30 155 0';
			file.seams[1].ease = -119;
		});
		expect(notCarried(used, trueSeam({ take: 'b' })).code).toBe('end-used-up');
		const short = bodiceWith((file) => {
			edgeIn(file, 'back', 'shoulder').path = 'M 50 0 L 210 0';
			edgeIn(file, 'back', 'armhole').path = 'M 0 150 C 80 130 50 60 50 0';
			file.pieces[0].edges.splice(
				1,
				1,
				{ id: 'cap', kind: 'open', path: 'M 160 0 L 158 20' },
				{ id: 'armhole', kind: 'open', path: 'M 158 20 C 150 60 150 130 250 150' }
			);
		});
		const waiting = notCarried(short, trueSeam({ take: 'a' }));
		expect(waiting.code).toBe('too-tight');
		expect(waiting.sentence).toMatch(/At most .*″ works/);
		expect(notCarried(plainBodice(), trueSeam({ seam: 'none', take: 'a' })).why).toBe('no-place');
	});

	it('asks for an end or a place, one of the two', () => {
		expect(() => parseAlteration(trueSeam({ take: 'a', end: undefined }))).toThrow(/either an end/);
		expect(() => parseAlteration(trueSeam({ take: 'a', at: { fraction: 0.5 } }))).toThrow(/either an end/);
	});

	it('whatever a random draft asks: the sides are the same afterwards, or it is refused', () => {
		const seed = 20260314;
		let settled = 0;
		fc.assert(
			fc.property(
				arbitraryDraft,
				fc.nat(20),
				fc.constantFrom('a', 'b', 'half'),
				fc.constantFrom<object>(
					{ end: 'start' },
					{ end: 'finish' },
					{ at: { fraction: 0.4 } },
					{ at: { end: 'start' } }
				),
				fc.double({ min: -12, max: 12, noNaN: true }),
				(drawn, which, take, where, ease) => {
					const sewn = drawn.seams.filter(({ b }) => b !== 'mirror');
					if (sewn.length === 0) return;
					const { id } = sewn[which % sewn.length];
					const draft = { ...drawn, seams: drawn.seams.map((one) => (one.id === id ? { ...one, ease } : one)) };
					const json = { id: 'true', kind: 'true-seam', seam: id, take, ...where };
					const result = carryAlterations(draft, [parseAlteration(json)]);
					expect(result.applied.length + result.unplaced.length).toBe(1);
					if (result.unplaced.length > 0) {
						expect(result.draft).toBe(draft);
						return;
					}
					expect(Math.abs(differenceOf(result.draft, id))).toBeLessThan(1e-6);
					expect(JSON.stringify(result.draft)).not.toMatch(/null|NaN|Infinity/);
					if (!check(result.draft).some(({ code }) => code === 'crosses')) expectSound(result.draft);
					settled++;
				}
			),
			{ seed, numRuns: 150 }
		);
		expect(settled).toBeGreaterThan(60);
	});
});

/** A neckband on the fold at centre back, 100 mm to the opening, sewn to a neck of 94. */
function withBand(walked: object = {}): Draft {
	return parseDraft({
		format: 'pin-to-paper/draft@1',
		name: 'Band',
		pieces: [
			{
				id: 'body',
				name: 'Body',
				cut: 'pair',
				edges: [
					{ id: 'neck', name: 'Neck', kind: 'seam', path: 'M 0 0 L 94 0' },
					{ id: 'rest', name: 'Rest', kind: 'open', path: 'M 94 0 L 120 200 L -20 200 L 0 0' }
				]
			},
			{
				id: 'band',
				name: 'Band',
				cut: 'fold',
				edges: [
					{ id: 'top', name: 'Top', kind: 'open', path: 'M 0 0 L 100 0' },
					{ id: 'fold', name: 'Centre back', kind: 'fold', path: 'M 100 0 L 100 40' },
					{ id: 'neck', name: 'Neck', kind: 'seam', path: 'M 100 40 L 0 40' },
					{ id: 'front', name: 'Front', kind: 'open', path: 'M 0 40 L 0 0' }
				],
				marks: [
					{ id: 'button', kind: 'button', at: [10, 20] },
					{ id: 'shoulder', kind: 'point', at: [70, 30] }
				]
			}
		],
		seams: [
			{
				id: 'neck',
				name: 'Neck seam',
				a: [{ edge: 'body/neck', ...walked }],
				b: [{ edge: 'band/neck', ...walked }]
			}
		]
	});
}

describe('a seam corrected at a place along it', () => {
	const band = (fields: object) => ({ id: 'true', kind: 'true-seam', seam: 'neck', take: 'b', ...fields });

	// The size of a neckband is changed at the centre back, by cutting or pleating it there: The New Dressmaker (1921).
	it('a neckband changes at its centre-back fold, which moves evenly', () => {
		const draft = withBand();
		const { draft: after } = carried(draft, band({ at: { end: 'start' } }));
		expect(Math.abs(differenceOf(after, 'neck'))).toBeLessThan(1e-6);
		expect(edgeLength(after, 'band/top')).toBeCloseTo(94, 6);
		expect(edgeLength(after, 'band/fold')).toBeCloseTo(40, 9);
		expect(pieceArea(after, 'band')).toBeCloseTo(94 * 40, 4);
	});

	it('at the end with the fold beside it, it is refused, and its offer to move the fold works', () => {
		const draft = withBand();
		const waiting = notCarried(draft, band({ end: 'start' }));
		expect(waiting.code).toBe('fold-fixed');
		const { draft: after } = carried(draft, waiting.settle[0]);
		expect(Math.abs(differenceOf(after, 'neck'))).toBeLessThan(1e-6);
	});

	it('inside the seam the length is taken out right across the piece, and what lies on the moved part rides', () => {
		const draft = withBand();
		const { draft: after } = carried(draft, band({ at: { fraction: 0.5 } }));
		expect(Math.abs(differenceOf(after, 'neck'))).toBeLessThan(1e-6);
		expect(edgeLength(after, 'band/top')).toBeCloseTo(94, 6);
		const { marks } = findPiece(after, 'band')!;
		// The fold's part stays.
		expect(marks[1].at).toEqual([70, 30]);
		expect(marks[0].at[0]).toBeCloseTo(16, 6);
		expect(pieceArea(after, 'band')).toBeCloseTo(94 * 40, 6);
	});

	it('at an end that is no fold, the line there moves evenly as well', () => {
		const { draft } = carried(withBand(), band({ at: { end: 'finish' } }));
		expect(Math.abs(differenceOf(draft, 'neck'))).toBeLessThan(1e-6);
		expect(findPiece(draft, 'band')!.edges[3].path[0].from[0]).toBeCloseTo(6, 6);
	});

	it('beside a centre seam the whole centre seam moves evenly', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'back', 'neck').path = 'M 210 0 C 212 12 225 20 260 20';
			edgeIn(file, 'back', 'hem').path = 'M 260 450 L 0 450';
			file.pieces[1].edges.splice(
				2,
				1,
				{ id: 'centre', kind: 'seam', path: 'M 260 20 L 260 200' },
				{ id: 'centre-low', kind: 'seam', path: 'M 260 200 L 260 450' }
			);
			file.seams[2].a = [{ edge: 'back/centre' }, { edge: 'back/centre-low' }];
			file.seams.push({
				id: 'hem',
				name: 'Facing seam',
				a: [{ edge: 'front/hem' }],
				b: [{ edge: 'back/hem', reversed: true }],
				ease: 0
			});
			edgeIn(file, 'back', 'hem').kind = 'seam';
			edgeIn(file, 'front', 'hem').kind = 'seam';
		});
		// Walked from its start, side b comes to the centre back at the seam's finish.
		const { draft: after } = carried(draft, { ...band({ at: { end: 'finish' } }), seam: 'hem' });
		expect(Math.abs(differenceOf(after, 'hem'))).toBeLessThan(1e-6);
		const centre = [...path(after, 'back/centre'), ...path(after, 'back/centre-low')];
		for (const { from, to } of centre) for (const [x] of [from, to]) expect(x).toBeCloseTo(250, 6);
	});

	it('a slanting line beside it moves until the sides are the same', () => {
		const draft = bodiceWith((file) => {
			edgeIn(file, 'front', 'side').path = 'M 250 150 C 240 250 240 350 258 460';
			edgeIn(file, 'front', 'hem').path = 'M 258 460 C 180 470 90 450 0 450';
			file.pieces[0].notches = [];
			file.pieces[1].notches = [];
		});
		expect(Math.abs(differenceOf(draft, 'side'))).toBeGreaterThan(8);
		const { draft: after } = carried(
			draft,
			trueSeam({ seam: 'side', take: 'a', end: undefined, at: { end: 'finish' } })
		);
		expect(Math.abs(differenceOf(after, 'side'))).toBeLessThan(1e-6);
	});

	it('a place that is not there leaves it unplaced, also where there is nothing to correct', () => {
		expect(notCarried(withBand(), band({ at: { level: 'waist' } })).why).toBe('no-place');
		expect(notCarried(plainBodice(), trueSeam({ take: 'a', end: undefined, at: { level: 'knee' } })).why).toBe(
			'no-place'
		);
	});
});

describe('the query about unlike sides', () => {
	it.each([
		['at an end', longBackShoulder(), ['a', 'b', 'half']],
		['at a fold', withBand({ reversed: true }), ['a', 'b', 'half']]
	])('is settled by each of its own suggestions: %s', (_, draft, takes) => {
		const query = check(draft).find(({ code }) => code === 'seam-length')!;
		expect(query.settle.map((one) => (one as unknown as { take: string }).take)).toEqual(takes);
		for (const suggestion of query.settle) {
			const { draft: after } = carried(draft, suggestion);
			expect(check(after).filter(({ code }) => code === 'seam-length')).toEqual([]);
		}
	});
});
