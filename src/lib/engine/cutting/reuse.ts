import { angleBetween, cross, distance, lerp, outward, subtract } from '../geometry/point.ts';
import { contains } from '../geometry/contains.ts';
import { compose, identity, movePath, reflection, rotation, translation } from '../geometry/motion.ts';
import { cut, joined, measured } from '../geometry/accuracy.ts';
import { difference, polygonArea, union } from '../geometry/polygon.ts';
import { flatten } from '../geometry/flatten.ts';
import { line } from '../geometry/segment.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { pathEnd, pathStart, reversedPath, startTangent } from '../geometry/path.ts';
import { undividedName } from '../draft/undivided-name.ts';
import type { Motion, Path, Point } from '../geometry/types.ts';
import { placesOn, stretchOn, type NamedStretch } from './named-stretch.ts';
import { readLine } from './read-line.ts';
import type { CutPiece } from './cutting-lines.ts';

/** Whether a piece that was cut for a toile can become a piece of the lining. */
export interface Reuse {
	readonly piece: string;
	readonly name: string;
	/** As it lies on the new lines; with less allowance than is wanted; or cut again. */
	readonly verdict: 'restitch' | 'narrow' | 'recut';
	/** How far the new cutting line lies outside the cloth, mm; 0 if it does not. Infinite where there is no such piece of cloth. */
	readonly shortBy: number;
	/** The least cloth left beyond the new stitching line, mm; negative where that line itself leaves the cloth. */
	readonly left: number;
	/** The edge at which it is shortest (or, if it is not short, narrowest), and the place. */
	readonly where: string;
	readonly at?: Point;
	/** Along which stretch of that edge it is short: from one named place on it to another (`start`, a level, a notch, `finish`). */
	readonly stretch?: NamedStretch;
}

export interface ReuseOptions {
	/** What must be left to sew a narrow seam, mm; 6 if not said. */
	readonly keep?: number;
	/** How deep the toile's allowances were clipped, mm. */
	readonly clipped?: number;
}

/** A cutting line this far outside the cloth is still on it: the width of the line itself, mm. */
const tolerance = 0.1;

/** Lines are compared at points no farther apart than this, mm. */
const step = 2;

/**
 * Lays the cutting lines of a lining on those of the toile, in the same place, piece by piece. Pieces that have been divided since
 * are held against the whole one; pieces on the fold are laid fold on fold. Distances are good to `cut` mm; a place is found
 * to 2 mm.
 */
export function reuse(toile: readonly CutPiece[], lining: readonly CutPiece[], options: ReuseOptions = {}): Reuse[] {
	return lining.map((piece) => {
		const laid = clothFor(toile, piece).map((cloth) => lay(cloth, piece));
		if (laid.length === 0) return noCloth(piece);
		const { short, stretch } = laid.reduce((worst, one) => (one.short.by > worst.short.by ? one : worst));
		const left = laid.reduce((worst, one) => (one.left.by < worst.left.by ? one : worst)).left;
		return { ...verdictOn(piece, short, left, options), ...(stretch && { stretch }) };
	});
}

/** The piece itself, or the whole one that it was divided from, or the two halves that it is now one of. */
function clothFor(toile: readonly CutPiece[], { piece }: CutPiece): CutPiece[] {
	const named = (name: string) => toile.filter((one) => one.piece === name);
	const own = named(piece);
	if (own.length > 0) return own;
	const whole = named(undividedName(piece));
	return whole.length > 0 ? whole : toile.filter((one) => undividedName(one.piece) === piece);
}

function noCloth({ piece, name, edges }: CutPiece): Reuse {
	return { piece, name, verdict: 'recut', shortBy: Infinity, left: -Infinity, where: edges[0].edge };
}

interface Worst {
	readonly by: number;
	readonly at: Point;
	/** `front/side` */
	readonly edge: string;
}

function verdictOn(
	{ piece, name }: CutPiece,
	short: Worst,
	left: Worst,
	{ keep = 6, clipped = 0 }: ReuseOptions
): Reuse {
	const isShort = short.by > tolerance;
	const sewable = left.by - clipped >= keep - joined;
	const verdict = isShort || clipped > 0 ? (!sewable ? 'recut' : isShort ? 'narrow' : 'restitch') : 'restitch';
	const { edge, at } = isShort ? short : left;
	return { piece, name, verdict, shortBy: isShort ? short.by : 0, left: left.by - clipped, where: edge, at };
}

interface Laid {
	readonly short: Worst;
	readonly left: Worst;
	readonly stretch?: NamedStretch;
}

