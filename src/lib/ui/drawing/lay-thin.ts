import { notchCounts } from './engine.ts';
import { piecesBefore } from './answering.ts';
import { laidPieces } from './laid-pieces.ts';
import type { Draft } from './engine.ts';
import type { Unit } from '../../measure/units.ts';
import { clearance } from './clearance.ts';
import { piecesShown } from './lay-table.ts';
import { drawPiece } from './piece-scene.ts';
import { placePins } from './pins.ts';
import type { Material, PinOnDrawing, Scene } from './scene.ts';

export interface ThinOptions {
	/** px; the drawing is as large as both allow, or at `scale` where several are to be compared by eye. */
	readonly width: number;
	readonly height: number;
	/** px to a mm. */
	readonly scale?: number;
	readonly before?: Draft;
	readonly material?: Material;
	readonly pins?: readonly PinOnDrawing[];
	/** Sleeves too; only the body if left out. */
	readonly limbs?: boolean;
	readonly unit?: Unit;
}

/**
 * A small true drawing in one row on common balance lines: outlines, darts, the changed lines in red and the heads of the
 * pins. For the life strip and the workroom.
 */
export function layThin(draft: Draft, options: ThinOptions): Scene {
	const { width, height, before, limbs = false, unit = 'in' } = options;
	const body = piecesShown(draft, {}).filter((piece) => limbs || !piece.limb);
	const shown = body.length > 0 ? body : piecesShown(draft, {});
	const earlier = before && piecesBefore(before, draft);
	const lay = (scale?: number) =>
		laidPieces(shown, {
			cut: [],
			...(earlier && { before: earlier }),
			left: 3,
			// One row however wide: the width is kept by the scale.
			right: scale === undefined ? width - 3 : 1e6,
			top: 9,
			mirrored: false,
			gap: 5,
			limbsInRow: true,
			...(scale !== undefined && { scale })
		});
	const scale = options.scale ?? thinScale(lay, width, height);
	const layout = lay(scale);
	const clear = clearance();
	const cuts = notchCounts(draft);
	const drawn = layout.placed.map((placed) => drawPiece({ ...placed, cuts, selected: [], thin: true }, clear));
	const right = Math.max(0, ...layout.placed.map(({ box }) => box.right));
	const foot = layout.bottom + 9;
	return {
		width: Math.ceil(options.scale === undefined ? width : right + 3),
		height: Math.ceil(options.scale === undefined ? height : foot),
		scale,
		unit,
		material: options.material ?? 'white',
		thin: true,
		balance: [],
		pieces: drawn.map(({ scene }) => scene),
		pins: placePins(options.pins ?? [], drawn, { clear, width, height, unit, thin: true })
	};
}

/** The largest scale at which one row fits both ways. */
function thinScale(lay: (scale: number) => ReturnType<typeof laidPieces>, width: number, height: number): number {
	const at = 0.2;
	const trial = lay(at);
	if (trial.placed.length === 0) return at;
	const gaps = 5 * Math.max(0, trial.placed.length - 1);
	const wide = trial.placed.reduce((sum, { box }) => sum + box.right - box.left, 0);
	const high = trial.bottom - 9;
	return at * Math.min((width - 6 - gaps) / wide, (height - 18) / high);
}
