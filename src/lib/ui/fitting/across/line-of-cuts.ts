import { findPlace, heightAbove, pointAt } from '../../../engine/index.ts';
import type { Alteration, Draft, Piece, Point } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { edgeOf, levelInSentence, pieceOf } from '../feature-names.ts';
import { sayLength } from '../words/along.ts';
import { linesAcross, type LineBeside } from './lines-across.ts';

export type SpreadCut = Extract<Alteration, { kind: 'spread' }>['cuts'][number];

/** A line of a draft with how far above its level (negative: below) cuts lie, mm. */
export interface LineOfCuts {
	readonly line: LineBeside;
	readonly height: number;
}

/** Cuts nearer to a line than this lie on it, mm. */
const on = 0.5;

/** The line that cuts lie beside, all at one height; undefined where they lie otherwise, or run to a dart's point. */
export function lineOfCuts(draft: Draft, cuts: readonly SpreadCut[]): LineOfCuts | undefined {
	const ends = cuts.map((cut) => ({ piece: pieceOf(draft, cut.piece), points: pointsOfCut(draft, cut) }));
	if (ends.some(({ piece, points }) => !piece || !points)) return undefined;
	const [{ from }] = cuts;
	const named = 'level' in from ? from.level : undefined;
	const lines = linesAcross(draft);
	const ordered = [...lines].sort((one, other) => rank(one, named) - rank(other, named));
	for (const line of ordered) {
		const height = heightOn(line, ends as readonly CutEnds[]);
		if (height !== undefined) return { line, height };
	}
	return undefined;
}

const rank = ({ fixed, level }: LineBeside, named: string | undefined) => (fixed ? 0 : level === named ? 1 : 2);

interface CutEnds {
	readonly piece: Piece;
	readonly points: readonly Point[];
}

function heightOn({ level, run, fixed }: LineBeside, ends: readonly CutEnds[]): number | undefined {
	if (!ends.every(({ piece }) => run.pieces.some((one) => one.piece === piece))) return undefined;
	const heights = ends.flatMap(({ piece, points }) =>
		points.map((point) => (heightAbove(piece, level, point) ?? NaN) - (fixed?.get(piece) ?? (fixed ? NaN : 0)))
	);
	const [first] = heights;
	const alike = heights.every((height) => Math.abs(height - (fixed ? 0 : first)) < on);
	return alike ? first : undefined;
}

/** Where a cut begins and ends on its piece, of a divided one on its right half. */
export function pointsOfCut(draft: Draft, { from, to }: SpreadCut): readonly [Point, Point] | undefined {
	const points = [from, to].map((end) => {
		const edge = 'dart' in end ? undefined : edgeOf(draft, end.edge);
		const found = edge && !('dart' in end) && findPlace(draft, `${edge.piece.id}/${edge.edge.id}`, end);
		return found && !('problem' in found) ? pointAt(edge.edge.path, found.s) : undefined;
	});
	return points[0] && points[1] ? [points[0], points[1]] : undefined;
}

/** “2 1/2″ above the waist”, “on the hip line”, “half way between underarm and neck” */
export function heightInWords({ line, height }: LineOfCuts, unit: Unit): string {
	if (line.fixed) return 'half way between underarm and neck';
	const level = levelInSentence(line.level);
	if (Math.abs(height) < on) return `on ${level}${/line$|hem$/.test(level) ? '' : ' line'}`;
	return `${sayLength(height, unit)} ${height > 0 ? 'above' : 'below'} ${level}`;
}
