import { describe, expect, test } from 'vitest';
import {
	carry,
	heightAbove,
	parseDraft,
	pathLength,
	pointAt,
	stitchedLength,
	walk
} from '../../../../src/lib/engine/index.ts';
import type { AlterationBase, Draft } from '../../../../src/lib/engine/index.ts';
import { formOfAlteration } from '../../../../src/lib/ui/fitting/form/form-of-alteration.ts';
import { asAlterations } from '../../../../src/lib/ui/fitting/form/read-alteration.ts';
import type { Typed } from '../../../../src/lib/ui/fitting/typed.ts';
import { boxes, inch, jacket } from '../drafts.ts';
import { carriedTyped, problemsTyped, readTyped } from '../read-typed.ts';

const fold = { act: 'folded-across', across: 'waist' } as const;
const half = inch / 2;

/** A straight panel with its waist, so that every length is known: 250 mm above the waist, 150 below. */
const panel = (id: string, width: number, x = 0) => ({
	id,
	name: id,
	cut: 'pair',
	edges: [
		{ id: 'top', kind: 'open', path: `M ${x} 0 L ${x + width} 0` },
		{ id: 'right', kind: 'seam', path: `M ${x + width} 0 L ${x + width} 400` },
		{ id: 'hem', kind: 'open', path: `M ${x + width} 400 L ${x} 400` },
		{ id: 'left', kind: 'seam', path: `M ${x} 400 L ${x} 0` }
	],
	levels: [
		{ level: 'waist', line: [[x + 10, 250] as const, [x + width - 10, 250] as const] },
		{ level: 'hip', line: [[x + 10, 350] as const, [x + width - 10, 350] as const] }
	],
	grain: [
		[x + width / 2, 280],
		[x + width / 2, 380]
	]
});

/** Three panels, the first sewn to its own mirror image at the centre back. */
const panels: Draft = parseDraft({
	format: 'pin-to-paper/draft@1',
	name: 'Panels',
	pieces: [panel('back', 100), panel('side', 60), panel('front', 140)],
	seams: [
		{ id: 'centre-back', name: 'Centre-back seam', a: [{ edge: 'back/left' }], b: 'mirror' },
		{
			id: 'side-back',
			name: 'Side-back seam',
			a: [{ edge: 'back/right' }],
			b: [{ edge: 'side/left', reversed: true }]
		},
		{ id: 'side', name: 'Side seam', a: [{ edge: 'side/right' }], b: [{ edge: 'front/left', reversed: true }] }
	]
});

const lengths = (draft: Draft) =>
	['back/left', 'back/right', 'side/left', 'side/right', 'front/left', 'front/right'].map((edge) =>
		stitchedLength(draft, edge)
	);

