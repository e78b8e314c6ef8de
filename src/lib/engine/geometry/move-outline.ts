/**
 * Moves edges of a closed outline at right angles to themselves and joins what they met: the routine behind every moved
 * seam.
 *
 * Edges are paths in order; each ends where the next begins. A moved edge may have corners inside; its smooth stretches are
 * moved one by one and joined like edges, and a stretch that is swallowed at a hollow corner is left out.
 */
import { amountAt, movedPoint, offsetPath, roomFor, type Amount, type MovedPart } from './offset.ts';
import { meet } from './meet.ts';
import { distance } from './point.ts';
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
	const moved: Stretch[][] = [];
	for (let i = 0; i < edges.length; i++) {
		const move = moves[i];
		if (!move) {
			moved.push([whole(edges[i])]);
			continue;
		}
		const factor = roomFor(edges[i], move.amount);
		if (factor <= 1) return { refused: 'too-tight', edge: i, factor };
		const parts = offsetPath(edges[i], move.amount, move.breaks, accuracy);
		for (const part of parts) deviation = Math.max(deviation, part.deviation);
		if (deviation > drawable * accuracy)
			return { refused: 'too-tight', edge: i, factor: drawableFactor(edges[i], move, accuracy) };
		const inner = joinStretches(parts, edges[i], move);
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
		if (!joinAt(before, after, corner, larger))
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
}

function whole(path: Path): Stretch {
	return { path, from: 0, to: pathLength(path), start: 0, finish: 0 };
}

function amountAtEnd(move: EdgeMove | undefined, edge: Path, end: 'start' | 'finish'): number {
	if (!move) return 0;
	return Math.abs(amountAt(move.amount, end === 'start' ? 0 : pathLength(edge)).value);
}

/** How many times the accuracy a drawn line may miss the exact one by. */
const drawable = 4;

/** The greatest factor found, by halving six times, with which the moved edge can be drawn. */
function drawableFactor(edge: Path, { amount, breaks }: EdgeMove, accuracy: number): number {
	let works = 0;
	for (let step = 0.5; step >= 1 / 64; step /= 2) {
		const factor = works + step;
		const scaled: Amount =
			typeof amount === 'number'
				? amount * factor
				: (s) => {
						const { value, slope } = amount(s);
						return { value: value * factor, slope: slope * factor };
					};
		const parts = offsetPath(edge, scaled, breaks, accuracy);
		if (parts.every((part) => part.deviation <= drawable * accuracy)) works = factor;
	}
	return works;
}

/** Joins the smooth stretches of one moved edge at its inner corners; a swallowed stretch is left out. */
function joinStretches(parts: readonly MovedPart[], edge: Path, move: EdgeMove): Stretch[] | undefined {
	const kept: Stretch[] = [];
	for (const part of parts) {
		const next: Stretch = { path: part.path, from: part.from, to: part.to, start: 0, finish: 0 };
		while (kept.length > 0) {
			const previous = kept[kept.length - 1];
			const larger = Math.max(Math.abs(amountAt(move.amount, next.from).value), next.from - previous.to);
			const met = joinAt(previous, next, pointAt(edge, next.from), larger);
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
function joinAt(before: Stretch, after: Stretch, corner: Point, larger: number): boolean {
	const meeting = meet(before.path, after.path, corner, reachFor(larger));
	if (!meeting) return false;
	before.finish = meeting.before;
	before.finishAt = meeting.point;
	after.start = meeting.after;
	after.startAt = meeting.point;
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
