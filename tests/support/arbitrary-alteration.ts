/**
 * Random alterations for a draft, named on the undivided draft as a dressmaker would: places by end, level, notch or
 * fraction, amounts up to 12 mm, either side or both. A recipe holds bare numbers, so that one history can be tried on any draft.
 */
import fc from 'fast-check';
import type { Draft, Piece, Place } from '../../src/lib/engine/draft/types.ts';
import { movePoint } from '../../src/lib/engine/geometry/motion.ts';
import type { Motion, Point } from '../../src/lib/engine/geometry/types.ts';
import { number } from './arbitrary-number.ts';

const share = number(0, 1);
const signed = (most: number) => number(-most, most);

export interface Recipe {
	readonly kind: (typeof kinds)[number];
	readonly which: number;
	readonly side: 'both' | 'both' | 'left' | 'right';
	readonly places: readonly {
		readonly way: number;
		readonly share: number;
		readonly amount: number;
		readonly other: number;
	}[];
	readonly even: boolean;
	readonly depth: number;
}

const kinds = [
	'seam',
	'edge',
	'dart',
	'dart-set',
	'dart-swing',
	'fold-dart',
	'spread',
	'bust-spread',
	'true-dart',
	'true-seam',
	'smooth',
	'mark'
] as const;

export const recipe: fc.Arbitrary<Recipe> = fc.record({
	kind: fc.constantFrom(...kinds, 'seam' as const, 'seam' as const, 'edge' as const),
	which: fc.nat(1000),
	side: fc.constantFrom('both', 'both', 'both', 'left', 'right'),
	places: fc.array(fc.record({ way: fc.nat(7), share, amount: signed(12), other: signed(12) }), {
		minLength: 1,
		maxLength: 4
	}),
	even: fc.boolean(),
	depth: number(0.05, 0.6)
});

/** The alteration JSON of a recipe on a draft, or undefined if the draft has nothing of the kind that it needs. */
export function alterationFrom(draft: Draft, made: Recipe, id: string): object | undefined {
	const pick = <T>(list: readonly T[], turn = 0): T | undefined => list[(made.which + turn) % Math.max(1, list.length)];
	const base = { id, kind: made.kind, on: made.side };
	const edges = draft.pieces.flatMap((piece) => piece.edges.map((edge) => ({ piece, edge })));
	const darts = draft.pieces.flatMap((piece) =>
		[...piece.darts, ...piece.foldDarts].map((dart) => `${piece.id}/${dart.id}`)
	);
	const first = made.places[0];
	switch (made.kind) {
		case 'seam': {
			const seam = pick(draft.seams);
			if (!seam) return undefined;
			const piece = draft.pieces.find((one) => one.id === seam.a[0].edge.split('/')[0])!;
			return {
				...base,
				seam: seam.id,
				pins: made.places.map((one, i) => ({
					at: placeOf(piece, undefined, one, i, made.places.length),
					a: one.amount,
					b: made.even ? one.amount : one.other
				}))
			};
		}
		case 'edge': {
			const { piece, edge } = pick(edges)!;
			return {
				...base,
				edge: `${piece.id}/${edge.id}`,
				pins: made.places.map((one, i) => ({
					at: placeOf(piece, edge.id, one, i, made.places.length),
					move: one.amount
				}))
			};
		}
		case 'dart': {
			const { piece, edge } = pick(edges)!;
			const at = { fraction: 0.1 + 0.8 * first.share };
			const inwards = 20 + 150 * made.depth;
			return {
				...base,
				edge: `${piece.id}/${edge.id}`,
				at,
				intake: Math.abs(first.amount) + 2,
				point: { from: { edge: `${piece.id}/${edge.id}`, ...at }, in: inwards }
			};
		}
		case 'dart-set': {
			const dart = pick(darts);
			return dart === undefined ? undefined : { ...base, dart, intake: Math.abs(first.amount) * 2 };
		}
		case 'dart-swing': {
			const dart = pick(darts);
			if (!dart) return undefined;
			const piece = draft.pieces.find((one) => one.id === dart.split('/')[0])!;
			const edge = piece.edges[made.which % piece.edges.length];
			return {
				...base,
				dart,
				edge: `${piece.id}/${edge.id}`,
				at: { fraction: first.share },
				share: made.even ? 1 : 0.1 + 0.9 * made.depth
			};
		}
		case 'fold-dart': {
			const piece = pick(draft.pieces)!;
			const from = piece.edges[made.which % piece.edges.length];
			const to = piece.edges[(made.which + 2) % piece.edges.length];
			const end = (edge: string, at: number) => ({
				from: { edge: `${piece.id}/${edge}`, fraction: at },
				in: 15 + 60 * made.depth
			});
			return {
				...base,
				piece: piece.id,
				ends: [end(from.id, first.share), end(to.id, 1 - first.share)],
				widest: { at: 0.5, intake: Math.abs(first.amount) }
			};
		}
		case 'spread': {
			const piece = pick(draft.pieces)!;
			const count = piece.edges.length;
			const [from, to, keep] = [0, 2, 1].map((turn) => `${piece.id}/${piece.edges[(made.which + turn) % count].id}`);
			return {
				...base,
				cuts: [
					{
						piece: piece.id,
						from: { edge: from, fraction: first.share },
						to: { edge: to, fraction: 1 - first.share },
						gapFrom: first.amount,
						gapTo: made.even ? first.amount : 0,
						keep
					}
				]
			};
		}
		case 'bust-spread':
			return bustSpreadOn(pick(draft.pieces)!, made, base);
		case 'true-dart': {
			const dart = pick(draft.pieces.flatMap((piece) => piece.darts.map((one) => `${piece.id}/${one.id}`)));
			return dart === undefined ? undefined : { ...base, dart, reach: 5 + 60 * made.depth };
		}
		case 'true-seam': {
			const seam = pick(draft.seams);
			if (!seam) return undefined;
			const end = first.way % 2 === 0 ? 'start' : 'finish';
			const where = made.even ? { end } : { at: first.way < 4 ? { fraction: first.share } : { end } };
			return { ...base, seam: seam.id, ...where, take: (['a', 'b', 'half'] as const)[made.which % 3] };
		}
		case 'smooth': {
			const { piece, edge } = pick(edges)!;
			const where = made.even ? { end: first.way % 2 === 0 ? 'start' : 'finish' } : { at: { fraction: first.share } };
			return { ...base, edge: `${piece.id}/${edge.id}`, ...where, reach: 5 + 60 * made.depth };
		}
		case 'mark':
			return { ...base, ...markOn(pick(edges)!, first, made, id) };
	}
}

