import { applyAction } from '$app/forms';
import { goto, invalidateAll } from '$app/navigation';
import { onItsWay } from '../on-its-way.ts';
import { wasKept } from './answered.ts';
import type { HeldHand } from './hold-hand.ts';
import { nameOfHand } from './same-hand.ts';
import type { Outbox } from './outbox.svelte.ts';

export interface PostOptions {
	/** What it says, for the list of what was not sent yet: “took in the side seam”; where its buttons ask several things, for each. */
	readonly words: string | ((asks: string) => string);
	/** It keeps what is in the hand: that is then empty. */
	readonly hand?: boolean;
	/** Once kept it is as it was drawn, for another. */
	readonly anew?: boolean;
	/** Called when it waits in this browser: the page goes on as if it were kept. */
	readonly waits?: () => void;
	/** False for what is done now or not at all: undoing, closing. */
	readonly later?: boolean;
}

/** Whom a form is given to. */
interface Receivers {
	readonly outbox: Outbox;
	readonly hand: Pick<HeldHand, 'keep'>;
	/** Whether the page is there still. */
	readonly isHere: () => boolean;
	readonly kept: () => void;
}

/**
 * Sends a form through the outbox, in the place of `use:enhance`: what was typed stays until it is kept; if something was wrong, the
 * keyboard is taken to the first field that was. A button that only shows something (`formmethod="get"`) is left alone. Where the page
 * has gone on meanwhile, to another page or with another thing in the hand, it is left as it is.
 */
export function postForm(form: HTMLFormElement, options: PostOptions, { outbox, hand, isHere, kept }: Receivers) {
	let now = options;
	const submitted = async (event: SubmitEvent) => {
		const button = event.submitter as HTMLButtonElement | null;
		const method = button?.hasAttribute('formmethod') ? button.formMethod : form.method;
		if (event.defaultPrevented || method !== 'post') return;
		event.preventDefault();
		const fields = fieldsOf(new FormData(form, button));
		const address = new URL(button?.hasAttribute('formaction') ? button.formAction : form.action);
		const action = address.pathname + address.search;
		// What is in the hand is kept once, whatever else was typed of it before its answer.
		const arrived = onItsWay(form, now.hand ? nameOfHand(fields) : { action, fields });
		if (!arrived) return;
		await send(action, fields).finally(arrived);
	};
	async function send(action: string, fields: Readonly<Record<string, string>>): Promise<void> {
		const { later, anew = false, waits } = now;
		const asks = /\?\/(\w+)/.exec(action)?.[1] ?? '';
		const words = typeof now.words === 'string' ? now.words : now.words(asks);
		const keeping = now.hand ? hand.keep() : undefined;
		const shows = () => isHere() && (keeping?.same() ?? true);
		const came = await outbox.post({ action, fields, words }, { later, shows }).catch((fault: unknown) => {
			keeping?.done(false);
			throw fault;
		});
		if (!isHere()) return;
		const shown = shows();
		const isKept = typeof came === 'object' && wasKept(came.result);
		keeping?.done(isKept);
		if (came === 'not put by') return;
		if (came === 'waits') {
			if (shown) waits?.();
			return folded(form, anew);
		}
		const { result } = came;
		// One that our own mistake stopped stays in the list, with what can be done about it.
		if (result.type === 'error') return;
		if (isKept) {
			kept();
			folded(form, anew);
		}
		if (!shown) return isKept ? invalidateAll() : undefined;
		// Back leads to what was before the hand: not to one that is kept, as if it were still to be.
		if (isKept && keeping && result.type === 'redirect')
			return goto(result.location, { replaceState: true, invalidateAll: true });
		await applyAction(result);
		if (result.type === 'failure') form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
	}
	form.addEventListener('submit', submitted);
	return {
		update: (changed: PostOptions) => (now = changed),
		destroy: () => form.removeEventListener('submit', submitted)
	};
}

/** Folded up again if it was unfolded. */
function folded(form: HTMLFormElement, anew: boolean) {
	if (anew) form.reset();
	form.closest('details')?.removeAttribute('open');
}

function fieldsOf(data: FormData): Readonly<Record<string, string>> {
	const texts = [...data].filter((entry): entry is [string, string] => typeof entry[1] === 'string');
	return Object.fromEntries(texts);
}
