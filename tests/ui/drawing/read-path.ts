import { svgPathProperties } from 'svg-path-properties';

export type Xy = readonly [number, number];

/** Every separate part of a drawing's path text, as points about `every` px apart, read by another reader than ours. */
export function partsOf(text: string, every = 1): Xy[][] {
	return text
		.split(/(?=M)/)
		.filter((part) => part.trim() !== '')
		.map((part) => {
			const read = new svgPathProperties(part);
			const length = read.getTotalLength();
			const steps = Math.max(1, Math.ceil(length / every));
			return Array.from({ length: steps + 1 }, (_, i) => {
				const { x, y } = read.getPointAtLength((i * length) / steps);
				return [x, y] as const;
			});
		});
}

/** The corners written in path text: ends of its lines and curves. */
export function cornersOf(text: string): Xy[] {
	return [...text.matchAll(/(-?[\d.]+) (-?[\d.]+)(?=[A-Z]|$)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
}

export function boxOfText(text: string): { left: number; right: number; top: number; bottom: number } {
	const points = partsOf(text).flat();
	const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
	return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Area of a closed polygon by the shoelace formula, without its sign. */
export function areaOf(points: readonly Xy[]): number {
	const twice = points.reduce((sum, [x, y], i) => {
		const [nx, ny] = points[(i + 1) % points.length];
		return sum + x * ny - nx * y;
	}, 0);
	return Math.abs(twice) / 2;
}

/** Least distance from a point to a polyline. */
export function distanceTo([x, y]: Xy, line: readonly Xy[]): number {
	let least = Infinity;
	for (let i = 0; i + 1 < line.length; i++) {
		const [[ax, ay], [bx, by]] = [line[i], line[i + 1]];
		const square = (bx - ax) ** 2 + (by - ay) ** 2;
		const t = square > 0 ? Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square)) : 0;
		least = Math.min(least, Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay)));
	}
	return least;
}

/** Even-odd rule. */
export function isIn([x, y]: Xy, outline: readonly Xy[]): boolean {
	return outline.reduce((inside, [ax, ay], i) => {
		const [bx, by] = outline[(i + 1) % outline.length];
		const crosses = ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax);
		return crosses ? !inside : inside;
	}, false);
}
