import { describe, expect, test } from 'vitest';
import {
	buttonExtension,
	buttonholeLength,
	carry,
	findPiece,
	findPlace,
	parseDraft,
	pointAt
} from '../../../../src/lib/engine/index.ts';
import type { Draft, Mark } from '../../../../src/lib/engine/index.ts';
import { formOfAlteration } from '../../../../src/lib/ui/fitting/form/form-of-alteration.ts';
import { asAlterations } from '../../../../src/lib/ui/fitting/form/read-alteration.ts';
import type { Typed } from '../../../../src/lib/ui/fitting/typed.ts';
import type { Unit } from '../../../../src/lib/measure/units.ts';
import { boxes, inch, jacket } from '../drafts.ts';
import { carriedTyped, problemsTyped, readTyped } from '../read-typed.ts';

const marked = (typed: Typed): Typed => ({ act: 'marked', ...typed });
const read = (draft: Draft, typed: Typed, unit?: Unit) => readTyped(draft, marked(typed), unit);
const problems = (draft: Draft, typed: Typed) => problemsTyped(draft, marked(typed));
const carried = (draft: Draft, typed: Typed) => carriedTyped(draft, marked(typed));

const bustPoint = (draft: Draft) => findPiece(draft, 'front')!.marks.find(({ id }) => id === 'bust-point')!.at;

