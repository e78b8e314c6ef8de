import { findPiece } from './engine.ts';
import type { Draft } from './engine.ts';
import type { PinOnDrawing } from './scene.ts';
import { distance } from './vectors.ts';

/** Less than this is no move, mm. */
const least = 0.4;

/**
 * The pins of marks and notches that were set or moved: through each of them, with how far it went if it was there before; of
 * buttonholes through the first alone. `touched`: by whole name, as the step tells.
 */
export function pinsOfMarks(
	number: number,
	before: Draft,
	after: Draft,
	touched: readonly string[]
): readonly PinOnDrawing[] {
	const pins = touched.flatMap((feature): PinOnDrawing[] => {
		const [pieceId, id] = feature.split('/');
		const piece = findPiece(after, pieceId);
		const notch = piece?.notches.find((one) => one.id === id);
		if (piece && notch) {
			return [{ number, feature: `${pieceId}/${notch.edge}`, way: 'out', word: 'notch', s: notch.at }];
		}
		const mark = piece?.marks.find((one) => one.id === id);
		if (!mark) return [];
		const was = findPiece(before, pieceId)?.marks.find((one) => one.id === id);
		const far = was ? distance(was.at, mark.at) : 0;
		const word = { 'bust-point': 'bust point', button: 'button', buttonhole: 'buttonholes', point: 'point' }[mark.kind];
		return [{ number, feature, way: 'out', word: far >= least ? 'moved' : word, ...(far >= least && { amount: far }) }];
	});
	return pins.filter((pin, i) => pin.word !== 'buttonholes' || pins.findIndex(({ word }) => word === pin.word) === i);
}
