import { findEdge } from '../../engine/index.ts';
import type { Draft, RunEdge } from '../../engine/index.ts';

/**
 * How many snips each notch has, by whole name: one, two or three, counted along its seam as side a is walked and then begun
 * again, so that a piece put in the wrong way round is seen; a notch and its mate have the same. Notches of edges that no
 * seam names are counted along their edge. Common practice, no source.
 */
export function snipCounts(draft: Draft): ReadonlyMap<string, number> {
	const mates = mutualMates(draft);
	const counts = new Map<string, number>();
	const count = (notches: readonly string[]) =>
		notches.forEach((notch, order) => {
			if (counts.has(notch)) return;
			const snips = (order % 3) + 1;
			counts.set(notch, snips);
			for (const mate of mates.get(notch) ?? []) if (!counts.has(mate)) counts.set(mate, snips);
		});
	for (const { a } of draft.seams) count(notchesAlong(draft, a));
	for (const { b } of draft.seams) if (b !== 'mirror') count(notchesAlong(draft, b));
	for (const piece of draft.pieces) {
		for (const { id } of piece.edges) count(notchesAlong(draft, [{ edge: `${piece.id}/${id}`, reversed: false }]));
	}
	return counts;
}

function notchesAlong(draft: Draft, run: readonly RunEdge[]): string[] {
	return run.flatMap(({ edge, reversed }) => {
		const found = findEdge(draft, edge);
		if (!found) return [];
		const along = found.piece.notches
			.filter((notch) => notch.edge === found.edge.id)
			.sort((one, other) => one.at - other.at);
		if (reversed) along.reverse();
		return along.map((notch) => `${found.piece.id}/${notch.id}`);
	});
}

function mutualMates(draft: Draft): ReadonlyMap<string, readonly string[]> {
	const mates = new Map<string, string[]>();
	const meet = (one: string, other: string) => mates.set(one, [...(mates.get(one) ?? []), other]);
	for (const piece of draft.pieces) {
		for (const { id, mate } of piece.notches) {
			if (mate === undefined) continue;
			meet(`${piece.id}/${id}`, mate);
			meet(mate, `${piece.id}/${id}`);
		}
	}
	return mates;
}
