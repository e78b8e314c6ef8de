/** Carries alterations to a draft, one after another: what each did, and what is still waiting. */
import { dartLegs } from '../draft/dart-legs.ts';
import { undividedName } from '../draft/undivided-name.ts';
import { findDart, findEdge, findFoldDart, findNotch } from '../draft/find.ts';
import { edgeStitchedLength } from '../draft/length.ts';
import { garmentRounds } from '../draft/round.ts';
import { runLength } from '../draft/seam.ts';
import type { Draft, Notch } from '../draft/types.ts';
import { isRefused } from './refusal.ts';
import { kindOf } from './registry.ts';
import { unsound } from './sound.ts';
import { workingOffers } from './working-offers.ts';
import type { AlterationBase, Outcome, Remark, Step, Unplaced } from './types.ts';

export interface Carried {
	readonly draft: Draft;
	readonly applied: readonly Step[];
	readonly unplaced: readonly Unplaced[];
	readonly remarks: readonly (Remark & { readonly alteration: string })[];
}

/**
 * The draft with the alterations carried in order. Every alteration is in exactly one of `applied` and `unplaced`; an
 * unplaced one leaves the draft as it was. The draft given is never changed.
 */
export function carryAlterations(draft: Draft, alterations: readonly AlterationBase[]): Carried {
	let current = draft;
	const applied: Step[] = [];
	const unplaced: Unplaced[] = [];
	const remarks: (Remark & { alteration: string })[] = [];
	for (const alteration of alterations) {
		if (!kindOf(alteration).isRead(alteration)) {
			unplaced.push({
				alteration: alteration.id,
				why: 'not-read',
				code: 'not-read',
				sentence: 'Not read yet: read its pins, or leave it out.',
				settle: []
			});
			continue;
		}
		const outcome = carryOne(current, alteration);
		if (isRefused(outcome)) {
			const settle = workingOffers(current, alteration, outcome.refused, carryOne);
			unplaced.push({ alteration: alteration.id, ...outcome.refused, settle });
			continue;
		}
		const result = outcome.draft === current ? current : withoutLostMates(outcome.draft);
		applied.push(stepOf(current, result, outcome.touched, alteration));
		remarks.push(...outcome.remarks.map((remark) => ({ ...remark, alteration: alteration.id })));
		current = result;
	}
	return { draft: current, applied, unplaced, remarks };
}

/** One alteration carried, or refused: by its kind, or because a piece would not be sound afterwards. */
function carryOne(draft: Draft, alteration: AlterationBase): Outcome {
	const outcome = kindOf(alteration).carry(draft, alteration);
	if (isRefused(outcome) || outcome.draft === draft) return outcome;
	return unsound(draft, outcome.draft) ?? outcome;
}

/** Notches whose mate was trimmed off, or taken off one side, stand alone. */
function withoutLostMates(draft: Draft): Draft {
	const isLost = (notch: Notch) => notch.mate !== undefined && !findNotch(draft, notch.mate);
	if (!draft.pieces.some((piece) => piece.notches.some(isLost))) return draft;
	const alone = ({ mate: _, ...notch }: Notch): Notch => notch;
	return {
		...draft,
		pieces: draft.pieces.map((piece) =>
			piece.notches.some(isLost)
				? { ...piece, notches: piece.notches.map((notch) => (isLost(notch) ? alone(notch) : notch)) }
				: piece
		)
	};
}

function stepOf(
	before: Draft,
	after: Draft,
	changed: Exclude<Outcome, { refused: unknown }>['touched'],
	alteration: AlterationBase
): Step {
	const touched = changed.map(({ feature, greatestMove }) => ({
		feature,
		before: measureOf(before, feature) ?? measureOf(before, undividedName(feature)) ?? 0,
		after: measureOf(after, feature) ?? 0,
		greatestMove
	}));
	return {
		alteration: alteration.id,
		touched,
		round: after === before ? [] : roundChanges(before, after),
		neighbours: after === before ? [] : neighbourChanges(before, after, kindOf(alteration).names(alteration))
	};
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
		const same = was.filter((one) => one.level === now.level && one.limb === now.limb);
		const old = same.find((one) => one.side === now.side) ?? same[0];
		const change = now.round - (old?.round ?? 0);
		if (Math.abs(change) > noChange) changes.push({ level: now.level, change });
	}
	return changes;
}

function neighbourChanges(before: Draft, after: Draft, named: readonly string[]) {
	const changes: { seam: string; side: 'a' | 'b'; change: number }[] = [];
	for (const seam of after.seams) {
		if (named.includes(undividedName(seam.id))) continue;
		const old =
			before.seams.find((one) => one.id === seam.id) ?? before.seams.find((one) => one.id === undividedName(seam.id));
		if (!old) continue;
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
