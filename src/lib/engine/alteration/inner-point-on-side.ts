import type { EdgePlace, InnerPoint } from '../draft/types.ts';

/** An inner point named on the undivided draft, named on the part that the alteration reaches. */
export function onSide(
	inner: InnerPoint,
	pieceSide: 'left' | 'right' | undefined,
	edgeSide: 'left' | 'right' | undefined
): InnerPoint {
	if ('from' in inner) return { ...inner, from: placeOnSide(inner.from, pieceSide, edgeSide) };
	if ('mark' in inner)
		return {
			...inner,
			mark: edgeSide ? `${inner.mark}@${edgeSide}` : inner.mark,
			toward: placeOnSide(inner.toward, pieceSide, edgeSide)
		};
	return inner;
}

/** The same for a place that names its edge. */
export function placeOnSide(
	at: EdgePlace,
	pieceSide: 'left' | 'right' | undefined,
	edgeSide: 'left' | 'right' | undefined
): EdgePlace {
	const [piece, edge] = at.edge.split('/');
	const pieceName = pieceSide && !piece.includes('@') ? `${piece}@${pieceSide}` : piece;
	const edgeName = edgeSide && !edge.includes('@') ? `${edge}@${edgeSide}` : edge;
	return { ...at, edge: `${pieceName}/${edgeName}` };
}
