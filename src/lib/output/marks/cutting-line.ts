import type { Path, Point, Segment } from '../../engine/index.ts';

/** A line this near to a fold lies on it, mm. */
const near = 1e-3;

/**
 * The cutting line in the stretches that the shears follow: all of it, but for what lies on the straight line of a fold, where
 * nothing is cut. Stretches are open paths; without a fold there is one, closed.
 */
export function cutStretches(
	outline: Path,
	folds: readonly Path[]
): { readonly path: Path; readonly closed: boolean }[] {
	const ends = folds.map((path) => [path[0].from, path[path.length - 1].to] as const);
	const onFold = (segment: Segment) =>
		ends.some(([from, to]) => isOn(segment.from, from, to) && isOn(segment.to, from, to)) && segment.kind === 'line';
	const first = outline.findIndex(onFold);
	if (first < 0) return [{ path: outline, closed: true }];
	const stretches: Segment[][] = [];
	let open: Segment[] | undefined;
	for (const segment of [...outline.slice(first), ...outline.slice(0, first)]) {
		if (onFold(segment)) open = undefined;
		else if (open) open.push(segment);
		else stretches.push((open = [segment]));
	}
	return stretches.map((path) => ({ path, closed: false }));
}

function isOn([x, y]: Point, [fromX, fromY]: Point, [toX, toY]: Point): boolean {
	const [dx, dy] = [toX - fromX, toY - fromY];
	return Math.abs(dx * (y - fromY) - dy * (x - fromX)) <= near * Math.hypot(dx, dy);
}
