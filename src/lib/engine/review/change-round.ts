import { findPlaceOnSeam } from '../draft/place.ts';
import { runLength, seamRun } from '../draft/seam.ts';
import { undividedName } from '../draft/undivided-name.ts';
import { isCalled } from './words.ts';
import type { Settling } from './settle.ts';
import type { Draft, Seam } from '../draft/types.ts';

/** Nearer to an end of the seam than this, a level counts as that end, mm. */
const atEnd = 1;

/**
 * An alteration that makes the garment's whole round at a balance line larger (or, negative, smaller) by `change` mm: let out
 * or taken in at one long seam that crosses it, the side seam if there is one, evenly on all its edges and fading to nothing at
 * its ends. None where no seam crosses the line. Near enough for a proposal: the width changes by the amount over the cosine of
 * the angle between seam and level.
 */
export function changeRoundAt(draft: Draft, level: string, change: number, id: string): Settling[] {
	const crossing = draft.seams.flatMap((seam) => {
		const limb = seamRun(draft, seam, 'a').some(({ piece }) => piece.limb);
		const at = limb ? undefined : placeOf(draft, seam, level);
		return at === undefined ? [] : [{ seam, at }];
	});
	const rank = ({ seam }: { seam: Seam }) =>
		seam.b === 'mirror' ? 2 : isCalled(seam, 'side') && !isCalled(seam, 'side-back') ? 0 : 1;
	const [best] = [...crossing].sort((one, other) => rank(one) - rank(other));
	if (!best) return [];
	const name = undividedName(best.seam.id);
	const each = change / edgesRound(draft, name);
	const centre = best.seam.b === 'mirror';
	const pin = (at: object, amount: number) => (centre ? { at, a: amount } : { at, a: amount, b: amount });
	const start = { end: 'start' };
	const finish = { end: 'finish' };
	const pins =
		best.at === 'start'
			? [pin(start, each), pin(finish, 0)]
			: best.at === 'finish'
				? [pin(start, 0), pin(finish, each)]
				: [pin(start, 0), pin({ level }, each), pin(finish, 0)];
	return [{ id, kind: 'seam', on: 'both', seam: name, pins }];
}

/** Where on the seam the level is met, if both its sides meet it once. */
function placeOf(draft: Draft, seam: Seam, level: string): 'start' | 'finish' | 'between' | undefined {
	const a = findPlaceOnSeam(draft, seam.id, 'a', { level });
	const b = seam.b === 'mirror' ? a : findPlaceOnSeam(draft, seam.id, 'b', { level });
	if ('problem' in a || 'problem' in b) return undefined;
	if (a.stitchedOnSeam < atEnd) return 'start';
	return runLength(draft, seam.a) - a.stitchedOnSeam < atEnd ? 'finish' : 'between';
}

/** How many edges the seam has round the whole body, both halves of the wearer counted. */
function edgesRound(draft: Draft, undivided: string): number {
	const times = ({ cut }: { readonly cut: string }) => (cut === 'single' ? 1 : 2);
	return draft.seams
		.filter((seam) => undividedName(seam.id) === undivided)
		.flatMap((seam) => [seamRun(draft, seam, 'a'), ...(seam.b === 'mirror' ? [] : [seamRun(draft, seam, 'b')])])
		.reduce((sum, run) => sum + times(run[0].piece), 0);
}