/** One front, 200 by 500 mm, with a button stand of 1″ on its front edge. */
const stand: Draft = parseDraft({
	format: 'pin-to-paper/draft@1',
	name: 'Stand',
	pieces: [
		{
			id: 'front',
			name: 'Front',
			cut: 'pair',
			edges: [
				{ id: 'neck', name: 'Neck', kind: 'open', path: 'M 0 0 L 200 0' },
				{ id: 'front-edge', name: 'Front edge', kind: 'open', path: 'M 200 0 L 200 500', lap: inch },
				{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 200 500 L 0 500' },
				{ id: 'side', name: 'Side', kind: 'seam', path: 'M 0 500 L 0 0' }
			],
			levels: [
				{ level: 'bust', line: [[10, 120] as const, [190, 120] as const] },
				{ level: 'waist', line: [[10, 300] as const, [190, 300] as const] }
			],
			marks: [{ id: 'bust-point', kind: 'bust-point', at: [90, 120] }]
		}
	]
});

describe('the bust point', () => {
	test('moved down and towards the front edge lies there, said by how far it is square in from that edge', () => {
		const typed = { piece: 'front', done: 'moved', up: '1/2', upWay: 'down', aside: '1/4', asideWay: 'in' };
		const [x, y] = bustPoint(stand);
		expect(bustPoint(carried(stand, typed))).toEqual([
			expect.closeTo(x + inch / 4, 5),
			expect.closeTo(y + inch / 2, 5)
		]);
		expect(read(stand, typed).intents).toEqual([
			{
				kind: 'mark',
				on: 'both',
				piece: 'front',
				move: {
					id: 'bust-point',
					to: {
						from: { edge: 'front/front-edge', level: 'bust', offset: 12.7 },
						in: expect.closeTo(110 - inch / 4, 5)
					}
				}
			}
		]);
	});

	test('on the jacket, whose front edge is a curve, it goes exactly as far', () => {
		const [x, y] = bustPoint(jacket);
		const after = carried(jacket, {
			piece: 'front',
			done: 'moved',
			up: '3/8',
			upWay: 'up',
			aside: '1/2',
			asideWay: 'out'
		});
		expect(bustPoint(after)).toEqual([expect.closeTo(x - inch / 2, 4), expect.closeTo(y - (3 / 8) * inch, 4)]);
	});

	test('marked so far in from an edge at a place, where there was none', () => {
		const after = carried(jacket, { piece: 'back', done: 'from-edge', place: 'centre-back|level:bust', in: '3' });
		const mark = findPiece(after, 'back')!.marks.find(({ kind }) => kind === 'bust-point')!;
		const found = findPlace(jacket, 'back/centre-back', { level: 'bust' });
		if ('problem' in found) throw new Error(found.problem);
		const edge = findPiece(jacket, 'back')!.edges.find(({ id }) => id === 'centre-back')!;
		const [x, y] = pointAt(edge.path, found.s);
		expect(Math.hypot(mark.at[0] - x, mark.at[1] - y)).toBeCloseTo(3 * inch, 6);
	});

	test('taken off, and a notch as well', () => {
		expect(findPiece(carried(jacket, { piece: 'front', done: 'remove', mark: 'bust-point' }), 'front')!.marks).toEqual(
			[]
		);
		const after = carried(jacket, { piece: 'front', done: 'remove', mark: 'side-high' });
		expect(findPiece(after, 'front')!.notches.map(({ id }) => id)).not.toContain('side-high');
	});
});

describe('a notch on a seam', () => {
	test('is snipped on both its pieces at one place, and each knows the other', () => {
		const { intents } = read(jacket, { seam: 'side', at: 'level:waist', from: '-1' });
		expect(intents).toHaveLength(2);
		const after = carry(jacket, asAlterations(intents), { queries: false }).draft;
		const [one, other] = (['under-arm', 'front'] as const).map((piece) =>
			findPiece(after, piece)!.notches.find(({ id }) => id === 'notch-1')!
		);
		expect([one.mate, other.mate]).toEqual(['front/notch-1', 'under-arm/notch-1']);
		// The side seam is walked down on the under-arm and up on the front; the waist is met at 215.08 and at 125.73 mm of them.
		const at = (piece: string, edge: string) => {
			const found = findPlace(jacket, `${piece}/${edge}`, { level: 'waist' });
			return 'problem' in found ? NaN : found.s;
		};
		expect(one.at).toBeCloseTo(at('under-arm', 'side') - inch, 5);
		expect(other.at).toBeCloseTo(at('front', 'side') + inch, 5);
	});

	test('on one of them alone, and on an open edge', () => {
		expect(read(jacket, { seam: 'side', at: 'fraction:0.5', pieces: 'b' }).intents).toMatchObject([
			{ piece: 'front', notch: { id: 'notch-1' } }
		]);
		expect(read(stand, { edge: 'front/neck', what: 'notch', at: 'fraction:0.5' }).intents).toEqual([
			{ kind: 'mark', on: 'both', piece: 'front', notch: { id: 'notch-1', at: { edge: 'front/neck', fraction: 0.5 } } }
		]);
	});
});

describe('buttons and buttonholes', () => {
	const holes: Typed = {
		edge: 'front/front-edge',
		what: 'buttonholes',
		firstAt: 'end:start',
		firstFrom: '1',
		lastAt: 'end:finish',
		lastFrom: '4',
		fullest: 'level:bust',
		count: '6',
		diameter: '1',
		thickness: '1/4'
	};
	const marks = (draft: Draft): readonly Mark[] =>
		findPiece(draft, 'front')!.marks.filter(({ kind }) => kind === 'buttonhole');

	test('lie across the centre line, an eighth beyond it; a 1″ button 1/4″ thick wants 1 1/4″ (Threads, 1999)', () => {
		for (const { at, to } of marks(carried(stand, holes))) {
			// The edge lies at x = 200, its centre line 1″ inside.
			expect(at[0]).toBeCloseTo(200 - inch + inch / 8, 6);
			expect(to![0]).toBeCloseTo(at[0] - 31.75, 6);
		}
	});

	test('first, fullest and last are fixed, the others shared out evenly; 4″ stay free above the hem (Threads, 1999)', () => {
		const heights = marks(carried(stand, holes)).map(({ at }) => at[1]);
		expect(heights).toHaveLength(6);
		expect(heights[0]).toBeCloseTo(inch, 6);
		expect(heights[5]).toBeCloseTo(500 - 4 * inch, 6);
		expect(heights.some((y) => Math.abs(y - 120) < 1)).toBe(true);
		const fullest = heights.findIndex((y) => Math.abs(y - 120) < 1);
		const gaps = heights.slice(1).map((y, i) => y - heights[i]);
		for (const run of [gaps.slice(0, fullest), gaps.slice(fullest)])
			for (const gap of run) expect(gap).toBeCloseTo(run[0], 6);
	});

	// Worked examples of three handbooks for a 1″ button 1/4″ thick.
	test.each([
		['diameter-and-thickness', 31.75],
		['worked', 34.925],
		['flat', 28.575]
	] as const)('cut by the rule “%s” they are %d mm long', (rule, mm) => {
		const [{ at, to }] = marks(carried(stand, { ...holes, rule }));
		expect(Math.abs(to![0] - at[0])).toBeCloseTo(mm, 6);
		expect(buttonholeLength({ diameter: 25.4, thickness: 6.35 }, rule, 'inch')).toBeCloseTo(mm, 9);
	});

	test('three quarters of a 1″ button, or half of it and 1/4″, are the same extension of 3/4″', () => {
		const widths = (['three-quarters', 'diameter', 'half-and-a-quarter'] as const).map((rule) =>
			buttonExtension({ diameter: 25.4 }, rule)
		);
		expect(widths).toEqual([expect.closeTo(19.05, 9), 25.4, expect.closeTo(19.05, 9)]);
	});

	test('along the edge they lie on the centre line; so far apart instead of so many', () => {
		const after = carried(stand, { ...holes, direction: 'along', share: 'spacing', spacing: '2', fullest: 'none' });
		for (const { at, to } of marks(after)) expect([at[0], to![0]]).toEqual([expect.closeTo(200 - inch, 6), at[0]]);
		const heights = marks(after).map(({ at }) => at[1]);
		expect(heights[1] - heights[0]).toBeCloseTo((500 - 5 * inch) / Math.round((500 - 5 * inch) / (2 * inch)), 6);
	});

	test('one button lies on the centre line if nothing else is said', () => {
		const after = carried(stand, { edge: 'front/front-edge', what: 'button', at: 'level:waist' });
		expect(findPiece(after, 'front')!.marks.find(({ kind }) => kind === 'button')!.at).toEqual([200 - inch, 300]);
	});

	test('pinned and read later: the places are kept, number and button are asked for', () => {
		const { intents } = read(stand, { ...holes, count: '', diameter: '', thickness: '', read: 'later' });
		expect(intents[0].buttonholes).not.toHaveProperty('count');
		expect(carry(stand, asAlterations(intents), { queries: false }).unplaced[0].why).toBe('not-read');
	});
});

describe('what is wrong is said, with what would be right', () => {
	const holes = { edge: 'front/front-edge', firstAt: 'end:start', lastAt: 'end:finish' };
	test.each([
		['which piece', {}, 'piece', 'On which piece, seam or edge?'],
		['a piece that is not there', { piece: 'yoke' }, 'piece', 'There is no piece “yoke” in this draft'],
		['no move', { piece: 'front', done: 'moved' }, 'up', 'By how much was it moved?'],
		['1/0', { piece: 'front', done: 'moved', up: '1/0' }, 'up', 'Nothing can be divided by 0'],
		['no place', { piece: 'front', done: 'from-edge', in: '1' }, 'place', 'Choose one of those offered'],
		['not how far in', { piece: 'front', done: 'from-edge', place: 'side|level:bust' }, 'in', 'How far in'],
		[
			'off the edge',
			{ piece: 'front', done: 'from-edge', place: 'side|level:bust', from: '-15', in: '1' },
			'from',
			'beyond the start'
		],
		['what is not there', { piece: 'front', done: 'remove', mark: 'dart' }, 'mark', 'It has: bust point'],
		['how many', { ...holes, diameter: '1' }, 'count', 'How many are there?'],
		['“six”', { ...holes, count: 'six', diameter: '1' }, 'count', 'no number of buttonholes'],
		['one', { ...holes, count: '1', diameter: '1' }, 'count', 'Write 2 or more'],
		['no button', { ...holes, count: '5' }, 'diameter', 'How wide is the button?'],
		['a seam place', { seam: 'side', at: 'level:knee' }, 'at', 'knee']
	] as const)('%s', (_, typed, name, sentence) => {
		const draft = 'seam' in typed ? jacket : stand;
		expect(problems(draft, typed)[name]).toContain(sentence);
	});

	test('a piece without a bust point has none to move', () => {
		expect(problems(jacket, { piece: 'back', done: 'moved', up: '1' }).done).toContain('no bust point marked yet');
	});
});

describe('put back into its form and read again it is the same alteration:', () => {
	const holes = {
		edge: 'front/front-edge',
		what: 'buttonholes',
		firstAt: 'end:start',
		firstFrom: '1',
		lastAt: 'end:finish'
	};
	test.each([
		['a bust point moved', stand, { piece: 'front', done: 'moved', up: '1/2', aside: '1/4' }],
		['a bust point moved on a curve', jacket, { piece: 'front', done: 'moved', up: '3/8', upWay: 'down' }],
		[
			'a bust point set',
			jacket,
			{ piece: 'back', done: 'from-edge', place: 'side-back|fraction:0.5', from: '1', in: '2' }
		],
		['a mark taken off', boxes, { piece: 'front', done: 'remove', mark: 'bust-point', sides: 'left' }],
		['a notch on an edge', stand, { edge: 'front/neck', what: 'notch', at: 'fraction:0.25', from: '1/8' }],
		['a button', stand, { edge: 'front/front-edge', what: 'button', at: 'level:waist', in: '1/2' }],
		[
			'buttonholes',
			stand,
			{ ...holes, fullest: 'level:bust', count: '7', diameter: '5/8', thickness: '1/8', rule: 'flat' }
		],
		['so far apart, along', stand, { ...holes, share: 'spacing', spacing: '2 1/2', diameter: '1', direction: 'along' }],
		['not read yet', stand, { ...holes, read: 'later' }]
	] as const)('%s', (_, draft, typed) => {
		const first = read(draft, typed);
		const form = formOfAlteration(draft, { ...first, intent: first.intents[0] }, 'in')!;
		const again = read(draft, 'read' in typed ? { ...form, read: 'later' } : form);
		expect(again.intents).toEqual(
			JSON.parse(JSON.stringify(first.intents), (_name, value: unknown) =>
				typeof value === 'number' ? expect.closeTo(value, 2) : value
			)
		);
	});

	test('either half of a notch on a seam, by its own piece', () => {
		const { intents } = read(jacket, { seam: 'side', at: 'level:waist', from: '1' });
		const withFirst = carry(jacket, asAlterations([intents[0]]), { queries: false }).draft;
		for (const [i, intent] of intents.entries()) {
			const draft = i === 0 ? jacket : withFirst;
			const form = formOfAlteration(draft, { intent }, 'in')!;
			expect(read(draft, form).intents).toEqual([
				JSON.parse(JSON.stringify(intent), (_name, value: unknown) =>
					typeof value === 'number' ? expect.closeTo(value, 2) : value
				)
			]);
		}
	});
});
