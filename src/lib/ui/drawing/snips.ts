import { pointAt, seamRun, tangentAt } from './engine.ts';
import type { Draft, Path, Piece, Point } from './engine.ts';
import { minus, outOf, plus, times } from './vectors.ts';

export type Cuts = 1 | 2 | 3;

/** Between the cuts of a double or triple notch, px. */
const apart = 4.2;
/** How far a cut reaches in over the stitching line, px; outward it goes no farther than the allowance. */
const inward = 3;

/**
 * How many cuts each notch has, by its whole name: one, two or three, counted along its seam as side a is walked and then
 * begun again, so that no mate is taken for its neighbour; mates have the same. Notches that no seam reaches are counted
 * along their edge. Common practice, no source.
 */
export function notchCuts(draft: Draft): ReadonlyMap<string, Cuts> {
	const cuts = new Map<string, Cuts>();
	const mates = matesOf(draft);
	const count = (names: readonly string[]) => {
		names.forEach((name, order) => {
			if (cuts.has(name)) return;
			const number = ((order % 3) + 1) as Cuts;
			cuts.set(name, number);
			for (const mate of mates.get(name) ?? []) if (!cuts.has(mate)) cuts.set(mate, number);
		});
	};
	for (const side of ['a', 'b'] as const) {
		for (const seam of draft.seams) {
			if (side === 'b' && seam.b === 'mirror') continue;
			count(seamRun(draft, seam, side).flatMap(({ piece, edge, reversed }) => alongEdge(piece, edge.id, reversed)));
		}
	}
	for (const piece of draft.pieces) for (const edge of piece.edges) count(alongEdge(piece, edge.id, false));
	return cuts;
}

function alongEdge(piece: Piece, edge: string, reversed: boolean): string[] {
	const notches = piece.notches.filter((notch) => notch.edge === edge).sort((a, b) => a.at - b.at);
	const names = notches.map((notch) => `${piece.id}/${notch.id}`);
	return reversed ? names.reverse() : names;
}

/** Both ways, where only one of two mates names the other. */
function matesOf(draft: Draft): ReadonlyMap<string, readonly string[]> {
	const mates = new Map<string, string[]>();
	const meet = (one: string, other: string) => mates.set(one, [...(mates.get(one) ?? []), other]);
	for (const piece of draft.pieces) {
		for (const { id, mate } of piece.notches) {
			if (mate === undefined) continue;
			meet(`${piece.id}/${id}`, mate);
			meet(mate, `${piece.id}/${id}`);
		}
	}
	return mates;
}

/** The cuts of one notch across a line in px, `outward` px out of the cloth. */
export function notchStrokes(
	path: Path,
	s: number,
	count: Cuts,
	outward: number,
	over: boolean
): readonly (readonly [Point, Point])[] {
	const along = tangentAt(path, s);
	const out = outOf(along, over);
	const middle = pointAt(path, s);
	return Array.from({ length: count }, (_, i) => {
		const at = plus(middle, times(along, (i - (count - 1) / 2) * apart));
		return [minus(at, times(out, inward)), plus(at, times(out, outward))] as const;
	});
}

/** Both hooks of a fold, each toward the cloth. */
export function foldHooks(path: Path, over: boolean): readonly (readonly [Point, Point])[] {
	const start = path[0].from;
	const end = path[path.length - 1].to;
	const length = Math.hypot(end[0] - start[0], end[1] - start[1]);
	if (length < 24) return [];
	const along: Point = [(end[0] - start[0]) / length, (end[1] - start[1]) / length];
	const inwards = times(outOf(along, over), -11);
	return [plus(start, times(along, 7)), minus(end, times(along, 7))].map((at) => [at, plus(at, inwards)] as const);
}

/** Grain: a fine line with open points at both ends. */
export function grainLine(from: Point, to: Point): string {
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	if (length === 0) return '';
	const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
	const barb = (at: Point, way: 1 | -1) => {
		const back = minus(at, times(along, way * 8));
		const side: Point = [-along[1] * 4.2, along[0] * 4.2];
		return `M${text(plus(back, side))}L${text(at)}L${text(minus(back, side))}`;
	};
	return `M${text(from)}L${text(to)}${barb(to, 1)}${barb(from, -1)}`;
}

const text = ([x, y]: Point): string => `${x.toFixed(2)} ${y.toFixed(2)}`;
