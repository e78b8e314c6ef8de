import type { Box, Path, Point, Segment } from './types.ts';
import { remembered } from './memo.ts';
import { joined, measured } from './accuracy.ts';
import { parameterAtKnown, segmentLength } from './arc-length.ts';
import { add, distance, subtract } from './point.ts';
import {
	cubic,
	curvatureOn,
	line,
	pointOn,
	reversedSegment,
	segmentBox,
	segmentPortion,
	tangentOn
} from './segment.ts';

/*
 * Paths by arc length. `s` is mm from the start; s beyond either end means that end. Lengths are measured once for each path
 * object at a thousandth of `measured` and remembered, so positions on one path always agree with one another.
 */

interface Measures {
	/** The paths that it is a chain of, whose measures are its own. */
	parts?: readonly Path[];
	starts?: readonly number[];
	boxes?: readonly Box[];
	box?: Box;
}

const lengthAccuracy = 0.001 * measured;
const measuresOf = remembered((_: Path): Measures => ({}));

export function straight(a: Point, b: Point): Path {
	return [line(a, b)];
}

export function pathStart(path: Path): Point {
	return path[0].from;
}

export function pathEnd(path: Path): Point {
	return path[path.length - 1].to;
}

/** Several paths as one; each must start where the one before ends, to the bit. What they were measured to be is not measured again. */
export function chained(paths: readonly Path[]): Path {
	const whole = joinedLists(paths);
	measuresOf(whole).parts = paths;
	return whole;
}

/** The paths that it is a chain of, in order; itself where it was not put together. */
export function partsOf(path: Path): readonly Path[] {
	return measuresOf(path).parts ?? [path];
}

function joinedLists<T>(lists: readonly (readonly T[])[]): T[] {
	const whole: T[] = [];
	for (const list of lists) for (const item of list) whole.push(item);
	return whole;
}

/** Arc length where each segment starts, in mm, and last the length of the whole: one more number than segments. */
export function segmentStarts(path: Path): readonly number[] {
	const measures = measuresOf(path);
	if (measures.starts === undefined) {
		const starts = [0];
		let sum = 0;
		if (measures.parts)
			for (const part of measures.parts) {
				const own = segmentStarts(part);
				for (let i = 1; i < own.length; i++) starts.push(sum + own[i]);
				sum = starts[starts.length - 1];
			}
		else for (const segment of path) starts.push((sum += segmentLength(segment, lengthAccuracy)));
		measures.starts = starts;
	}
	return measures.starts;
}

/** Length in mm. `accuracy` bounds the error for the whole path. */
export function pathLength(path: Path, accuracy: number = measured): number {
	if (accuracy >= path.length * lengthAccuracy) return segmentStarts(path)[path.length];
	let sum = 0;
	for (const segment of path) sum += segmentLength(segment, accuracy / path.length);
	return sum;
}

/**
 * The segment and Bézier parameter at s, within `measured` of arc length. A joint belongs to the segment that starts
 * there, the path's end to the last one.
 */
export function locate(path: Path, s: number): { index: number; t: number } {
	const starts = segmentStarts(path);
	const last = path.length - 1;
	let low = 0;
	let high = last;
	while (low < high) {
		const middle = (low + high + 1) >> 1;
		if (starts[middle] <= s) low = middle;
		else high = middle - 1;
	}
	return { index: low, t: parameterAtKnown(path[low], s - starts[low], starts[low + 1] - starts[low], 0.1 * measured) };
}

export function pointAt(path: Path, s: number): Point {
	const { index, t } = locate(path, s);
	return pointOn(path[index], t);
}

/**
 * Direction of travel at s, of length 1. Within `measured` of a joint it is that of the segment before or after the joint;
 * segments of no length are passed over.
 */
export function tangentAt(path: Path, s: number, side: 'before' | 'after' = 'after'): Point {
	const starts = segmentStarts(path);
	const { index, t } = locate(path, s);
	if (side === 'before' && index > 0 && s - starts[index] <= measured) return tangentInto(path, index - 1);
	if (side === 'after' && index < path.length - 1 && starts[index + 1] - s <= measured) {
		return tangentOutOf(path, index + 1);
	}
	const tangent = tangentOn(path[index], t);
	if (tangent[0] !== 0 || tangent[1] !== 0) return tangent;
	return side === 'before' ? tangentInto(path, index) : tangentOutOf(path, index);
}

/** Arriving at the end of a segment, or of the last before it that has a length, or else of the first after it. */
function tangentInto(path: Path, index: number): Point {
	for (let i = index; i >= 0; i--) {
		const tangent = tangentOn(path[i], 1);
		if (tangent[0] !== 0 || tangent[1] !== 0) return tangent;
	}
	for (let i = index + 1; i < path.length; i++) {
		const tangent = tangentOn(path[i], 0);
		if (tangent[0] !== 0 || tangent[1] !== 0) return tangent;
	}
	return [0, 0];
}

