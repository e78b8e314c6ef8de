import { beforeNavigate, goto } from '$app/navigation';

/** A form that is on its way. */
export interface FormSent {
	/** It is answered, or waits. Answers what leaves the page, where that was asked for meanwhile: nothing is to be shown of it there. */
	readonly done: (mayGo: boolean) => (() => unknown) | undefined;
}

/**
 * Lets one go on from a page to another only when what was sent from it is answered, or waits in the browser: what is gone to would
 * not have it, and would not say so. Where it is refused the page stays, and says why. Answers what is called when a form is sent.
 */
export function stayUntilKept(place: string, isHere: () => boolean): () => FormSent {
	const sent = new Set<FormSent>();
	/** The last that was asked for. */
	let go: (() => unknown) | undefined;
	beforeNavigate(({ to, willUnload, delta, cancel }) => {
		if (sent.size === 0 || willUnload || !to || to.url.pathname === place) return;
		cancel();
		go = () => (delta === undefined ? goto(to.url, { invalidateAll: true }) : history.go(delta));
	});
	return () => {
		const form: FormSent = {
			done(mayGo) {
				// Said once; what comes after it is the page’s.
				if (!sent.delete(form)) return undefined;
				if (!mayGo) go = undefined;
				if (!go || sent.size > 0 || !isHere()) return undefined;
				const leave = go;
				go = undefined;
				return leave;
			}
		};
		sent.add(form);
		return form;
	};
}
