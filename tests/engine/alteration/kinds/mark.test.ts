import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../../src/lib/engine/alteration/parse.ts';
import { findEdge, findMark, findNotch } from '../../../../src/lib/engine/draft/find.ts';
import { formatDraft } from '../../../../src/lib/engine/draft/file/format.ts';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import type { Draft, Level, Mark } from '../../../../src/lib/engine/draft/types.ts';
import { pointAt } from '../../../../src/lib/engine/geometry/path.ts';
import type { Point } from '../../../../src/lib/engine/geometry/types.ts';
import { walk } from '../../../../src/lib/engine/review/walk.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { plainBodice, plainBodiceFile } from '../../../support/plain-bodice.ts';

interface File {
	pieces: {
		id: string;
		cut: string;
		edges: { id: string; kind: string; path: string; [field: string]: unknown }[];
		[field: string]: unknown;
	}[];
	seams: { id: string; [field: string]: unknown }[];
	[field: string]: unknown;
}

function bodiceWith(spoil: (file: File) => void): Draft {
	const file = JSON.parse(JSON.stringify(plainBodiceFile)) as File;
	spoil(file);
	return parseDraft(file);
}
/** The back on the fold, opened because something was done on one side only. */
function openedBack(): Draft {
	const draft = bodiceWith((file) => {
		file.pieces[1].cut = 'fold';
		file.pieces[1].edges[2].kind = 'fold';
		file.pieces[1].marks = [
			{ id: 'nape', kind: 'point', at: [250, 40] },
			{ id: 'blade', kind: 'point', at: [180, 120] }
		];
		file.seams.pop();
	});
	return carrying(draft, {
		id: 'x',
		kind: 'edge',
		edge: 'back/hem',
		on: 'left',
		pins: [
			{ at: { end: 'start' }, move: 0 },
			{ at: { fraction: 0.5 }, move: 4 },
			{ at: { end: 'finish' }, move: 0 }
		]
	});
}

const carrying = (draft: Draft, json: object) => carryAlterations(draft, [parseAlteration(json)]).draft;
const mark = (fields: object) => ({ id: 'mark', kind: 'mark', piece: 'front', ...fields });
const markOf = (draft: Draft, name: string) => findMark(draft, name)!.mark;
const far = ([ax, ay]: Point, [bx, by]: Point) => Math.hypot(ax - bx, ay - by);

