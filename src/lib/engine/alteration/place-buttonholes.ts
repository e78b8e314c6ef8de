/** Where buttonholes lie along a closing, found anew each time from places by name: the shape of the piece may have changed. */
import { measured } from '../geometry/accuracy.ts';
import { contains } from '../geometry/contains.ts';
import { crossings } from '../geometry/crossings.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { pathLength, pointAt, straight, tangentAt } from '../geometry/path.ts';
import { add, distance, outward, scale } from '../geometry/point.ts';
import type { MovedEdge } from '../geometry/move-outline.ts';
import type { Point } from '../geometry/types.ts';
import {
	buttonholeLength,
	eighth,
	leastExtension,
	type Button,
	type ButtonholeRule,
	type Tape
} from '../draft/buttonhole.ts';
import { centreLine } from '../draft/centre-line.ts';
import { findEdge, nameOf } from '../draft/find.ts';
import { levelParts, levelSpan } from '../draft/level.ts';
import { outlineOf } from '../draft/outline.ts';
import { findPlace } from '../draft/place.ts';
import { inches } from '../draft/say.ts';
import type { Draft, Edge, Piece, Place } from '../draft/types.ts';
import { placeOnPart } from './inner-point-on-side.ts';
import { isRefused, noPlace, refused } from './refusal.ts';
import { edgeInWords, sentenceCase } from './ride-edges.ts';
import type { Outcome, Remark } from './types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

export interface Buttonholes {
	/** The open edge that closes on its centre line: `front/centre`. */
	readonly edge: string;
	readonly first: Place;
	readonly last: Place;
	/** One lies at the fullest point, and the others are shared out on either side of it. */
	readonly fullest?: Place;
	/** How many in all, or about how far apart, mm. */
	readonly count?: number;
	readonly spacing?: number;
	readonly button?: Button;
	/** Across: towards the edge. Along: on the centre line. */
	readonly direction: 'across' | 'along';
	readonly rule: ButtonholeRule;
	readonly tape: Tape;
}

export interface PlacedButtonhole {
	/** The end towards the edge, or towards the first. */
	readonly at: Point;
	readonly to: Point;
}

export interface PlacedButtonholes {
	/** In order from the first. */
	readonly placed: readonly PlacedButtonhole[];
	readonly remarks: readonly Remark[];
}

/** Two fixed places nearer than this are one, mm. */
const onePlace = 1;

/**
 * The buttonholes as they are cut. The buttons' middles lie on the centre line: at the places fixed, and between two of these at
 * equal distances along it. Across, a hole begins an eighth (1/8 in, or 3 mm) beyond the centre line towards the edge and goes in
 * from there; along, it lies on the centre line and begins as much beyond the middle, towards the first. Refused: an edge
 * without a lap, a dart that opens between them, places out of order, holes that would leave the cloth.
 */
export function placeButtonholes(draft: Draft, asked: Buttonholes): PlacedButtonholes | Refused {
	const found = findEdge(draft, asked.edge);
	if (!found) return noPlace(`There is no edge ${asked.edge} in this draft.`);
	const { piece, edge } = found;
	const button = asked.button!;
	const start = eighth(asked.tape);
	const length = buttonholeLength(button, asked.rule, asked.tape);
	if (edge.kind !== 'open' || edge.lap <= (asked.direction === 'across' ? start : 0))
		return refused(
			'no-lap',
			`${sentenceCase(edgeInWords(piece, edge.id))} has no cloth beyond its centre line for a buttonhole. Add a lap to it first.`
		);
	const line = centreLine(edge);
	if (!line)
		return refused(
			'no-centre-line',
			`${sentenceCase(edgeInWords(piece, edge.id))} bends too sharply for a centre line ${inches(edge.lap)} inside it. Make its lap narrower.`
		);
	const fixed = fixedPlaces(draft, piece, edge, line, asked);
	if (isRefused(fixed)) return fixed;
	const middles = sharedOut(fixed.at, asked);
	if (isRefused(middles)) return middles;
	const way = Math.sign(fixed.at[fixed.at.length - 1] - fixed.at[0]) || 1;
	const placed = middles.at.map((s): PlacedButtonhole => {
		const middle = pointAt(line.path, s);
		const tangent = tangentAt(line.path, s);
		const toward = asked.direction === 'across' ? outward(tangent) : scale(tangent, -way);
		return { at: add(middle, scale(toward, start)), to: add(middle, scale(toward, start - length)) };
	});
	const outline = outlineOf(piece);
	if (!placed.every(({ at, to }) => contains(outline, at) && contains(outline, to)))
		return refused(
			'buttonhole-outside',
			`A buttonhole ${inches(length)} long there would run out of ${piece.name}. Place the first or the last farther from the end.`
		);
	return { placed, remarks: extensionRemarks(piece, edge, button) };
}

