import { findEdge, splitName } from '../../draft/find.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import { cornersOf } from '../../geometry/joints.ts';
import { pathLength } from '../../geometry/path.ts';
import type { AlterationBase } from '../../alteration/types.ts';
import type { Draft } from '../../draft/types.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

/** How far on either side of a bridge its edge is redrawn, mm. */
const reach = 40;

/** A bridge that the tape does not show is none, mm: half of 1/16 in. */
const unseen = 25.4 / 32;

/**
 * What the carry itself remarked, apart from lost notches: an edge bridged straight where it was cut, an opening or an extension
 * that came out shorter than asked. A bridge is settled by smoothing the edge there. Figure: as remarked, mm.
 */
export const remarked: Inquiry = ({ draft, options }) =>
	(options.remarks ?? [])
		.filter(({ code, figure = 0 }) => code !== 'notch-lost' && !(code === 'bridge' && figure < unseen))
		.map(({ code, where, figure, sentence }): Query => ({
			code,
			severity: 'note',
			where,
			...(figure !== undefined && { figure }),
			sentence,
			settle: code === 'bridge' ? smoothed(draft, where) : []
		}));

/** Smoothing of the first corner inside the edge, where a bridge left one. */
function smoothed(draft: Draft, where: string): AlterationBase[] {
	const found = findEdge(draft, where);
	const corner = found && cornersOf(found.edge.path)[0];
	if (!found || corner === undefined) return [];
	const { piece, id } = splitName(undividedName(where));
	const fraction = corner / pathLength(found.edge.path);
	const way = {
		id: `settle-bridge-${piece}-${id}`,
		kind: 'smooth',
		on: 'both',
		edge: `${piece}/${id}`,
		at: { fraction },
		reach
	} as const;
	return [way];
}
