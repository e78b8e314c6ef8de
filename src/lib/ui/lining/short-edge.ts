import { nearestOn, parsePathData, pathLength, pointAt } from '../../engine/index.ts';
import type { Draft, reuse } from '../../engine/index.ts';
import { edgeOf } from '../fitting/feature-names.ts';

type Reuse = ReturnType<typeof reuse>[number];

/** Nearer than this to its end a place is at the corner, mm. */
const atCorner = 0.5;

/**
 * The edge whose allowance falls short, by its whole name. Beyond a corner both edges are as near: then it is the one that
 * wants more cloth, for its allowance is what reaches so far.
 */
export function shortEdge(
	draft: Draft,
	{ where, at }: Pick<Reuse, 'where' | 'at'>,
	wanted: (edge: string) => number
): string {
	const found = edgeOf(draft, where);
	if (!found || !at) return where;
	const { piece, edge } = found;
	const { s } = nearestOn(edge.path, at, 1e-3);
	const index = piece.edges.indexOf(edge);
	const count = piece.edges.length;
	const neighbour =
		s < atCorner
			? piece.edges[(index + count - 1) % count]
			: s > pathLength(edge.path) - atCorner
				? piece.edges[(index + 1) % count]
				: undefined;
	if (!neighbour || neighbour.kind === 'fold') return where;
	const name = `${piece.id}/${neighbour.id}`;
	return wanted(name) > wanted(where) ? name : where;
}

/**
 * How much cloth there is beyond the stitching line of an edge near to a place, mm: not at the corner itself, where the cloth of
 * the neighbouring edge counts, but as far along from it as the allowance is wide. `cloth` is the line it was cut on, as path data.
 */
export function clothLeft(draft: Draft, name: string, at: readonly [number, number], cloth: string, wanted: number) {
	const found = edgeOf(draft, name);
	const outline = parsePathData(cloth);
	if (!found || 'problem' in outline) return undefined;
	const { path } = found.edge;
	const length = pathLength(path);
	const inwards = Math.min(1.25 * wanted, length / 2);
	const s = Math.min(Math.max(nearestOn(path, at, 1e-3).s, inwards), length - inwards);
	return nearestOn(outline.path, pointAt(path, s), 1e-3).distance;
}