/** How far a piece's cutting line lies outside the cloth, and how much cloth its stitching line has beyond it. */
function lay(cloth: CutPiece, piece: CutPiece): Laid {
	const boundary = wholeOutline(cloth);
	const moved = foldOnFold(cloth, piece);
	const sewn = piece.edges
		.filter(({ kind }) => kind !== 'fold')
		.map(({ edge, stitching }) => ({ edge, line: movePath(moved, readLine(stitching)) }));
	const nearestEdge = (point: Point) =>
		sewn
			.map(({ edge, line }) => ({ edge, away: nearestOn(line, point, measured).distance }))
			.reduce((near, one) => (one.away < near.away ? one : near)).edge;

	const cloths = [flatten(boundary, cut / 2)];
	const flat = (data: string) => flatten(movePath(moved, readLine(data)), cut / 2);
	const over = difference([flat(piece.outline)], cloths)
		.flatMap((polygon) => evenly([...polygon, polygon[0]]))
		.map((at) => ({ at, by: nearestOn(boundary, at, measured).distance, edge: nearestEdge(at) }));
	// Only where the stitching line itself leaves the cloth is it asked of every point on which side it lies.
	const leaves = difference([flat(piece.stitching)], cloths).length > 0;
	const beyond = sewn.flatMap(({ edge, line }) => {
		const corners = boundary.map(({ from }) => nearestOn(line, from, measured).point);
		return [...evenly(flatten(line, cut / 2)), ...corners].map((at) => {
			const by = nearestOn(boundary, at, measured).distance;
			return { at, by: leaves && !contains(boundary, at) ? -by : by, edge };
		});
	});
	const left = worst(beyond, -1);
	const short = over.length > 0 ? worst(over, 1) : { ...left, by: 0 };
	if (short.by <= tolerance) return { short, left };
	const bad = over.filter(({ edge, by }) => edge === short.edge && by > tolerance).map(({ at }) => at);
	const { line } = sewn.find(({ edge }) => edge === short.edge) ?? sewn[0];
	return { short, left, stretch: stretchOn(line, placesOn(piece, short.edge, line, moved), bad) };
}

/** Places that differ from the worst by less than this are as bad, mm. */
const alike = 0.05;

/**
 * The greatest (direction 1) or least (−1) of the places, said to be on the edge that has most of those that are as bad, and in the
 * middle of them.
 */
function worst(places: readonly Worst[], direction: 1 | -1): Worst {
	const by = places.reduce((far, one) => Math.max(far, direction * one.by), -Infinity);
	const bad = places.filter((one) => direction * one.by >= by - alike);
	const counts = new Map<string, number>();
	for (const { edge } of bad) counts.set(edge, (counts.get(edge) ?? 0) + 1);
	const [[edge]] = [...counts].sort((a, b) => b[1] - a[1]);
	const there = bad.filter((one) => one.edge === edge);
	return { by: direction * by, at: there[Math.floor(there.length / 2)].at, edge };
}

/** The cloth that was cut, opened if it lay on the fold. */
function wholeOutline(cloth: CutPiece): Path {
	const outline = readLine(cloth.outline);
	if (!cloth.fold) return outline;
	const fold = readLine(cloth.fold);
	const half = flatten(outline, cut / 2);
	const other = flatten(movePath(reflection(pathStart(fold), pathEnd(fold)), reversedPath(outline)), cut / 2);
	const [whole] = union([half, other], []).sort((a, b) => polygonArea([b]) - polygonArea([a]));
	return whole.map((point, i) => line(point, whole[(i + 1) % whole.length]));
}

/** Lays the piece's fold on the cloth's; where not both have one, the piece lies where it is. */
function foldOnFold(cloth: CutPiece, piece: CutPiece): Motion {
	if (!cloth.fold || !piece.fold) return identity;
	const [old, now] = [readLine(cloth.fold), readLine(piece.fold)];
	const direction = startTangent(old);
	const [from, start] = [pathStart(now), pathStart(old)];
	const turned = rotation(angleBetween(startTangent(now), direction), from);
	const aside = cross(direction, subtract(from, start));
	const left = outward(direction);
	return compose(turned, translation(aside * left[0], aside * left[1]));
}

/** The points of a polygon's side, none farther than `step` from the next. */
function evenly(points: readonly Point[]): Point[] {
	return points.flatMap((point, i) => {
		if (i === 0) return [point];
		const before = points[i - 1];
		const count = Math.max(1, Math.ceil(distance(before, point) / step));
		return Array.from({ length: count }, (_, k) => lerp(before, point, (k + 1) / count));
	});
}
