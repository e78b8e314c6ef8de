import { findEdge, findPlace, findPlaceOnSeam, nearestOn, seamRun, undividedName } from '../../../engine/index.ts';
import type { Draft, Place, Point } from '../../../engine/index.ts';
import { inch, type Unit } from '../../../measure/units.ts';
import { placeKey } from '../place/place-key.ts';
import { furtherPlaces } from '../place/places-offered.ts';
import type { Along } from '../place/place-words.ts';
import type { Target } from '../targets.ts';

/** A tapped place is as far from a named one as the tape says: whole eighths of an inch, or half centimetres. */
const stepOf = (unit: Unit): number => (unit === 'in' ? inch / 8 : 5);
/** mm; how near is asked of the nearest point of a line. */
const near = 1e-3;

/** A line that places are asked for along: one side of a seam, or an edge. */
interface Line {
	readonly along: Along;
	/** mm from its start, as it is stitched; undefined for a place that it does not have. */
	readonly positionOf: (place: Place) => number | undefined;
	/** The same of a point on one of its edges, `s` mm along that edge. */
	readonly positionAt: (edge: string, s: number) => number;
}

/**
 * The place that a tap on a drawing means: on this edge, nearest to this point (mm, the piece's own). Said from the nearest named
 * place of the line, in whole steps of the tape; a tap within half a step of a named place is that place. As a key, undefined
 * where the edge is not of the target.
 */
export function placeTapped(draft: Draft, target: Target, edge: string, point: Point, unit: Unit): string | undefined {
	const found = findEdge(draft, edge);
	const line = found && lineOf(draft, target, edge);
	return line && namedFrom(draft, line, line.positionAt(edge, nearestOn(found.edge.path, point, near).s), unit);
}

/** The same for a point that is known by how far it is along the line's first side, mm. */
export function placeAlong(draft: Draft, target: Target, at: number, unit: Unit): string | undefined {
	const line = lineOf(draft, target);
	return line && namedFrom(draft, line, at, unit);
}

/** The side of the seam that has this edge, else its first; or the edge itself. */
function lineOf(draft: Draft, target: Target, edge?: string): Line | undefined {
	if (target.of !== 'seam')
		return {
			along: { of: 'edge', id: target.id },
			positionOf: (place) => {
				const found = findPlace(draft, edge ?? target.id, place);
				return 'problem' in found ? undefined : found.stitched;
			},
			positionAt: (name, s) => stitchedAt(draft, name, s)
		};
	const sides = draft.seams
		.filter(({ id }) => undividedName(id) === undividedName(target.id))
		.flatMap((seam) =>
			(seam.b === 'mirror' ? (['a'] as const) : (['a', 'b'] as const)).map((side) => ({
				seam,
				side,
				run: seamRun(draft, seam, side)
			}))
		);
	const found = sides.find(({ run }) => edge === undefined || run.some(({ name }) => name === edge));
	if (!found) return undefined;
	const { seam, side, run } = found;
	return {
		along: { of: 'seam', id: target.id },
		positionOf: (place) => {
			const there = findPlaceOnSeam(draft, seam.id, side, place);
			return 'problem' in there ? undefined : there.stitchedOnSeam;
		},
		positionAt: (name, s) => {
			const { startsAt, length, reversed } = run.find((one) => one.name === name)!;
			const stitched = stitchedAt(draft, name, s);
			return startsAt + (reversed ? length - stitched : stitched);
		}
	};
}

/** Stitched length from an edge's start to `s` mm along it, found by halving: an edge tells where a place is, not the reverse. */
function stitchedAt(draft: Draft, edge: string, s: number): number {
	let [low, high] = [0, 1];
	let stitched = 0;
	for (let i = 0; i < 40; i++) {
		const fraction = (low + high) / 2;
		const found = findPlace(draft, edge, { fraction });
		if ('problem' in found) return stitched;
		stitched = found.stitched;
		if (found.s < s) low = fraction;
		else high = fraction;
	}
	return stitched;
}

/** The place `at` mm along a line, said from the nearest place that has a name. */
function namedFrom(draft: Draft, { along, positionOf }: Line, at: number, unit: Unit): string | undefined {
	const named = furtherPlaces(draft, along, [], unit).flatMap(({ place }) => {
		const position = positionOf(place);
		// Quarters have names, but nobody measures from them.
		return position === undefined || 'fraction' in place ? [] : [{ place, away: at - position }];
	});
	const [nearest] = named.sort((a, b) => Math.abs(a.away) - Math.abs(b.away));
	if (!nearest) return undefined;
	const { place, away } = nearest;
	const step = stepOf(unit);
	const offset = Math.round(away / step) * step;
	if (offset === 0) return placeKey(place);
	// From an end an offset is always inwards.
	const inwards = 'end' in place ? Math.abs(offset) : offset;
	return placeKey({ ...place, offset: Number(inwards.toFixed(6)) });
}