describe('a fold across, 2 1/2″ above the waist (The Dressmaker, part 4)', () => {
	test('begins with every piece that the line crosses, at 63.5 mm, and shortens each by exactly as much', () => {
		const { intents, act, measured } = readTyped(panels, { ...fold, first: '1/2' });
		expect({ act, measured }).toEqual({ act: 'folded-across', measured: 'whole-fold' });
		expect(intents).toEqual([
			{
				kind: 'spread',
				on: 'both',
				cuts: ['back', 'side', 'front'].map((piece) => ({
					piece,
					from: { edge: `${piece}/left`, level: 'waist', offset: 63.5 },
					to: { edge: `${piece}/right`, level: 'waist', offset: -63.5 },
					gapFrom: -half,
					gapTo: -half,
					keep: `${piece}/hem`
				}))
			}
		]);
		const after = carriedTyped(panels, { ...fold, first: '1/2' });
		for (const length of lengths(after)) expect(length).toBeCloseTo(400 - half, 6);
		for (const { difference } of walk(after)) expect(difference).toBeCloseTo(0, 6);
	});

	test('on the jacket every piece loses exactly that much from its line down, girths elsewhere and seams stay', () => {
		const after = carriedTyped(jacket, { ...fold, first: '3/8' });
		for (const id of ['back', 'side-back', 'under-arm', 'front']) {
			const [was, is] = [jacket, after].map((draft) => draft.pieces.find((piece) => piece.id === id)!);
			// From the bust line, above the fold, down to the waist line, below it: 165.1 mm on the draft.
			const depth = (piece: typeof was) => {
				const waist = piece.levels.find(({ level }) => level === 'waist')!;
				return heightAbove(piece, 'bust', 'line' in waist ? waist.line[0] : [0, 0])!;
			};
			expect(depth(is) - depth(was)).toBeCloseTo(0.375 * inch, 6);
		}
		for (const one of walk(after)) {
			const before = walk(jacket).find(({ seam }) => seam === one.seam)!;
			// Layers that slant unlike there lose unlike lengths to one fold, and are evened off afterwards: the note's band, 1/8″.
			expect(Math.abs(one.difference - before.difference)).toBeLessThan(inch / 8);
		}
	});

	test('a tuck is half as deep as what it takes out (Central Washington University, costume construction, ch. 17): 6 mm takes 12', () => {
		const { intents, measured, readings } = readTyped(panels, { ...fold, first: '6 mm', measured: 'one-layer' });
		expect(measured).toBe('one-layer');
		expect(readings.places[0]).toEqual({ at: { end: 'start' }, rightA: -6 });
		expect((intents[0].cuts as { gapFrom: number }[])[0].gapFrom).toBeCloseTo(-12, 9);
		const after = carriedTyped(panels, { ...fold, first: '6 mm', measured: 'one-layer' });
		for (const length of lengths(after)) expect(length).toBeCloseTo(388, 6);
	});

	test('another height, below the line, and pieces that are not ticked keep their length', () => {
		const typed = { ...fold, ticked: 'yes', 'piece.back': 'yes', off: '2', offWay: 'below', first: '1/4' };
		const { intents } = readTyped(panels, typed);
		expect(intents[0].cuts).toMatchObject([
			{ piece: 'back', from: { level: 'waist', offset: -2 * inch }, keep: 'back/hem' }
		]);
		expect(lengths(carriedTyped(panels, typed)).map((mm) => Math.round(mm * 100) / 100)).toEqual([
			393.65, 393.65, 400, 400, 400, 400
		]);
	});

	test('which part stays is the one with the grain line, or the one asked for', () => {
		const keep = (typed: Typed) => (readTyped(panels, typed).intents[0].cuts as { keep: string }[])[0].keep;
		expect(keep({ ...fold, first: '1/2' })).toBe('back/hem');
		expect(keep({ ...fold, first: '1/2', stays: 'above' })).toBe('back/top');
		const low = readTyped(jacket, { ...fold, across: 'hip', first: '1/2' }).intents[0].cuts as { keep: string }[];
		expect(low[0].keep).toBe('back/shoulder');
	});
});

describe('a wedge', () => {
	const tuck = (mm: number): Typed => ({
		...fold,
		ticked: 'yes',
		'piece.back': 'yes',
		'piece.side': 'yes',
		off: '2 1/2',
		shape: 'wedge',
		first: `${mm} mm`,
		last: '0'
	});

	test('fades straight over the pieces between, so that both layers of each seam get the same', () => {
		const cuts = readTyped(panels, tuck(16)).intents[0].cuts as { piece: string; gapFrom: number; gapTo: number }[];
		// 100 of 160 mm along, 6 of the 16 are left.
		expect(cuts.map(({ piece, gapFrom, gapTo }) => [piece, gapFrom, gapTo])).toEqual([
			['back', -16, expect.closeTo(-6, 9)],
			['side', expect.closeTo(-6, 9), 0]
		]);
		expect(cuts[0].gapTo).toBe(cuts[1].gapFrom);
	});

	test('a swayback tuck shortens the centre back and leaves the side seam (adjusted by 1/4 to 1″ in sewing books)', () => {
		const after = carriedTyped(panels, tuck(16));
		const [centreBack, , , side] = lengths(after);
		const [centreBackWas, , , sideWas] = lengths(panels);
		expect(side).toBeCloseTo(sideWas, 6);
		expect(centreBackWas - centreBack).toBeGreaterThan(15.9);
		expect(centreBackWas - centreBack).toBeLessThan(16.3);
		expect(stitchedLength(after, 'front/left')).toBe(stitchedLength(panels, 'front/left'));
	});

	test('10 mm to nothing over one piece 200 mm wide turns it by 2 asin(10 / 400) = 2.8655°', () => {
		const one = parseDraft({
			format: 'pin-to-paper/draft@1',
			name: 'One',
			pieces: [panel('back', 200)],
			seams: [{ id: 'centre-back', name: 'Centre back', a: [{ edge: 'back/left' }], b: 'mirror' }]
		});
		const after = carriedTyped(one, { ...fold, shape: 'wedge', first: '10 mm', last: '0', stays: 'below' });
		const top = after.pieces[0].edges[0].path;
		const [start, end] = [pointAt(top, 0), pointAt(top, pathLength(top))];
		const turned = Math.atan2(Math.abs(end[1] - start[1]), end[0] - start[0]);
		// The gap is square to the line here, across the opening there: 0.0014° apart.
		expect((turned * 180) / Math.PI).toBeCloseTo(2.8655, 2);
	});
});

