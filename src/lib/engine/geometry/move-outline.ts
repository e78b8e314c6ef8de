/**
 * Moves edges of a closed outline at right angles to themselves and joins what they met: the routine behind every moved
 * seam.
 *
 * Edges are paths in order; each ends where the next begins. A moved edge may have corners inside; its smooth stretches are
 * moved one by one and joined like edges.
 */
import { timesAmount, valueAt, type Amount } from './amount.ts';
import { offsetPath } from './offset.ts';
import { meet, type Meeting } from './meet.ts';
import { movedHalfway, movedPoint } from './moved-curve.ts';
import { distance, midpoint } from './point.ts';
import { roomFor } from './room-for.ts';
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
	| { readonly refused: 'no-join'; readonly edge: number; readonly end: 'start' | 'finish' | 'inside' };

/** How far from the old corner two lines may meet: 3 × the larger amount + 1 mm. */
export function reachFor(larger: number): number {
	return 3 * larger + 1;
}

/**
 * Moves the edges that have a move and joins every corner again. Refused, with the edge and where: a line that would turn back
 * on itself, or bend too sharply to be drawn within four times the accuracy (with the factor by which the amounts may be
 * scaled), and two lines that do not meet near their corner.
 *
 * @param accuracy greatest distance of a moved line from the exact one, mm
 */
export function moveOutline(
	edges: readonly Path[],
	moves: readonly (EdgeMove | undefined)[],
	accuracy: number
): MovedOutline | MoveRefusal {
	let deviation = 0;
	const ring: Stretch[] = [];
	for (let i = 0; i < edges.length; i++) {
		const move = moves[i];
		if (!move) {
			ring.push({ edge: i, path: edges[i], from: 0, to: pathLength(edges[i]) });
			continue;
		}
		const factor = roomFor(edges[i], move.amount, move.greatest);
		if (factor <= 1) return { refused: 'too-tight', edge: i, factor };
		const parts = offsetPath(edges[i], move.amount, move.breaks, accuracy);
		for (const part of parts) deviation = Math.max(deviation, part.deviation);
		if (deviation > drawable * accuracy)
			return { refused: 'too-tight', edge: i, factor: drawableFactor(edges[i], move, accuracy) };
		for (const { path, from, to } of parts) ring.push({ edge: i, path, from, to, amount: move.amount });
	}
	const joinedRing = joinRing(ring, edges);
	if ('refused' in joinedRing) return joinedRing;
	const ofEdge: JoinedStretch[][] = edges.map(() => []);
	for (const stretch of joinedRing) ofEdge[stretch.edge].push(stretch);
	return { edges: edges.map((edge, i) => assemble(edge, ofEdge[i], moves[i])), deviation };
}

/** How many times the accuracy a drawn line may miss the exact one by. */
const drawable = 4;

/** The greatest factor found, by halving four times, with which the moved edge can be drawn. */
function drawableFactor(edge: Path, { amount, breaks }: EdgeMove, accuracy: number): number {
	let works = 0;
	for (let step = 0.5; step >= 1 / 16; step /= 2) {
		const factor = works + step;
		const parts = offsetPath(edge, timesAmount(amount, factor), breaks, accuracy);
		if (parts.every((part) => part.deviation <= drawable * accuracy)) works = factor;
	}
	return works;
}

/** A smooth stretch of an edge as moved; `from` and `to` on the old edge. No amount: an edge that is not moved, whole. */
interface Stretch {
	readonly edge: number;
	readonly path: Path;
	readonly from: number;
	readonly to: number;
	readonly amount?: Amount;
}

/** A stretch with the corners that it is joined at: what its start and finish lose (positive) or gain (negative), mm. */
interface JoinedStretch extends Stretch {
	readonly start: number;
	readonly finish: number;
	readonly startAt: Point;
	readonly finishAt: Point;
}

/**
 * Joins all stretches round the outline, each corner by itself. A moved stretch of which nothing is left between its two
 * corners is left out, the one that lacks most first, and its neighbours are joined, as long as its edge has another; so is the
 * shorter of two that meet nowhere. Nothing of this depends on the way round.
 */
function joinRing(stretches: readonly Stretch[], edges: readonly Path[]): readonly JoinedStretch[] | MoveRefusal {
	const ring = [...stretches];
	const corners = ring.map((stretch, i) => cornerOf(stretch, ring[(i + 1) % ring.length], edges));
	for (let out = superfluous(ring, corners); out !== undefined; out = superfluous(ring, corners)) {
		ring.splice(out, 1);
		corners.splice(out, 1);
		const before = (out + ring.length - 1) % ring.length;
		corners[before] = cornerOf(ring[before], ring[(before + 1) % ring.length], edges);
	}
	const joinedUp: JoinedStretch[] = [];
	for (let i = 0; i < ring.length; i++) {
		const stretch = ring[i];
		const before = corners[(i + ring.length - 1) % ring.length];
		const after = corners[i];
		if (!after) return unjoined(stretch, ring[(i + 1) % ring.length]);
		if (!before) return unjoined(ring[(i + ring.length - 1) % ring.length], stretch);
		if (lacking(stretch, before, after) > 0)
			return before.after > after.before
				? unjoined(ring[(i + ring.length - 1) % ring.length], stretch)
				: unjoined(stretch, ring[(i + 1) % ring.length]);
		// Named one by one: a spread takes several times as long, and this is done at every corner of every moved piece.
		joinedUp.push({
			edge: stretch.edge,
			path: stretch.path,
			from: stretch.from,
			to: stretch.to,
			amount: stretch.amount,
			start: before.after,
			startAt: before.point,
			finish: after.before,
			finishAt: after.point
		});
	}
	return joinedUp;
}

