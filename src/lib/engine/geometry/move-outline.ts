/**
 * Moves edges of a closed outline at right angles to themselves and joins what they met: the one routine behind every
 * moved seam and every cutting line.
 *
 * Edges are paths in order; each ends where the next begins. A moved edge may have corners inside; its smooth stretches are
 * moved one by one and joined like edges, and a stretch that is swallowed at a hollow corner is left out.
 */
import {
	amountAt,
	movedPoint,
	offsetPath,
	offsetWithoutLoops,
	roomFor,
	type Amount,
	type MovedPart
} from './offset.ts';
import { meet } from './meet.ts';
import { add, distance, dot, norm, scale, subtract } from './point.ts';
import { endTangent, pathEnd, pathLength, pathStart, pointAt, portion, startTangent, straight } from './path.ts';
import { joined, measured } from './accuracy.ts';
import { nearestOn } from './nearest.ts';
import type { Path, Point, Segment } from './types.ts';

export interface EdgeMove {
	readonly amount: Amount;
	/** Arc lengths at which the amount is not smooth. */
	readonly breaks: readonly number[];
	/** The greatest amount along the edge, mm, without sign. */
	readonly greatest: number;
}

export interface MovedOutline {
	readonly edges: readonly MovedEdge[];
	/** Greatest distance of the drawn lines from the exact ones, in mm, before corners are joined. */
	readonly deviation: number;
}

export interface MovedEdge {
	/** The same object as went in, if nothing about it changed. */
	readonly path: Path;
	/** Arc length on the new edge of what was at arc length s on the old one; undefined where it was trimmed off. */
	carried(s: number): number | undefined;
}

export type MoveRefusal =
	| { readonly refused: 'too-tight'; readonly edge: number; readonly factor: number }
	| { readonly refused: 'no-join'; readonly edge: number; readonly end: 'start' | 'finish' };

/** How far from the old corner two lines may meet: 3 × the larger amount + 1 mm. */
export function reachFor(larger: number): number {
	return 3 * larger + 1;
}

/** What is done where lines do not meet: refuse, or mitre up to `mitre` × the larger amount and square off beyond it. */
export type Corners = 'refuse' | { readonly mitre: number };

/**
 * Moves the edges that have a move and joins every corner again. With corners `refuse` it is refused, with the edge and
 * where, if a line would turn back on itself (with the factor by which the amounts may be scaled) or if two lines do not
 * meet near their corner. With a mitre limit, for even moves, nothing is refused for those reasons: hollows narrower than the
 * amount lose their loops and long points are squared off; only an outline of which nothing is left is refused.
 *
 * @param accuracy greatest distance of a moved line from the exact one, mm
 */
export function moveOutline(
	edges: readonly Path[],
	moves: readonly (EdgeMove | undefined)[],
	corners: Corners,
	accuracy: number
): MovedOutline | MoveRefusal {
	let deviation = 0;
	for (let i = 0; i < edges.length && corners === 'refuse'; i++) {
		const move = moves[i];
		if (!move) continue;
		const factor = roomFor(edges[i], move.amount);
		if (factor <= 1) return { refused: 'too-tight', edge: i, factor };
	}
	const moved: Stretch[][] = [];
	for (let i = 0; i < edges.length; i++) {
		const move = moves[i];
		if (!move) {
			moved.push([whole(edges[i])]);
			continue;
		}
		const parts = (corners === 'refuse' ? offsetPath : offsetWithoutLoops)(
			edges[i],
			move.amount,
			move.breaks,
			accuracy
		);
		for (const part of parts) deviation = Math.max(deviation, part.deviation);
		const inner = joinStretches(parts, edges[i], move, corners);
		if (!inner) return { refused: 'no-join', edge: i, end: 'finish' };
		moved.push(inner);
	}
	for (let i = 0; i < edges.length; i++) {
		const next = (i + 1) % edges.length;
		if (!moves[i] && !moves[next]) continue;
		const corner = pathEnd(edges[i]);
		const larger = Math.max(amountAtEnd(moves[i], edges[i], 'finish'), amountAtEnd(moves[next], edges[next], 'start'));
		const before = moved[i][moved[i].length - 1];
		const after = moved[next][0];
		if (!joinAt(before, after, corner, larger, corners))
			return moves[i]
				? { refused: 'no-join', edge: i, end: 'finish' }
				: { refused: 'no-join', edge: next, end: 'start' };
	}
	const results: MovedEdge[] = [];
	for (let i = 0; i < edges.length; i++) {
		const result = assemble(edges[i], moved[i], moves[i]);
		if (!result) return { refused: 'no-join', edge: i, end: 'finish' };
		results.push(result);
	}
	return { edges: results, deviation };
}

