import svgpath from 'svgpath';
import type { Path, Point, Segment } from './types.ts';
import { cubic, line } from './segment.ts';

/**
 * Reads SVG path data with absolute M, L and C: one M, first, and at least one line or curve. Coordinates in mm.
 * Anything else gives a `problem`, a sentence that says what would be right: other or relative commands, a second
 * M, numbers that are missing, not numbers or too large to hold.
 */
export function parsePathData(text: string): { path: Path } | { problem: string } {
	if (text.trim() === '') return { problem: 'The path is empty: it needs an M and then at least one L or C.' };
	const parsed = svgpath(text) as unknown as { err: string; segments: (readonly [string, ...number[]])[] };
	if (parsed.err !== '') {
		return { problem: `The path cannot be read as SVG path data: ${parsed.err.replace(/^SvgPath: /, '')}.` };
	}
	// The reader turns a leading m into M.
	const commands = parsed.segments.map(([command], index) => (index === 0 ? text.trim()[0] : command));
	const other = commands.find((command) => command !== 'M' && command !== 'L' && command !== 'C');
	if (other !== undefined) {
		return { problem: `The path has the command ${other}: only the absolute commands M, L and C are read.` };
	}
	if (commands.lastIndexOf('M') > 0) return { problem: 'The path has more than one M: it must be one unbroken line.' };
	if (parsed.segments.some(([, ...numbers]) => !numbers.every(Number.isFinite))) {
		return { problem: 'The path has a number too large to hold: every coordinate must be a finite number of mm.' };
	}
	if (parsed.segments.length < 2)
		return { problem: 'The path is only a point: it needs at least one L or C after its M.' };
	const path: Segment[] = [];
	let at: Point = [parsed.segments[0][1], parsed.segments[0][2]];
	for (const [command, ...n] of parsed.segments.slice(1)) {
		const segment = command === 'L' ? line(at, [n[0], n[1]]) : cubic(at, [n[0], n[1]], [n[2], n[3]], [n[4], n[5]]);
		path.push(segment);
		at = segment.to;
	}
	return { path };
}

/**
 * SVG path data of a path: M, then an L or C for each segment, each number in the fewest digits that read back as the same
 * number. `parsePathData` of it is the path to the bit (a negative zero comes back as 0). Thrown: coordinates that are
 * not finite.
 */
export function formatPathData(path: Path): string {
	const parts = ['M', pair(path[0].from)];
	for (const segment of path) {
		if (segment.kind === 'line') parts.push('L', pair(segment.to));
		else parts.push('C', pair(segment.control1), pair(segment.control2), pair(segment.to));
	}
	return parts.join(' ');
}

function pair([x, y]: Point): string {
	if (!Number.isFinite(x) || !Number.isFinite(y)) throw new RangeError(`formatPathData: not a point: ${x}, ${y}`);
	return `${x} ${y}`;
}