function cornerOf(before: Stretch, after: Stretch, edges: readonly Path[]): Meeting | undefined {
	if (before.amount === undefined && after.amount === undefined)
		return { point: pathEnd(edges[before.edge]), before: 0, after: 0 };
	const end = pointAt(edges[before.edge], before.to);
	const start = pointAt(edges[after.edge], after.from);
	const larger = Math.max(amountOf(before, before.to), amountOf(after, after.from), distance(end, start));
	return meet(before.path, after.path, midpoint(end, start), reachFor(larger), true);
}

function amountOf({ amount }: Stretch, s: number): number {
	return amount === undefined ? 0 : Math.abs(valueAt(amount, s));
}

/** The stretch to leave out next, if there is one. */
function superfluous(ring: readonly Stretch[], corners: readonly (Meeting | undefined)[]): number | undefined {
	let found: number | undefined;
	let most = 0;
	let shortest = Infinity;
	for (let i = 0; i < ring.length; i++) {
		const stretch = ring[i];
		if (stretch.amount === undefined || ring.every((other) => other === stretch || other.edge !== stretch.edge))
			continue;
		const before = corners[(i + ring.length - 1) % ring.length];
		const after = corners[i];
		const lacks = before && after ? lacking(stretch, before, after) : 0;
		if (lacks > most) {
			most = lacks;
			found = i;
		}
		const length = pathLength(stretch.path);
		const reach = reachFor(Math.max(amountOf(stretch, stretch.from), amountOf(stretch, stretch.to)));
		if ((!before || !after) && most === 0 && length < shortest && length < reach) {
			shortest = length;
			found = i;
		}
	}
	return found;
}

/** By how much a stretch is too short for its two corners, mm; 0 or less if it is not. */
function lacking({ path }: Stretch, before: Meeting, after: Meeting): number {
	return before.after + after.before + joined - pathLength(path);
}

function unjoined(before: Stretch, after: Stretch): MoveRefusal {
	if (before.edge === after.edge) return { refused: 'no-join', edge: before.edge, end: 'inside' };
	return before.amount === undefined
		? { refused: 'no-join', edge: after.edge, end: 'start' }
		: { refused: 'no-join', edge: before.edge, end: 'finish' };
}

function assemble(edge: Path, stretches: readonly JoinedStretch[], move: EdgeMove | undefined): MovedEdge {
	const [first, last] = [stretches[0], stretches[stretches.length - 1]];
	const kept = !move && first.start === 0 && last.finish === 0;
	if (kept && samePlace(first.startAt, pathStart(edge)) && samePlace(last.finishAt, pathEnd(edge)))
		return { path: edge, carried: (s) => s };
	const segments: Segment[] = [];
	const pieces: { stretch: JoinedStretch; at: number }[] = [];
	let length = 0;
	for (const stretch of stretches) {
		const trimmed = trimmedStretch(stretch);
		pieces.push({ stretch, at: length });
		length += pathLength(trimmed);
		append(segments, trimmed);
	}
	const path: Path = segments;
	const total = pathLength(path);
	return {
		path,
		carried(s) {
			for (let i = 0; i < pieces.length; i++) {
				const { stretch, at } = pieces[i];
				if (s < stretch.from - measured || s > stretch.to + measured) continue;
				const next = pieces[i + 1];
				// What lies in a corner inside the edge stays in it, whichever way the edge runs.
				if (next && s >= next.stretch.from - measured) return next.at;
				const within = move ? nearestOn(stretch.path, movedWithin(edge, move.amount, s, stretch), measured).s : s;
				const lengthThere = pathLength(stretch.path);
				if (within < stretch.start - measured || within > lengthThere - stretch.finish + measured) continue;
				return Math.min(Math.max(at + within - stretch.start, 0), total);
			}
			return undefined;
		}
	};
}

/** Where a place inside a stretch goes: at a turn that was passed over halfway between its two sides, as the line does. */
function movedWithin(edge: Path, amount: Amount, s: number, { from, to }: Stretch): Point {
	if (s <= from + measured) return movedPoint(edge, amount, s, 'after');
	return s >= to - measured ? movedPoint(edge, amount, s, 'before') : movedHalfway(edge, amount, s);
}

function samePlace(a: Point, b: Point): boolean {
	return a[0] === b[0] && a[1] === b[1];
}

/** What is left between its corners, which is more than `joined` long. */
function trimmedStretch({ path, start, startAt, finish, finishAt }: JoinedStretch): Path {
	if (path.length === 1 && path[0].kind === 'line') return straight(startAt, finishAt);
	const length = pathLength(path);
	const kept = start > 0 || finish > 0 ? portion(path, Math.max(0, start), length - Math.max(0, finish)) : path;
	const segments: Segment[] = [];
	if (start < -joined) append(segments, straight(startAt, pathStart(kept)));
	append(segments, kept);
	if (finish < -joined) append(segments, straight(pathEnd(kept), finishAt));
	segments[0] = { ...segments[0], from: startAt };
	segments[segments.length - 1] = { ...segments[segments.length - 1], to: finishAt };
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
