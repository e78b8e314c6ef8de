import { portion } from './engine.ts';
import type { Path } from './engine.ts';
import { pathText } from './path-text.ts';
import { liesOn, placeAlong, polylineOf } from './polyline.ts';
import { stretchesOf } from './stretches.ts';

/** Where lines are looked at, px apart. */
const every = 2.5;
/** Lines closer together than this are one line, px; an eighth of a px cannot be seen. */
const same = 0.12;
/** A stretch shorter than this is the end of its neighbour, px. */
const shortest = 1.5;

export interface PartedLine {
	/** Where it lies on the other line. */
	readonly kept: string;
	/** Where it does not. */
	readonly moved: string;
	readonly movedLength: number;
}

/**
 * A line in two parts: where it still lies on another line (or runs along it), and where it has left it. Both in px. The
 * places where it leaves are found to within 2.5 px; the lines themselves are exact. `likely`: the part of the other line that it
 * most likely lies on, asked first.
 */
export function partedLine(path: Path, other: Path, likely: Path = other): PartedLine {
	const line = polylineOf(path);
	const [first, then] = [polylineOf(likely), polylineOf(other)];
	const steps = Math.max(2, Math.ceil(line.length / every));
	const places = Array.from({ length: steps + 1 }, (_, i) => (i * line.length) / steps);
	const kinds = places.map((s) => {
		const { point } = placeAlong(line, s);
		return liesOn(first, point, same) || (first !== then && liesOn(then, point, same)) ? 'kept' : 'moved';
	});
	const text = { kept: '', moved: '' };
	let movedLength = 0;
	for (const { kind, first: begun, last } of stretchesOf(kinds)) {
		// The step between a kept and a moved sample belongs to the moved stretch, so that no gap is left.
		const from = places[kind === 'moved' ? Math.max(0, begun - 1) : begun];
		const to = places[kind === 'moved' ? Math.min(steps, last + 1) : last];
		if (to - from < shortest) continue;
		text[kind] += pathText(portion(path, from, to));
		if (kind === 'moved') movedLength += to - from;
	}
	return { ...text, movedLength };
}
