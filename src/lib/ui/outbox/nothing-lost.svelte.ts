import { browser } from '$app/environment';
import { afterNavigate, invalidateAll } from '$app/navigation';
import { navigating } from '$app/state';
import { onMount } from 'svelte';
import type { FittingGround } from '../fitting/ground.ts';
import type { FittingView } from '../fitting/view/fitting-view.ts';
import { clockWords } from '../clock-words.ts';
import { askFitting, sendHand } from './ask-fitting.ts';
import { holdHand } from './hold-hand.ts';
import { keepsHand } from './keeps-hand.ts';
import { keptNow } from './kept-now.svelte.ts';
import { listen } from './listen.ts';
import { Outbox } from './outbox.svelte.ts';
import { providePost } from './outbox-context.ts';
import { postForm } from './post-form.ts';
import { sendFields } from './send.ts';
import { browserShelf } from './shelf.ts';
import { unsentOf } from './unsent.ts';
import { unsentDrawn } from './unsent-drawn.svelte.ts';

type Typed = Readonly<Record<string, string>>;

/** What `load` says of the fitting. */
interface Shown {
	readonly ground: FittingGround;
	readonly view: FittingView;
	/** The page’s address without its question. */
	readonly here: string;
	readonly wholeRevision: number;
	/** What other devices have in the hand, as it is asked for again and again. */
	readonly hands: string;
	readonly closed: unknown;
}

/** The hand, as far as it is kept. */
interface Hand {
	readonly typed: Typed;
	change(typed: Typed): void;
	putDown(): void;
}

/** Fields that say that something is in the hand. */
const holding = ['act', 'seam', 'edge', 'dart', 'alteration'];

/**
 * Keeps what is done at a fitting, whatever happens to the network, the server or the page: forms go through an outbox, what is in the
 * hand is saved as it is typed, and what other devices do is read again.
 */
export function nothingLost(shown: () => Shown) {
	const shelf = browserShelf(browser);
	const kept = () => (keptNow.last = clockWords());
	const outbox = new Outbox({
		shelf,
		get place() {
			return shown().here;
		},
		send: sendFields,
		first: () => hand.settled(),
		received: reread
	});
	/** Not while the page is on its way elsewhere, which would be broken off: what it comes to is read then anyway. */
	async function reread(): Promise<void> {
		if (navigating.to === null && !outbox.asking) await invalidateAll();
	}
	const hand = holdHand({
		shelf,
		get place() {
			return shown().here;
		},
		send: (typed, leaving) => sendHand(shown().here, typed, leaving),
		saved: kept
	});
	const drawn = unsentDrawn(
		() => shown().ground,
		() => outbox.late
	);
	const sent = $derived.by(() => {
		const { here, view, ground } = shown();
		const now = drawn().ground;
		// A copy of what was typed: what was drawn of it by the server does not hold any more.
		return { here, ground: now, view: now === ground ? view : { ...view, typed: { ...view.typed } } };
	});
	let gone = $state(false);
	providePost((form, options) => postForm(form, options, { outbox, hand, kept }));

	$effect(() => {
		keptNow.waiting = outbox.late.length;
	});
	onMount(() => {
		if (shown().closed !== undefined) return;
		void outbox.open();
		const left = () => hand.leave();
		const hidden = () => document.visibilityState === 'hidden' && hand.leave();
		addEventListener('pagehide', left);
		document.addEventListener('visibilitychange', hidden);
		const stop = listen({
			ask: () => askFitting(shown().here),
			away: () => {},
			heard: (now) => {
				hand.again();
				if (outbox.waiting.length > 0) void outbox.flush();
				else if (now?.whole !== shown().wholeRevision || now.hands !== shown().hands) void reread();
			}
		});
		return () => {
			stop();
			left();
			outbox.stop();
			Object.assign(keptNow, { waiting: 0, last: undefined });
			removeEventListener('pagehide', left);
			document.removeEventListener('visibilitychange', hidden);
		};
	});

	/** Saves a hand as it is typed, and puts back into it what an earlier page could not save. */
	function hold(state: Hand) {
		// A page that was gone before its form was answered sends it when it is opened, and has its hand empty for it.
		const opened = unsentOf(shelf, shown().here);
		afterNavigate(({ to, type }) => {
			gone = false;
			const said = [...(to?.url.searchParams.keys() ?? [])].some((name) => name !== 'side');
			const left = hand.putBy();
			if (shown().closed !== undefined) return;
			if (said || left === undefined) {
				if (type === 'enter' && opened.some((form) => keepsHand(form, state.typed))) state.putDown();
				return;
			}
			if (left === null) state.putDown();
			else state.change(left);
			hand.again();
		});
		$effect(() => {
			const { typed } = state;
			if (shown().closed === undefined) hand.hold(holding.some((name) => typed[name]) ? withoutKept(typed) : null);
		});
		$effect(() => {
			const { alteration, revision: _, ...mine } = state.typed;
			if (!alteration || shown().ground.alterations.some(({ id }) => id === alteration)) return;
			gone = true;
			if (mine.act) state.change(mine);
			else state.putDown();
		});
	}

	return {
		outbox,
		hold,
		/** What the hand is drawn from: what `load` says, with what was not sent yet. */
		sent: () => sent,
		waiting: () => drawn().waiting,
		/** The alteration that was being changed here was undone on another device. */
		get gone() {
			return gone;
		}
	};
}

export type NothingLost = ReturnType<typeof nothingLost>;

const withoutKept = ({ kept: _, ...typed }: Typed): Typed => typed;
