import type { Draft, Seam } from '../draft/types.ts';
import { nameOf } from '../draft/find.ts';
import { toStitched } from '../draft/length.ts';
import { remembered } from '../geometry/memo.ts';
import { mateOnSeam, seamRun, type SeamSide } from '../draft/seam.ts';

/** Two mated notches met on the way along a seam, mm walked from its start on each side. */
export interface NotchWalk {
	/** Named whole: `back/n1`. */
	readonly a: string;
	readonly b: string;
	readonly atA: number;
	readonly atB: number;
	/** atB − atA. */
	readonly difference: number;
}

export interface SeamWalk {
	readonly seam: string;
	/** Stitched length of each side, mm: dart mouths and cloth turned in pleats are left out. */
	readonly a: number;
	readonly b: number;
	/** How much longer side b is meant to be. */
	readonly ease: number;
	/** b − a − ease. */
	readonly difference: number;
	/** In the order in which side a meets them. */
	readonly notches: readonly NotchWalk[];
}

/**
 * Walks every seam of the draft as one does on the table, both sides from their starts: how long each side is, by how much
 * they differ from what is meant, and where their mated notches fall. A centre seam is as long as its own mirror image, so it
 * always walks.
 */
export const walk: (draft: Draft) => readonly SeamWalk[] = remembered((draft: Draft) =>
	draft.seams.map((seam) => walkSeam(draft, seam))
);

function walkSeam(draft: Draft, seam: Seam): SeamWalk {
	const a = walkSide(draft, seam, 'a');
	if (seam.b === 'mirror') {
		return { seam: seam.id, a: a.length, b: a.length, ease: 0, difference: 0, notches: [] };
	}
	const b = walkSide(draft, seam, 'b');
	const notches: NotchWalk[] = [];
	for (const [name, atA] of a.notches) {
		const mate = mateOnSeam(draft, seam, 'a', name);
		const atB = mate === undefined ? undefined : b.notches.get(mate);
		if (mate !== undefined && atB !== undefined) notches.push({ a: name, b: mate, atA, atB, difference: atB - atA });
	}
	notches.sort((one, other) => one.atA - other.atA);
	return {
		seam: seam.id,
		a: a.length,
		b: b.length,
		ease: seam.ease,
		difference: b.length - a.length - seam.ease,
		notches
	};
}

/** A side's stitched length and where its notches fall, mm from the seam's start. */
function walkSide(draft: Draft, seam: Seam, side: SeamSide): { length: number; notches: ReadonlyMap<string, number> } {
	const notches = new Map<string, number>();
	let walked = 0;
	for (const { piece, edge, reversed, length } of seamRun(draft, seam, side)) {
		for (const notch of piece.notches) {
			if (notch.edge !== edge.id) continue;
			const along = toStitched(piece, edge, notch.at);
			notches.set(nameOf(piece, notch.id), walked + (reversed ? length - along : along));
		}
		walked += length;
	}
	return { length: walked, notches };
}
