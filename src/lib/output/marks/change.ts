import { nearestOn, pathLength, pointAt, portion } from '../../engine/index.ts';
import type { Path, Point } from '../../engine/index.ts';
import { pens, prickHoles } from '../pens.ts';
import { besideEdge, stepped, through } from '../plane.ts';
import type { Primitive } from '../primitive.ts';

/** On the paper, mm: from stroke to stroke of a band, how far a stroke leans, and how far it runs past both lines. */
const every = 1.2;
const lean = 0.7;
const past = 0.5;

/** Where the lines lie nearer than this, on the paper, there is no band to fill, mm. */
const narrow = 0.12;

/** How finely a nearest point is looked for, mm. */
const accuracy = 0.01;

/** The line before: uneven basting. */
export function drawBefore(path: Path): Primitive[] {
	return [{ kind: 'line', path, pen: pens.before }];
}

/** The line after: heavy, with the holes of the pricking wheel. */
export function drawAfter(path: Path): Primitive[] {
	return [
		{ kind: 'line', path, pen: pens.after },
		{ kind: 'dots', path, white: true, ...prickHoles }
	];
}

/**
 * What lies between an edge before and after, both as they stand on the paper: hatched over both lines where cloth is taken
 * in, caught back and forth between them where it is let out. `before` runs clockwise round its piece, or, where this is
 * turned over, anticlockwise.
 */
export function drawBand(before: Path, after: Path, turnedOver: boolean): Primitive[] {
	const length = pathLength(before);
	const count = Math.max(1, Math.floor(length / every));
	const stations = Array.from({ length: count + 1 }, (_, i) => {
		const s = (length * i) / count;
		const foot = pointAt(before, s);
		const { point, distance } = nearestOn(after, foot, accuracy);
		const out = besideEdge(before, s, turnedOver ? -1 : 1, i === count ? 'before' : 'after');
		const ahead = (point[0] - foot[0]) * (out[0] - foot[0]) + (point[1] - foot[1]) * (out[1] - foot[1]);
		return { s, foot, head: point, open: distance > narrow, outward: ahead > 0 };
	});
	const taken = stations
		.filter(({ open, outward }) => open && !outward)
		.map(({ s, head }): Primitive => {
			const leaning = pointAt(before, Math.min(length, s + lean));
			return { kind: 'line', path: through(...extended(leaning, head)), pen: pens.band };
		});
	const stitches = runsOf(stations.map(({ open, outward }) => open && outward)).map(([from, to]): Primitive => {
		const turns = stations.slice(from, to + 1).map(({ foot, head }, i) => (i % 2 === 0 ? foot : head));
		return { kind: 'line', path: through(...turns), pen: pens.band };
	});
	return [...taken, ...stitches];
}

/**
 * A path in stretches that lie off another and stretches that lie on it, in order; lengths in mm from its start. Stretches
 * are found to within one step of a band.
 */
export function stretchesOff(path: Path, other: Path): { readonly path: Path; readonly off: boolean }[] {
	const length = pathLength(path);
	const count = Math.max(1, Math.floor(length / every));
	const isOff = Array.from({ length: count }, (_, i) => {
		const middle = pointAt(path, (length * (i + 0.5)) / count);
		return nearestOn(other, middle, accuracy).distance > narrow / 2;
	});
	const bounds = [0, ...isOff.flatMap((off, i) => (i > 0 && off !== isOff[i - 1] ? [i] : [])), count];
	return bounds.slice(1).map((to, i) => ({
		path: portion(path, (length * bounds[i]) / count, (length * to) / count),
		off: isOff[bounds[i]]
	}));
}

/** What a new dart takes out, hatched between its legs. */
export function drawDartHatch(one: Path, other: Path): Primitive[] {
	const [a, b] = [pathLength(one), pathLength(other)];
	const count = Math.floor(Math.min(a, b) / every);
	return Array.from({ length: Math.max(0, count - 1) }, (_, i): Primitive => {
		const share = (i + 1) / count;
		const ends: [Point, Point] = [pointAt(one, a * share), pointAt(other, Math.min(b, b * share + lean))];
		return { kind: 'line', path: through(...ends), pen: pens.band };
	});
}

/** A path without what lies within `reach` mm of an end: the part that a mark at that end leaves free. */
export function shortOfEnd(path: Path, reach: number): Path {
	const length = pathLength(path);
	return length > 2 * reach ? portion(path, 0, length - reach) : path;
}

function extended(from: Point, to: Point): [Point, Point] {
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	const step: Point = [((to[0] - from[0]) / length) * past, ((to[1] - from[1]) / length) * past];
	return [stepped(from, step, -1), stepped(to, step)];
}

/** First and last index of each run of two or more that hold. */
function runsOf(holds: readonly boolean[]): [number, number][] {
	const runs: [number, number][] = [];
	holds.forEach((hold, i) => {
		if (!hold) return;
		const last = runs.at(-1);
		if (last && last[1] === i - 1) last[1] = i;
		else runs.push([i, i]);
	});
	return runs.filter(([from, to]) => to > from);
}
