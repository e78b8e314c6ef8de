export interface Size {
	readonly width: number;
	readonly height: number;
}

export interface Laid {
	/** In the order the sizes were given: the upper left corner of each. */
	readonly corners: readonly (readonly [x: number, y: number])[];
	readonly width: number;
	readonly height: number;
}

/**
 * Lays rectangles on shelves no wider than `width`, the tallest first, each on the first shelf that has room for it (first
 * fit by decreasing height: Coffman, Garey, Johnson and Tarjan, “Performance bounds for level-oriented two-dimensional
 * packing algorithms”, 1980). `gap` mm are left between neighbours and between shelves. On a shelf they stand in the order
 * given, their feet on one line. A rectangle wider than `width` has a shelf of its own and widens the whole.
 */
export function layOnShelves(sizes: readonly Size[], width: number, gap: number): Laid {
	const byHeight = sizes.map((_, index) => index).sort((a, b) => sizes[b].height - sizes[a].height || a - b);
	const shelves: { members: number[]; used: number; height: number }[] = [];
	for (const index of byHeight) {
		const size = sizes[index];
		const shelf = shelves.find(({ used }) => used + gap + size.width <= width);
		if (shelf) {
			shelf.members.push(index);
			shelf.used += gap + size.width;
		} else shelves.push({ members: [index], used: size.width, height: size.height });
	}
	const corners: [number, number][] = sizes.map(() => [0, 0]);
	let y = 0;
	for (const { members, height } of shelves) {
		let x = 0;
		for (const index of [...members].sort((a, b) => a - b)) {
			corners[index] = [x, y + height - sizes[index].height];
			x += sizes[index].width + gap;
		}
		y += height + gap;
	}
	return {
		corners,
		width: Math.max(0, ...shelves.map(({ used }) => used)),
		height: Math.max(0, y - gap)
	};
}
