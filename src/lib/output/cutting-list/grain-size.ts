import type { Path, Piece } from '../../engine/index.ts';
import { asLine } from '../words.ts';

/** How long and how wide a piece is as it lies on the cloth, mm: along its grain and across it; upright without a grain. */
export function grainSize(piece: Piece, outline: Path): { readonly along: number; readonly across: number } {
	const [[x0, y0], [x1, y1]] = piece.grain ?? [
		[0, 0],
		[0, 1]
	];
	const length = Math.hypot(x1 - x0, y1 - y0);
	const [dx, dy] = [(x1 - x0) / length, (y1 - y0) / length];
	const points = asLine(outline);
	const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
	return {
		along: span(points.map(([x, y]) => x * dx + y * dy)),
		across: span(points.map(([x, y]) => x * dy - y * dx))
	};
}
