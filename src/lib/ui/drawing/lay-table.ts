import { piecesBefore } from './answering.ts';
import type { CutPath } from './cut-path.ts';
import { laidPieces } from './laid-pieces.ts';
import { notchCounts, undividedName, sideOfName } from './engine.ts';
import type { Draft, Piece } from './engine.ts';
import type { Unit } from '../../measure/units.ts';
import { balanceAcross, takeNames } from './balance.ts';
import { captionGap, type Caption } from './caption-gap.ts';
import { filled, together } from './clearance.ts';
import { crossStep, measureStrip } from './measure-strip.ts';
import { pieceWithWords } from './piece-with-words.ts';
import { placePins } from './pins.ts';
import type { Material, PinOnDrawing, Scene } from './scene.ts';

export interface TableOptions {
	readonly unit: Unit;
	/** px of the drawing at its own size; it is shown as wide as the table. 850 if left out. */
	readonly width?: number;
	/** Lines before in basting, lines after pricked, bands between, where the two differ. */
	readonly before?: Draft;
	/** The cutting lines that the cloth shown has, as `cutPaths` gives them: of the toile, or of the version. */
	readonly cut?: readonly CutPath[];
	/** The lines that are to be cut on, where the cloth was cut on others: what falls short is crossed out. */
	readonly wanted?: readonly CutPath[];
	readonly material?: Material;
	/** The wearer's side that is shown; the left half is the mirror image. */
	readonly side?: 'right' | 'left';
	/** Only these pieces; all if left out. */
	readonly pieces?: readonly string[];
	/** The balance line that stands level first; the waist if there is one. */
	readonly anchor?: string;
	/** Each piece is laid over itself as it was at this balance line and the grain: for comparing. As it lies if left out. */
	readonly layOn?: string;
	readonly pins?: readonly PinOnDrawing[];
	/** Whole names of edges that chalk is rubbed along: the seam in hand, on both its pieces. */
	readonly selected?: readonly string[];
	/** A caption that may stand in a gap of the pieces; none if left out. */
	readonly caption?: Caption;
	/** Its upper right corner is left to the button that brings it closer. */
	readonly closer?: boolean;
	/** Without crosses and measure: a drawing on white paper. */
	readonly bare?: boolean;
}

/** Room at the left for the names of the balance lines, and round the pieces, px. */
const margins = { left: 84, right: 18, top: 18, foot: 20 } as const;
const stripHeight = 25;

/**
 * Pieces laid on the table at one true scale: the body in a row on common balance lines, waist level with waist; sleeves and
 * other limbs lying along below. Geometry in px of the drawing; every code is in the scene by its own name.
 */
export function layTable(draft: Draft, options: TableOptions): Scene {
	const { unit, width = 850, before, side = 'right', bare = false } = options;
	const shown = piecesShown(draft, options);
	const top = margins.top;
	const layout = laidPieces(shown, {
		cut: options.cut ?? [],
		...(options.wanted && { wanted: options.wanted }),
		...(before && { before: piecesBefore(before, draft) }),
		left: bare ? 12 : margins.left,
		right: width - margins.right,
		top,
		mirrored: side === 'left',
		...(options.anchor !== undefined && { anchor: options.anchor }),
		...(options.layOn !== undefined && { layOn: options.layOn })
	});
	const cuts = notchCounts(draft);
	const drawn = layout.placed.map((placed) =>
		pieceWithWords({ ...placed, cuts, selected: options.selected ?? [], thin: false })
	);
	const clear = together(drawn.map((one) => one.clear));
	const foot = layout.bottom + margins.foot;
	const height = bare ? foot : foot + stripHeight;
	const balance = bare ? [] : balanceAcross(layout.placed, width);
	takeNames(balance, clear);
	if (options.closer) clear.take(filled({ left: width - 58, top: 0, right: width, bottom: 58 }), 8);
	const pins = placePins(options.pins ?? [], drawn, { clear, width, height: foot, unit, thin: false });
	const gap = options.caption ? captionGap(clear, width, options.caption) : undefined;
	const step = crossStep(layout.scale, unit);
	const zero = layout.zero;
	return {
		width,
		height: Math.round(height),
		scale: layout.scale,
		unit,
		material: options.material ?? 'white',
		thin: false,
		...(!bare && { crosses: { step, x: zero % step, y: top % step } }),
		...(!bare && { measure: measureStrip(layout.scale, unit, zero, width, Math.round(height) - stripHeight) }),
		balance,
		pieces: drawn.map(({ worded }) => worded),
		pins,
		...(gap && { captionGap: gap })
	};
}

/** The pieces of one side of the wearer, as asked for; the left half from the front round to the back, as it lies mirrored. */
export function piecesShown(
	draft: Draft,
	{ side = 'right', pieces }: Pick<TableOptions, 'side' | 'pieces'>
): readonly Piece[] {
	const shown = draft.pieces.filter((piece) => {
		const own = sideOfName(piece.id) ?? (piece.side === 'both' ? undefined : piece.side);
		if (own !== undefined && own !== side) return false;
		return pieces === undefined || pieces.some((id) => id === piece.id || id === undividedName(piece.id));
	});
	return side === 'left' ? [...shown].reverse() : shown;
}
