import { seamRun } from '../../engine/index.ts';
import type { Draft, Edge, Piece } from '../../engine/index.ts';
import { inch } from '../../measure/units.ts';

/** Allowances in mm: one for most edges, and those that differ by whole name (`front/neck`). */
export interface AllowancesByEdge {
	readonly default: number;
	readonly edges: Readonly<Record<string, number>>;
}

/** Long seams and shoulders: common practice, no source. */
const seams = 0.75 * inch;
/** Neck and armhole: at least 3/8 in is kept at a neck edge (Fitting Dresses, US Department of Agriculture, 1946). */
const necks = 0.375 * inch;
/** A closing: 1 in at centre front or back (Construction of Clothing, University of Wisconsin digital collection). */
const closings = inch;
/** Turned under: about 1 1/2 in (Vincent, Systems of Cutting All Kinds of Tailor-Made Garments, “Cutting from the cloth”). */
const turned = 1.5 * inch;

/** What a pattern is cut with until somebody says otherwise: a place to start from, edge by edge. */
export function usualAllowances(draft: Draft): AllowancesByEdge {
	const inArmhole = armholeEdges(draft);
	const differing = draft.pieces.flatMap((piece) =>
		piece.edges
			.map((edge) => [`${piece.id}/${edge.id}`, usual(piece, edge, inArmhole)] as const)
			.filter(([, mm]) => mm !== undefined && mm !== seams)
	);
	return { default: seams, edges: Object.fromEntries(differing) as Record<string, number> };
}

function usual(piece: Piece, edge: Edge, inArmhole: ReadonlySet<string>): number | undefined {
	if (edge.kind === 'fold') return undefined;
	if (edge.turn) return turned;
	if (edge.kind === 'open') return edge.lap === 0 ? necks : closings;
	return inArmhole.has(`${piece.id}/${edge.id}`) ? necks : seams;
}

/** Both sides of every seam that sets a limb into the body. */
function armholeEdges(draft: Draft): ReadonlySet<string> {
	return new Set(
		draft.seams.flatMap((seam) => {
			if (seam.b === 'mirror') return [];
			const sides = (['a', 'b'] as const).map((side) => seamRun(draft, seam, side));
			const limbs = sides.map((run) => run.every(({ piece }) => piece.limb));
			return limbs[0] === limbs[1] ? [] : sides.flat().map(({ piece, edge }) => `${piece.id}/${edge.id}`);
		})
	);
}
