import type { Path, Point } from './types.ts';
import { segmentLengthTo } from './arc-length.ts';
import { nearestOn } from './nearest.ts';
import { pathBox, pointAt, portion, segmentBoxes, segmentStarts, straight } from './path.ts';
import { lengthOf } from './point.ts';
import { pointOn } from './segment.ts';
import { boxesMeet, distanceFromLine, segmentContacts, touchesOf } from './segment-contacts.ts';
import { oneWayRoot, rootsBetween } from './roots.ts';

export interface Crossing {
	readonly sa: number;
	readonly sb: number;
	readonly point: Point;
}

/** A contact by arc length. `through`: found as a crossing, not only as a touch. */
export interface Meeting extends Crossing {
	readonly through: boolean;
}

/** A stretch that two paths share. */
export interface Stretch {
	readonly from: Crossing;
	readonly to: Crossing;
}

/** Touches farther apart than this along the path are two, in mm. */
const oneTouch = 2;

/**
 * Where two paths meet, by rising `sa`: crossings, touches of sides, and ends that lie on the other path, all within `accuracy`
 * mm; `point` is on a. A stretch where they lie on one another gives its two ends and nothing between. Contacts
 * nearer together than the accuracy can tell are given as one.
 */
export function crossings(a: Path, b: Path, accuracy: number): Crossing[] {
	if (!boxesMeet(pathBox(a), pathBox(b), accuracy)) return [];
	const meetings: Meeting[] = [];
	const stretches: Stretch[] = [];
	const boxesA = segmentBoxes(a);
	const boxesB = segmentBoxes(b);
	for (let i = 0; i < a.length; i++) {
		for (let j = 0; j < b.length; j++) {
			if (boxesMeet(boxesA[i], boxesB[j], accuracy)) collect(a, i, b, j, accuracy, meetings, stretches);
		}
	}
	return settled(a, b, meetings, joinedStretches(stretches, accuracy), accuracy);
}

/** The contacts of segment i of a with segment j of b, turned into arc lengths and added to the lists. */
export function collect(
	a: Path,
	i: number,
	b: Path,
	j: number,
	accuracy: number,
	meetings: Meeting[],
	stretches: Stretch[]
): void {
	const { contacts, runs } = segmentContacts(a[i], segmentBoxes(a)[i], b[j], segmentBoxes(b)[j], accuracy);
	for (const { ta, tb, through } of contacts) {
		const { sa, sb, point } = crossingAt(a, i, ta, b, j, tb, accuracy);
		meetings.push({ sa, sb, point, through });
	}
	for (const { a0, b0, a1, b1 } of runs) {
		stretches.push({ from: crossingAt(a, i, a0, b, j, b0, accuracy), to: crossingAt(a, i, a1, b, j, b1, accuracy) });
	}
}

function crossingAt(a: Path, i: number, ta: number, b: Path, j: number, tb: number, accuracy: number): Crossing {
	return { sa: lengthAt(a, i, ta, accuracy), sb: lengthAt(b, j, tb, accuracy), point: pointOn(a[i], ta) };
}

function lengthAt(path: Path, index: number, t: number, accuracy: number): number {
	const starts = segmentStarts(path);
	if (t === 0) return starts[index];
	return t === 1 ? starts[index + 1] : starts[index] + segmentLengthTo(path[index], t, 0.1 * accuracy);
}

/** Stretches that follow one another made one. */
export function joinedStretches(stretches: readonly Stretch[], accuracy: number): Stretch[] {
	const near = 4 * accuracy;
	const joined: Stretch[] = [];
	for (const stretch of [...stretches].sort((p, q) => p.from.sa - q.from.sa || p.to.sa - q.to.sa)) {
		const before = joined.findIndex(
			({ to }) => Math.abs(to.sa - stretch.from.sa) <= near && Math.abs(to.sb - stretch.from.sb) <= near
		);
		if (before < 0) joined.push(stretch);
		else joined[before] = { from: joined[before].from, to: stretch.to };
	}
	return joined;
}

