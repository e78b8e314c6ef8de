import { clearance, type Clearance } from './clearance.ts';
import type { Piece } from './engine.ts';
import { drawPiece, type DrawnPiece, type PlacedPiece } from './piece-scene.ts';
import { withWords } from './piece-words-placed.ts';
import type { PieceScene } from './scene.ts';

/** A piece with its words, and what it takes of the drawing's room. */
export interface WordedPiece extends DrawnPiece {
	readonly worded: PieceScene;
	readonly clear: Clearance;
}

/** How many drawings of one piece are kept at hand: on the table and close, right and left. */
const most = 4;
const drawn = new WeakMap<Piece, readonly { readonly asked: PlacedPiece; readonly piece: WordedPiece }[]>();
/** By what a scene shows of them. */
const made = new WeakMap<PieceScene, WordedPiece>();

/**
 * A piece drawn with its words. Its words keep off its own lines alone, so that they stay where they are while another piece
 * changes; a piece that is asked for again as it was is not drawn again: under a stepped pin only its own two pieces are.
 */
export function pieceWithWords(asked: PlacedPiece): WordedPiece {
	const known = drawn.get(asked.piece) ?? [];
	const same = known.find((one) => alike(one.asked, asked));
	if (same) return same.piece;
	const clear = clearance();
	const lines = drawPiece(asked, clear);
	const piece = { ...lines, worded: withWords(lines, clear), clear };
	drawn.set(asked.piece, [{ asked, piece }, ...known.slice(0, most - 1)]);
	made.set(piece.worded, piece);
	return piece;
}

/**
 * A piece of a scene with its lines as they are now, where it lies already: for the frame of a step. Its words stay where they are,
 * and what it takes of the drawing's room, until the drawing is laid anew. Nothing of a scene that was not drawn here.
 */
export function pieceStepped(shown: PieceScene, piece: Piece, before: Piece | undefined): WordedPiece | undefined {
	const last = made.get(shown);
	if (!last || last.placed.piece === piece) return last;
	const lines = drawPiece({ ...last.placed, piece, ...(before && { before }) });
	const { words, grain } = shown;
	const word = grain?.word;
	const worded = {
		...lines.scene,
		words,
		...(lines.scene.grain && { grain: { ...lines.scene.grain, ...(word && { word }) } })
	};
	const stepped = { ...lines, worded, clear: last.clear };
	made.set(worded, stepped);
	return stepped;
}

function alike(one: PlacedPiece, other: PlacedPiece): boolean {
	return (
		one.before === other.before &&
		one.cut === other.cut &&
		one.wanted === other.wanted &&
		one.thin === other.thin &&
		sameNumbers(one.motion, other.motion) &&
		sameNumbers(one.beforeMotion, other.beforeMotion) &&
		sameNumbers(Object.values(one.window ?? {}), Object.values(other.window ?? {})) &&
		one.piece.notches.every(({ id }) => cutsOf(one, id) === cutsOf(other, id)) &&
		one.piece.edges.every(({ id }) => isSelected(one, id) === isSelected(other, id))
	);
}

const sameNumbers = (one: readonly number[], other: readonly number[]) =>
	one.length === other.length && one.every((number, i) => number === other[i]);
const cutsOf = ({ piece, cuts }: PlacedPiece, notch: string) => cuts.get(`${piece.id}/${notch}`);
const isSelected = ({ piece, selected }: PlacedPiece, edge: string) => selected.includes(`${piece.id}/${edge}`);
