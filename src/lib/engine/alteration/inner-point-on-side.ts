import type { EdgePlace, InnerPoint, Place } from '../draft/types.ts';
import { mirroredPlace } from './mirrored-place.ts';

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
	const name = `${pieceName}/${edgeName}`;
	return { ...placeOnPart(name, at), edge: name };
}

/** A place as said of the undivided edge, on one part of it: the left half of an opened fold piece runs the other way. */
export function placeOnPart<P extends Place>(edge: string, at: P): P {
	return runsBack(edge) ? mirroredPlace(at) : at;
}

/** Whether an edge, named whole, is the left half of an undivided one, in one piece with the right half. */
export function runsBack(edge: string): boolean {
	return edge.endsWith('@left');
}
