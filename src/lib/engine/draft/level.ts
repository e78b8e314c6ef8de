import type { Path, Point } from '../geometry/types.ts';
import type { Edge, Level, Piece } from './types.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { pathLength } from '../geometry/path.ts';
import { add, distance, dot, midpoint, scale, subtract, unit } from '../geometry/point.ts';
import { edgeOf, neighbouringEdges } from './find.ts';
import { intakeStretches } from './intake-along.ts';
import { edgeStitchedLength } from './length.ts';
import { rememberedByName, rememberedForBoth } from './memo.ts';
import { outlineOf } from './outline.ts';

/*
 * Balance lines. A level lies on an edge, or is drawn as a line of two or more points whose first and last part run straight
 * on to the outline: its span is the stretch inside the outline that holds most of the drawn line. A level may occur several
 * times on a piece and its parts are added up; drawn parts that lie before and behind one another are one line.
 */

type DrawnLevel = Extract<Level, { line: readonly Point[] }>;

export interface LevelSpan {
	/** From outline to outline. */
	readonly points: readonly Point[];
	/** Ids of the edges it ends on; at a corner the one with a lap, if either has. */
	readonly startEdge: string;
	readonly endEdge: string;
}

export const levelParts: (piece: Piece, level: string) => readonly Level[] = rememberedByName(
	(piece: Piece, level: string) => piece.levels.filter((part) => part.level === level)
);

/**
 * The span that a drawn part belongs to, one that it may share with parts before and behind it; undefined where the line lies
 * wholly outside the piece, or the level is an edge.
 */
export function levelSpan(piece: Piece, part: Level): LevelSpan | undefined {
	return 'line' in part ? spansOf(piece, part.level).find(({ parts }) => parts.includes(part))?.span : undefined;
}

/** Every span of a level that is drawn on a piece. */
export function levelSpans(piece: Piece, level: string): readonly LevelSpan[] {
	return spansOf(piece, level).map(({ span }) => span);
}

/**
 * The width of a piece at a level in mm, as sewn: all its parts, less what darts take there, less the laps of the edges that it
 * ends on (of the edges beside it, where it is an edge). Undefined where the piece has no such level.
 */
export const levelWidth: (piece: Piece, level: string) => number | undefined = rememberedByName(
	(piece: Piece, level: string) => {
		let width: number | undefined;
		for (const span of spansOf(piece, level)) width = (width ?? 0) + spanWidth(piece, span.span);
		for (const part of levelParts(piece, level)) {
			const edge = 'edge' in part ? edgeOf(piece, part.edge) : undefined;
			if (edge) width = (width ?? 0) + edgeWidth(piece, edge);
		}
		return width;
	}
);

/**
 * Where a level meets an edge: arc lengths in mm on the edge, rising. A level that lies on a neighbouring edge is met at the
 * corner they share; one that lies on this edge is not met.
 */
export function levelOnEdge(piece: Piece, edge: Edge, level: string): number[] {
	const met: number[] = [];
	const length = pathLength(edge.path);
	for (const { ends } of spansOf(piece, level)) {
		for (const end of ends) for (const touch of end.touches) if (touch.edge === edge) met.push(touch.s);
	}
	const neighbours = neighbouringEdges(piece, edge.id);
	for (const part of levelParts(piece, level)) {
		if (!('edge' in part) || part.edge === edge.id) continue;
		if (part.edge === neighbours?.before.id) met.push(0);
		if (part.edge === neighbours?.after.id) met.push(length);
	}
	return met.sort((a, b) => a - b).filter((s, i, all) => i === 0 || s - all[i - 1] > joined);
}

interface End {
	/** The edges it lies on (two at a corner) and where. */
	readonly touches: readonly { readonly edge: Edge; readonly s: number }[];
}

interface PlacedSpan {
	readonly span: LevelSpan;
	readonly ends: readonly [End, End];
}

