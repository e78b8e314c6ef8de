import { findEdge } from '../../engine/index.ts';
import type { compare, Draft } from '../../engine/index.ts';
import { directionOf } from '../../measure/directions.ts';
import { formatLength } from '../../measure/format-length.ts';
import type { Unit } from '../../measure/units.ts';
import { lying } from '../drawing/pins-of-alteration.ts';
import { dartName, edgeName, edgeOf } from '../fitting/feature-names.ts';
import { placeInSentence } from '../fitting/place/place-words.ts';
import { leastMove, seamOfEdge } from './seam-moves.ts';

type Comparison = ReturnType<typeof compare>;

/** A line of the draft that is in no seam, or a dart, and what became of it. */
export interface OtherMove {
	readonly kind: 'edge' | 'dart';
	/** Whole name: `front/neck`, `front/waist-dart`. */
	readonly feature: string;
	readonly name: string;
	/** “at the front edge”, “new, 3 3/4″ long”, “wider”. */
	readonly words: string;
	readonly way: 'in' | 'out';
	readonly word: string;
	/** mm, without sign. */
	readonly mm: number;
}

/** Edges that no seam joins, where they moved: each with its greatest move, and the word for which way. */
export function edgeMoves(before: Draft, after: Draft, { edges }: Pick<Comparison, 'edges'>, unit: Unit): OtherMove[] {
	return edges
		.filter(({ edge, greatest }) => Math.abs(greatest.move) >= leastMove && !seamOfEdge(after, edge))
		.map(({ edge, greatest: { at, move, s } }): OtherMove => {
			const found = findEdge(before, edge) ?? edgeOf(before, edge);
			const along = { of: 'edge', id: edge } as const;
			const place =
				at === 'start' || at === 'finish'
					? ({ end: at } as const)
					: found?.piece.notches.some(({ id }) => id === at)
						? ({ notch: at } as const)
						: ({ level: at } as const);
			return {
				kind: 'edge',
				feature: edge,
				name: edgeName(after, edge),
				words: `most ${placeInSentence(after, along, place, unit)}`,
				way: move < 0 ? 'in' : 'out',
				word: directionOf(found ? lying(found.edge, s) : 'seam', move),
				mm: Math.abs(move)
			};
		});
}

/** Darts that are new, changed or gone. A wider dart takes cloth away, as a new one does. */
export function dartMoves(before: Draft, after: Draft, { darts }: Pick<Comparison, 'darts'>, unit: Unit): OtherMove[] {
	return darts.map(({ dart, before: was, after: is }): OtherMove => {
		const row = { kind: 'dart', feature: dart, name: dartName(is ? after : before, dart) } as const;
		const long = (mm: number) => formatLength(mm, unit, { denominator: 16 }).text;
		if (!was) return { ...row, words: `new, ${long(is!.length)} long`, way: 'in', word: 'in', mm: is!.intake };
		if (!is) return { ...row, words: 'taken out', way: 'out', word: 'out', mm: was.intake };
		const wider = is.intake - was.intake;
		if (Math.abs(wider) >= leastMove)
			return {
				...row,
				words: `${directionOf('dart', wider)}, now ${long(is.intake)}`,
				way: wider > 0 ? 'in' : 'out',
				word: wider > 0 ? 'in' : 'out',
				mm: Math.abs(wider)
			};
		const longer = is.length - was.length;
		const moved = Math.hypot(is.point[0] - was.point[0], is.point[1] - was.point[1]);
		if (Math.abs(longer) >= leastMove)
			return {
				...row,
				words: directionOf('length', longer),
				way: longer > 0 ? 'in' : 'out',
				word: directionOf('length', longer),
				mm: Math.abs(longer)
			};
		return { ...row, words: 'its point moved', way: 'in', word: 'moved', mm: moved };
	});
}
