import bodiceFile from '../fixtures/drafts/format-1/bodice.json' with { type: 'json' };
import type { Draft, Piece } from '../../src/lib/engine/draft/types.ts';
import { parseDraft } from '../../src/lib/engine/draft/file/parse.ts';

/*
 * Hand-made drafts whose lengths and areas are known in closed form. Shapes are given as files, so that a test can spoil one
 * before it is read.
 */

export { bodiceFile };

/**
 * Back (centre seam, one dart), front (lap, two darts, bust point), sleeve (its own seam, turned wrist) and collar (on the fold).
 * Known by construction: shoulders 125 mm (the triples 35-120-125 and 44-117-125), bust 250 − 20 and 230 wide on one half, waist
 * 225 − 25 − 20 − 20 and 195 − 25, so 920 and 660 round.
 */
export const bodice: Draft = parseDraft(bodiceFile);

/** Any file-level fields of the piece to add or replace. */
export interface RectangleOptions {
	readonly id?: string;
	readonly width?: number;
	readonly height?: number;
	readonly left?: number;
	readonly top?: number;
	readonly [field: string]: unknown;
}

/** A rectangle as a piece of a file: edges `top`, `side` (on the right), `hem` and `centre`, clockwise from the top left corner. */
export function rectangleFile(options: RectangleOptions = {}) {
	const { id = 'panel', width = 200, height = 300, left = 0, top = 0, ...fields } = options;
	const [right, bottom] = [left + width, top + height];
	return {
		id,
		cut: 'pair',
		edges: [
			{ id: 'top', kind: 'open', path: `M ${left} ${top} L ${right} ${top}` },
			{ id: 'side', kind: 'seam', path: `M ${right} ${top} L ${right} ${bottom}` },
			{ id: 'hem', kind: 'open', path: `M ${right} ${bottom} L ${left} ${bottom}` },
			{ id: 'centre', kind: 'seam', path: `M ${left} ${bottom} L ${left} ${top}` }
		],
		...fields
	};
}

/** A file of the pieces and seams given. */
export function draftFile(pieces: readonly unknown[], seams: readonly unknown[] = []) {
	return { format: 'pin-to-paper/draft@1', name: 'Test draft', pieces, seams };
}

/** One piece out of a one-piece file. */
export function pieceOf(file: unknown): Piece {
	return parseDraft(draftFile([file])).pieces[0];
}

/**
 * A piece whose `curve` is a cubic of rational length (R. T. Farouki & T. Sakkalis, Pythagorean hodographs, IBM J. Res. Dev. 34
 * (1990) 736–752): with speed k(1 + t²) it is 4k/3 long and, with the chord from its start, encloses k²/5. The piece adds the
 * triangle below that chord, k²/3: 8k²/15 in all.
 */
export function hodographFile(k: number, fields: Readonly<Record<string, unknown>> = {}) {
	const third = k / 3;
	return {
		id: 'panel',
		cut: 'pair',
		edges: [
			{ id: 'curve', kind: 'seam', path: `M 0 0 C ${third} 0 ${2 * third} ${third} ${2 * third} ${k}` },
			{ id: 'hem', kind: 'open', path: `M ${2 * third} ${k} L 0 ${k}` },
			{ id: 'centre', kind: 'seam', path: `M 0 ${k} L 0 0` }
		],
		...fields
	};
}

/** A U-shaped armhole: two straight sides `depth` long and a round bottom of radius 40, cut into the right of a rectangle. */
export function roundArmholeFile(depth: number) {
	const k = 40 * 0.5522847498;
	const inner = 200 - depth;
	return {
		id: 'panel',
		cut: 'pair',
		edges: [
			{ id: 'top', kind: 'open', path: 'M 0 0 L 200 0' },
			{ id: 'shoulder', kind: 'seam', path: 'M 200 0 L 200 60' },
			{
				id: 'armhole',
				kind: 'seam',
				path:
					`M 200 60 L ${inner} 60 C ${inner - k} 60 ${inner - 40} ${100 - k} ${inner - 40} 100 ` +
					`C ${inner - 40} ${100 + k} ${inner - k} 140 ${inner} 140 L 200 140`
			},
			{ id: 'side', kind: 'seam', path: 'M 200 140 L 200 300' },
			{ id: 'hem', kind: 'open', path: 'M 200 300 L 0 300' },
			{ id: 'centre', kind: 'seam', path: 'M 0 300 L 0 0' }
		]
	};
}