/** Every span of a level on a piece with the drawn parts that are strung together in it. */
const spansOf = rememberedByName(
	(piece: Piece, level: string): readonly (PlacedSpan & { readonly parts: readonly Level[] })[] => {
		const drawn = levelParts(piece, level).filter((part) => 'line' in part);
		return chains(piece, drawn).flatMap(({ line, parts }) => {
			const placed = spanOf(piece, line);
			return placed ? [{ ...placed, parts }] : [];
		});
	}
);

/** Drawn parts whose spans cover one another are strung together in order, so that the cloth between them counts once. */
function chains(
	piece: Piece,
	drawn: readonly DrawnLevel[]
): readonly { readonly line: DrawnLevel; readonly parts: readonly DrawnLevel[] }[] {
	const left = [...drawn];
	const whole: { line: DrawnLevel; parts: DrawnLevel[] }[] = [];
	for (let first = left.shift(); first; first = left.shift()) {
		const chain = { line: first, parts: [first] };
		for (let i = 0; i < left.length;) {
			if (covers(piece, chain.line, left[i]) || covers(piece, left[i], chain.line)) {
				chain.line = strungTogether(chain.line, left[i]);
				chain.parts.push(...left.splice(i, 1));
				i = 0;
			} else i++;
		}
		whole.push(chain);
	}
	return whole;
}

/** Whether the middle of one drawn part lies abreast of the other's span. */
function covers(piece: Piece, part: DrawnLevel, other: DrawnLevel): boolean {
	const span = spanOf(piece, part)?.span.points;
	if (span === undefined) return false;
	const [start, end] = [span[0], span[span.length - 1]];
	const middle = midpoint(other.line[0], other.line[other.line.length - 1]);
	const along = dot(subtract(middle, start), unit(subtract(end, start)));
	return along > 0 && along < distance(start, end);
}

function strungTogether(one: DrawnLevel, other: DrawnLevel): DrawnLevel {
	const along = subtract(one.line[one.line.length - 1], one.line[0]);
	const back = dot(along, subtract(other.line[other.line.length - 1], other.line[0])) < 0;
	const turned = back ? [...other.line].reverse() : other.line;
	const middle = (line: readonly Point[]): number => dot(along, midpoint(line[0], line[line.length - 1]));
	const [first, second] = middle(one.line) <= middle(turned) ? [one.line, turned] : [turned, one.line];
	const [end, start] = [first[first.length - 1], second[0]];
	// Parts that overlap would step back at the joint; the joint then lies between their two ends.
	const joint =
		distance(end, start) <= joined || dot(along, subtract(start, end)) < 0 ? [midpoint(end, start)] : [end, start];
	return { level: one.level, line: [...first.slice(0, -1), ...joint, ...second.slice(1)] };
}

const spanOf = rememberedForBoth((piece: Piece, part: DrawnLevel): PlacedSpan | undefined => {
	const outline = outlineOf(piece);
	const line = part.line;
	const lengths = line.slice(1).map((point, i) => distance(line[i], point));
	const total = lengths.reduce((sum, length) => sum + length, 0);
	const met = outlineMet(outline, line, lengths);
	let best: { readonly begin: Meeting; readonly end: Meeting; readonly held: number } | undefined;
	for (let i = 0; i + 1 < met.length; i++) {
		if (!isInside(outline, line, lengths, (met[i].along + met[i + 1].along) / 2)) continue;
		const begin = met[i];
		// A line that only touches the outline from inside runs on.
		while (i + 2 < met.length && isInside(outline, line, lengths, (met[i + 1].along + met[i + 2].along) / 2)) {
			i++;
		}
		const end = met[i + 1];
		const held = Math.min(end.along, total) - Math.max(begin.along, 0);
		if (held > joined && (best === undefined || held > best.held)) best = { begin, end, held };
	}
	if (best === undefined) return undefined;
	const { begin, end } = best;
	const inner: Point[] = [];
	let along = 0;
	for (let i = 1; i + 1 < line.length; i++) {
		along += lengths[i - 1];
		if (along > begin.along + joined && along < end.along - joined) inner.push(line[i]);
	}
	const ends = [endAt(piece, begin.s), endAt(piece, end.s)] as const;
	return {
		span: {
			points: [begin.point, ...inner, end.point],
			startEdge: lapped(ends[0]).id,
			endEdge: lapped(ends[1]).id
		},
		ends
	};
});

