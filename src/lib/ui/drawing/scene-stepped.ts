import { findPiece } from './engine.ts';
import type { Draft } from './engine.ts';
import { piecesBefore } from './answering.ts';
import { takeNames } from './balance.ts';
import { together } from './clearance.ts';
import { pieceStepped, type WordedPiece } from './piece-with-words.ts';
import { placePins } from './pins.ts';
import { pinsStepped } from './pins-stepped.ts';
import type { PinOnDrawing, Scene } from './scene.ts';

export interface StepDrawn {
	/** Lines before, where any are to be shown. */
	readonly before?: Draft;
	/** The alteration that is stepped, and its pins. */
	readonly number: number;
	readonly pins: readonly PinOnDrawing[];
	/** The pins of all, asked for only where one of them is to be placed anew. */
	readonly all: () => readonly PinOnDrawing[];
}

/**
 * A drawing in the frame of a step: the lines of the pieces that changed, and the pins, drawn where the pieces lie already. Where
 * they lie, words and balance lines stay as they were until all is laid anew. Undefined where other pieces are to be shown, or the
 * scene was drawn elsewhere.
 */
export function sceneStepped(shown: Scene, draft: Draft, { before, number, pins, all }: StepDrawn): Scene | undefined {
	let earlier: ReturnType<typeof piecesBefore> | undefined;
	const was = (id: string) => before && (earlier ??= piecesBefore(before, draft)).get(id);
	const drawn: WordedPiece[] = [];
	for (const piece of shown.pieces) {
		const now = findPiece(draft, piece.id);
		const stepped = now && pieceStepped(piece, now, was(piece.id));
		if (!stepped) return undefined;
		drawn.push(stepped);
	}
	const changed = drawn.filter(({ worded }, i) => worded !== shown.pieces[i]);
	const placed = () => {
		const clear = together(drawn.map((one) => one.clear));
		takeNames(shown.balance, clear);
		const { width, unit, thin, measure, height } = shown;
		return placePins(all(), drawn, { clear, width, height: measure?.top ?? height, unit, thin });
	};
	return {
		...shown,
		pieces: drawn.map(({ worded }) => worded),
		pins: pinsStepped(shown.pins, { changed, number, pins, unit: shown.unit }) ?? placed()
	};
}
