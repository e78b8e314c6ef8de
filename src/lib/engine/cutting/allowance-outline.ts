/**
 * The closed cutting line round a stitching line whose edges have each their own allowance.
 *
 * Every edge's line is moved outward by its allowance (fitted curves, straight lines exactly); corners are mitred up to
 * a limit and then squared off; beyond a turned edge the sides are mirrored. What crosses itself in hollows narrower than their
 * allowance is left out at the end, by taking the outer contour: nothing is refused.
 */
import { angleBetween, lengthOf } from '../geometry/point.ts';
import {
	endTangent,
	pathEnd,
	pathLength,
	pathStart,
	pointAt,
	portion,
	startTangent,
	tangentAt
} from '../geometry/path.ts';
import { cornerAngle } from '../geometry/accuracy.ts';
import { line } from '../geometry/segment.ts';
import type { Path, Point, Segment } from '../geometry/types.ts';
import { beside } from './beside.ts';
import { backToCorner, cornerBetween, isSwallowed, mitreLimit, type Beside, type Corner } from './corner.ts';
import { outerContour } from './outer-contour.ts';
import { acrossMouth, betweenMouths, type Mouth } from './pressed-mouth.ts';
import { turnedBack, turnedCorner, type TurnedCorner } from './turned-edge.ts';

export interface AllowedEdge {
	readonly path: Path;
	/** mm outward, never negative. */
	readonly allowance: number;
	/** Its allowance is turned under. */
	readonly turn: boolean;
	/** Mouths of darts on it that are to be shaped as they will be pressed, in order. */
	readonly mouths?: readonly Mouth[];
}

export interface AllowanceOutline {
	readonly path: Path;
	/** Greatest distance found between the drawn lines and the exact ones, mm. */
	readonly deviation: number;
	/** For each edge, where its cutting line begins and ends, corners included, before hollows are cleared. */
	readonly ends: readonly (readonly [Point, Point])[];
}

/** A smooth part of an edge's cutting line and the corner of the stitching line that it comes to. */
interface Part extends Beside {
	readonly edge: number;
	readonly turn: boolean;
	/** Where the stitching line's part ends, and its directions into and out of that corner. */
	readonly corner: Point;
	readonly into: Point;
	readonly outOf: Point;
	/** No corner follows: the line only turns to run backwards, or forwards again. */
	readonly runsOn: boolean;
	/** What follows is the mouth of a dart. */
	readonly mouth?: Mouth;
}

/**
 * @param edges the stitching line in order, clockwise, each ending where the next begins
 * @param accuracy greatest distance of a moved curve from the exact one, mm (see fitCurve)
 * @param mitre how many times the larger allowance a corner may reach
 */
export function allowanceOutline(
	edges: readonly AllowedEdge[],
	accuracy: number,
	mitre: number = mitreLimit
): AllowanceOutline {
	let deviation = 0;
	const parts: Part[] = [];
	edges.forEach((edge, i) => {
		const found = partsBeside(edge, i, edges[(i + 1) % edges.length], accuracy);
		deviation = Math.max(deviation, found.deviation);
		parts.push(...found.parts);
	});
	const corners = parts.map((part, i) => joint(part, parts[(i + 1) % parts.length], mitre));
	parts.forEach((part, i) => {
		const previous = (i + parts.length - 1) % parts.length;
		if (!isSwallowed(part.path, corners[previous].after, corners[i].before)) return;
		corners[previous] = straightBy(parts[previous], part, backToCorner(parts[previous].corner));
		corners[i] = straightBy(part, parts[(i + 1) % parts.length], backToCorner(part.corner));
	});
	const closed: Segment[] = [];
	const ends: [Point, Point][] = edges.map(({ path }) => [pathStart(path), pathEnd(path)]);
	parts.forEach((part, i) => {
		const { after } = corners[(i + parts.length - 1) % parts.length];
		const length = pathLength(part.path);
		const { before, by } = corners[i];
		const kept = after > 0 || before > 0 ? portion(part.path, after, length - before) : part.path;
		append(closed, kept);
		append(closed, by);
		const next = parts[(i + 1) % parts.length].edge;
		if (next === part.edge && i + 1 < parts.length) return;
		ends[part.edge][1] = by.length > 0 ? pathEnd(by.slice(0, 1)) : pathEnd(kept);
		ends[next][0] = by.length > 0 ? pathStart(by.slice(-1)) : pathEnd(kept);
	});
	closeUp(closed);
	return { path: tidied(outerContour(closed)), deviation, ends };
}

