import { applyAction } from '$app/forms';
import { goto } from '$app/navigation';
import { tick } from 'svelte';
import { onItsWay } from '../on-its-way.ts';
import { asksToSignIn, wasKept } from './answered.ts';
import type { Keeping } from './hold-hand.ts';
import { nameOfHand } from './same-hand.ts';
import type { Outbox } from './outbox.svelte.ts';
import type { FormSent } from './stay-until-kept.ts';

export interface PostOptions {
	/** What it says, for the list of what was not sent yet: “took in the side seam”; where its buttons ask several things, for each. */
	readonly words: string | ((asks: string) => string);
	/** It keeps what is in the hand: that is then empty. */
	readonly hand?: boolean;
	/** Once kept it is as it was drawn, for another. */
	readonly anew?: boolean;
	/** Called when the page goes on, or is left, as if it were kept: it waits in this browser, or there is no time to show what came of it. */
	readonly goesOn?: () => void;
	/** False for what is done now or not at all: undoing, closing. */
	readonly later?: boolean;
}

/** A hand that is being kept, and shown so. */
export interface KeepingShown extends Keeping {
	/** The page is drawn anew, or will not be. */
	readonly end: () => void;
}

/** The pages that something was sent from, and what: the same from the same page once more is meant once more. */
const sentFrom = new Set<string>();

/** Whom a form is given to. */
interface Receivers {
	readonly outbox: Outbox;
	readonly hand: { readonly keep: () => KeepingShown };
	/** Whether the page is there still. */
	readonly isHere: () => boolean;
	/** Whether it is on its way to another. */
	readonly isLeaving: () => boolean;
	readonly kept: () => void;
	/** Reads the page again, where it stays. */
	readonly reread: () => Promise<void>;
	/** Told that a form is sent: one does not go on from the page until it is done. */
	readonly sent: () => FormSent;
}

/**
 * Sends a form through the outbox, in the place of `use:enhance`: what was typed stays until it is kept; if something was wrong, the
 * keyboard is taken to the first field that was. A button that only shows something (`formmethod="get"`) is left alone. Where the page
 * has gone on meanwhile, to another page or with another thing in the hand, it is left as it is.
 */
export function postForm(form: HTMLFormElement, options: PostOptions, receivers: Receivers) {
	const { outbox, hand, isHere, isLeaving, kept, reread, sent } = receivers;
	let now = options;
	const submitted = async (event: SubmitEvent) => {
		const button = event.submitter as HTMLButtonElement | null;
		const method = button?.hasAttribute('formmethod') ? button.formMethod : form.method;
		if (event.defaultPrevented || method !== 'post') return;
		event.preventDefault();
		const fields = fieldsOf(new FormData(form, button));
		const address = new URL(button?.hasAttribute('formaction') ? button.formAction : form.action);
		const action = address.pathname + address.search;
		// What is in the hand is kept once; meanwhile nothing is typed of it.
		const arrived = onItsWay(form, now.hand ? nameOfHand(fields) : { action, fields });
		if (!arrived) return;
		const keeping = now.hand ? hand.keep() : undefined;
		const way = sent();
		try {
			await send(action, firstOf(action, fields), way, keeping);
		} finally {
			keeping?.end();
			arrived();
			way.done(false);
		}
	};
	async function send(
		action: string,
		fields: Readonly<Record<string, string>>,
		way: FormSent,
		keeping?: KeepingShown
	): Promise<void> {
		const { later, anew = false, goesOn } = now;
		const asks = /\?\/(\w+)/.exec(action)?.[1] ?? '';
		const words = typeof now.words === 'string' ? now.words : now.words(asks);
		const shows = () => isHere() && !isLeaving() && (keeping?.same() ?? true);
		const came = await outbox.post({ action, fields, words }, { later, shows }).catch((fault: unknown) => {
			keeping?.done(false);
			throw fault;
		});
		if (!isHere()) return;
		const shown = shows();
		const result = typeof came === 'object' ? came.result : undefined;
		const isKept = result !== undefined && wasKept(result);
		// Where it is first asked who this is, the form stays put by and is sent after: what is in it is not in the hand.
		keeping?.done(isKept || (result !== undefined && asksToSignIn(result)));
		if (came === 'waits') {
			if (shown) goesOn?.();
			folded(form, anew);
		}
		if (isKept) {
			kept();
			folded(form, anew);
		}
		const leave = way.done(isKept || came === 'waits');
		if (leave) {
			// Back leads to what is in the hand no more.
			if (isKept && shown) goesOn?.();
			leave();
			return;
		}
		// One that our own mistake stopped stays in the list, with what can be done about it.
		if (result === undefined || result.type === 'error') return;
		if (!shown) return isKept ? reread() : undefined;
		// Back leads to what was before the hand: not to one that is kept, as if it were still to be.
		if (isKept && keeping && result.type === 'redirect')
			return goto(result.location, { replaceState: true, invalidateAll: true });
		await applyAction(result);
		if (result.type !== 'failure') return;
		keeping?.end();
		await tick();
		form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
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

/** The fields with the key of their page, where nothing of the kind was sent from that before. */
function firstOf(action: string, fields: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
	const { drawn, ...said } = fields;
	const from = `${drawn} ${/\?\/\w+/.exec(action)?.[0]}`;
	if (drawn === undefined || sentFrom.has(from)) return said;
	sentFrom.add(from);
	return fields;
}