describe('slashed and opened', () => {
	test('lengthens every piece by the gap, and undoes a fold of the same', () => {
		const opened = carriedTyped(panels, { act: 'slashed', across: 'waist', first: '1/2' });
		for (const length of lengths(opened)) expect(length).toBeCloseTo(400 + half, 6);
		expect(readTyped(panels, { act: 'slashed', across: 'waist', first: '1/2' }).measured).toBeNull();
	});

	test('half way between underarm and neck: back and front, each at its own height', () => {
		const { intents } = readTyped(jacket, { act: 'slashed', across: 'half-way', first: '1/4' });
		const cuts = intents[0].cuts as { piece: string; from: { edge: string }; to: { edge: string } }[];
		expect(cuts.map(({ piece, from, to }) => [piece, from.edge, to.edge])).toEqual([
			['back', 'back/centre-back', 'back/armhole'],
			['front', 'front/armhole', 'front/front-edge']
		]);
		const after = carriedTyped(jacket, { act: 'slashed', across: 'half-way', first: '1/4' });
		expect(stitchedLength(after, 'back/centre-back') - stitchedLength(jacket, 'back/centre-back')).toBeCloseTo(
			inch / 4,
			1
		);
		expect(stitchedLength(after, 'side-back/armhole')).toBe(stitchedLength(jacket, 'side-back/armhole'));
	});

	test('a sleeve goes round: at the elbow, 1/2″ at one seam to nothing at the other', () => {
		const typed = { act: 'slashed', across: 'elbow', shape: 'wedge', first: '1/2', last: '0' };
		const cuts = readTyped(jacket, typed).intents[0].cuts as {
			gapFrom: number;
			gapTo: number;
			from: { edge: string };
		}[];
		expect(cuts.map(({ gapFrom, gapTo }) => [gapFrom, gapTo])).toEqual([
			[half, 0],
			[0, half]
		]);
		const seam = (edge: string) => edge.split('/')[1];
		expect(seam(cuts[0].from.edge)).toBe('hind');
	});
});

describe('what is wrong is said, with what would be right', () => {
	test.each([
		[{ ...fold, first: '1/0' }, 'first', 'Nothing can be divided by 0'],
		[{ ...fold, first: '0' }, 'first', 'That changes nothing'],
		[{ ...fold }, 'first', 'pinned and not yet read'],
		[{ ...fold, ticked: 'yes', off: '2 1/2', first: '1/2' }, 'ticked', 'Tick one at least'],
		[{ ...fold, ticked: 'yes', 'piece.yoke': 'yes', off: '2', first: '1/2' }, 'ticked', 'back, side and front'],
		[{ ...fold, off: '20', first: '1/2' }, 'off', 'the pieces end about 9 1/2″ above it'],
		[{ ...fold, ticked: 'yes', 'piece.back': 'yes', first: '1/2' }, 'off', 'Write 0 for on the line itself'],
		[{ ...fold, shape: 'wedge', first: '1/2' }, 'last', '0: to nothing'],
		[{ ...fold, shape: 'pleat', first: '1/2' }, 'shape', 'alike all along, or a wedge'],
		[{ act: 'folded-across' }, 'across', 'Beside which line?'],
		[{ act: 'folded-across', across: 'knee', first: '1/2' }, 'across', 'There is no line “knee” in this draft']
	] as const)('%o', (typed, name, sentence) => {
		expect(problemsTyped(panels, typed)[name]).toContain(sentence);
	});

	test('a fold deeper than the piece is long is refused with the most that works', () => {
		const { intents } = readTyped(panels, { ...fold, first: '15' });
		const { unplaced } = carry(panels, asAlterations(intents), { queries: false });
		expect(unplaced[0]).toMatchObject({ why: 'refused', code: 'fold-runs-off' });
		const most = (unplaced[0].settle[0] as AlterationBase & { cuts: { gapFrom: number }[] }).cuts[0].gapFrom;
		// Half of it is trimmed above the line, 186.5 mm from the top, and half below, 213.5 mm from the hem.
		expect(most).toBeGreaterThan(-2 * 186.5);
		expect(most).toBeLessThan(-2 * 186.5 + inch / 8);
		expect(carry(panels, unplaced[0].settle, { queries: false }).unplaced).toEqual([]);
	});

	test('a piece on the fold is folded on both sides or not at all', () => {
		const draft = parseDraft({
			format: 'pin-to-paper/draft@1',
			name: 'On the fold',
			pieces: [
				{
					...panel('back', 100),
					cut: 'fold',
					edges: panel('back', 100).edges.map((edge) => (edge.id === 'left' ? { ...edge, kind: 'fold' } : edge))
				}
			],
			seams: []
		});
		expect(problemsTyped(draft, { ...fold, first: '1/2', sides: 'right' }).sides).toContain('cut on the fold');
		expect(stitchedLength(carriedTyped(draft, { ...fold, first: '1/2' }), 'back/right')).toBeCloseTo(400 - half, 6);
	});
});

