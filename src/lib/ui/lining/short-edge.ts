import { nearestOn, parsePathData, pathLength, pointAt, undividedName } from '../../engine/index.ts';
import type { Draft, reuse } from '../../engine/index.ts';
import { edgeOf } from '../fitting/feature-names.ts';

type Reuse = ReturnType<typeof reuse>[number];

/** Less than this is not lacking, mm. */
const almost = 0.1;
/** Nearer than this to its end a place is at the corner, mm. */
const atCorner = 0.5;

/** What a toile was cut on, piece by piece. */
export type Cloth = readonly { readonly piece: string; readonly outline: string }[];

/**
 * The edge whose allowance falls short, by its whole name. Beyond a corner both edges are as near: then it is the one that has
 * less beyond its stitching line than it wants, and where both have enough, the one that wants more.
 */
export function shortEdge(
	draft: Draft,
	{ piece: id, where, at }: Pick<Reuse, 'piece' | 'where' | 'at'>,
	wanted: (edge: string) => number,
	cloth: Cloth
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
	const outline = clothOf(cloth, id)?.outline;
	const lacking = (name: string) => {
		const left = outline === undefined ? undefined : clothLeft(draft, name, at, outline, wanted(name));
		return Math.max(0, wanted(name) - (left ?? 0) - almost);
	};
	const name = `${piece.id}/${neighbour.id}`;
	const [own, other] = [lacking(where), lacking(name)];
	return other > own || (other === own && wanted(name) > wanted(where)) ? name : where;
}

/** The cloth of a piece, or of the whole one that it was divided from. */
export function clothOf(cloth: Cloth, id: string): Cloth[number] | undefined {
	return cloth.find(({ piece }) => piece === id) ?? cloth.find(({ piece }) => piece === undividedName(id));
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
