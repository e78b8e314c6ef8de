import type { Box, Point } from './engine.ts';

/** What is drawn already, as points a few px apart, asked how much of it lies under a box. Weights say how bad that would be. */
export interface Clearance {
	readonly take: (line: readonly Point[], weight: number) => void;
	/** Sum of the weights under a box. */
	readonly under: (box: Box) => number;
}

const cell = 16;
/** Points along lines, px apart. */
const every = 3;

export function clearance(): Clearance {
	/** x, y and weight of each point in a cell, one after another. */
	const cells = new Map<number, number[]>();
	const reach = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
	const keyOf = (column: number, row: number) => column * 65536 + row;
	const put = (x: number, y: number, weight: number) => {
		if (x < reach.left) reach.left = x;
		if (x > reach.right) reach.right = x;
		if (y < reach.top) reach.top = y;
		if (y > reach.bottom) reach.bottom = y;
		const key = keyOf(Math.floor(x / cell), Math.floor(y / cell));
		const found = cells.get(key);
		if (found) found.push(x, y, weight);
		else cells.set(key, [x, y, weight]);
	};
	return {
		take(line, weight) {
			for (let i = 0; i < line.length; i++) {
				const from = line[i];
				const to = line[i + 1] ?? from;
				const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / every));
				for (let k = 0; k < steps; k++)
					put(from[0] + ((to[0] - from[0]) * k) / steps, from[1] + ((to[1] - from[1]) * k) / steps, weight);
			}
		},
		under({ left, top, right, bottom }) {
			let sum = 0;
			if (left > reach.right || right < reach.left || top > reach.bottom || bottom < reach.top) return sum;
			for (let column = Math.floor(left / cell); column <= Math.floor(right / cell); column++) {
				for (let row = Math.floor(top / cell); row <= Math.floor(bottom / cell); row++) {
					const points = cells.get(keyOf(column, row));
					if (!points) continue;
					for (let i = 0; i < points.length; i += 3) {
						const x = points[i];
						const y = points[i + 1];
						if (x >= left && x <= right && y >= top && y <= bottom) sum += points[i + 2];
					}
				}
			}
			return sum;
		}
	};
}

/** Everything that several have, and what is drawn besides. */
export function together(parts: readonly Clearance[]): Clearance {
	const besides = clearance();
	return {
		take: besides.take,
		under: (box) => parts.reduce((sum, part) => sum + part.under(box), besides.under(box))
	};
}

/** A box filled with points, so that later words keep off it. */
export function filled({ left, top, right, bottom }: Box): Point[] {
	const points: Point[] = [];
	for (let y = top; y <= bottom + 0.01; y += every) {
		for (let x = left; x <= right + 0.01; x += every) points.push([x, y]);
	}
	return points;
}

export function boxAround([x, y]: Point, width: number, height: number): Box {
	return { left: x - width / 2, top: y - height / 2, right: x + width / 2, bottom: y + height / 2 };
}

export const grown = (box: Box, by: number): Box => ({
	left: box.left - by,
	top: box.top - by,
	right: box.right + by,
	bottom: box.bottom + by
});

/** Width of a line of text in Commissioner, px, near enough to keep it off lines: by rough classes of letters. */
export function textWidth(text: string, size: number, firm: boolean): number {
	let ems = 0;
	for (const letter of text) {
		if (/[mwMW—]/.test(letter)) ems += 0.82;
		else if (/[ilIjtf.,:;'’/ -]/.test(letter)) ems += 0.3;
		else if (/[A-Z]/.test(letter)) ems += 0.64;
		else ems += 0.545;
	}
	return ems * size * (firm ? 1.04 : 1);
}
