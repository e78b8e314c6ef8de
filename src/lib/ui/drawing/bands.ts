import { portion, reversedPath } from './engine.ts';
import type { Path, Point } from './engine.ts';
import { pathText, pointsText, strokesText } from './path-text.ts';
import { nearestAlong, placeAlong, polylineOf, type Polyline } from './polyline.ts';
import type { Band, Way } from './scene.ts';
import { stretchesOf } from './stretches.ts';
import { dot, minus, outOf, plus, times, unit } from './vectors.ts';

/** From stroke to stroke of the hatch, and from turn to turn of the zigzag, px along the line before. */
export const strokeEvery = 4.6;
/** How far the strokes of the hatch run past both lines, px. */
export const past = 2;
const every = 2;
/** Narrower than this there is no band, px. */
const narrowest = 0.12;
/** Strokes are made only where there is room to see them, px. */
const strokesFrom = 0.9;

interface Across {
	/** px along the line before. */
	readonly s: number;
	readonly from: Point;
	readonly to: Point;
	/** px along the line after. */
	readonly sTo: number;
	/** px, positive out of the cloth. */
	readonly move: number;
}

/**
 * The bands between an edge as it was and as it is, in px: hatched where cloth was taken away, caught back and forth where
 * it was added. The way across is to the nearest point of the line after; only what of it is square to the line before counts.
 */
export function bandsBetween(edge: string, before: Path, after: Path, over: boolean): readonly Band[] {
	const [from, to] = [polylineOf(before), polylineOf(after)];
	const { length } = from;
	const steps = Math.max(2, Math.ceil(length / every));
	const places = Array.from({ length: steps + 1 }, (_, i) => across(from, to, (i * length) / steps, over));
	const ways = places.map(({ move }): Way | undefined =>
		move < -narrowest ? 'in' : move > narrowest ? 'out' : undefined
	);
	return stretchesOf(ways).flatMap(({ kind, first, last }) => {
		const start = places[Math.max(0, first - 1)];
		const end = places[Math.min(steps, last + 1)];
		if (end.s - start.s < every || !(start.sTo < end.sTo)) return [];
		const area = [...portion(before, start.s, end.s), ...reversedPath(portion(after, start.sTo, end.sTo))];
		const { text, count } = (kind === 'in' ? hatch : zigzag)(from, to, start.s, end.s, over);
		return [{ edge, way: kind, area: joinedText(area), strokes: text, count }];
	});
}

function across(before: Polyline, after: Polyline, s: number, over: boolean): Across {
	const { point: from, along } = placeAlong(before, s);
	const nearest = nearestAlong(after, from);
	return { s, from, to: nearest.point, sTo: nearest.s, move: dot(minus(nearest.point, from), outOf(along, over)) };
}

interface Strokes {
	readonly text: string;
	readonly count: number;
}

/** Slanted strokes from line to line and `past` px beyond each; the wider the band, the more upright. */
function hatch(before: Polyline, after: Polyline, start: number, end: number, over: boolean): Strokes {
	const strokes: [Point, Point][] = [];
	for (let s = start + strokeEvery / 2; s < end; s += strokeEvery) {
		const here = across(before, after, s, over);
		const width = Math.abs(here.move);
		if (width < strokesFrom) continue;
		const there = across(before, after, Math.min(end, s + Math.max(2.8, 0.3 * width)), over).to;
		const along = times(unit(minus(there, here.from)), past);
		strokes.push([minus(here.from, along), plus(there, along)]);
	}
	return { text: strokesText(strokes), count: strokes.length };
}

/** One zigzag between the two lines, a turn on each by turns. */
function zigzag(before: Polyline, after: Polyline, start: number, end: number, over: boolean): Strokes {
	const turns: Point[] = [];
	for (let s = start, i = 0; s <= end; s += strokeEvery, i++) {
		const here = across(before, after, s, over);
		if (Math.abs(here.move) < strokesFrom && turns.length === 0) continue;
		turns.push(i % 2 === 0 ? here.from : here.to);
	}
	return { text: turns.length > 1 ? pointsText(turns) : '', count: turns.length };
}

/** Two lines as one closed outline: straight across at both ends. */
function joinedText(area: Path): string {
	let text = '';
	area.forEach((segment, i) => {
		const piece = pathText([segment]);
		text += i === 0 ? piece : piece.replace('M', 'L');
	});
	return `${text}Z`;
}
