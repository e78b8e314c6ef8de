import type { Sent } from './send.ts';

/** What a fitting is like now, in a few letters: asked for again and again. */
export interface Heard {
	/** Counts every change of the fitting or of anything in it. */
	readonly whole: number;
	/** Changes when another device takes something in the hand, or puts it down. */
	readonly hands: string;
}

interface Ears {
	readonly ask: () => Promise<Sent<Heard | undefined>>;
	/** Nothing is told of a fitting that this device may not see (any more). */
	readonly heard: (heard: Heard | undefined) => void;
	readonly away: () => void;
	/** ms between two questions. */
	readonly every?: number;
}

/**
 * Listens for what other devices do at the fitting while the page is looked at, and for the server itself. Answers what stops
 * it.
 */
export function listen({ ask, heard, away, every = 4000 }: Ears, page: Document = document): () => void {
	let timer: ReturnType<typeof setTimeout> | undefined;
	let stopped = false;

	async function turn(): Promise<void> {
		clearTimeout(timer);
		const came = await ask();
		if (stopped) return;
		if (came.away) away();
		else heard(came.answer);
		clearTimeout(timer);
		if (page.visibilityState === 'visible') timer = setTimeout(() => void turn(), every);
	}
	const looked = () => {
		if (page.visibilityState === 'visible') void turn();
	};
	page.addEventListener('visibilitychange', looked);
	page.defaultView?.addEventListener('online', looked);
	timer = setTimeout(() => void turn(), every);
	return () => {
		stopped = true;
		clearTimeout(timer);
		page.removeEventListener('visibilitychange', looked);
		page.defaultView?.removeEventListener('online', looked);
	};
}
