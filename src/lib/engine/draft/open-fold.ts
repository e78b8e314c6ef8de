import type { Point } from '../geometry/types.ts';
import type { Edge, Level, Mark, Piece } from './types.ts';
import { joined } from '../geometry/accuracy.ts';
import { movePoint, reflection } from '../geometry/motion.ts';
import { pathEnd, pathStart, pointAt } from '../geometry/path.ts';
import { cross, subtract, unit } from '../geometry/point.ts';
import { levelSpan, levelSpans } from './level.ts';
import { withEnds } from './meet-ends.ts';
import { movePiece } from './turn-piece.ts';

/**
 * A piece cut on the fold, opened: the right half where it was and its mirror image in the fold line, in one outline that begins
 * where the fold ended. Everything is there twice, as `…@right` and `…@left`, but the fold itself; a mark on the fold stays one, and
 * a notch on it becomes a mark. Thrown: a piece without a fold.
 */
export function opened(piece: Piece): Piece {
	const at = piece.edges.findIndex((edge) => edge.kind === 'fold');
	if (at < 0) throw new Error(`${piece.id} has no fold to open.`);
	const fold = piece.edges[at];
	const line = [pathStart(fold.path), pathEnd(fold.path)] as const;
	const inFold = reflection(...line);
	const mirror = movePiece(piece, inFold);
	const onEdge = <T extends { readonly id: string; readonly edge: string }>(
		list: readonly T[],
		side: 'left' | 'right'
	) =>
		half(list, side)
			.filter(({ edge }) => edge !== fold.id)
			.map((item) => ({ ...item, edge: `${item.edge}@${side}` }));
	const both = <T extends { readonly id: string }>(list: (of: Piece) => readonly T[]): T[] => [
		...half(list(piece), 'right'),
		...half(list(mirror), 'left')
	];
	const bothOnEdges = <T extends { readonly id: string; readonly edge: string }>(list: (of: Piece) => readonly T[]) => [
		...onEdge(list(piece), 'right'),
		...onEdge(list(mirror), 'left')
	];
	const isOnFold = ({ at: point, to = point }: Mark): boolean =>
		[point, to].every((one) => Math.abs(cross(unit(subtract(line[1], line[0])), subtract(one, line[0]))) <= joined);
	const foldNotches = piece.notches
		.filter(({ edge }) => edge === fold.id)
		.map((notch): Mark => ({ id: notch.id, kind: 'point', at: pointAt(fold.path, notch.at) }));
	return {
		...piece,
		cut: 'single',
		edges: wholeOutline(piece, mirror, at),
		darts: bothOnEdges((of) => of.darts),
		foldDarts: both((of) => of.foldDarts),
		notches: bothOnEdges((of) => of.notches),
		pleats: bothOnEdges((of) => of.pleats),
		levels: wholeLevels(piece, (point) => movePoint(inFold, point), fold.id),
		marks: [
			...piece.marks.filter(isOnFold),
			...both((of) => of.marks.filter((_, i) => !isOnFold(piece.marks[i]))),
			...foldNotches
		]
	};
}

/** Named for one half, in its id and, where it has one, its name. */
function half<T extends { readonly id: string; readonly name?: string }>(
	list: readonly T[],
	side: 'left' | 'right'
): T[] {
	return list.map((item) => ({
		...item,
		id: `${item.id}@${side}`,
		...(item.name !== undefined && { name: `${item.name}, ${side}` })
	}));
}

/** The right half's edges from the end of the fold round to its start, then the mirror image's back again, met to the bit. */
function wholeOutline(piece: Piece, mirror: Piece, at: number): readonly Edge[] {
	const right = [...piece.edges.slice(at + 1), ...piece.edges.slice(0, at)];
	const mirrorAt = mirror.edges.findIndex((edge) => edge.id === piece.edges[at].id);
	const left = [...mirror.edges.slice(mirrorAt + 1), ...mirror.edges.slice(0, mirrorAt)];
	const [foldStart, foldEnd] = [pathStart(piece.edges[at].path), pathEnd(piece.edges[at].path)];
	return [
		...half(right, 'right'),
		...half(left, 'left').map((edge, i): Edge => {
			const start = i === 0 ? foldStart : undefined;
			const end = i === left.length - 1 ? foldEnd : undefined;
			return { ...edge, path: withEnds(edge.path, start, end) };
		})
	];
}

/** A balance line that runs to the fold becomes one line across the whole piece; any other is there twice. */
function wholeLevels(piece: Piece, mirrored: (point: Point) => Point, foldId: string): readonly Level[] {
	const levels: Level[] = [];
	for (const level of new Set(piece.levels.map((part) => part.level))) {
		const toFold = levelSpans(piece, level).filter(
			({ startEdge, endEdge }) => (startEdge === foldId) !== (endEdge === foldId)
		);
		for (const span of toFold) {
			const toMiddle = span.endEdge === foldId ? span.points : [...span.points].reverse();
			levels.push({ level, line: [...toMiddle, ...toMiddle.slice(0, -1).map(mirrored).reverse()] });
		}
		for (const part of piece.levels) {
			if (part.level !== level) continue;
			if ('edge' in part) levels.push({ level, edge: `${part.edge}@right` }, { level, edge: `${part.edge}@left` });
			else if (!toFold.some((span) => span === levelSpan(piece, part)))
				levels.push(part, { level, line: part.line.map(mirrored) });
		}
	}
	return levels;
}
