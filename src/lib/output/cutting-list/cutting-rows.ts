import { formatLength } from '../../measure/format-length.ts';
import type { Path, Piece } from '../../engine/index.ts';
import type { CutPiece } from '../cut-piece.ts';
import { cutWords } from '../label.ts';
import type { PatternSheetInput } from '../pattern-input.ts';
import { loosePieces } from '../placed-piece.ts';
import { grainSize } from './grain-size.ts';

/** What the list says of one piece. */
export interface CuttingRow {
	readonly piece: Piece;
	readonly cut: CutPiece;
	/** The cutting line, turned over for a left half. */
	readonly outline: Path;
	readonly name: string;
	readonly words: string;
	/** A box to tick for each time that it is cut, named if there are two. */
	readonly boxes: readonly string[];
	/** Along the grain by across it. */
	readonly size: string;
	/** The allowance of most of its edges, and those that differ. */
	readonly allowances: string;
}

/** One row a piece, in the order of the draft, always with allowances: a cutting list is for cutting. */
export function cuttingRows(input: PatternSheetInput): CuttingRow[] {
	const said = (mm: number) => formatLength(mm, input.unit, { denominator: 16 }).text;
	return loosePieces({ ...input, lines: 'with allowances' }).map(({ piece, cut, outline, motion }) => {
		const { along, across } = grainSize(piece.grain && motion[0] < 0 ? turnedOver(piece) : piece, outline);
		return {
			piece,
			cut,
			outline,
			name: piece.name,
			words: cutWords(piece),
			boxes: piece.cut === 'pair' && piece.side === 'both' ? ['right', 'left'] : [''],
			size: `${said(along)} × ${said(across)}`,
			allowances: allowancesOf(cut, said)
		};
	});
}

function turnedOver(piece: Piece): Piece {
	if (!piece.grain) return piece;
	const [[x0, y0], [x1, y1]] = piece.grain;
	return {
		...piece,
		grain: [
			[-x0, y0],
			[-x1, y1]
		]
	};
}

/** `3/4″; 1 1/2″ at Hem, Front edge`: the commonest first, then the others, the largest first. */
function allowancesOf({ edges }: CutPiece, said: (mm: number) => string): string {
	const byAmount = new Map<number, string[]>();
	for (const { kind, allowance, name } of edges) {
		if (kind !== 'fold') byAmount.set(allowance, [...(byAmount.get(allowance) ?? []), name]);
	}
	const [usual, ...others] = [...byAmount].sort(([, a], [, b]) => b.length - a.length);
	const rest = others.sort(([a], [b]) => b - a).map(([mm, names]) => `${said(mm)} at ${names.join(', ')}`);
	return usual ? [said(usual[0]), ...rest].join('; ') : '';
}