describe('a mark', () => {
	it('is set square in from an edge', () => {
		const json = mark({
			set: { id: 'waist-point', kind: 'point', at: { from: { edge: 'front/side', level: 'waist' }, in: 90 } }
		});
		const { draft, applied } = carried(plainBodice(), json);
		expect(markOf(draft, 'front/waist-point').at[0]).toBeCloseTo(160, 9);
		expect(markOf(draft, 'front/waist-point').at[1]).toBeCloseTo(350, 9);
		expect(applied[0].touched).toMatchObject([{ feature: 'front/waist-point', greatestMove: 0 }]);
	});

	it('that is there is set anew and keeps its place in the list', () => {
		const json = mark({ set: { id: 'bust-point', kind: 'bust-point', at: [105, 176] } });
		const { draft } = carried(plainBodice(), json, { bareCoordinates: true });
		expect(draft.pieces[0].marks).toEqual([{ id: 'bust-point', kind: 'bust-point', at: [105, 176] }]);
	});

	it('is moved, and a buttonhole keeps its length and direction', () => {
		const draft = bodiceWith((file) => {
			file.pieces[0].marks = [{ id: 'hole', kind: 'buttonhole', at: [10, 100], to: [28, 104] }];
		});
		const json = mark({
			move: { id: 'hole', to: { from: { edge: 'front/side', end: 'start', offset: 30 }, in: 230 } }
		});
		const { draft: after, applied } = carried(draft, json);
		const hole = markOf(after, 'front/hole');
		expect(far(hole.at, [20, 180])).toBeLessThan(1e-9);
		expect(far(hole.to!, [38, 184])).toBeLessThan(1e-9);
		expect(applied[0].touched[0].greatestMove).toBeCloseTo(Math.hypot(10, 80), 9);
	});

	it('is taken off', () => {
		expect(carried(plainBodice(), mark({ remove: 'bust-point' })).draft.pieces[0].marks).toEqual([]);
	});

	it('on the left only: the right keeps its own', () => {
		const { draft } = carried(plainBodice(), mark({ on: 'left', remove: 'bust-point' }));
		expect(findMark(draft, 'front@left/bust-point')).toBeUndefined();
		expect(findMark(draft, 'front@right/bust-point')).toBeDefined();
		// Taken off both sides, where one has it still.
		const both = carried(draft, mark({ remove: 'bust-point' })).draft;
		expect(findMark(both, 'front@right/bust-point')).toBeUndefined();
	});

	it('of an opened piece: each half has its own, what lies on the middle is one', () => {
		const opened = openedBack();
		const blade = { remove: 'blade', piece: 'back', on: 'right' };
		const without = carried(opened, mark(blade)).draft;
		expect(findMark(without, 'back/blade@right')).toBeUndefined();
		expect(findMark(without, 'back/blade@left')).toBeDefined();
		expect(findMark(carried(opened, mark({ piece: 'back', remove: 'nape' })).draft, 'back/nape')).toBeUndefined();
		const set = { id: 'arm', kind: 'point', at: { from: { edge: 'back/armhole', fraction: 0.5 }, in: 10 } };
		const both = carried(opened, mark({ piece: 'back', set })).draft;
		const [right, left] = ['back/arm@right', 'back/arm@left'].map((name) => markOf(both, name).at);
		expect(left[0] - 250).toBeCloseTo(250 - right[0], 6);
		expect(left[1]).toBeCloseTo(right[1], 6);
	});

	it('is refused under a name that something else has, and where it is not there', () => {
		const taken = mark({
			set: { id: 'side', kind: 'point', at: { from: { edge: 'front/side', fraction: 0.5 }, in: 9 } }
		});
		expect(notCarried(plainBodice(), taken).code).toBe('id-taken');
		expect(notCarried(plainBodice(), mark({ remove: 'none' })).sentence).toContain('bust-point');
		expect(
			notCarried(plainBodice(), mark({ move: { id: 'bust-point', to: { edge: 'front/side', fraction: 0.5 } } })).code
		).toBe('mark-inside');
		expect(notCarried(plainBodice(), mark({ piece: 'sleeve', remove: 'n1' })).why).toBe('no-place');
	});

	it('is told to do one thing', () => {
		expect(() => parseAlteration(mark({}))).toThrow(/One of set, notch/);
		expect(() => parseAlteration(mark({ remove: 'a', set: { id: 'b', kind: 'point', at: [1, 2] } }))).toThrow(/One of/);
		expect(() => parseAlteration(mark({ set: { id: 'b', kind: 'point', at: [1, 2], to: [3, 4] } }))).toThrow(
			/buttonhole/
		);
	});
});

