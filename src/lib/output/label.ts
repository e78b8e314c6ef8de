import type { Piece, Point } from '../engine/index.ts';
import { clearPlace, withRectangle } from './clear-cloth.ts';
import type { ClearCloth } from './clear-cloth.ts';
import type { Text, Weight } from './primitive.ts';
import { textWidth, wrappedText } from './text-width.ts';
import { centredText, lineBox } from './words.ts';

interface LabelLine {
	readonly text: string;
	readonly weight: Weight;
	/** Height of the em in mm at full size. */
	readonly size: number;
}

/** The label is set at the first of these shares of its full size that fits; at the last its smallest line is 3 mm (8.5 pt). */
const shares = [1, 0.85, 0.72, 0.6] as const;

/** mm kept free round it, at best and at least. */
const margins = [12, 9, 6, 4, 2.5] as const;

const leading = 1.25;

/** How often, and for which half of the wearer, a piece is cut. */
export function cutWords({ cut, side }: Piece): string {
	if (cut === 'fold') return 'cut 1 on the fold';
	if (side !== 'both') return `cut 1, the wearer’s ${side}`;
	return cut === 'pair' ? 'cut 2' : 'cut 1';
}

/**
 * What a paper piece says: its name, how often it is cut, and of which version it is. Level, in the middle of the cloth or as
 * near to it as it lies on no line; smaller where the piece is narrow. Where it fits nowhere it stands below the piece.
 */
export function drawLabel(
	piece: Piece,
	version: string,
	outline: readonly Point[],
	foot: Point,
	cloth: ClearCloth
): { readonly texts: readonly Text[]; readonly cloth: ClearCloth } {
	const near = balancePoint(outline);
	for (const share of shares) {
		for (const lines of wrappings(piece, version, share)) {
			const width = Math.max(...lines.map(({ text, size, weight }) => textWidth(text, size, weight)));
			const height = lines.reduce((sum, { size }) => sum + size * leading, 0);
			const middle = clearPlace(cloth, width, height, margins, near);
			if (middle)
				return {
					texts: stacked(lines, middle, height),
					cloth: withRectangle(cloth, { middle, width, height, turn: 0 })
				};
		}
	}
	const text = `${piece.name}: ${cutWords(piece)}, ${version}`;
	return { texts: [centredText(text, 3.5, 'bold', [foot[0], foot[1] + (3.5 * lineBox.height) / 2 + 2])], cloth };
}

/** The label with its name in one line, and then in as narrow lines as its words allow. */
function wrappings(piece: Piece, version: string, share: number): LabelLine[][] {
	const name = { size: 7 * share, weight: 'bold' } as const;
	const rest: LabelLine[] = [cutWords(piece), version].map((text) => ({ text, weight: 'regular', size: 5 * share }));
	const whole = [{ ...name, text: piece.name }, ...rest];
	const words = wrappedText(piece.name, 0, name.size, 'bold');
	if (words.length < 2) return [whole];
	return [whole, [...words.map((text) => ({ ...name, text })), ...rest]];
}

function stacked(lines: readonly LabelLine[], [x, y]: Point, height: number): Text[] {
	let top = y - height / 2;
	return lines.map(({ text, size, weight }) => {
		top += size * leading;
		return centredText(text, size, weight, [x, top - (size * leading) / 2]);
	});
}

/** Where a cut-out of the outline would balance on a needle: the centroid of a polygon. */
function balancePoint(outline: readonly Point[]): Point {
	let [twice, sx, sy] = [0, 0, 0];
	outline.forEach(([x0, y0], i) => {
		const [x1, y1] = outline[(i + 1) % outline.length];
		const part = x0 * y1 - x1 * y0;
		twice += part;
		sx += (x0 + x1) * part;
		sy += (y0 + y1) * part;
	});
	return [sx / (3 * twice), sy / (3 * twice)];
}
