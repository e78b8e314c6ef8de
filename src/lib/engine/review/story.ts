import { carryAlterations } from '../alteration/carry.ts';
import type { AlterationBase } from '../alteration/types.ts';
import { findSeam } from '../draft/find.ts';
import { sideOf } from '../draft/seam.ts';
import { sideOfName, undividedName } from '../draft/undivided-name.ts';
import type { Draft } from '../draft/types.ts';
import { dartChanges, edgeChange, type DartChange, type EdgeChange } from './compare.ts';
import { edgePairs, piecePairs } from './same-feature.ts';

/** What one alteration did to the feature whose story is told. */
export interface Chapter {
	readonly alteration: string;
	/** Its share: the moves are those of this alteration alone, square across the line as it lay just before it. */
	readonly edges: readonly EdgeChange[];
	readonly darts: readonly DartChange[];
}

/** Less than this is no change, mm. */
const noChange = 1e-6;

/**
 * Every alteration that touched a feature, in the order in which they were carried from the base draft, each with its share. The
 * feature is an edge or a dart by its whole name, or a seam by its id (then all its edges); without a side it means both.
 * An alteration that is unplaced has no chapter, nor one that only passed by. Thrown: no such seam, where the name has no piece.
 */
export function story(base: Draft, alterations: readonly AlterationBase[], feature: string): Chapter[] {
	const isMeant = matcher(base, feature);
	const chapters: Chapter[] = [];
	let before = base;
	for (const alteration of alterations) {
		const { draft: after } = carryAlterations(before, [alteration]);
		const changed = piecePairs(before, after).filter((pair) => pair.before !== pair.after);
		const edges = changed
			.flatMap(edgePairs)
			.filter(({ name }) => isMeant(name))
			.map(edgeChange)
			.filter(
				(change) => Math.abs(change.greatest.move) > noChange || Math.abs(change.after - change.before) > noChange
			);
		const darts = changed.flatMap(dartChanges).filter(({ dart }) => isMeant(dart));
		if (edges.length + darts.length > 0) chapters.push({ alteration: alteration.id, edges, darts });
		before = after;
	}
	return chapters;
}

function matcher(base: Draft, feature: string): (name: string) => boolean {
	const side = sideOfName(feature);
	const plain = undividedName(feature);
	const names = new Set(plain.includes('/') ? [plain] : edgesOfSeam(base, plain));
	return (name) => names.has(undividedName(name)) && (!side || (sideOfName(name) ?? side) === side);
}

function edgesOfSeam(base: Draft, id: string): string[] {
	const seam = findSeam(base, id) ?? findSeam(base, `${id}@right`);
	if (!seam) throw new Error(`There is no seam ${id} in this draft.`);
	return [...sideOf(seam, 'a'), ...sideOf(seam, 'b')].map(({ edge }) => undividedName(edge));
}
