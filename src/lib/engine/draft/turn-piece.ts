import type { Motion } from '../geometry/types.ts';
import type {
	Dart,
	DartWidth,
	Draft,
	Edge,
	FoldDart,
	Level,
	Mark,
	Notch,
	Piece,
	Pleat,
	RunEdge,
	Seam
} from './types.ts';
import { determinant, movePath, movePoint } from '../geometry/motion.ts';
import { pathLength, reversedPath } from '../geometry/path.ts';
import { edgeOf } from './find.ts';

/**
 * A piece turned, shifted or mirrored as a whole; the motion must keep lengths. A mirror image would run anticlockwise, so its
 * edges are reversed: what was an edge's start is then its finish, and seams that walk it need `flippedRuns`.
 */
export function movePiece(piece: Piece, motion: Motion): Piece {
	const mirror = determinant(motion) < 0;
	const widths = (list: readonly DartWidth[]): readonly DartWidth[] =>
		mirror ? list.map(({ at, left, right }) => ({ at, left: right, right: left })) : list;
	const moved: Piece = {
		...piece,
		edges: piece.edges.map((edge): Edge => ({ ...edge, path: movePath(motion, edge.path) })),
		darts: piece.darts.map((dart): Dart => ({
			...dart,
			point: movePoint(motion, dart.point),
			widths: widths(dart.widths)
		})),
		foldDarts: piece.foldDarts.map((foldDart): FoldDart => {
			const [first, second] = foldDart.ends;
			return {
				...foldDart,
				ends: [movePoint(motion, first), movePoint(motion, second)],
				widths: widths(foldDart.widths)
			};
		}),
		levels: piece.levels.map((level): Level =>
			'line' in level ? { ...level, line: level.line.map((p) => movePoint(motion, p)) } : level
		),
		marks: piece.marks.map((mark): Mark => ({
			...mark,
			at: movePoint(motion, mark.at),
			...(mark.to && { to: movePoint(motion, mark.to) })
		})),
		...(piece.grain && { grain: [movePoint(motion, piece.grain[0]), movePoint(motion, piece.grain[1])] as const })
	};
	return mirror ? turnedRound(moved) : moved;
}

/**
 * The same piece with its outline walked the other way round: edges in reverse order and reversed, positions on them counted
 * from their new starts. Seams that walk it need `flippedRuns`.
 */
export function turnedRound(piece: Piece): Piece {
	const fromFinish = (edgeId: string, s: number): number => {
		const edge = edgeOf(piece, edgeId);
		if (edge === undefined) throw new Error(`There is no edge ${edgeId} on ${piece.id}.`);
		return Math.max(0, pathLength(edge.path) - s);
	};
	return {
		...piece,
		edges: piece.edges.map((edge): Edge => ({ ...edge, path: reversedPath(edge.path) })).reverse(),
		darts: piece.darts.map((dart): Dart => {
			const turned = { ...dart, from: fromFinish(dart.edge, dart.to), to: fromFinish(dart.edge, dart.from) };
			return dart.press === undefined ? turned : { ...turned, press: dart.press === 'from' ? 'to' : 'from' };
		}),
		notches: piece.notches.map((notch): Notch => ({ ...notch, at: fromFinish(notch.edge, notch.at) })),
		pleats: piece.pleats.map((pleat): Pleat => ({
			...pleat,
			from: fromFinish(pleat.edge, pleat.to),
			to: fromFinish(pleat.edge, pleat.from)
		}))
	};
}

/** A seam with its runs flipped wherever they walk one of the pieces named, so that it is walked the same way as before these were turned round. */
export function flippedRuns(seam: Seam, isTurned: (pieceId: string) => boolean): Seam {
	const flipped = (run: readonly RunEdge[]): readonly RunEdge[] =>
		run.map((entry) =>
			isTurned(entry.edge.slice(0, entry.edge.indexOf('/'))) ? { ...entry, reversed: !entry.reversed } : entry
		);
	return { ...seam, a: flipped(seam.a), b: seam.b === 'mirror' ? 'mirror' : flipped(seam.b) };
}

/** Left for right: x becomes −x on every piece. */
const acrossTheTable: Motion = [-1, 0, 0, 1, 0, 0];

/** The mirror image of a whole draft, every piece in the line x = 0. Ids, sides and the way seams are walked stay. */
export function mirrorDraft(draft: Draft): Draft {
	return {
		...draft,
		pieces: draft.pieces.map((piece) => movePiece(piece, acrossTheTable)),
		seams: draft.seams.map((seam) => flippedRuns(seam, () => true))
	};
}