test('pinned, read later: the pieces and the line are kept without amounts', () => {
	const { intents, readings } = readTyped(panels, { ...fold, read: 'later' });
	expect((intents[0].cuts as object[])[0]).toEqual({
		piece: 'back',
		from: { edge: 'back/left', level: 'waist', offset: 63.5 },
		to: { edge: 'back/right', level: 'waist', offset: -63.5 },
		keep: 'back/hem'
	});
	expect(readings.places).toEqual([]);
	expect(carry(panels, asAlterations(intents), { queries: false }).unplaced[0].why).toBe('not-read');
});

test('each side its own: two alterations, what is 0 on one side is not made there', () => {
	const both = readTyped(panels, { ...fold, sides: 'each', first: '1/2', leftFirst: '1/4' }).intents;
	expect(both.map(({ on, cuts }) => [on, (cuts as { gapFrom: number }[])[0].gapFrom])).toEqual([
		['right', -half],
		['left', -half / 2]
	]);
	expect(
		readTyped(panels, { ...fold, sides: 'each', first: '0', leftFirst: '1/4' }).intents.map(({ on }) => on)
	).toEqual(['left']);
});

describe('put back into its form and read again it is the same alteration:', () => {
	test.each([
		['all pieces', panels, { ...fold, first: '1/2' }],
		['a tuck, left only', panels, { ...fold, first: '6 mm', measured: 'one-layer', sides: 'left' }],
		[
			'one piece, on the line',
			panels,
			{ ...fold, ticked: 'yes', 'piece.side': 'yes', off: '0', first: '3/8', stays: 'above' }
		],
		[
			'a wedge below the waist',
			jacket,
			{ act: 'slashed', across: 'waist', off: '3', offWay: 'below', shape: 'wedge', first: '0', last: '1/2' }
		],
		['half way up', jacket, { act: 'folded-across', across: 'half-way', first: '1/4' }],
		['round a sleeve', jacket, { act: 'folded-across', across: 'elbow', shape: 'wedge', first: '1/4', last: '0' }],
		['past a dart', boxes, { ...fold, off: '1', first: '1 1/4' }],
		['not read yet', panels, { ...fold, read: 'later' }]
	] as const)('%s', (_, draft, typed) => {
		for (const unit of ['in', 'cm'] as const) {
			const first = readTyped(draft, typed);
			const recorded = { ...first, intent: { ...first.intents[0], id: 'x' } };
			const form = formOfAlteration(draft, recorded, unit)!;
			const again = readTyped(draft, 'read' in typed ? { ...form, read: 'later' } : form, unit);
			expect(again.intents[0]).toEqual(
				JSON.parse(JSON.stringify(first.intents[0]), (_name, value: unknown) =>
					typeof value === 'number' ? expect.closeTo(value, 2) : value
				)
			);
			expect(again.act).toBe(first.act);
			expect(again.measured).toBe(first.measured);
		}
	});

	test('one that runs slantwise, or to a dart, has no form', () => {
		const intent = {
			kind: 'spread',
			id: 'x',
			on: 'both' as const,
			cuts: [
				{
					piece: 'back',
					from: { edge: 'back/left', level: 'waist' },
					to: { edge: 'back/right', level: 'hip' },
					gapFrom: 5,
					keep: 'back/top'
				}
			]
		};
		expect(formOfAlteration(panels, { intent }, 'in')).toBeUndefined();
	});
});
