import { findSeam, neighbouringEdges } from '../../draft/find.ts';
import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { seamRun } from '../../draft/seam.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import { walkOf } from '../base-of.ts';
import { beyondMeant } from '../beyond-meant.ts';
import { meantLonger } from '../meant-longer.ts';
import { asAltered, settleId, type Settling } from '../settle.ts';
import { isSleeveHead } from '../sleeve-head.ts';
import { inSentence, sidesInSentence } from '../words.ts';
import { walk, type SeamWalk } from '../walk.ts';
import type { Draft, Seam } from '../../draft/types.ts';
import type { Inquiry, Inspection } from '../inquiry.ts';
import type { Query } from '../types.ts';

/**
 * The two sides of a seam differ by more than the fullness that is meant for it. Figure: b − a − fullness, mm. What lies between
 * the meant fullness and what the base draft already had is not asked about.
 */
export const seamLength: Inquiry = (inspection) =>
	walk(inspection.draft).flatMap((walked) => {
		const seam = findSeam(inspection.draft, walked.seam);
		return seam ? ask(inspection, seam, walked) : [];
	});

function ask({ draft, options, bands }: Inspection, seam: Seam, walked: SeamWalk): Query[] {
	const { silent, note, eased } = bands.seamLength;
	const base = walkOf(options.base, seam.id);
	const beyond = beyondMeant(walked.difference, 0, base?.difference ?? 0);
	const size = Math.abs(beyond);
	if (size <= silent + measured) return [];
	if (size <= eased + measured && meantLonger(draft, seam, base, bands) === (beyond > 0 ? 'b' : 'a')) return [];
	if (bands.sleeveHead && isSleeveHead(draft, seam)) return [];
	const later = notOnToile(draft, seam, options.pieces);
	if (later !== undefined) return [laterQuery(draft, seam, walked, later)];
	return [
		{
			code: 'seam-length',
			severity: size <= note + measured ? 'note' : 'warning',
			where: seam.id,
			figure: walked.difference,
			sentence: sentence(draft, seam, walked),
			settle: settlings(draft, seam, walked, silent)
		}
	];
}

function sentence(draft: Draft, seam: Seam, { difference, ease }: SeamWalk): string {
	const sides = sidesInSentence(draft, seam);
	const amount = inches(difference);
	if (Math.abs(ease) <= measured) {
		const [longer, shorter] = difference > 0 ? [sides.b, sides.a] : [sides.a, sides.b];
		return `${seam.name}: the ${longer} is ${amount} longer than the ${shorter}.`;
	}
	const [full, plain] = ease > 0 ? [sides.b, sides.a] : [sides.a, sides.b];
	const more = difference > 0 === ease > 0;
	const have = full.includes(' and ') ? 'have' : 'has';
	return `${seam.name}: the ${full} ${have} ${amount} ${more ? 'more' : 'less'} fullness on the ${plain} than the ${inches(ease)} meant.`;
}

/** The side whose pieces are all not on this toile, if there is one. */
function notOnToile(draft: Draft, seam: Seam, pieces: readonly string[] | undefined): 'a' | 'b' | undefined {
	if (!pieces) return undefined;
	return (['a', 'b'] as const).find((side) =>
		seamRun(draft, seam, side).every(({ piece }) => !pieces.includes(undividedName(piece.id)))
	);
}

function laterQuery(draft: Draft, seam: Seam, walked: SeamWalk, later: 'a' | 'b'): Query {
	const sides = sidesInSentence(draft, seam);
	const [fitted, length] = later === 'a' ? [sides.b, walked.b] : [sides.a, walked.a];
	return {
		code: 'seam-length',
		severity: 'note',
		where: seam.id,
		figure: walked.difference,
		sentence: `${seam.name}: the ${inSentence(fitted)} is now ${inches(length)}; fit the ${sides[later]} next.`,
		settle: []
	};
}

/**
 * Correcting either side or sharing it, at the end beyond the last notches that still meet. Where the edge there runs out on a
 * fold, the fold is moved evenly.
 */
function settlings(draft: Draft, seam: Seam, walked: SeamWalk, silent: number): Settling[] {
	const { name, on } = asAltered(seam.id);
	const [first] = walked.notches;
	const whole = walked.difference + walked.ease;
	const atStart = first !== undefined && Math.abs(first.difference - whole) <= silent && Math.abs(whole) > silent;
	const end = atStart ? 'start' : 'finish';
	const longer = walked.difference > 0 ? 'b' : 'a';
	const shorter = longer === 'a' ? 'b' : 'a';
	return ([shorter, longer, 'half'] as const).map((take) => {
		const onFold = (['a', 'b'] as const).some(
			(side) => (take === 'half' || take === side) && endsOnFold(draft, seam, side, end)
		);
		return {
			id: settleId('seam-length', seam.id, take),
			kind: 'true-seam',
			on,
			seam: name,
			...(onFold ? { at: { end } } : { end }),
			take
		};
	});
}

function endsOnFold(draft: Draft, seam: Seam, side: 'a' | 'b', end: 'start' | 'finish'): boolean {
	const run = seamRun(draft, seam, side);
	const { piece, edge, reversed } = end === 'start' ? run[0] : run[run.length - 1];
	const beside = neighbouringEdges(piece, edge.id);
	return ((end === 'start') !== reversed ? beside?.before : beside?.after)?.kind === 'fold';
}
