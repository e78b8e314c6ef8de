import type { Point } from '../../geometry/types.ts';
import type { Dart, DartWidth, Draft, Edge, FoldDart, Level, Mark, Piece, RunEdge, Seam } from '../types.ts';
import { formatPathData } from '../../geometry/path-data.ts';
import { formatName } from './formats.ts';
import type { DraftFile, EdgeFile, PieceFile, SeamFile } from './schema.ts';

type Pair = [number, number];

/**
 * The file form of a draft, to be written as JSON: what is at its default is left out. `parseDraft` of it, also after a way
 * through JSON text, is the draft to the bit (JSON has no negative zero: it comes back as zero).
 */
export function formatDraft(draft: Draft): DraftFile {
	return {
		format: formatName(),
		name: draft.name,
		pieces: draft.pieces.map(formatPiece),
		...(draft.seams.length > 0 && { seams: draft.seams.map(formatSeam) })
	};
}

function formatPiece(piece: Piece): PieceFile {
	const { id, name, cut, side, limb, edges, darts, foldDarts, notches, levels, marks, pleats, grain } = piece;
	return {
		id,
		name,
		cut,
		...(side !== 'both' && { side }),
		...(limb && { limb }),
		edges: edges.map(formatEdge),
		...(darts.length > 0 && { darts: darts.map(formatDart) }),
		...(foldDarts.length > 0 && { foldDarts: foldDarts.map(formatFoldDart) }),
		...(notches.length > 0 && { notches: notches.map((notch) => ({ ...notch })) }),
		...(levels.length > 0 && { levels: levels.map(formatLevel) }),
		...(marks.length > 0 && { marks: marks.map(formatMark) }),
		...(pleats.length > 0 && { pleats: pleats.map((pleat) => ({ ...pleat })) }),
		...(grain && { grain: [pair(grain[0]), pair(grain[1])] as [Pair, Pair] })
	};
}

function formatEdge({ id, name, kind, path, lap, turn }: Edge): EdgeFile {
	return { id, name, kind, path: formatPathData(path), ...(lap !== 0 && { lap }), ...(turn && { turn }) };
}

function formatDart({ id, name, edge, from, to, point, widths, press }: Dart) {
	return { id, name, edge, from, to, point: pair(point), ...formatWidths(widths), ...(press && { press }) };
}

function formatFoldDart({ id, name, ends, widest, widths }: FoldDart) {
	return { id, name, ends: [pair(ends[0]), pair(ends[1])] as [Pair, Pair], widest, ...formatWidths(widths) };
}

function formatWidths(widths: readonly DartWidth[]) {
	return widths.length > 0 && { widths: widths.map((width) => ({ ...width })) };
}

function formatLevel(level: Level) {
	return 'line' in level ? { level: level.level, line: level.line.map(pair) } : { ...level };
}

function formatMark({ id, kind, at, to }: Mark) {
	return { id, kind, at: pair(at), ...(to && { to: pair(to) }) };
}

function formatSeam({ id, name, a, b, ease }: Seam): SeamFile {
	return {
		id,
		name,
		a: a.map(formatRunEdge),
		b: b === 'mirror' ? b : b.map(formatRunEdge),
		...(ease !== 0 && { ease })
	};
}

function formatRunEdge({ edge, reversed }: RunEdge) {
	return reversed ? { edge, reversed } : { edge };
}

function pair([x, y]: Point): Pair {
	return [x, y];
}
