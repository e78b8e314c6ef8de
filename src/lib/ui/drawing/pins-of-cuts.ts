import { findPlace, undividedName } from './engine.ts';
import type { Draft, EdgePlace } from './engine.ts';
import type { PinOnDrawing } from './scene.ts';

/** A cut across one piece, as an alteration names it; gaps in mm, opened positive. */
export interface CutAcross {
	readonly from: EdgePlace | { readonly dart: string };
	readonly to: EdgePlace | { readonly dart: string };
	readonly gapFrom?: number;
	readonly gapTo?: number;
}

/**
 * The pins of cloth folded or slashed across: one through each piece, where its cut ends and changes it the most, with how much
 * shorter or longer it is there. `before`: the draft that it is carried to. Of sides that differ only the one carried to.
 */
export function pinsOfCuts(
	number: number,
	before: Draft,
	cuts: readonly CutAcross[],
	on: 'both' | 'right' | 'left'
): readonly PinOnDrawing[] {
	return cuts.flatMap(({ from, to, gapFrom = 0, gapTo = 0 }, i) => {
		const last = i === cuts.length - 1 && cuts.length > 1;
		const atTo = Math.abs(gapTo) > Math.abs(gapFrom) || (last && gapTo === gapFrom);
		const [end, gap] = atTo ? [to, gapTo] : [from, gapFrom];
		if (gap === 0 || 'dart' in end) return [];
		return [
			{
				number,
				feature: on === 'both' ? end.edge : onSide(before, end.edge, on),
				way: gap < 0 ? ('in' as const) : ('out' as const),
				word: gap < 0 ? 'shorter' : 'longer',
				amount: Math.abs(gap),
				...placedAt(before, end)
			}
		];
	});
}

function placedAt(draft: Draft, end: EdgePlace): { readonly s?: number } {
	const name = edgeNames(draft).find((one) => undividedName(one) === undividedName(end.edge));
	const found = name === undefined ? undefined : findPlace(draft, name, end);
	return found && !('problem' in found) ? { s: found.s } : {};
}

/** The name that an edge has, or gets, on one side: by its divided piece, or by itself on an opened one. */
function onSide(draft: Draft, name: string, side: 'right' | 'left'): string {
	const [piece, edge] = name.split('/');
	const opened = edgeNames(draft).includes(`${piece}/${edge}@${side}`);
	return opened ? `${piece}/${edge}@${side}` : `${piece}@${side}/${edge}`;
}

const edgeNames = (draft: Draft) => draft.pieces.flatMap(({ id, edges }) => edges.map((edge) => `${id}/${edge.id}`));