/** Each place once: the ends of the shared stretches, and the meetings outside them, crossings before touches. */
export function settled(
	a: Path,
	b: Path,
	meetings: readonly Meeting[],
	stretches: readonly Stretch[],
	accuracy: number
): Crossing[] {
	const kept: Meeting[] = [];
	for (const { from, to } of stretches) kept.push({ ...from, through: false }, { ...to, through: false });
	const ends = kept.length;
	const near = 4 * accuracy;
	const ordered = [...meetings].sort((p, q) => Number(q.through) - Number(p.through) || p.sa - q.sa);
	for (const meeting of ordered) {
		const onStretch = stretches.some(
			({ from, to }) =>
				meeting.sa >= from.sa - near &&
				meeting.sa <= to.sa + near &&
				meeting.sb >= Math.min(from.sb, to.sb) - near &&
				meeting.sb <= Math.max(from.sb, to.sb) + near
		);
		if (onStretch) continue;
		const known = kept.some((other, index) => {
			const apartA = Math.abs(other.sa - meeting.sa);
			const apartB = Math.abs(other.sb - meeting.sb);
			if (apartA <= near && apartB <= near) return true;
			if (apartA > oneTouch || apartB > oneTouch || (meeting.through && index >= ends)) return false;
			return keepTogether(a, b, other, meeting, accuracy);
		});
		if (!known) kept.push(meeting);
	}
	return kept.sort((p, q) => p.sa - q.sa || p.sb - q.sb).map(({ sa, sb, point }) => ({ sa, sb, point }));
}

/** Whether two meetings are one touch: halfway between them the paths are still within the accuracy. */
function keepTogether(a: Path, b: Path, one: Crossing, other: Crossing, accuracy: number): boolean {
	const halfway = pointAt(a, 0.5 * (one.sa + other.sa));
	const low = Math.min(one.sb, other.sb);
	const high = Math.max(one.sb, other.sb);
	const between = high - low > accuracy ? portion(b, low, high) : straight(pointAt(b, low), pointAt(b, high));
	return nearestOn(between, halfway, accuracy).distance <= accuracy;
}

export interface LineCrossing {
	readonly s: number;
	/** mm along the line from p towards q, negative behind p. */
	readonly u: number;
	readonly point: Point;
}

/**
 * Where a path meets the infinite line through p and q (two points, else thrown), by rising `s`: crossings, and touches within
 * `accuracy` mm. A stretch of the path that lies on the line gives its two ends.
 */
export function lineCrossings(path: Path, p: Point, q: Point, accuracy: number): LineCrossing[] {
	const length = lengthOf(q[0] - p[0], q[1] - p[1]);
	if (!(length > 0)) throw new RangeError('lineCrossings: a line needs two points');
	const ux = (q[0] - p[0]) / length;
	const uy = (q[1] - p[1]) / length;
	const found: OnLine[] = [];
	const stretches: [number, number][] = [];
	const starts = segmentStarts(path);
	for (let index = 0; index < path.length; index++) {
		const segment = path[index];
		const d0 = ux * (segment.from[1] - p[1]) - uy * (segment.from[0] - p[0]);
		const d1 = ux * (segment.to[1] - p[1]) - uy * (segment.to[0] - p[0]);
		const onLine = Math.abs(d0) <= accuracy && Math.abs(d1) <= accuracy;
		if (segment.kind === 'line') {
			if (onLine) stretches.push([starts[index], starts[index + 1]]);
			else if (d0 > 0 !== d1 > 0) found.push(onLineAt(path, index, d0 / (d0 - d1), false, accuracy));
		} else {
			const { control1, control2 } = segment;
			const c1 = ux * (control1[1] - p[1]) - uy * (control1[0] - p[0]);
			const c2 = ux * (control2[1] - p[1]) - uy * (control2[0] - p[0]);
			if (onLine && Math.abs(c1) <= accuracy && Math.abs(c2) <= accuracy) {
				stretches.push([starts[index], starts[index + 1]]);
			} else if (crossesOneWay(d0, c1, c2, d1, accuracy)) {
				const t = oneWayRoot(d0, 3 * (c1 - d0), 3 * (d0 - 2 * c1 + c2), d1 - d0 - 3 * (c2 - c1));
				found.push(onLineAt(path, index, t, false, accuracy));
			} else if (Math.min(d0, c1, c2, d1) <= accuracy && Math.max(d0, c1, c2, d1) >= -accuracy) {
				const away = distanceFromLine(segment, p, ux, uy);
				for (const t of rootsBetween(away, 0, 1)) found.push(onLineAt(path, index, t, false, accuracy));
				for (const t of touchesOf(away, accuracy)) found.push(onLineAt(path, index, t, true, accuracy));
			}
		}
		if (Math.abs(d0) <= accuracy) found.push(onLineAt(path, index, 0, true, accuracy));
		if (Math.abs(d1) <= accuracy) found.push(onLineAt(path, index, 1, true, accuracy));
	}
	if (found.length + stretches.length === 0) return [];
	const awayFrom = (point: Point) => ux * (point[1] - p[1]) - uy * (point[0] - p[0]);
	const apart = stretches.length === 0 ? ofJointsOnce(found, accuracy) : undefined;
	return (apart ?? onLineOnce(path, found, stretches, awayFrom, accuracy)).map(({ s, point }) => ({
		s,
		u: (point[0] - p[0]) * ux + (point[1] - p[1]) * uy,
		point
	}));
}

