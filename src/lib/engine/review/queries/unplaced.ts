import type { AlterationBase, Unplaced } from '../../alteration/types.ts';
import { kindNamed } from '../../alteration/registry.ts';
import type { Inquiry } from '../inquiry.ts';

/** Refusals that have a code of their own; every other alteration that waits is `unplaced`. */
const ownCodes = new Set(['no-join', 'too-tight']);

/** An alteration that was not carried: it waits until it is placed again, changed or left out. */
export const unplaced: Inquiry = ({ options }) =>
	(options.unplaced ?? []).map((waiting) => ({
		code: ownCodes.has(waiting.code) ? waiting.code : 'unplaced',
		severity: 'warning',
		where: whereOf(waiting, options.alterations ?? []),
		sentence: waiting.sentence,
		settle: waiting.settle
	}));

/** The seam, edge, dart or piece that it names first; the alteration's own id where that is not known. */
function whereOf(waiting: Unplaced, alterations: readonly AlterationBase[]): string {
	const alteration = alterations.find(({ id }) => id === waiting.alteration);
	const names = alteration && kindNamed(alteration.kind)?.names(alteration);
	return names?.[0] ?? waiting.alteration;
}
