import type { Typed } from '$lib/ui/fitting/typed.ts';
import { fittingView, type FittingView } from '$lib/ui/fitting/view/fitting-view.ts';
import type { KeptView } from '$lib/ui/fitting/view/kept-view.ts';
import { error } from '@sveltejs/kit';

interface Asked {
	/** What the address says. */
	readonly asked: Typed;
	/** What was left in the hand of this device, where the address says nothing. */
	readonly left: Typed | undefined;
	/** A page that is open reads itself again: what it holds may have been undone on another device meanwhile. */
	readonly again: boolean;
}

/** The page as it is asked for; without what is in the hand where that is there no more, or 404 where an address names it. */
export function viewAsked(kept: KeptView, { asked, left, again }: Asked): FittingView {
	const bare = { side: asked.side ?? '' };
	const ways = left ? [{ ...left, ...asked }, bare] : again ? [asked, bare] : [asked];
	const views = ways.map((typed) => fittingView(kept, typed));
	const view = views.find((one): one is FittingView => !('notThere' in one));
	if (view) return view;
	const [first] = views;
	return error(404, first && 'notThere' in first ? first.notThere : '');
}

/** Whether the address says nothing of a hand: only how the page is looked at. */
export const saysNothing = (asked: Typed): boolean =>
	Object.keys(asked).every((name) => name === 'side' || name === 'kept');