/** Arc lengths on the centre line of the first, the fullest and the last, in that order. */
function fixedPlaces(
	draft: Draft,
	piece: Piece,
	edge: Edge,
	line: MovedEdge,
	{ first, fullest, last }: Buttonholes
): { readonly at: readonly number[] } | Refused {
	const at: number[] = [];
	const onEdge: number[] = [];
	for (const place of fullest ? [first, fullest, last] : [first, last]) {
		const own = placeOnPart(nameOf(piece, edge.id), place);
		const found = findPlace(draft, nameOf(piece, edge.id), own);
		if ('problem' in found) return noPlace(found.problem, place);
		onEdge.push(found.s);
		at.push(onCentreLine(piece, edge, line, own, found.s));
	}
	const [low, high] = [Math.min(...onEdge), Math.max(...onEdge)];
	const mouth = piece.darts.find((dart) => dart.edge === edge.id && dart.to > low && dart.from < high);
	if (mouth)
		return refused(
			'mouth-between',
			`${mouth.name} opens between the first and the last buttonhole. Place those above it and those below it by themselves.`
		);
	const rising = at[at.length - 1] >= at[0] ? 1 : -1;
	const steps = at.slice(1).map((s, i) => rising * (s - at[i]));
	if (rising * (at[at.length - 1] - at[0]) < onePlace || steps.some((step) => step < -onePlace))
		return refused(
			'place-order',
			'The first, the fullest and the last buttonhole do not follow each other along the edge. Name their places in that order.'
		);
	// A fullest point at one of the ends is that end.
	return { at: steps.some((step) => step < onePlace) ? [at[0], at[at.length - 1]] : at };
}

/** A balance line is met where it crosses the centre line itself; any other place lies square in from the edge. */
function onCentreLine(piece: Piece, edge: Edge, line: MovedEdge, place: Place, s: number): number {
	if (!('level' in place)) return squareIn(edge, line, s);
	const offset = place.offset ?? 0;
	const near = squareIn(edge, line, s) - offset;
	const met = levelParts(piece, place.level)
		.flatMap((part) => levelSpan(piece, part)?.points ?? [])
		.flatMap((point, i, points) =>
			i > 0 && distance(points[i - 1], point) > 0 ? crossings(line.path, straight(points[i - 1], point), measured) : []
		)
		.map(({ sa }) => sa)
		.sort((a, b) => Math.abs(a - near) - Math.abs(b - near));
	return met.length > 0 ? met[0] + offset : near + offset;
}

/** What was trimmed off at an end or a corner is that end or corner. */
function squareIn(edge: Edge, line: MovedEdge, s: number): number {
	const carried = line.carried(s);
	if (carried !== undefined) return carried;
	const atFinish = s >= pathLength(edge.path) - measured;
	const inward = scale(outward(tangentAt(edge.path, s, atFinish ? 'before' : 'after')), -edge.lap);
	return nearestOn(line.path, add(pointAt(edge.path, s), inward), measured).s;
}

/** All middles: the fixed ones, and those shared out evenly between them. */
function sharedOut(
	fixed: readonly number[],
	{ count, spacing }: Buttonholes
): { readonly at: readonly number[] } | Refused {
	const stretches = fixed.slice(1).map((s, i) => Math.abs(s - fixed[i]));
	const gaps = spacing
		? stretches.map((length) => Math.max(1, Math.round(length / spacing)))
		: gapsFor(stretches, count!);
	if (!gaps)
		return refused(
			'too-few',
			`With one at the fullest point there are at least ${fixed.length} buttonholes. Ask for more, or leave the fullest point out.`
		);
	const at = [fixed[0]];
	gaps.forEach((parts, i) => {
		for (let k = 1; k <= parts; k++)
			at.push(k === parts ? fixed[i + 1] : fixed[i] + ((fixed[i + 1] - fixed[i]) * k) / parts);
	});
	return { at };
}

/** How many gaps each stretch gets of `count` − 1, so that all are as alike as may be: the widest gap is the narrowest it can be. */
function gapsFor(stretches: readonly number[], count: number): number[] | undefined {
	if (count < stretches.length + 1) return undefined;
	const gaps = stretches.map(() => 1);
	for (let left = count - 1 - gaps.length; left > 0; left--) {
		let widest = 0;
		for (let i = 1; i < gaps.length; i++) if (stretches[i] / gaps[i] > stretches[widest] / gaps[widest]) widest = i;
		gaps[widest]++;
	}
	return gaps;
}

function extensionRemarks(piece: Piece, edge: Edge, button: Button): Remark[] {
	const least = leastExtension(button);
	if (edge.lap >= least - measured) return [];
	return [
		{
			code: 'extension-short',
			where: nameOf(piece, edge.id),
			figure: least - edge.lap,
			sentence: `${sentenceCase(edgeInWords(piece, edge.id))} lies ${inches(edge.lap)} beyond the centre line; a button ${inches(button.diameter)} across wants ${inches(least)} at least.`
		}
	];
}