/** A moved stretch and what its ends lose (positive) or gain (negative). */
interface Stretch {
	readonly path: Path;
	readonly from: number;
	readonly to: number;
	start: number;
	finish: number;
	startAt?: Point;
	finishAt?: Point;
	/** Where a squared-off corner goes on to after the finish. */
	bridge?: Point;
}

function whole(path: Path): Stretch {
	return { path, from: 0, to: pathLength(path), start: 0, finish: 0 };
}

function amountAtEnd(move: EdgeMove | undefined, edge: Path, end: 'start' | 'finish'): number {
	if (!move) return 0;
	return Math.abs(amountAt(move.amount, end === 'start' ? 0 : pathLength(edge)).value);
}

/** Joins the smooth stretches of one moved edge at its inner corners; a swallowed stretch is left out. */
function joinStretches(
	parts: readonly MovedPart[],
	edge: Path,
	move: EdgeMove,
	corners: Corners
): Stretch[] | undefined {
	const kept: Stretch[] = [];
	for (const part of parts) {
		const next: Stretch = { path: part.path, from: part.from, to: part.to, start: 0, finish: 0 };
		while (kept.length > 0) {
			const previous = kept[kept.length - 1];
			const larger = Math.max(Math.abs(amountAt(move.amount, next.from).value), next.from - previous.to);
			const met = joinAt(previous, next, pointAt(edge, next.from), larger, corners);
			const swallowed = previous.finish > 0 && previous.finish + previous.start >= pathLength(previous.path);
			if (met && !swallowed) break;
			if (kept.length === 1) return undefined;
			kept.pop();
		}
		kept.push(next);
	}
	return kept.length > 0 ? kept : undefined;
}

/** Records where two stretches meet; says whether they do. */
function joinAt(before: Stretch, after: Stretch, corner: Point, larger: number, corners: Corners): boolean {
	const reach = corners === 'refuse' ? reachFor(larger) : 12 * larger + 1;
	const meeting = meet(before.path, after.path, corner, reach);
	if (corners !== 'refuse') {
		const limit = corners.mitre * larger;
		const pointed = meeting && meeting.before < 0 && meeting.after < 0 && distance(meeting.point, corner) > limit;
		if (!meeting || pointed) return square(before, after, corner, larger);
	}
	if (!meeting) return false;
	before.finish = meeting.before;
	before.finishAt = meeting.point;
	after.start = meeting.after;
	after.startAt = meeting.point;
	return true;
}

/**
 * Squares a corner off: both lines run on until they are 1.5 × the larger amount beyond the corner along the bisector of
 * their directions and are bridged there; lines that run alongside each other are bridged as they stand.
 */
function square(before: Stretch, after: Stretch, corner: Point, larger: number): boolean {
	const end = pathEnd(before.path);
	const start = pathStart(after.path);
	const onward = endTangent(before.path);
	const backward = scale(startTangent(after.path), -1);
	const away = add(onward, backward);
	const spread = norm(away);
	let p = end;
	let q = start;
	if (spread > 0.2) {
		const bisector = scale(away, 1 / spread);
		const reach = 1.5 * larger;
		const forward = (reach - dot(subtract(end, corner), bisector)) / dot(onward, bisector);
		const back = (reach - dot(subtract(start, corner), bisector)) / dot(backward, bisector);
		if (forward > 0) p = add(end, scale(onward, forward));
		if (back > 0) q = add(start, scale(backward, back));
	}
	before.finish = -distance(p, end);
	before.finishAt = p;
	before.bridge = q;
	after.start = -distance(q, start);
	after.startAt = q;
	return true;
}

