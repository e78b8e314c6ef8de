import type { Path, Point } from '../geometry/types.ts';
import type { Edge, Level, Piece } from './types.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { pathLength } from '../geometry/path.ts';
import { add, distance, scale, subtract, unit } from '../geometry/point.ts';
import { remembered } from '../geometry/memo.ts';
import { outlineOf } from './outline.ts';

export type DrawnLevel = Extract<Level, { line: readonly Point[] }>;

export interface LevelSpan {
	/** From outline to outline. */
	readonly points: readonly Point[];
	/** Ids of the edges it ends on; at a corner the one with a lap, if either has. */
	readonly startEdge: string;
	readonly endEdge: string;
}

interface End {
	/** The edges it lies on (two at a corner) and where. */
	readonly touches: readonly { readonly edge: Edge; readonly s: number }[];
}

export interface PlacedSpan {
	readonly span: LevelSpan;
	readonly ends: readonly [End, End];
}

/**
 * The stretch inside the outline that holds most of a drawn line, whose first and last part run straight on; undefined where the
 * line lies wholly outside the piece.
 */
export function spanOf(piece: Piece, part: DrawnLevel): PlacedSpan | undefined {
	const outline = outlineOf(piece);
	const line = part.line;
	const { lengths, total } = lengthsOf(line);
	const met = outlineMet(outline, line, lengths);
	const once = crossesOnce(outline, line, met);
	let best: { readonly begin: Meeting; readonly end: Meeting; readonly held: number } | undefined;
	for (let i = 0; i + 1 < met.length; i++) {
		const middle = (met[i].along + met[i + 1].along) / 2;
		if (!once && !isInside(outline, line, lengths, middle)) continue;
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
}

/** Of the parts of a drawn line, and of all; remembered by the line, which a piece keeps when its edges move. */
const lengthsOf = remembered((line: readonly Point[]) => {
	const lengths = line.slice(1).map((point, i) => distance(line[i], point));
	return { lengths, total: lengths.reduce((sum, length) => sum + length, 0) };
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
		const crossed = lineCrossings(outline, line[i], line[i + 1], measured);
		for (let k = 0; k < crossed.length; k++) {
			const { s, u, point } = crossed[k];
			if (u >= least && u <= most) met.push({ along: before + u, s, point });
		}
		before += lengths[i];
	}
	if (met.length === 2 && Math.abs(met[1].along - met[0].along) > joined)
		return met[0].along < met[1].along ? met : [met[1], met[0]];
	return met
		.sort((a, b) => a.along - b.along)
		.filter((meeting, i, all) => i === 0 || meeting.along - all[i - 1].along > joined);
}

/** Met twice by a straight line, an outline that has corners on both sides of it is crossed there, and lies round what is between. */
function crossesOnce(outline: Path, line: readonly Point[], met: readonly Meeting[]): boolean {
	if (line.length !== 2 || met.length !== 2) return false;
	const along = unit(subtract(line[1], line[0]));
	let [least, most] = [0, 0];
	for (const { from } of outline) {
		const side = along[0] * (from[1] - line[0][1]) - along[1] * (from[0] - line[0][0]);
		least = Math.min(least, side);
		most = Math.max(most, side);
	}
	return least < -joined && most > joined;
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
		let place = s - start;
		if (place < -joined) place = s - start + whole;
		else if (place > length + joined) place = s - start - whole;
		if (place >= -joined && place <= length + joined) {
			const near = place <= joined ? 0 : place >= length - joined ? length : place;
			touches.push({ edge, s: near });
		}
		start += length;
	}
	return { touches };
}

function lapped(end: End): Edge {
	return (end.touches.find(({ edge }) => edge.lap !== 0) ?? end.touches[0]).edge;
}
