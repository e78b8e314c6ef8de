/** Moves runs of edges by amounts given along their stitched lines, piece by piece: what `seam` and `edge` share. */
import { type EdgeMove } from '../geometry/move-outline.ts';
import { fromStitched, stitchedAlong } from '../draft/length.ts';
import { floorToTape } from '../draft/say.ts';
import type { Draft, Edge, Piece } from '../draft/types.ts';
import type { Kind } from './kind.ts';
import { moveEdges, type MoveProblem } from './move-edges.ts';
import type { AmountAlong } from './pins.ts';
import type { AlterationBase, Outcome, Remark } from './types.ts';

/** An edge of a run; `startsAt` and `length` are stitched mm on the run. */
export interface RunPart {
	readonly piece: Piece;
	readonly edge: Edge;
	readonly reversed: boolean;
	readonly startsAt: number;
	readonly length: number;
}

export interface RunAmount {
	readonly run: readonly RunPart[];
	readonly along: AmountAlong;
}

/**
 * The draft with every run moved. A refusal offers the alteration scaled to what works, or with nothing at the end that
 * would not meet its neighbour.
 *
 * @param zeroAt the alteration with amount 0 at one end of its line
 */
export function moveAlong<A extends AlterationBase>(
	draft: Draft,
	runs: readonly RunAmount[],
	alteration: A,
	kind: Kind<A>,
	zeroAt: (end: 'start' | 'finish') => A
): Outcome {
	const moves = new Map<string, (EdgeMove | undefined)[]>();
	const touched: { feature: string; greatestMove: number }[] = [];
	for (const { run, along } of runs)
		for (const part of run) {
			const move = moveOf(part, along);
			if (!move) continue;
			const ofPiece =
				moves.get(part.piece.id) ?? new Array<EdgeMove | undefined>(part.piece.edges.length).fill(undefined);
			ofPiece[part.piece.edges.indexOf(part.edge)] = move;
			moves.set(part.piece.id, ofPiece);
			touched.push({ feature: `${part.piece.id}/${part.edge.id}`, greatestMove: move.greatest });
		}
	if (moves.size === 0) return { draft, touched: [], remarks: [] };
	const remarks: Remark[] = [];
	const pieces: Piece[] = [];
	for (const piece of draft.pieces) {
		const ofPiece = moves.get(piece.id);
		if (!ofPiece) {
			pieces.push(piece);
			continue;
		}
		const moved = moveEdges(piece, ofPiece);
		if ('refused' in moved) return withOffers(moved, runs, alteration, kind, zeroAt);
		pieces.push(moved.piece);
		remarks.push(...moved.remarks);
	}
	return { draft: { ...draft, pieces }, touched, remarks };
}

/** A pin this near to the end of a mouth or pleat is at it, mm. */
const besideMouth = 1e-3;

function moveOf({ piece, edge, reversed, startsAt, length }: RunPart, along: AmountAlong): EdgeMove | undefined {
	const greatest = along.greatestBetween(startsAt, startsAt + length);
	if (greatest === 0) return undefined;
	if (along.even) return { amount: along.value(startsAt), breaks: [], greatest };
	const stitched = stitchedAlong(piece, edge);
	const onFolded = (s: number) => startsAt + (reversed ? length - stitched.to(s) : stitched.to(s));
	// At the end of a mouth the amount bends more than at a pin a hair beside it, so that the pin is no place of its own.
	const mouths: number[] = [];
	for (const folds of [piece.darts, piece.pleats])
		for (const { edge: on, from, to } of folds) if (on === edge.id) mouths.push(from, to);
	const pins = along.positions
		.filter((at) => at > startsAt && at < startsAt + length)
		.map((at) => fromStitched(piece, edge, reversed ? startsAt + length - at : at - startsAt))
		.filter((s) => mouths.every((mouth) => Math.abs(mouth - s) > besideMouth));
	// Most edges have no mouth: then both lengths are one.
	const onPlain = reversed ? (s: number) => startsAt + length - s : (s: number) => startsAt + s;
	const onRun = mouths.length === 0 ? onPlain : onFolded;
	return {
		amount: {
			value: (s) => along.value(onRun(s)),
			slope: (s) => (reversed ? -1 : 1) * along.slope(onRun(s)) * stitched.rate(s)
		},
		breaks: [...pins, ...mouths].sort((a, b) => a - b),
		greatest
	};
}

function withOffers<A extends AlterationBase>(
	problem: MoveProblem,
	runs: readonly RunAmount[],
	alteration: A,
	kind: Kind<A>,
	zeroAt: (end: 'start' | 'finish') => A
): Outcome {
	const settle: AlterationBase[] = [];
	if (problem.factor !== undefined && kind.scaled) {
		const greatest = Math.max(
			...runs.flatMap(({ run, along }) =>
				run.map((part) => along.greatestBetween(part.startsAt, part.startsAt + part.length))
			)
		);
		const works = floorToTape(greatest * problem.factor * 0.98);
		if (works > 0) settle.push(kind.scaled(alteration, works / greatest));
	}
	if (problem.end && problem.edge) {
		const part = runs.flatMap(({ run }) => run).find((one) => one.edge === problem.edge);
		if (part) settle.push(zeroAt(part.reversed === (problem.end === 'finish') ? 'start' : 'finish'));
	}
	return { refused: { ...problem.refused, settle } };
}
