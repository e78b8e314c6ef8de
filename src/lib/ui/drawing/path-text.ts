import type { Path, Point } from './engine.ts';

/** Hundredths of a px are enough for a screen, and keep the page small; files that are cut from are written elsewhere. */
const px = (value: number): string => String(Math.round(value * 100) / 100);
const at = ([x, y]: Point): string => `${px(x)} ${px(y)}`;

/** A path, in px, as SVG path text. */
export function pathText(path: Path, closed = false): string {
	const parts = path.map((segment, i) => {
		const start = i === 0 ? `M${at(segment.from)}` : '';
		return segment.kind === 'line'
			? `${start}L${at(segment.to)}`
			: `${start}C${at(segment.control1)} ${at(segment.control2)} ${at(segment.to)}`;
	});
	return parts.join('') + (closed ? 'Z' : '');
}

/** Straight runs through points, in px. */
export function pointsText(points: readonly Point[], closed = false): string {
	return points.map((point, i) => `${i === 0 ? 'M' : 'L'}${at(point)}`).join('') + (closed ? 'Z' : '');
}

/** Separate straight strokes, in px. */
export function strokesText(strokes: readonly (readonly [Point, Point])[]): string {
	return strokes.map(([from, to]) => `M${at(from)}L${at(to)}`).join('');
}
