import type { Draft } from '$lib/engine/index.ts';
import { undividedName } from '$lib/engine/index.ts';
import { pieceName } from '$lib/ui/fitting/feature-names.ts';
import { edgeTargets, seamTargets } from '$lib/ui/fitting/targets.ts';

/** Where something can be seen: seams, open edges, whole pieces, as the options of a field. */
export function seenPlaces(draft: Draft): readonly { readonly value: string; readonly label: string }[] {
	const pieces = [...new Set(draft.pieces.map(({ id }) => undividedName(id)))];
	return [
		{ value: '', label: 'not said' },
		...seamTargets(draft).map(({ id, name }) => ({ value: id, label: name })),
		...edgeTargets(draft, (kind, inArmhole) => kind === 'open' || inArmhole).map(({ id, name }) => ({
			value: id,
			label: name
		})),
		...pieces.map((id) => ({ value: `piece:${id}`, label: `${pieceName(draft, id)}, the piece` }))
	];
}
