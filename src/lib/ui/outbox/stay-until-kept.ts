import { beforeNavigate, goto } from '$app/navigation';

/**
 * Lets one go on from a page to another only when what was sent from it is answered, or waits in the browser: what is gone to would
 * not have it, and would not say so. Where it is refused the page stays, and says why. Answers what is called when a form is sent; what
 * that answers is told whether one may go on.
 */
export function stayUntilKept(place: string, isHere: () => boolean): () => (mayGo: boolean) => void {
	const sent = new Set<Promise<boolean>>();
	let asked = 0;
	beforeNavigate(({ to, willUnload, delta, cancel }) => {
		if (sent.size === 0 || willUnload || !to || to.url.pathname === place) return;
		cancel();
		void goOn(++asked, () => (delta === undefined ? goto(to.url, { invalidateAll: true }) : history.go(delta)));
	});

	/** The last that was asked for. */
	async function goOn(turn: number, go: () => unknown): Promise<void> {
		while (sent.size > 0) {
			const answers = await Promise.all(sent);
			if (!isHere() || turn !== asked || answers.includes(false)) return;
		}
		go();
	}

	return () => {
		let tell: (mayGo: boolean) => void = () => {};
		const answer = new Promise<boolean>((resolve) => (tell = resolve));
		sent.add(answer);
		return (mayGo) => {
			sent.delete(answer);
			tell(mayGo);
		};
	};
}