function partsBeside(
	edge: AllowedEdge,
	index: number,
	next: AllowedEdge,
	accuracy: number
): { readonly parts: Part[]; readonly deviation: number } {
	const mouths = edge.mouths ?? [];
	const same = { allowance: edge.allowance, edgeLength: pathLength(edge.path), edge: index, turn: edge.turn };
	let deviation = 0;
	const parts = betweenMouths(edge.path, mouths).flatMap((path, i) => {
		const mouth: Mouth | undefined = mouths[i];
		const outOf = mouth ? endTangent(path) : startTangent(next.path);
		const atEnd = { corner: pathEnd(path), into: endTangent(path), outOf, runsOn: false, mouth };
		if (edge.allowance === 0) return [{ ...same, ...atEnd, path, bridge: false }];
		const moved = beside(path, edge.allowance, accuracy);
		return moved.map((part, k): Part => {
			deviation = Math.max(deviation, part.deviation);
			const own = { ...same, path: part.path, bridge: part.backward };
			if (k + 1 === moved.length) return { ...own, ...atEnd };
			const into = tangentAt(path, part.to, 'before');
			const outOf = tangentAt(path, part.to, 'after');
			const runsOn = Math.abs(angleBetween(into, outOf)) <= cornerAngle;
			return { ...own, corner: pointAt(path, part.to), into, outOf, runsOn };
		});
	});
	return { parts, deviation };
}

function joint(part: Part, next: Part, mitre: number): TurnedCorner {
	const straight = { before: 0, after: 0, by: [] };
	if (part.mouth) return acrossMouth(part, next, part.mouth) ?? straightBy(part, next, straight);
	if (part.runsOn) return straightBy(part, next, straight);
	const turned =
		next.turn && !part.turn
			? turnedCorner(part, next, part.corner, part.outOf)
			: part.turn && !next.turn
				? turnedBack(part, next, part.corner, part.into)
				: undefined;
	return turned ?? straightBy(part, next, cornerBetween(part, next, part.corner, part.into, part.outOf, mitre));
}

/** The corner as straight lines from what is kept of one part to what is kept of the next. */
function straightBy(part: Part, next: Part, { before, after, by }: Corner): TurnedCorner {
	const from = before > 0 ? pointAt(part.path, pathLength(part.path) - before) : pathEnd(part.path);
	const to = after > 0 ? pointAt(next.path, after) : pathStart(next.path);
	const points = [from, ...by, to];
	const lines = points.slice(1).map((point, i) => line(points[i], point));
	return { before, after, by: lines.filter((one) => one.from[0] !== one.to[0] || one.from[1] !== one.to[1]) };
}

/** The contour with straight lines that were cut in two made one again. */
function tidied(contour: Path): Path {
	const chain: Segment[] = [];
	append(chain, contour);
	closeUp(chain);
	return chain;
}

/** Adds a path to the chain, to the bit where the last one ended; straight lines that run on straight become one. */
function append(chain: Segment[], path: Path): void {
	for (const segment of path) {
		const last = chain[chain.length - 1];
		if (!last) {
			chain.push(segment);
			continue;
		}
		if (last.kind === 'line' && segment.kind === 'line' && runsOn(last.from, last.to, segment.to)) {
			chain[chain.length - 1] = { ...last, to: segment.to };
			continue;
		}
		chain.push({ ...segment, from: last.to });
	}
}

function closeUp(chain: Segment[]): void {
	const first = chain[0];
	const last = chain[chain.length - 1];
	if (chain.length > 2 && first.kind === 'line' && last.kind === 'line' && runsOn(last.from, last.to, first.to)) {
		chain.pop();
		chain[0] = { ...first, from: last.from };
		const before = chain[chain.length - 1];
		chain[chain.length - 1] = { ...before, to: last.from };
		return;
	}
	chain[chain.length - 1] = { ...last, to: first.from };
}

/** Whether b lies on the way from a to c within a ten-millionth of a millimetre or of a radian. */
function runsOn(a: Point, b: Point, c: Point): boolean {
	const [x, y] = [b[0] - a[0], b[1] - a[1]];
	const [u, v] = [c[0] - b[0], c[1] - b[1]];
	const turned = Math.abs(x * v - y * u);
	const long = lengthOf(x, y);
	const further = lengthOf(u, v);
	if (long === 0 || further === 0) return false;
	return x * u + y * v > 0 && turned / Math.max(long, further) < 1e-7 && turned / (long * further) < 1e-7;
}
