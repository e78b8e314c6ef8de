/** What the cloth that was cut still holds, edge by edge, now that the lines have moved over it. */
import { fitted } from '../geometry/accuracy.ts';
import { undividedName } from '../draft/undivided-name.ts';
import { usualBands } from './bands.ts';
import { edgePairs, piecePairs } from './same-feature.ts';
import { greatestMove, lineMove } from './edge-moves.ts';
import { namedPlaces } from './compare.ts';
import type { Draft, Edge, Piece } from '../draft/types.ts';
import type { Allowances, CutCloth } from './inquiry.ts';

/** mm throughout. */
export interface ClothUsed {
	/** `front/side`, as the draft names it. */
	readonly name: string;
	readonly piece: Piece;
	readonly edge: Edge;
	/** What was cut beyond the line that it was cut from. */
	readonly allowance: number;
	/** How far the line may go outward: the allowance less what is to be kept and what was clipped. */
	readonly room: number;
	/** The greatest outward move; 0 if the whole line stayed or went in. */
	readonly outward: number;
	/** How much farther it went than there is room; 0 if it did not. */
	readonly short: number;
}

/** A moved curve is only drawn to `fitted`, so that much less a little is no overrun. */
const overrun = 0.8 * fitted;

/** Every edge that has an allowance. An edge cut on the fold has none, and is passed over. */
export function clothUsed(draft: Draft, cloth: CutCloth): ClothUsed[] {
	const keep = cloth.keep ?? usualBands.left.plain;
	return piecePairs(cloth.draft, draft)
		.flatMap(edgePairs)
		.filter(({ after }) => after.edge.kind !== 'fold')
		.map(({ name, before, after }) => {
			const allowance = allowanceOf(cloth.allowances, name);
			const places = namedPlaces(before).map(({ s }) => s);
			const outward = Math.max(0, greatestMove(lineMove(before.line, after.line), places, 'outward').move);
			const room = Math.max(0, allowance - keep - (cloth.clipped ?? 0));
			const short = outward - room > overrun ? outward - room : 0;
			return { name, piece: after.piece, edge: after.edge, allowance, room, outward, short };
		});
}

/** An edge's allowance, by its own name or that of the undivided edge, else the default. */
export function allowanceOf(allowances: Allowances, name: string): number {
	const edges = allowances.edges ?? {};
	for (const known of [name, undividedName(name)]) if (Object.hasOwn(edges, known)) return edges[known];
	return allowances.default;
}
