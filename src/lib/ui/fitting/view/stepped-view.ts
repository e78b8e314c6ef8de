import type { Typed } from '../typed.ts';
import { whileTyping, type FittingView } from './fitting-view.ts';
import { inHand, type InHand } from './in-hand.ts';
import type { KeptView } from './kept-view.ts';
import { steppedScene } from './scenes.ts';
import { spotsSaid } from './spots.ts';
import { toldStepped } from './told.ts';

/**
 * The page in the frame of a step, from the page of the step before: what is typed, the line in the hand with its pins and its sum are
 * of the newest amount; where pieces and words lie, and what else is told, stays as it was shown until the whole view is drawn.
 * Undefined where more than amounts has changed, or what was refused is not, or is: then the whole is drawn at once. `table`: whether
 * the table is on the screen beside the close look; it is drawn only then.
 */
export function steppedView(
	kept: KeptView,
	typed: Typed,
	shown: FittingView,
	{ table = true } = {}
): FittingView | undefined {
	const held = inHand(kept, typed);
	if ('notThere' in held || !onlyStepped(held, shown)) return undefined;
	const { read } = held;
	const scene = table || !shown.close ? steppedScene(shown.scene, held, shown.side) : shown.scene;
	const close = shown.close && steppedScene(shown.close, held, shown.side);
	if (!scene || (shown.close && !close)) return undefined;
	return {
		...shown,
		typed: held.typed,
		hand: held.hand,
		problems: read && 'problems' in read ? whileTyping(read.problems, held.typed) : {},
		scene,
		close,
		spots: spotsSaid(shown.spots, held),
		closeSpots: spotsSaid(shown.closeSpots, held),
		told: toldStepped(shown.told, held)
	};
}

/** `amount.level:waist`; and which place is the chosen one. */
const stepping = /^(amount|other|left|leftOther)\.|^here$/;

function onlyStepped({ typed, hand, focus }: InHand, shown: FittingView): boolean {
	if (!hand.pins || !shown.hand.pins) return false;
	const names = new Set([...Object.keys(typed), ...Object.keys(shown.typed)]);
	for (const name of names) if (!stepping.test(name) && (typed[name] ?? '') !== (shown.typed[name] ?? '')) return false;
	const refused = focus.some(({ unplaced }) => unplaced);
	return refused === (shown.told?.effect.refused !== undefined);
}
