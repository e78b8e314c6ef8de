import { heightAbove, lineAcross, pathLength, pointAt, seamsOf } from '../../../engine/index.ts';
import type { Draft, Edge, Piece, PiecesAcross } from '../../../engine/index.ts';
import { armholeEdges } from '../armhole-edges.ts';

/**
 * How high half way between underarm and neck lies above a level on each piece of a run, mm: where handbooks fold a waist that is
 * too long above. The underarm is the lowest point of the armhole; the neck is the top of the edge that the line ends on there,
 * a centre or an open edge. Pieces that do not reach so high are left out.
 */
export function halfWayUp(draft: Draft, level: string, { pieces }: PiecesAcross): ReadonlyMap<Piece, number> {
	const armholes = armholeEdges(draft);
	const holes = ({ id, edges }: Piece) => edges.filter((edge) => armholes.has(`${id}/${edge.id}`));
	const heights = (piece: Piece, edges: readonly Edge[]) =>
		edges.flatMap(({ path }) => [0, pathLength(path)].map((s) => heightAbove(piece, level, pointAt(path, s))!));
	const found = new Map<Piece, number>();
	const underarm = Math.min(...pieces.flatMap(({ piece }) => heights(piece, holes(piece))));
	if (!Number.isFinite(underarm)) return found;
	pieces.forEach(({ piece, forward }, i) => {
		const own = heights(piece, holes(piece));
		if (own.length === 0) return;
		const probe = (Math.min(...own) + Math.max(...own)) / 2;
		const line = lineAcross(piece, level, probe);
		if (!line) return;
		const armhole = line.ends.findIndex(({ edge }) => armholes.has(`${piece.id}/${edge.id}`));
		if (armhole < 0) return;
		// Away from the armhole, from piece to piece, as far as the line is sewn on.
		const step = (armhole === 1) === forward ? -1 : 1;
		for (let at = i; pieces[at]; at += step) {
			const passed = pieces[at];
			const across = lineAcross(passed.piece, level, probe);
			const last = across?.ends[(step === 1) === passed.forward ? 1 : 0].edge;
			if (!last) return;
			const sewnOn = seamsOf(draft, `${passed.piece.id}/${last.id}`).some(({ seam }) => seam.b !== 'mirror');
			if (sewnOn && pieces[at + step]) continue;
			const half = (underarm + Math.max(...heights(passed.piece, [last]))) / 2;
			if (lineAcross(piece, level, half)) found.set(piece, half);
			return;
		}
	});
	return found;
}
