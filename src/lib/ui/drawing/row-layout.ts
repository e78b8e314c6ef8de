import type { Box, Motion } from './engine.ts';
import { shifted } from './frame.ts';

/** One piece to be laid: its box at its own origin, and how far down each of its balance lines lies there; px. */
export interface Lying {
	readonly motion: Motion;
	readonly box: Box;
	readonly levels: ReadonlyMap<string, number>;
}

export interface Laid {
	/** From the piece's own mm to px of the drawing. */
	readonly motion: Motion;
	readonly box: Box;
	/** Which row, from the top. */
	readonly row: number;
}

export interface RowOptions {
	readonly left: number;
	readonly top: number;
	/** Right end of the table, px; a piece that would pass it starts a new row. */
	readonly right: number;
	readonly gap: number;
	readonly rowGap: number;
	/** The balance line that stands level first; `waist` where there is one. */
	readonly anchor?: string;
	/** The number of the first row. */
	readonly row?: number;
}

/**
 * Pieces in rows from left to right, at least `gap` px between their boxes, on common balance lines: waist level with waist.
 * A piece without the anchor stands on another line that it shares with one already placed, or else on the row's foot.
 */
export function layInRows(
	pieces: readonly Lying[],
	options: RowOptions
): { readonly laid: readonly Laid[]; readonly bottom: number } {
	const laid: Laid[] = [];
	let top = options.top;
	let row = options.row ?? 0;
	let bottom = options.top;
	for (const members of brokenIntoRows(pieces, options)) {
		const downs = levelled(members, options.anchor);
		const highest = Math.min(...members.map(({ box }, i) => box.top + downs[i]));
		let x = options.left;
		members.forEach(({ motion, box }, i) => {
			const [dx, dy] = [x - box.left, top - highest + downs[i]];
			const placed = { left: box.left + dx, top: box.top + dy, right: box.right + dx, bottom: box.bottom + dy };
			laid.push({ motion: shifted(motion, dx, dy), box: placed, row });
			bottom = Math.max(bottom, placed.bottom);
			x = placed.right + options.gap;
		});
		top = bottom + options.rowGap;
		row++;
	}
	return { laid, bottom };
}

function brokenIntoRows(pieces: readonly Lying[], { left, right, gap }: RowOptions): readonly (readonly Lying[])[] {
	const rows: Lying[][] = [];
	let x = left;
	for (const piece of pieces) {
		const width = piece.box.right - piece.box.left;
		if (rows.length === 0 || x + width > right + 0.01) {
			rows.push([]);
			x = left;
		}
		rows[rows.length - 1].push(piece);
		x += width + gap;
	}
	return rows;
}

/** How far each piece is to be let down, px, so that balance lines of one name stand level. */
function levelled(pieces: readonly Lying[], wished?: string): readonly number[] {
	const anchor = anchorOf(pieces, wished);
	const heights = new Map<string, number>();
	const downs: (number | undefined)[] = pieces.map(() => undefined);
	const settle = (i: number, down: number) => {
		downs[i] = down;
		for (const [level, y] of pieces[i].levels) if (!heights.has(level)) heights.set(level, y + down);
	};
	pieces.forEach(({ levels }, i) => {
		const y = anchor === undefined ? undefined : levels.get(anchor);
		if (y !== undefined) settle(i, -y);
	});
	// The rest hang on whatever line they share with a piece that already hangs, until none is left that shares one.
	for (let more = true; more;) {
		more = false;
		pieces.forEach(({ levels }, i) => {
			if (downs[i] !== undefined) return;
			const shared = [...levels.keys()].find((level) => heights.has(level));
			if (shared === undefined) return;
			settle(i, heights.get(shared)! - levels.get(shared)!);
			more = true;
		});
	}
	const foot = Math.max(...pieces.map(({ box }, i) => (downs[i] === undefined ? -Infinity : box.bottom + downs[i]!)));
	return pieces.map(({ box }, i) => downs[i] ?? (Number.isFinite(foot) ? foot - box.bottom : -box.bottom));
}

/** The line to stand on: the wished-for one, the waist, or the one that most pieces have. */
function anchorOf(pieces: readonly Lying[], wished?: string): string | undefined {
	const counts = new Map<string, number>();
	for (const { levels } of pieces) for (const level of levels.keys()) counts.set(level, (counts.get(level) ?? 0) + 1);
	for (const level of [wished, 'waist']) if (level !== undefined && counts.has(level)) return level;
	return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
}