/** Slashed to a point inside from four edges that follow one another either way; often where a dart of the piece opens and ends. */
function bustSpreadOn(piece: Piece, made: Recipe, base: object): object {
	const [first, second = first] = made.places;
	const count = piece.edges.length;
	const step = made.which % 2 === 0 ? 1 : count - 1;
	const [dart] = piece.darts;
	const atDart = dart !== undefined && first.way % 2 === 0;
	const start = atDart ? piece.edges.findIndex(({ id }) => id === dart.edge) : made.which % count;
	const on = (steps: number, fraction: number) => ({
		edge: `${piece.id}/${piece.edges[(start + steps * step + count) % count].id}`,
		fraction
	});
	const opens = atDart ? { edge: `${piece.id}/${dart.edge}`, end: 'start', offset: dart.from } : on(0, second.share);
	return {
		...base,
		piece: piece.id,
		// Not in the middle, where a mouth may be: there a place is found at its start, which is another one from the other end.
		point: atDart ? dart.point : { from: on(0, 0.4), in: 20 + 120 * made.depth },
		dart: opens,
		hinge: on(-1, first.share),
		base: on(1, second.share),
		...(made.even && count > 3 ? { centre: on(2, first.share) } : {}),
		gap: first.amount
	};
}

/** A mark added, moved or taken off, or buttonholes where an edge laps. */
function markOn(
	{ piece, edge }: { readonly piece: Piece; readonly edge: Piece['edges'][number] },
	{ way, share, amount }: Recipe['places'][number],
	made: Recipe,
	id: string
): object {
	const at = { edge: `${piece.id}/${edge.id}`, fraction: share };
	const inside = { from: at, in: 10 + 60 * made.depth };
	const [notch] = piece.notches;
	const acts = [
		{ notch: { id: `${id}-notch`, at } },
		{ set: { id: `${id}-point`, kind: 'point', at: inside } },
		{ move: { id: 'bust-point', to: inside } },
		notch ? { move: { id: notch.id, to: { ...at, edge: `${piece.id}/${notch.edge}` } } } : { remove: 'bust-point' },
		notch ? { remove: notch.id } : { set: { id: 'bust-point', kind: 'bust-point', at: inside } }
	];
	const lapped = piece.edges.find(({ lap }) => lap > 0);
	const closing = lapped && {
		buttonholes: {
			edge: `${piece.id}/${lapped.id}`,
			first: { end: 'start', offset: 10 + 10 * share },
			last: { end: 'finish', offset: 10 },
			count: 2 + Math.round(Math.abs(amount)),
			button: { diameter: 8, thickness: 2 },
			direction: made.even ? 'across' : 'along'
		}
	};
	return { piece: piece.id, ...(way > 4 && closing ? closing : acts[way % acts.length]) };
}

/** One of several places along a line, in order, so that few of them fall together. */
function placeOf(
	piece: Piece,
	edge: string | undefined,
	one: Recipe['places'][number],
	i: number,
	count: number
): Place {
	const notch = edge && piece.notches.find((found) => found.edge === edge);
	if (one.way < 3 && i === 0) return { end: 'start' };
	if (one.way < 3 && i === count - 1) return { end: 'finish' };
	if (one.way === 3 && notch && i > 0) return { notch: notch.id };
	if (one.way === 4 && count === 1) return { level: 'waist' };
	if (one.way === 5 && i === 0) return { end: 'start', offset: one.share * 20 };
	return { fraction: (i + one.share) / count };
}

/** The alteration with every bare point in it moved: as it would be written for a draft that lies elsewhere on the table. */
export function withPointsMoved<A extends object>(alteration: A, motion: Motion): A {
	const moved = (value: unknown): unknown => {
		if (Array.isArray(value))
			return value.length === 2 && typeof value[0] === 'number'
				? movePoint(motion, value as unknown as Point)
				: value.map(moved);
		if (typeof value !== 'object' || value === null) return value;
		return Object.fromEntries(Object.entries(value).map(([field, held]) => [field, moved(held)]));
	};
	return moved(alteration) as A;
}
