import type { CutPath } from './cut-path.ts';
import { levelSpan, movePoint, outlineOf, undividedName } from './engine.ts';
import type { Box, Motion, Path, Piece } from './engine.ts';
import { boxOf, lieOf, shifted } from './frame.ts';
import { shiftToLieOn } from './lay-on.ts';
import { layInRows } from './row-layout.ts';
import type { Laid, Lying } from './row-layout.ts';

export interface PlacedOutline {
	readonly piece: Piece;
	/** What it was before. */
	readonly before?: Piece;
	readonly motion: Motion;
	readonly beforeMotion: Motion;
	readonly cut?: Path;
	/** The line that is to be cut on instead. */
	readonly wanted?: Path;
	/** px, with its allowance. */
	readonly box: Box;
	readonly row: number;
	readonly limb: boolean;
}

export interface LaidPieces {
	readonly placed: readonly PlacedOutline[];
	/** px to a mm. */
	readonly scale: number;
	readonly bottom: number;
	/** Where the measure begins: the left of the first piece, px. */
	readonly zero: number;
}

export interface LayOptions {
	readonly cut: readonly CutPath[];
	readonly wanted?: readonly CutPath[];
	/** What each piece was before, by the id that it has now. */
	readonly before?: ReadonlyMap<string, Piece>;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly mirrored: boolean;
	readonly anchor?: string;
	/** Pieces as they were are laid on pieces as they are at this balance line; left as they lie if left out. */
	readonly layOn?: string;
	/** px to a mm; as large as the row allows, within reason, if left out. */
	readonly scale?: number;
	/** px between pieces, and between rows. */
	readonly gap?: number;
	readonly rowGap?: number;
	/** Limbs stand in the row like all others instead of lying along below. */
	readonly limbsInRow?: boolean;
}

/** px to an inch: nothing is drawn larger, and rows are broken rather than drawn smaller. */
const largest = 26 / 25.4;
const smallest = 12.5 / 25.4;

export function laidPieces(pieces: readonly Piece[], options: LayOptions): LaidPieces {
	const { left, right, top, gap = 16, rowGap = 26 } = options;
	const cut = new Map(options.cut.map(({ piece, outline }) => [piece, outline]));
	const cutOf = (piece: Piece) => cut.get(piece.id) ?? cut.get(undividedName(piece.id));
	const wanted = new Map((options.wanted ?? []).map(({ piece, outline }) => [piece, outline]));
	const outlinesOf = (piece: Piece) => {
		const before = options.before?.get(piece.id);
		return [cutOf(piece), wanted.get(piece.id), outlineOf(piece), before && outlineOf(before)].filter(
			(path) => path !== undefined
		);
	};
	const body = pieces.filter((piece) => !piece.limb || options.limbsInRow);
	const limbs = pieces.filter((piece) => piece.limb && !options.limbsInRow);
	const scale = options.scale ?? fittingScale(body.length > 0 ? body : limbs, outlinesOf, gap, right - left);
	const anchor = options.anchor === undefined ? {} : { anchor: options.anchor };

	const lying = (piece: Piece, along: boolean): Lying => {
		const lie = along ? (options.mirrored ? 'along-mirrored' : 'along') : options.mirrored ? 'mirrored' : 'upright';
		const motion = lieOf(scale, lie);
		return { motion, box: boxOf(motion, outlinesOf(piece)), levels: along ? new Map() : levelHeights(piece, motion) };
	};
	const upper = layInRows(
		body.map((piece) => lying(piece, false)),
		{ left, right, top, gap, rowGap, ...anchor }
	);
	const rows = upper.laid.reduce((most, { row }) => Math.max(most, row + 1), 0);
	const lower = layInRows(
		limbs.map((piece) => lying(piece, isTall(piece))),
		{ left, right, top: body.length > 0 ? upper.bottom + rowGap : top, gap: gap * 1.5, rowGap, row: rows }
	);
	const place = (piece: Piece, { motion, box, row }: Laid, limb: boolean): PlacedOutline => {
		const before = options.before?.get(piece.id);
		const path = cutOf(piece);
		const line = wanted.get(piece.id);
		const beforeMotion = before && options.layOn ? laidOn(before, piece, options.layOn, motion) : motion;
		return {
			piece,
			...(before && { before }),
			motion,
			beforeMotion,
			...(path && { cut: path }),
			...(line && { wanted: line }),
			box,
			row,
			limb
		};
	};
	const placed = [
		...upper.laid.map((laid, i) => place(body[i], laid, false)),
		...lower.laid.map((laid, i) => place(limbs[i], laid, true))
	];
	const first = placed[0];
	return {
		placed,
		scale,
		bottom: limbs.length > 0 ? lower.bottom : upper.bottom,
		zero: first ? boxOf(first.motion, [outlineOf(first.piece)]).left : left
	};
}

/** The motion of a piece as it was, so that it lies on the piece as it is at a balance line. */
function laidOn(before: Piece, after: Piece, level: string, motion: Motion): Motion {
	const [a, b, c, d] = motion;
	const [x, y] = shiftToLieOn(before, after, level);
	return shifted(motion, a * x + c * y, b * x + d * y);
}

/** px to a mm at which the row just fills the table. */
function fittingScale(
	pieces: readonly Piece[],
	outlinesOf: (piece: Piece) => readonly Path[],
	gap: number,
	room: number
): number {
	const wide = pieces.map((piece) => {
		const box = boxOf([1, 0, 0, 1, 0, 0], outlinesOf(piece));
		return box.right - box.left;
	});
	if (wide.length === 0) return largest;
	const sum = wide.reduce((all, one) => all + one, 0);
	const fitting = (room - gap * Math.max(0, wide.length - 1)) / sum;
	return Math.min(largest, Math.max(Math.min(smallest, room / Math.max(...wide)), fitting));
}

/** A sleeve lies along its length below the body. */
function isTall(piece: Piece): boolean {
	const box = boxOf([1, 0, 0, 1, 0, 0], [outlineOf(piece)]);
	return box.bottom - box.top > box.right - box.left;
}

/** How far down each drawn balance line lies, px: half way along its span. */
function levelHeights(piece: Piece, motion: Motion): ReadonlyMap<string, number> {
	const heights = new Map<string, number>();
	for (const level of piece.levels) {
		if (heights.has(level.level)) continue;
		const span = levelSpan(piece, level)?.points;
		const edge = 'edge' in level ? piece.edges.find(({ id }) => id === level.edge) : undefined;
		const ends = span
			? [span[0], span[span.length - 1]]
			: edge && [edge.path[0].from, edge.path[edge.path.length - 1].to];
		if (!ends) continue;
		const [a, b] = ends.map((point) => movePoint(motion, point));
		heights.set(level.level, (a[1] + b[1]) / 2);
	}
	return heights;
}
