import { cuttingLines, reuse, undividedName } from '../../engine/index.ts';
import type { Draft } from '../../engine/index.ts';
import { allowanceOf, allowancesByEdge } from '../allowances/allowance-groups.ts';
import type { AllowanceGroup } from '../allowances/allowance-groups.ts';
import type { AllowancesByEdge } from '../allowances/usual-allowances.ts';
import { shortEdge } from './short-edge.ts';

export interface LessAllowance {
	/** What each group would have, mm, by its key. */
	readonly lengths: Readonly<Record<string, number>>;
	readonly allowances: AllowancesByEdge;
	/** The groups that would have less than is wanted. */
	readonly less: readonly { readonly name: string; readonly mm: number }[];
}

/** Narrower than this no seam is sewn, mm. */
const narrowest = 6;
/** Short by less than this is on the line, mm: its own width. */
const onTheLine = 0.1;
/** Each round finds the worst place of each piece; more rounds than this mean that cloth is missing altogether. */
const rounds = 12;

/**
 * The other way to settle what falls short: less allowance at the seams where it does, in whole steps (an eighth of an inch, or
 * a millimetre), down to the narrowest that is sewn, until as much as can be restitched. Undefined where all can be already,
 * and where some piece would have to be cut again all the same.
 */
export function lessAllowance(
	cloth: ReturnType<typeof cuttingLines>,
	draft: Draft,
	groups: readonly AllowanceGroup[],
	wanted: AllowancesByEdge,
	step: number
): LessAllowance | undefined {
	const first = Object.fromEntries(groups.map((group) => [group.key, allowanceOf(group, wanted)]));
	const lengths: Record<string, number> = { ...first };
	const least = Math.ceil(narrowest / step) * step;
	let pieces: readonly string[] = draft.pieces.map(({ id }) => id);
	for (let round = 0; round < rounds; round++) {
		const allowances = allowancesByEdge(groups, lengths);
		// With less allowance a piece that was not short does not become so.
		const asked = cuttingLines(draft, allowances).filter(({ piece }) => pieces.includes(piece));
		const short = reuse(cloth, asked).filter(({ shortBy }) => shortBy > 0);
		const atFault = short.map((one) => ({
			...one,
			where: shortEdge(draft, one, (edge) => lengths[groupOf(groups, edge) ?? ''] ?? 0, cloth)
		}));
		const lowered = lower(lengths, groups, atFault, { least, step });
		if (lowered === 0) {
			const less = groups
				.filter(({ key }) => lengths[key] < first[key])
				.map(({ key, name }) => ({ name, mm: lengths[key] }));
			return less.length === 0 || short.some(({ verdict }) => verdict === 'recut')
				? undefined
				: { lengths, allowances, less };
		}
		pieces = short.map(({ piece }) => piece);
	}
	return undefined;
}

/** Takes as much from the groups where pieces are shortest as they are short by, and says how many of them had some to give. */
function lower(
	lengths: Record<string, number>,
	groups: readonly AllowanceGroup[],
	short: readonly Pick<ReturnType<typeof reuse>[number], 'where' | 'shortBy'>[],
	{ least, step }: { least: number; step: number }
): number {
	const shortest = new Map<string, number>();
	for (const { where, shortBy } of short) {
		const key = groupOf(groups, where);
		if (key !== undefined && lengths[key] > least) shortest.set(key, Math.max(shortBy, shortest.get(key) ?? 0));
	}
	for (const [key, shortBy] of shortest) {
		const enough = Math.floor((lengths[key] - shortBy + onTheLine) / step) * step;
		lengths[key] = Math.max(least, Math.min(enough, lengths[key] - step));
	}
	return shortest.size;
}

function groupOf(groups: readonly AllowanceGroup[], edge: string): string | undefined {
	return groups.find(({ edges }) => edges.includes(edge) || edges.includes(undividedName(edge)))?.key;
}