interface Meeting {
	/** mm along the drawn line from its first point; negative before it. */
	readonly along: number;
	/** mm along the outline. */
	readonly s: number;
	readonly point: Point;
}

/** Where the drawn line, its end parts run on, meets the outline: in order along it, each place once. */
function outlineMet(outline: Path, line: readonly Point[], lengths: readonly number[]): Meeting[] {
	const met: Meeting[] = [];
	let before = 0;
	for (let i = 0; i < lengths.length; i++) {
		const least = i === 0 ? -Infinity : -joined;
		const most = i === lengths.length - 1 ? Infinity : lengths[i] + joined;
		for (const { s, u, point } of lineCrossings(outline, line[i], line[i + 1], measured)) {
			if (u >= least && u <= most) met.push({ along: before + u, s, point });
		}
		before += lengths[i];
	}
	return met
		.sort((a, b) => a.along - b.along)
		.filter((meeting, i, all) => i === 0 || meeting.along - all[i - 1].along > joined);
}

/** A slant that no drawn line has, so that a ray along it passes the corners by. */
const slant: Point = [Math.cos(1), Math.sin(1)];

/** Whether the place `along` the drawn line lies inside the outline or on it. */
function isInside(outline: Path, line: readonly Point[], lengths: readonly number[], along: number): boolean {
	const point = placeAlong(line, lengths, along);
	const crossed = lineCrossings(outline, point, add(point, slant), measured).filter((crossing) => crossing.u > 0);
	return crossed.length % 2 === 1 || nearestOn(outline, point, measured).distance <= joined;
}

function placeAlong(line: readonly Point[], lengths: readonly number[], along: number): Point {
	let i = 0;
	let rest = along;
	while (i < lengths.length - 1 && rest > lengths[i]) rest -= lengths[i++];
	return add(line[i], scale(unit(subtract(line[i + 1], line[i])), rest));
}

function endAt(piece: Piece, s: number): End {
	const touches: { edge: Edge; s: number }[] = [];
	const whole = pathLength(outlineOf(piece));
	let start = 0;
	for (const edge of piece.edges) {
		const length = pathLength(edge.path);
		for (const place of [s - start, s - start + whole, s - start - whole]) {
			if (place >= -joined && place <= length + joined) {
				const near = place <= joined ? 0 : place >= length - joined ? length : place;
				touches.push({ edge, s: near });
				break;
			}
		}
		start += length;
	}
	return { touches };
}

function lapped(end: End): Edge {
	return (end.touches.find(({ edge }) => edge.lap !== 0) ?? end.touches[0]).edge;
}

function spanWidth(piece: Piece, span: LevelSpan): number {
	let width = 0;
	for (let i = 0; i + 1 < span.points.length; i++) {
		const [p, q] = [span.points[i], span.points[i + 1]];
		const length = distance(p, q);
		width += length;
		for (const dart of [...piece.darts, ...piece.foldDarts]) {
			for (const { begin, end } of intakeStretches(piece, dart, p, q)) {
				width -= Math.max(0, Math.min(end, length) - Math.max(begin, 0));
			}
		}
	}
	return width - (edgeOf(piece, span.startEdge)?.lap ?? 0) - (edgeOf(piece, span.endEdge)?.lap ?? 0);
}

function edgeWidth(piece: Piece, edge: Edge): number {
	const neighbours = neighbouringEdges(piece, edge.id);
	return edgeStitchedLength(piece, edge) - (neighbours?.before.lap ?? 0) - (neighbours?.after.lap ?? 0);
}
