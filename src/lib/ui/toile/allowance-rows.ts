import { seamRun, sideOfName } from '../../engine/index.ts';
import type { Draft, Edge, Piece } from '../../engine/index.ts';

/** The edges that have an allowance, under the name of the seam that they are sewn in, or of the open edge that they are. */
export interface AllowanceRow {
	readonly name: string;
	/** Sewn to another piece, or left open (a neck, a hem, a front edge). */
	readonly kind: 'seam' | 'open';
	readonly edges: readonly {
		/** `front/side` */
		readonly edge: string;
		/** “Front”; “Top sleeve, head front” where a piece has two edges in the row. */
		readonly label: string;
	}[];
}

/**
 * Every edge of a draft that is cut with an allowance, once each: seam by seam as the draft lists them, each with the pieces
 * on its one side and then on its other; after them the open edges, those of one name together. Folds have no allowance.
 */
export function allowanceRows(draft: Draft): readonly AllowanceRow[] {
	const seen = new Set<string>();
	const unseen = ({ name, edge }: NamedEdge) => edge.kind !== 'fold' && !seen.has(name) && seen.add(name);
	const seams = draft.seams.map((seam): AllowanceRow => {
		const sides = seam.b === 'mirror' ? (['a'] as const) : (['a', 'b'] as const);
		const edges = sides.flatMap((side) => seamRun(draft, seam, side)).filter(unseen);
		return { name: seam.name, kind: 'seam', edges: labelled(edges) };
	});
	const open = new Map<string, NamedEdge[]>();
	for (const piece of draft.pieces)
		for (const edge of piece.edges) {
			const named = { name: `${piece.id}/${edge.id}`, piece, edge };
			if (!unseen(named)) continue;
			const known = open.get(edge.name.toLowerCase());
			if (known) known.push(named);
			else open.set(edge.name.toLowerCase(), [named]);
		}
	const opened = [...open.values()].map((edges): AllowanceRow => ({
		name: edges[0]!.edge.name,
		kind: 'open',
		edges: labelled(edges)
	}));
	return [...seams, ...opened].filter(({ edges }) => edges.length > 0);
}

interface NamedEdge {
	readonly name: string;
	readonly piece: Piece;
	readonly edge: Edge;
}

function labelled(edges: readonly NamedEdge[]): AllowanceRow['edges'] {
	return edges.map(({ name, piece, edge }) => {
		const twice = edges.filter((other) => other.piece.id === piece.id).length > 1;
		return { edge: name, label: twice ? `${pieceLabel(piece)}, ${edge.name.toLowerCase()}` : pieceLabel(piece) };
	});
}

/** Of a divided piece with its side: the wearer's. */
function pieceLabel(piece: Piece): string {
	const side = sideOfName(piece.id) ?? (piece.side === 'both' ? undefined : piece.side);
	return side === undefined || piece.name.toLowerCase().includes(side) ? piece.name : `${piece.name}, ${side}`;
}