function assemble(edge: Path, stretches: readonly Stretch[], move: EdgeMove | undefined): MovedEdge | undefined {
	const untouched = !move && stretches[0].start === 0 && stretches[0].finish === 0;
	if (untouched && samePlace(stretches[0].startAt, pathStart(edge)) && samePlace(stretches[0].finishAt, pathEnd(edge)))
		return { path: edge, carried: (s) => s };
	const segments: Segment[] = [];
	const pieces: { stretch: Stretch; at: number }[] = [];
	let length = 0;
	for (const stretch of stretches) {
		const trimmed = trimmedStretch(stretch);
		if (!trimmed) return undefined;
		pieces.push({ stretch, at: length });
		length += pathLength(trimmed);
		append(segments, trimmed);
		if (stretch.bridge && distance(pathEnd(trimmed), stretch.bridge) > 0) {
			const bridge = straight(pathEnd(trimmed), stretch.bridge);
			length += pathLength(bridge);
			append(segments, bridge);
		}
	}
	const path: Path = segments;
	const total = pathLength(path);
	return {
		path,
		carried(s) {
			for (const { stretch, at } of pieces) {
				if (s < stretch.from - measured || s > stretch.to + measured) continue;
				const within = move
					? nearestOn(
							stretch.path,
							movedPoint(edge, move.amount, s, s <= stretch.from + measured ? 'after' : 'before'),
							measured
						).s
					: s;
				const lengthThere = pathLength(stretch.path);
				if (within < stretch.start - measured || within > lengthThere - stretch.finish + measured) continue;
				return Math.min(Math.max(at + within - stretch.start, 0), total);
			}
			return undefined;
		}
	};
}

function samePlace(a: Point | undefined, b: Point): boolean {
	return !a || (a[0] === b[0] && a[1] === b[1]);
}

function trimmedStretch(stretch: Stretch): Path | undefined {
	const length = pathLength(stretch.path);
	const from = Math.max(0, stretch.start);
	const to = length - Math.max(0, stretch.finish);
	if (to - from <= joined) return undefined;
	const kept = from > 0 || to < length ? portion(stretch.path, from, to) : stretch.path;
	const segments: Segment[] = [];
	if (stretch.start < -joined && stretch.startAt) append(segments, straight(stretch.startAt, pathStart(kept)));
	append(segments, kept);
	if (stretch.finish < -joined && stretch.finishAt) append(segments, straight(pathEnd(kept), stretch.finishAt));
	if (stretch.startAt) segments[0] = { ...segments[0], from: stretch.startAt };
	if (stretch.finishAt) segments[segments.length - 1] = { ...segments[segments.length - 1], to: stretch.finishAt };
	return segments;
}

/** Adds segments to a chain; a straight line that runs straight on from a straight line becomes one with it. */
function append(segments: Segment[], path: Path): void {
	for (const segment of path) {
		const last = segments[segments.length - 1];
		if (last && last.kind === 'line' && segment.kind === 'line') {
			const ahead = endTangent([last]);
			const next = startTangent([segment]);
			if (Math.abs(ahead[0] * next[1] - ahead[1] * next[0]) < 1e-9 && ahead[0] * next[0] + ahead[1] * next[1] > 0) {
				segments[segments.length - 1] = { ...last, to: segment.to };
				continue;
			}
		}
		const exact = last && distance(last.to, segment.from) > 0 ? { ...segment, from: last.to } : segment;
		segments.push(exact);
	}
}