/** Leaving the start of a segment, or of the first after it that has a length, or else of the last before it. */
function tangentOutOf(path: Path, index: number): Point {
	for (let i = index; i < path.length; i++) {
		const tangent = tangentOn(path[i], 0);
		if (tangent[0] !== 0 || tangent[1] !== 0) return tangent;
	}
	for (let i = index - 1; i >= 0; i--) {
		const tangent = tangentOn(path[i], 1);
		if (tangent[0] !== 0 || tangent[1] !== 0) return tangent;
	}
	return [0, 0];
}

/** Curvature in 1/mm at s, positive bending clockwise as seen; at a joint, that of the segment after it. */
export function curvatureAt(path: Path, s: number): number {
	const { index, t } = locate(path, s);
	return curvatureOn(path[index], t);
}

export function startTangent(path: Path): Point {
	return tangentOutOf(path, 0);
}

export function endTangent(path: Path): Point {
	return tangentInto(path, path.length - 1);
}

/**
 * The part from s0 to s1. Both are taken as the nearest joint where that is within `measured`, so that no sliver is left; two
 * portions that share an s share that end to the bit. Refused (thrown) unless s0 < s1.
 */
export function portion(path: Path, s0: number, s1: number): Path {
	if (!(s0 < s1)) throw new RangeError(`portion: ${s0} is not before ${s1}`);
	const starts = segmentStarts(path);
	const length = starts[path.length];
	if (s0 <= measured && s1 >= length - measured) return path;
	const first = locateSnapped(path, starts, s0);
	const end = locateSnapped(path, starts, s1);
	// A joint as an end closes the segment before it.
	const last = end.t === 0 && end.index > 0 ? { index: end.index - 1, t: 1 } : end;
	if (first.index > last.index || (first.index === last.index && first.t >= last.t)) {
		return straight(pointAt(path, s0), pointAt(path, s1));
	}
	if (first.index === last.index) return [segmentPortion(path[first.index], first.t, last.t)];
	const part: Segment[] = [segmentPortion(path[first.index], first.t, 1)];
	for (let i = first.index + 1; i < last.index; i++) part.push(path[i]);
	part.push(segmentPortion(path[last.index], 0, last.t));
	return part;
}

/** `locate`, at a joint (t = 0, or t = 1 of the last segment) where one is within `measured`. */
function locateSnapped(path: Path, starts: readonly number[], s: number): { index: number; t: number } {
	const { index, t } = locate(path, s);
	if (s - starts[index] <= measured) return { index, t: 0 };
	if (starts[index + 1] - s > measured) return { index, t };
	return index === path.length - 1 ? { index, t: 1 } : { index: index + 1, t: 0 };
}

export function reversedPath(path: Path): Path {
	const reversed: Segment[] = [];
	for (let i = path.length - 1; i >= 0; i--) reversed.push(reversedSegment(path[i]));
	return reversed;
}

/** One path of several, each starting within `joined` of where the one before ends, and moved to meet it to the bit. Thrown: a wider gap. */
export function joinedPaths(...paths: Path[]): Path {
	const whole: Segment[] = [];
	for (const path of paths) {
		path.forEach((segment, index) => {
			if (index > 0 || whole.length === 0) {
				whole.push(segment);
				return;
			}
			const end = whole[whole.length - 1].to;
			const gap = distance(end, segment.from);
			if (!(gap <= joined)) throw new RangeError(`joinedPaths: a gap of ${gap} mm`);
			whole.push(startingAt(segment, end));
		});
	}
	return whole;
}

/** The segment with its start moved a little, its end and its direction at both ends kept. */
function startingAt(segment: Segment, start: Point): Segment {
	if (segment.from[0] === start[0] && segment.from[1] === start[1]) return segment;
	if (segment.kind === 'line') return line(start, segment.to);
	return cubic(start, add(segment.control1, subtract(start, segment.from)), segment.control2, segment.to);
}

/** The box of each segment, exact to rounding. */
export function segmentBoxes(path: Path): readonly Box[] {
	const measures = measuresOf(path);
	return (measures.boxes ??= measures.parts ? joinedLists(measures.parts.map(segmentBoxes)) : path.map(segmentBox));
}

/** The smallest upright box that holds the path, exact to rounding. */
export function pathBox(path: Path): Box {
	const measures = measuresOf(path);
	if (measures.box === undefined) {
		let left = Infinity;
		let top = Infinity;
		let right = -Infinity;
		let bottom = -Infinity;
		for (const box of segmentBoxes(path)) {
			left = Math.min(left, box.left);
			top = Math.min(top, box.top);
			right = Math.max(right, box.right);
			bottom = Math.max(bottom, box.bottom);
		}
		measures.box = { left, top, right, bottom };
	}
	return measures.box;
}