interface OnLine {
	readonly s: number;
	readonly point: Point;
	readonly touch: boolean;
}

function onLineAt(path: Path, index: number, t: number, touch: boolean, accuracy: number): OnLine {
	return { s: lengthAt(path, index, t, accuracy), point: pointOn(path[index], t), touch };
}

/**
 * What was found, in order, where it is plain: a joint on the line, found from both sides, once, and all else far apart. Undefined where
 * it is not.
 */
function ofJointsOnce(found: readonly OnLine[], accuracy: number): readonly OnLine[] | undefined {
	const kept: OnLine[] = [];
	for (const one of found) {
		const last = kept[kept.length - 1];
		const apart = last ? one.s - last.s : Infinity;
		if (apart > oneTouch) kept.push(one);
		else if (Math.abs(apart) > 4 * accuracy) return undefined;
		else if (last.touch && !one.touch) kept[kept.length - 1] = one;
	}
	return kept;
}

/** Whether a cubic whose control points lie so far from a line comes nearer all the way, crosses, and goes away all the way. */
function crossesOneWay(d0: number, c1: number, c2: number, d1: number, accuracy: number): boolean {
	return d0 < 0
		? d0 < -accuracy && d1 > accuracy && d0 <= c1 && c1 <= c2 && c2 <= d1
		: d0 > accuracy && d1 < -accuracy && d0 >= c1 && c1 >= c2 && c2 >= d1;
}

function onLineOnce(
	path: Path,
	found: readonly OnLine[],
	stretches: readonly [number, number][],
	awayFrom: (point: Point) => number,
	accuracy: number
): OnLine[] {
	const near = 4 * accuracy;
	const joined: [number, number][] = [];
	for (const [from, to] of stretches) {
		const before = joined[joined.length - 1];
		if (before !== undefined && from - before[1] <= near) before[1] = to;
		else joined.push([from, to]);
	}
	const kept: OnLine[] = [];
	for (const [from, to] of joined) {
		kept.push({ s: from, point: pointAt(path, from), touch: true });
		if (to - from > near) kept.push({ s: to, point: pointAt(path, to), touch: true });
	}
	const ends = kept.length;
	for (const one of [...found].sort((p, q) => Number(p.touch) - Number(q.touch) || p.s - q.s)) {
		if (joined.some(([from, to]) => one.s >= from - near && one.s <= to + near)) continue;
		const known = kept.some((other, index) => {
			const apart = Math.abs(other.s - one.s);
			if (apart <= near) return true;
			if (apart > oneTouch || (!one.touch && index >= ends)) return false;
			return Math.abs(awayFrom(pointAt(path, 0.5 * (other.s + one.s)))) <= accuracy;
		});
		if (!known) kept.push(one);
	}
	return kept.sort((p, q) => p.s - q.s);
}