describe('a notch', () => {
	it('is marked on an edge, and its mate meets it when the seam is walked', () => {
		const one = carried(plainBodice(), mark({ notch: { id: 'n2', at: { edge: 'front/side', level: 'waist' } } })).draft;
		const { draft } = carried(one, {
			...mark({ piece: 'back', notch: { id: 'n2', at: { edge: 'back/side', level: 'waist' }, mate: 'front/n2' } }),
			id: 'two'
		});
		expect(findNotch(draft, 'front/n2')!.notch.mate).toBe('back/n2');
		const side = walk(draft).find(({ seam }) => seam === 'side')!;
		expect(side.notches.map(({ a, b }) => [a, b])).toEqual([
			['front/n1', 'back/n1'],
			['front/n2', 'back/n2']
		]);
		expect(side.notches[1].difference).toBeCloseTo(0, 9);
	});

	it('is moved along its edge: a sleeve turned in its armhole', () => {
		const json = mark({ move: { id: 'n1', to: { edge: 'front/side', notch: 'n1', offset: 12 } } });
		const { draft, applied } = carried(plainBodice(), json);
		expect(findNotch(draft, 'front/n1')!.notch.at).toBeCloseTo(112, 9);
		expect(applied[0].touched[0].greatestMove).toBeCloseTo(12, 9);
	});

	it('taken off leaves its mate alone, and the file can still be read', () => {
		const { draft } = carried(plainBodice(), mark({ remove: 'n1' }));
		expect(findNotch(draft, 'front/n1')).toBeUndefined();
		expect(findNotch(draft, 'back/n1')!.notch).not.toHaveProperty('mate');
	});

	it('on a divided piece meets the mate on its own side', () => {
		const left = carrying(plainBodice(), {
			id: 'x',
			kind: 'seam',
			seam: 'side',
			on: 'left',
			pins: [{ at: { level: 'waist' }, a: 3, b: 3 }]
		});
		const backs = carried(
			left,
			mark({ piece: 'back', notch: { id: 'n2', at: { edge: 'back/side', fraction: 0.3 } } })
		).draft;
		const { draft } = carried(
			backs,
			mark({ notch: { id: 'n2', at: { edge: 'front/side', fraction: 0.7 }, mate: 'back/n2' } })
		);
		expect(findNotch(draft, 'front@left/n2')!.notch.mate).toBe('back@left/n2');
		expect(findNotch(draft, 'back@right/n2')!.notch.mate).toBe('front@right/n2');
	});

	it('is refused for a mate that is not there, on a fold with a mate, and a point inside the piece', () => {
		const missing = mark({ notch: { id: 'n2', at: { edge: 'front/side', fraction: 0.2 }, mate: 'back/n9' } });
		expect(notCarried(plainBodice(), missing).why).toBe('no-place');
		const draft = bodiceWith((file) => {
			file.pieces[1].cut = 'fold';
			file.pieces[1].edges[2].kind = 'fold';
			file.seams.pop();
		});
		const fold = mark({
			piece: 'back',
			notch: { id: 'c', at: { edge: 'back/centre', fraction: 0.2 }, mate: 'front/n1' }
		});
		expect(notCarried(draft, fold).code).toBe('fold-mate');
		expect(notCarried(plainBodice(), mark({ move: { id: 'n1', to: [10, 10] } })).code).toBe('notch-on-edge');
		const other = mark({ notch: { id: 'n2', at: { edge: 'back/side', fraction: 0.2 } } });
		expect(notCarried(plainBodice(), other).why).toBe('no-place');
	});
});

const inch = 25.4;
const button = { diameter: inch, thickness: inch / 4 };
const buttonholes = (fields: object = {}) =>
	mark({
		buttonholes: {
			edge: 'front/centre',
			first: { end: 'finish', offset: 15 },
			last: { end: 'start', offset: 60 },
			count: 6,
			button,
			direction: 'across',
			...fields
		}
	});
const holes = (draft: Draft, piece = 'front') =>
	draft.pieces.find(({ id }) => id === piece)!.marks.filter(({ kind }) => kind === 'buttonhole');
/** The button's middle: an eighth of an inch in from where the hole begins. */
function middle({ at, to }: Mark, start = inch / 8): Point {
	const length = far(at, to!);
	return [at[0] + ((to![0] - at[0]) * start) / length, at[1] + ((to![1] - at[1]) * start) / length];
}
const gaps = (draft: Draft, piece = 'front') =>
	holes(draft, piece)
		.slice(1)
		.map((hole, i) => far(middle(holes(draft, piece)[i]), middle(hole)));

