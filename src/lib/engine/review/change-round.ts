import { carryAlterations } from '../alteration/carry.ts';
import { findPlaceOnSeam } from '../draft/place.ts';
import { levelParts, levelSpan } from '../draft/level.ts';
import { edgeOf, findEdge, neighbouringEdges } from '../draft/find.ts';
import { cross, subtract, unit } from '../geometry/point.ts';
import { endTangent, startTangent, tangentAt } from '../geometry/path.ts';
import { runLength, seamRun } from '../draft/seam.ts';
import { undividedName } from '../draft/undivided-name.ts';
import { isCalled } from './words.ts';
import type { Settling } from './settle.ts';
import type { Draft, Edge, Piece, Seam } from '../draft/types.ts';
import type { Point } from '../geometry/types.ts';

/** Nearer to an end of the seam than this, a level counts as that end, mm. */
const atEnd = 1;

/** A seam that meets a level as slantingly as this hardly changes its width, as a sine. */
const tooSlanting = 0.5;

/** More than this is not a matter of one seam, mm on each edge. */
const mostAtOneSeam = 38.1;

/**
 * An alteration that makes the garment's whole round at a balance line larger (or, negative, smaller) by `change` mm: let out or
 * taken in at one long seam that crosses it, the side seam if it does, evenly on all its edges and fading to nothing at its
 * ends. Tried before it is offered. None where no seam crosses the line but at a corner: there the line would meet the neighbouring
 * edge instead.
 */
export function changeRoundAt(draft: Draft, level: string, change: number, id: string): Settling[] {
	const rank = (seam: Seam) =>
		seam.b === 'mirror' ? 2 : isCalled(seam, 'side') && !isCalled(seam, 'side-back') ? 0 : 1;
	for (const seam of [...draft.seams].sort((one, other) => rank(one) - rank(other))) {
		const at = seamRun(draft, seam, 'a').some(({ piece }) => piece.limb) ? undefined : placeOf(draft, seam, level);
		const widening = at && wideningBy(draft, undividedName(seam.id), level);
		if (!at || !widening) continue;
		const each = change / widening;
		if (Math.abs(each) > mostAtOneSeam) return [];
		const proposed = proposal(seam, at, level, each, id);
		if (carryAlterations(draft, [proposed]).unplaced.length === 0) return [proposed];
	}
	return [];
}

type Where = 'start' | 'finish' | 'between';

function proposal(seam: Seam, at: Where, level: string, each: number, id: string): Settling {
	const pin = (place: object, amount: number) =>
		seam.b === 'mirror' ? { at: place, a: amount } : { at: place, a: amount, b: amount };
	const start = { end: 'start' };
	const finish = { end: 'finish' };
	const pins: Readonly<Record<Where, readonly object[]>> = {
		start: [pin(start, each), pin(finish, 0)],
		finish: [pin(start, 0), pin(finish, each)],
		between: [pin(start, 0), pin({ level }, each), pin(finish, 0)]
	};
	return { id, kind: 'seam', on: 'both', seam: undividedName(seam.id), pins: pins[at] };
}

/** Where on the seam the level is met, if both its sides meet it once, and at an end only if it lies on the edge that ends there. */
function placeOf(draft: Draft, seam: Seam, level: string): Where | undefined {
	const found = sidesOf(seam).map((side) => findPlaceOnSeam(draft, seam.id, side, { level }));
	const places = found.map((one, i): Where | undefined => {
		if ('problem' in one) return undefined;
		const run = seamRun(draft, seam, sidesOf(seam)[i]);
		const length = runLength(
			draft,
			run.map(({ name, reversed }) => ({ edge: name, reversed }))
		);
		if (one.stitchedOnSeam >= atEnd && length - one.stitchedOnSeam >= atEnd) return 'between';
		const piece = findEdge(draft, one.edge)?.piece;
		const onEdge = piece && levelParts(piece, level).some((part) => 'edge' in part);
		return onEdge ? (one.stitchedOnSeam < atEnd ? 'start' : 'finish') : undefined;
	});
	return places.every((place) => place === places[0]) ? places[0] : undefined;
}

function sidesOf(seam: Seam): readonly ('a' | 'b')[] {
	return seam.b === 'mirror' ? ['a'] : ['a', 'b'];
}

/**
 * By how much the round grows for every mm that the seam is let out on each edge, both halves of the wearer counted: 1 over the
 * sine of the angle at which each edge meets the level. Undefined where one meets it too slantingly.
 */
function wideningBy(draft: Draft, undivided: string, level: string): number | undefined {
	let sum = 0;
	for (const seam of draft.seams.filter(({ id }) => undividedName(id) === undivided)) {
		for (const side of sidesOf(seam)) {
			const found = findPlaceOnSeam(draft, seam.id, side, { level });
			const on = 'problem' in found ? undefined : findEdge(draft, found.edge);
			if (!on || 'problem' in found) return undefined;
			const sine = sineAt(on.piece, on.edge, found.s, level);
			if (sine < tooSlanting) return undefined;
			sum += (on.piece.cut === 'single' ? 1 : 2) / sine;
		}
	}
	return sum;
}

function sineAt(piece: Piece, edge: Edge, s: number, level: string): number {
	const direction = levelDirection(piece, edge, level);
	return direction ? Math.abs(cross(tangentAt(edge.path, s, s > atEnd ? 'before' : 'after'), direction)) : 0;
}

/** Which way the level runs where it meets an edge. */
function levelDirection(piece: Piece, edge: Edge, level: string): Point | undefined {
	const neighbours = neighbouringEdges(piece, edge.id);
	for (const part of levelParts(piece, level)) {
		if ('edge' in part) {
			const on = edgeOf(piece, part.edge);
			if (on && on === neighbours?.after) return startTangent(on.path);
			if (on && on === neighbours?.before) return endTangent(on.path);
			continue;
		}
		const span = levelSpan(piece, part);
		if (!span) continue;
		const { points, startEdge, endEdge } = span;
		if (startEdge === edge.id) return unit(subtract(points[1], points[0]));
		if (endEdge === edge.id) return unit(subtract(points[points.length - 1], points[points.length - 2]));
	}
	return undefined;
}
