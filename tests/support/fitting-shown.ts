import type { Page } from '@playwright/test';

/** What a fitting page shows of the hand: every line and word of its drawings, what is told of it, and what its form would send, but for the key of the page. */
export interface FittingShown {
	/** Drawings on this screen, each as its paths and words in order. */
	readonly drawings: readonly (readonly string[])[];
	readonly told: string;
	readonly pinned: string;
	readonly fields: string;
}

/** Asked of the page itself, so that a page without scripting answers as well. */
export const fittingShown = (page: Page): Promise<FittingShown> => page.evaluate(`(${asked})()`);

const asked = `() => {
	const words = (node) => (node?.textContent ?? '').replace(/\\s+/g, ' ').trim();
	const hand = document.querySelector('form.hand');
	const seen = (one) => getComputedStyle(one).display !== 'none' && one.getClientRects().length > 0;
	return {
		drawings: [...document.querySelectorAll('svg.drawing')].filter(seen).map((drawing) =>
			[...drawing.querySelectorAll('path:not([class^="spot"]):not(.edge-held):not(.edge-link *), text, circle')].map((one) =>
				[one.getAttribute('class'), ...['d', 'x', 'y', 'cx', 'cy'].map((name) => one.getAttribute(name)), words(one)].join(' ')
			)
		),
		told: words(hand?.querySelector('[aria-labelledby="does"]')) + words(hand?.querySelector('.foot-bar .narrow-only')),
		pinned: words(document.querySelector('#pinned')),
		fields: JSON.stringify(hand ? [...new FormData(hand)].filter(([name, text]) => text !== '' && name !== 'drawn') : [])
	};
}`;