describe('buttonholes', () => {
	// A sewing reference article of 3 June 1999: for a button 1 in across and 1/4 in thick, 1 1/8 in on one side of the centre line and
	// 1/8 in on the other, 1 1/4 in in all; the 1/8 in (3 mm) also in the instruction manual of the sewing machine Singer 1288, page 67.
	it.each([
		['inch', 28.575, 3.175],
		['metric', 28.75, 3]
	])('across, by the %s tape, lie %d mm inside the centre line and %d mm beyond it', (tape, inside, beyond) => {
		const { draft } = carried(plainBodice(), buttonholes({ tape }));
		// The edge is x = 0 and laps by 20, so the centre line is x = 20.
		for (const { at, to } of holes(draft)) {
			expect(20 - at[0]).toBeCloseTo(beyond, 9);
			expect(to![0] - 20).toBeCloseTo(inside, 9);
			expect(to![1]).toBeCloseTo(at[1], 9);
			expect(far(at, to!)).toBeCloseTo(31.75, 9);
		}
	});

	it.each([
		['diameter-and-thickness', 31.75],
		['worked', 34.925],
		['flat', 28.575]
	])('by the rule "%s" are %d mm long', (rule, length) => {
		const { draft } = carried(plainBodice(), buttonholes({ rule }));
		for (const { at, to } of holes(draft)) expect(far(at, to!)).toBeCloseTo(length, 9);
	});

	it('along lie on the centre line, beginning above the button', () => {
		const { draft } = carried(plainBodice(), buttonholes({ direction: 'along' }));
		for (const { at, to } of holes(draft)) {
			expect([at[0], to![0]]).toEqual([expect.closeTo(20, 9), expect.closeTo(20, 9)]);
			expect(to![1] - at[1]).toBeCloseTo(31.75, 9);
		}
		expect(middle(holes(draft)[0])[1]).toBeCloseTo(75, 9);
	});

	it('are as many as asked, the first and the last at their places, at equal gaps', () => {
		const { draft, applied } = carried(plainBodice(), buttonholes());
		expect(holes(draft).map(({ id }) => id)).toEqual([1, 2, 3, 4, 5, 6].map((n) => `buttonhole-${n}`));
		expect(middle(holes(draft)[0])[1]).toBeCloseTo(75, 9);
		expect(middle(holes(draft)[5])[1]).toBeCloseTo(390, 9);
		for (const gap of gaps(draft)) expect(gap).toBeCloseTo(315 / 5, 9);
		expect(applied[0].touched).toHaveLength(6);
	});

	// Neckline, fullest bust and waist first, then even divisions between them: the sewing reference article of 3 June 1999.
	it('one lies at the bust level, and the gaps on either side are equal among themselves', () => {
		const { draft } = carried(plainBodice(), buttonholes({ fullest: { level: 'bust' }, count: 7 }));
		const middles = holes(draft).map((hole) => middle(hole)[1]);
		expect(Math.min(...middles.map((y) => Math.abs(y - 170)))).toBeLessThan(1);
		// 95 above and 220 below shared by six gaps: two of 47.5 and four of 55 are as alike as can be.
		expect(gaps(draft).map((gap) => Math.round(gap * 10) / 10)).toEqual([47.5, 47.5, 55, 55, 55, 55]);
	});

	it('about so far apart: each stretch has the nearest whole number of gaps', () => {
		const { draft } = carried(
			plainBodice(),
			buttonholes({ fullest: { level: 'bust' }, count: undefined, spacing: 60 })
		);
		expect(gaps(draft).map((gap) => Math.round(gap * 10) / 10)).toEqual([47.5, 47.5, 55, 55, 55, 55]);
		const wide = carried(plainBodice(), buttonholes({ count: undefined, spacing: 100 })).draft;
		for (const gap of gaps(wide)) expect(gap).toBeCloseTo(105, 9);
	});

	it('after the front is lengthened, are spaced anew between the same places', () => {
		const lengthen = {
			id: 'longer',
			kind: 'spread',
			cuts: [
				{
					piece: 'front',
					from: { edge: 'front/centre', end: 'start', offset: 180 },
					to: { edge: 'front/side', end: 'start', offset: 120 },
					gapFrom: 24,
					gapTo: 24,
					keep: 'front/hem'
				}
			]
		};
		const before = carried(plainBodice(), buttonholes({ fullest: { level: 'bust' }, count: 7 })).draft;
		const longer = carrying(before, lengthen);
		// Only ridden with the cloth, one gap is 24 wider than its neighbours.
		expect(Math.max(...gaps(longer).slice(2)) - Math.min(...gaps(longer).slice(2))).toBeCloseTo(24, 6);
		const { draft } = carried(longer, { ...buttonholes({ fullest: { level: 'bust' }, count: 7 }), id: 'again' });
		expect(holes(draft)).toHaveLength(7);
		for (const gap of gaps(draft).slice(2)) expect(gap).toBeCloseTo(244 / 4, 6);
		const level = draft.pieces[0].levels[0] as Extract<Level, { line: unknown }>;
		expect(Math.abs(middle(holes(draft)[2])[1] - level.line[0][1])).toBeLessThan(1);
		expect(middle(holes(draft)[6])[1]).toBeCloseTo(390, 6);
	});

	it('on a shaped front the middles lie on the centre line, the lap inside the edge, and at the bust level itself', () => {
		const shaped = bodiceWith((file) => {
			file.pieces[0].edges[4].path = 'M -20 450 C 10 330 -25 200 0 60';
			file.pieces[0].edges[3].path = 'M 250 450 L -20 450';
		});
		const { draft } = carried(shaped, buttonholes({ fullest: { level: 'bust' }, count: 7 }), { within: 0.05 });
		const { path } = findEdge(draft, 'front/centre')!.edge;
		for (const hole of holes(draft)) {
			const at = middle(hole);
			const nearest = Math.min(...Array.from({ length: 4000 }, (_, i) => far(pointAt(path, i / 10), at)));
			expect(nearest).toBeCloseTo(20, 1);
		}
		expect(middle(holes(draft)[2])[1]).toBeCloseTo(170, 1);
		const between = gaps(draft).slice(2);
		expect(Math.max(...between) - Math.min(...between)).toBeLessThan(0.5);
	});

	it('on the left only, are on the left front', () => {
		const { draft } = carried(plainBodice(), { ...buttonholes(), on: 'left' });
		expect(holes(draft, 'front@left')).toHaveLength(6);
		expect(holes(draft, 'front@right')).toHaveLength(0);
	});

	it('asked with fewer, the ones too many are gone', () => {
		const six = carried(plainBodice(), buttonholes()).draft;
		const four = carried(six, { ...buttonholes({ count: 4 }), id: 'again' }).draft;
		expect(holes(four)).toHaveLength(4);
		const others = carried(four, {
			...buttonholes({ id: 'low', first: { end: 'start', offset: 50 }, last: { end: 'start', offset: 20 }, count: 2 }),
			id: 'low'
		});
		expect(holes(others.draft)).toHaveLength(6);
	});

	it('say so where the cloth beyond the centre line is narrower than any rule asks', () => {
		const { remarks } = carried(plainBodice(), buttonholes({ button: { diameter: 30, thickness: 4 } }));
		expect(remarks.map(({ code, where }) => [code, where])).toEqual([['extension-short', 'front/centre']]);
		// Half of 30 and 6.35, which is less than three quarters of 30: 1.35 more than the 20 there are.
		expect(remarks[0].figure).toBeCloseTo(1.35, 9);
		expect(carried(plainBodice(), buttonholes()).remarks).toEqual([]);
	});

	it('wait until the button and their number are known', () => {
		for (const fields of [{ button: undefined }, { count: undefined }])
			expect(notCarried(plainBodice(), buttonholes(fields)).why).toBe('not-read');
	});

	it('are refused on an edge without a lap, out of order, across a dart, too few, or off the cloth', () => {
		expect(notCarried(plainBodice(), buttonholes({ edge: 'front/hem' })).code).toBe('no-lap');
		expect(notCarried(plainBodice(), buttonholes({ fullest: { end: 'start', offset: 10 } })).code).toBe('place-order');
		expect(notCarried(plainBodice(), buttonholes({ last: { end: 'finish', offset: 15 } })).code).toBe('place-order');
		expect(notCarried(plainBodice(), buttonholes({ fullest: { level: 'bust' }, count: 2 })).code).toBe('too-few');
		expect(
			notCarried(plainBodice(), buttonholes({ last: { end: 'start', offset: 10 }, direction: 'along' })).code
		).toBe('buttonhole-outside');
		const dart = bodiceWith((file) => {
			file.pieces[0].darts = [{ id: 'dart', edge: 'centre', from: 200, to: 212, point: [90, 240] }];
		});
		expect(notCarried(dart, buttonholes()).code).toBe('mouth-between');
		expect(notCarried(plainBodice(), buttonholes({ fullest: { level: 'knee' } })).why).toBe('no-place');
		expect(() => parseAlteration(buttonholes({ spacing: 50 }))).toThrow(/one of the two/);
	});
});

describe('the second end of a mark', () => {
	it('goes into the file and comes back; a file without one reads as before', () => {
		const { draft } = carried(plainBodice(), buttonholes({ count: 2 }));
		const text = JSON.stringify(formatDraft(draft));
		expect(parseDraft(JSON.parse(text))).toEqual(draft);
		expect(JSON.stringify(formatDraft(plainBodice()))).not.toContain('"to"');
	});

	it('is refused in the file on any other mark, and on top of the first', () => {
		const with_ = (fields: object) => () =>
			bodiceWith((file) => {
				file.pieces[0].marks = [{ id: 'x', kind: 'buttonhole', at: [30, 100], ...fields }];
			});
		expect(with_({ kind: 'button', to: [40, 100] })).toThrow(/Only a buttonhole/);
		expect(with_({ to: [30, 100] })).toThrow(/lie apart/);
		expect(with_({ to: [40, 100] })).not.toThrow();
	});
});
