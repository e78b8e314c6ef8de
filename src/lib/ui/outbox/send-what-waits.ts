import { browser } from '$app/environment';
import { invalidateAll } from '$app/navigation';
import { onMount } from 'svelte';
import { Outbox } from './outbox.svelte.ts';
import { sendFields } from './send.ts';
import { browserShelf } from './shelf.ts';
import { underWay } from './under-way.svelte.ts';

/**
 * For a page that shows what came of another one, which was closed before all that was kept there had been sent: sends it, and reads
 * this page again. `place`: the other page, from the root.
 */
export function sendWhatWaits(place: string): Outbox {
	const goingTo = underWay();
	let left = false;
	const outbox = new Outbox({ shelf: browserShelf(browser), place, send: sendFields, received });
	onMount(() => {
		void outbox.open();
		return () => {
			left = true;
			outbox.stop();
		};
	});

	/** Not while something is pressed, which would move; nor while the page is on its way to another, which would be broken off. */
	async function received(): Promise<void> {
		if (document.querySelector(':active')) await lifted();
		if (!left && !goingTo()) await invalidateAll();
	}
	return outbox;
}

function lifted(): Promise<void> {
	return new Promise((resolve) => {
		// After what the press does.
		const now = () => setTimeout(resolve);
		for (const one of ['pointerup', 'pointercancel', 'keyup', 'blur']) addEventListener(one, now, { once: true });
	});
}
