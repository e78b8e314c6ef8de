import { findPlaceOnSeam } from '../draft/place.ts';
import { runLength, seamRun } from '../draft/seam.ts';
import { undividedName } from '../draft/undivided-name.ts';
import { carryAlterations } from '../alteration/carry.ts';
import { garmentRound } from './ease-table.ts';
import { isCalled } from './words.ts';
import type { Settling } from './settle.ts';
import type { Draft, Seam } from '../draft/types.ts';

/** Nearer to an end of the seam than this, a level counts as that end, mm. */
const atEnd = 1;

/** A proposal that comes within this share of what is wanted is good enough to offer. */
const goodEnough = 0.25;

/**
 * An alteration that makes the garment's whole round at a balance line larger (or, negative, smaller) by about `change` mm: let
 * out or taken in at one long seam that crosses it, the side seam if that does it, evenly on all its edges and fading to
 * nothing at its ends. Tried out before it is offered; none where no seam does it (at a corner, say, where the line then meets the
 * neighbouring edge instead).
 */
export function changeRoundAt(draft: Draft, level: string, change: number, id: string): Settling[] {
	const crossing = draft.seams.flatMap((seam) => {
		const limb = seamRun(draft, seam, 'a').some(({ piece }) => piece.limb);
		const at = limb ? undefined : placeOf(draft, seam, level);
		return at === undefined ? [] : [{ seam, at }];
	});
	const rank = ({ seam }: { seam: Seam }) =>
		seam.b === 'mirror' ? 2 : isCalled(seam, 'side') && !isCalled(seam, 'side-back') ? 0 : 1;
	const [found] = [...crossing]
		.sort((one, other) => rank(one) - rank(other))
		.map(({ seam, at }) => proposal(draft, seam, at, level, change, id))
		.filter((one) => Math.abs(changeBy(draft, one, level) / change - 1) <= goodEnough)
		.slice(0, 1);
	return found ? [found] : [];
}

type Where = 'start' | 'finish' | 'between';

function proposal(draft: Draft, seam: Seam, at: Where, level: string, change: number, id: string): Settling {
	const name = undividedName(seam.id);
	const each = change / edgesRound(draft, name);
	const pin = (place: object, amount: number) =>
		seam.b === 'mirror' ? { at: place, a: amount } : { at: place, a: amount, b: amount };
	const start = { end: 'start' };
	const finish = { end: 'finish' };
	const pins: Readonly<Record<Where, readonly object[]>> = {
		start: [pin(start, each), pin(finish, 0)],
		finish: [pin(start, 0), pin(finish, each)],
		between: [pin(start, 0), pin({ level }, each), pin(finish, 0)]
	};
	return { id, kind: 'seam', on: 'both', seam: name, pins: pins[at] };
}

function changeBy(draft: Draft, alteration: Settling, level: string): number {
	const round = (one: Draft) =>
		garmentRound(one).find((row) => row.level === level && row.limb === undefined)?.round ?? 0;
	return round(carryAlterations(draft, [alteration]).draft) - round(draft);
}

/** Where on the seam the level is met, if both its sides meet it once. */
function placeOf(draft: Draft, seam: Seam, level: string): Where | undefined {
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
