import type { Point } from '../geometry/types.ts';
import type { Edge, Level, Piece } from './types.ts';
import { joined } from '../geometry/accuracy.ts';
import { pathLength } from '../geometry/path.ts';
import { distance, dot, midpoint, subtract, unit } from '../geometry/point.ts';
import { edgeOf, neighbouringEdges } from './find.ts';
import { intakeStretches } from './intake-along.ts';
import { edgeStitchedLength } from './length.ts';
import { spanOf, type DrawnLevel, type LevelSpan, type PlacedSpan } from './level-span.ts';
import { remembered, rememberedByName } from '../geometry/memo.ts';

/*
 * Balance lines. A level lies on an edge, or is drawn as a line of two or more points whose first and last part run straight
 * on to the outline: its span is the stretch inside the outline that holds most of the drawn line. A level may occur several
 * times on a piece and its parts are added up; drawn parts that lie before and behind one another are one line.
 */

export function levelParts(piece: Piece, level: string): readonly Level[] {
	return partsOf(piece.levels, level);
}

/** Remembered by the list, which a piece keeps when its edges move. */
const partsOf = rememberedByName((levels: readonly Level[], level: string) =>
	levels.filter((part) => part.level === level)
);

const drawnParts = rememberedByName((levels: readonly Level[], level: string) =>
	partsOf(levels, level).filter((part) => 'line' in part)
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
			if (edge) width = (width ?? 0) + edgeWidth(piece, edge, level);
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
	if (met.length < 2) return met;
	return met.sort((a, b) => a - b).filter((s, i, all) => i === 0 || s - all[i - 1] > joined);
}

/** Every span of a level on a piece with the drawn parts that are strung together in it. */
const spansOf = rememberedByName(
	(piece: Piece, level: string): readonly (PlacedSpan & { readonly parts: readonly Level[] })[] => {
		const found: (PlacedSpan & { readonly parts: readonly Level[] })[] = [];
		for (const { line, parts } of chains(piece, drawnParts(piece.levels, level))) {
			const placed = spanOf(piece, line);
			if (placed) found.push({ span: placed.span, ends: placed.ends, parts });
		}
		return found;
	}
);

/** Drawn parts whose spans cover one another are strung together in order, so that the cloth between them counts once. */
function chains(
	piece: Piece,
	drawn: readonly DrawnLevel[]
): readonly { readonly line: DrawnLevel; readonly parts: readonly DrawnLevel[] }[] {
	if (drawn.length < 2) return drawn.map((line) => ({ line, parts: [line] }));
	const spanIn = remembered((part: DrawnLevel) => spanOf(piece, part)?.span.points);
	const left = [...drawn];
	const whole: { line: DrawnLevel; parts: DrawnLevel[] }[] = [];
	for (let first = left.shift(); first; first = left.shift()) {
		const chain = { line: first, parts: [first] };
		for (let i = 0; i < left.length;) {
			if (covers(spanIn(chain.line), left[i]) || covers(spanIn(left[i]), chain.line)) {
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
function covers(span: readonly Point[] | undefined, other: DrawnLevel): boolean {
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

/** An edge that the level goes on along is no end of it, whatever lap it has. */
function edgeWidth(piece: Piece, edge: Edge, level: string): number {
	const goesOn = (other: Edge) => levelParts(piece, level).some((part) => 'edge' in part && part.edge === other.id);
	const neighbours = neighbouringEdges(piece, edge.id);
	const ends = neighbours ? [neighbours.before, neighbours.after].filter((other) => !goesOn(other)) : [];
	return ends.reduce((width, { lap }) => width - lap, edgeStitchedLength(piece, edge));
}
