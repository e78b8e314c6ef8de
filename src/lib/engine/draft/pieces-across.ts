/** Which pieces a balance line runs across, in the order in which they are sewn to one another along it. */
import { sideOfName } from './undivided-name.ts';
import { nameOf } from './find.ts';
import { lineAcross, type LineAcross } from './line-across.ts';
import { seamsOf } from './seam.ts';
import type { Draft, Piece } from './types.ts';

export interface PieceAcross {
	/** Of a divided piece its right half. */
	readonly piece: Piece;
	/** Whether the line as it is walked runs from left to right on the piece as it lies. */
	readonly forward: boolean;
}

/** Pieces sewn to one another where one line crosses them: from one end of it to the other, or round a limb. */
export interface PiecesAcross {
	readonly pieces: readonly PieceAcross[];
	/** The last is sewn to the first. */
	readonly ring: boolean;
}

/**
 * Every run of pieces that a level crosses: the body's half from back to front, a sleeve's two pieces round the arm. A run begins
 * with the end whose piece comes first in the draft. Left halves of divided pieces are not walked.
 */
export function piecesAcross(draft: Draft, level: string): readonly PiecesAcross[] {
	const nodes = draft.pieces
		.filter(({ id }) => sideOfName(id) !== 'left')
		.flatMap((piece) => {
			const line = lineAcross(piece, level, 0);
			return line ? [{ piece, line }] : [];
		});
	const walked = new Set<Piece>();
	const runs: PiecesAcross[] = [];
	const walk = (start: Node, end: 0 | 1) => {
		const pieces: PieceAcross[] = [];
		let at: { readonly node: Node; readonly end: 0 | 1 } | undefined = { node: start, end };
		while (at && !walked.has(at.node.piece)) {
			walked.add(at.node.piece);
			pieces.push({ piece: at.node.piece, forward: at.end === 0 });
			at = sewnTo(draft, nodes, at.node, at.end === 0 ? 1 : 0);
		}
		runs.push({ pieces, ring: at?.node === start });
	};
	for (const node of nodes)
		for (const end of [0, 1] as const) if (!walked.has(node.piece) && !sewnTo(draft, nodes, node, end)) walk(node, end);
	for (const node of nodes) if (!walked.has(node.piece)) walk(node, 0);
	return runs;
}

interface Node {
	readonly piece: Piece;
	readonly line: LineAcross;
}

/** The piece, and which end of the line on it, that the line runs on to across the seam. */
function sewnTo(
	draft: Draft,
	nodes: readonly Node[],
	{ piece, line }: Node,
	end: 0 | 1
): { readonly node: Node; readonly end: 0 | 1 } | undefined {
	for (const edge of line.ends[end].met) {
		const name = nameOf(piece, edge.id);
		for (const { seam, side } of seamsOf(draft, name)) {
			if (seam.b === 'mirror') continue;
			const mates = new Set((side === 'a' ? seam.b : seam.a).map((mate) => mate.edge));
			for (const node of nodes)
				for (const other of [0, 1] as const) {
					const own = node.line.ends[other].met.map(({ id }) => nameOf(node.piece, id));
					if (own.some((one) => one !== name && sideOfName(one) !== 'left' && mates.has(one)))
						return { node, end: other };
				}
		}
	}
	return undefined;
}
