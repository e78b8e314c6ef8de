/** What an alteration did: the lengths of what it touched, the rounds and the other seams that it changed. */
import { dartLegs } from '../draft/dart-legs.ts';
import { findDart, findEdge, findFoldDart, findPiece, findSeam, splitName } from '../draft/find.ts';
import { edgeStitchedLength } from '../draft/length.ts';
import { remembered } from '../geometry/memo.ts';
import { garmentRounds, type Round } from '../draft/round.ts';
import { runLength } from '../draft/seam.ts';
import type { Draft, Seam } from '../draft/types.ts';
import { undividedName, undividedSeam } from '../draft/undivided-name.ts';
import type { AlterationBase, Outcome, Step } from './types.ts';

/**
 * What an alteration did, as the two drafts tell. Each part is worked out when it is first asked for: of a long history most steps
 * are never told.
 */
export function stepOf(
	before: Draft,
	after: Draft,
	changed: Exclude<Outcome, { refused: unknown }>['touched'],
	alteration: AlterationBase
): Step {
	const touched = once(() =>
		changed.map(({ feature, greatestMove }) => ({
			feature,
			before: measureOf(before, feature) ?? measureOf(before, undividedName(feature)) ?? 0,
			after: measureOf(after, feature) ?? 0,
			greatestMove
		}))
	);
	const round = once(() => (after === before ? [] : roundChanges(before, after)));
	const neighbours = once(() => (after === before ? [] : neighbourChanges(before, after, seamOf(alteration))));
	return {
		alteration: alteration.id,
		get touched() {
			return touched();
		},
		get round() {
			return round();
		},
		get neighbours() {
			return neighbours();
		}
	};
}

function once<T>(work: () => T): () => T {
	let done: { readonly value: T } | undefined;
	return () => (done ??= { value: work() }).value;
}

/** The seam that it is made to: a piece may go by the same id. */
function seamOf(alteration: AlterationBase): string | undefined {
	const { seam } = alteration as { readonly seam?: unknown };
	return typeof seam === 'string' ? undividedName(seam) : undefined;
}

/** Stitched length of an edge, intake of a dart, mm. */
function measureOf(draft: Draft, feature: string): number | undefined {
	const edge = findEdge(draft, feature);
	if (edge) return edgeStitchedLength(edge.piece, edge.edge);
	const dart = findDart(draft, feature);
	if (dart) return dartLegs(dart.piece, dart.dart).intake;
	return findFoldDart(draft, feature)?.foldDart.widest.intake;
}

/** Less than this is no change of a round or a seam, mm. */
const noChange = 1e-6;

function roundChanges(before: Draft, after: Draft): { level: string; change: number }[] {
	const was = garmentRounds(before);
	const changes: { level: string; change: number }[] = [];
	for (const now of garmentRounds(after)) {
		const change = now.round - (sameRound(was, now)?.round ?? 0);
		if (Math.abs(change) > noChange) changes.push({ level: now.level, change });
	}
	return changes;
}

/** The round at the same level, on the same side where it has one, else the first. */
function sameRound(rounds: readonly Round[], { level, limb, side }: Round): Round | undefined {
	let first: Round | undefined;
	for (const one of rounds) {
		if (one.level !== level || one.limb !== limb) continue;
		if (one.side === side) return one;
		first ??= one;
	}
	return first;
}

/** The other seams whose sides have another length; those of pieces that are the same are not asked. */
function neighbourChanges(before: Draft, after: Draft, named: string | undefined) {
	const changed: string[] = [];
	for (let i = 0; i < after.pieces.length; i++) {
		const piece = after.pieces[i];
		if (before.pieces[i] !== piece && findPiece(before, piece.id) !== piece) changed.push(piece.id);
	}
	const changes: { seam: string; side: 'a' | 'b'; change: number }[] = [];
	for (const seam of after.seams) {
		const undivided = undividedSeam(seam);
		const old = findSeam(before, seam.id) ?? findSeam(before, undivided);
		if (!old || (old === seam && !piecesOf(seam).some((id) => changed.includes(id)))) continue;
		if (named === undivided) continue;
		for (const side of ['a', 'b'] as const) {
			const run = seam[side];
			const oldRun = old[side];
			if (run === 'mirror') continue;
			const change = runLength(after, run) - runLength(before, oldRun === 'mirror' ? old.a : oldRun);
			if (Math.abs(change) > noChange) changes.push({ seam: seam.id, side, change });
		}
	}
	return changes;
}

/** The pieces that a seam joins. */
const piecesOf = remembered((seam: Seam): readonly string[] => [
	...new Set([...seam.a, ...(seam.b === 'mirror' ? [] : seam.b)].map(({ edge }) => splitName(edge).piece))
]);
