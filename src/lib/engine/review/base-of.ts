/** How a divided seam, notch or dart is found in a draft that was not yet divided: by its own name, or by the undivided one. */
import { findDart, findFoldDart } from '../draft/find.ts';
import { undividedName } from '../draft/undivided-name.ts';
import type { Draft } from '../draft/types.ts';
import { walk, type SeamWalk } from './walk.ts';

/** The walk of the same seam in another draft. */
export function walkOf(draft: Draft | undefined, seam: string): SeamWalk | undefined {
	if (!draft) return undefined;
	const walks = walk(draft);
	return walks.find((one) => one.seam === seam) ?? walks.find((one) => one.seam === undividedName(seam));
}

export function dartOf(draft: Draft | undefined, name: string): ReturnType<typeof findDart> {
	return draft && (findDart(draft, name) ?? findDart(draft, undividedName(name)));
}

export function foldDartOf(draft: Draft | undefined, name: string): ReturnType<typeof findFoldDart> {
	return draft && (findFoldDart(draft, name) ?? findFoldDart(draft, undividedName(name)));
}
