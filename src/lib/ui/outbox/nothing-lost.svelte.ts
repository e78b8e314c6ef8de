import { browser } from '$app/environment';
import { afterNavigate, goto, invalidateAll } from '$app/navigation';
import { onMount, untrack } from 'svelte';
import type { FittingGround } from '../fitting/ground.ts';
import { addressOf, type Typed } from '../fitting/typed.ts';
import type { FittingView } from '../fitting/view/fitting-view.ts';
import { clockWords } from '../clock-words.ts';
import { askFitting, sendHand } from './ask-fitting.ts';
import { holdHand } from './hold-hand.ts';
import { keptNow } from './kept-now.svelte.ts';
import { listen } from './listen.ts';
import { Outbox } from './outbox.svelte.ts';
import { providePost } from './outbox-context.ts';
import { postForm, type KeepingShown } from './post-form.ts';
import { sendFields } from './send.ts';
import { goesOn, isHeld, keepsHand, nameOfHand, sameTyped } from './same-hand.ts';
import { browserShelf } from './shelf.ts';
import { stayUntilKept } from './stay-until-kept.ts';
import { underWay } from './under-way.svelte.ts';
import { unsentOf } from './unsent.ts';
import { unsentDrawn } from './unsent-drawn.svelte.ts';

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
	/** Whether changes are drawn here. */
	readonly live: boolean;
	change(typed: Typed): void;
	/** The same, where it was in the hand before: no step. */
	takeUp(typed: Typed): void;
	putDown(): void;
	/** Empties it where it should not have been filled: no step that Back takes back. */
	clear(): void;
	/** Says in the address again what is typed: reading again has forgotten it. */
	sayAddress(): void;
}

/**
 * Keeps what is done at a fitting, whatever happens to the network, the server or the page: forms go through an outbox, what is in the
 * hand is saved as it is typed, and what other devices do is read again. It is of the one fitting that it was made with.
 */
export function nothingLost(shown: () => Shown) {
	const shelf = browserShelf(browser);
	const { here: place } = shown();
	const isClosed = () => shown().closed !== undefined;
	const goingTo = underWay();
	let left = false;
	const kept = () => (keptNow.last = clockWords());
	const outbox = new Outbox({ shelf, place, send: sendFields, first: () => hand.settled(), received: reread });
	/**
	 * Not while the page is on its way elsewhere, which would be broken off: what it comes to is read then anyway. Nor while a finger
	 * lies on it: what was pressed would move; it is read when the journal is next heard of.
	 */
	async function reread(): Promise<void> {
		if (left || goingTo() || outbox.asking || document.querySelector(':active')) return;
		await invalidateAll();
		if (!left) sayAddress();
	}
	const hand = holdHand({
		shelf,
		place,
		send: (typed, leaving) => sendHand(place, typed, leaving),
		saved: kept
	});
	const drawn = unsentDrawn(
		() => shown().ground,
		() => outbox.late
	);
	const drawnFrom = $derived.by(() => {
		const { here, view, ground } = shown();
		const now = drawn().ground;
		// A copy of what was typed: what was drawn of it by the server does not hold any more.
		return { here, ground: now, view: now === ground ? view : { ...view, typed: { ...view.typed } } };
	});
	let gone = $state(false);
	let beingKept = $state.raw<readonly string[]>([]);
	let sayAddress = () => {};

	/** Keeps what is in the hand; nothing is typed of it until it is answered, and the page drawn anew. */
	function keep(): KeepingShown {
		const keeping = hand.keep();
		beingKept = [...beingKept, keeping.name];
		return { ...keeping, end: () => (beingKept = beingKept.filter((one) => one !== keeping.name)) };
	}

	const isHere = () => !left;
	const isLeaving = () => (goingTo()?.pathname ?? place) !== place;
	const sent = stayUntilKept(place, isHere);
	const receivers = { outbox, hand: { keep }, isHere, isLeaving, kept, reread, sent };
	providePost((form, options) => postForm(form, options, receivers));

	$effect(() => {
		keptNow.waiting = outbox.late.length;
	});
	onMount(() => {
		void outbox.open();
		const stop = isClosed() ? () => {} : keepUp();
		return () => {
			stop();
			left = true;
			outbox.stop();
			Object.assign(keptNow, { waiting: 0, last: undefined });
		};
	});

	/** Sends what is not sent when the page is left, and listens for what other devices do. Answers what ends it. */
	function keepUp(): () => void {
		const leave = () => hand.leave();
		const hidden = () => document.visibilityState === 'hidden' && hand.leave();
		addEventListener('pagehide', leave);
		document.addEventListener('visibilitychange', hidden);
		const stop = listen({
			ask: () => askFitting(place),
			away: () => {},
			heard: (now) => {
				hand.again();
				if (outbox.waiting.length > 0) void outbox.flush();
				else if (now?.whole !== shown().wholeRevision || now.hands !== shown().hands) void reread();
			}
		});
		return () => {
			stop();
			leave();
			removeEventListener('pagehide', leave);
			document.removeEventListener('visibilitychange', hidden);
		};
	}

	/** Saves a hand as it is typed, and puts back into it what an earlier page could not save. */
	function hold(state: Hand) {
		/** What an earlier page left in this browser: looked at before this one puts anything by. */
		const earlier = { forms: unsentOf(shelf, place), hand: hand.putBy() };
		let entered = $state(false);
		sayAddress = () => state.sayAddress();
		afterNavigate(({ to, type }) => {
			gone = false;
			const forms = entered ? outbox.unsent : earlier.forms;
			// What a form came to is read while more is typed: what is in the hand here is newer.
			const here = entered && type === 'goto' ? hand.held() : undefined;
			const putBy = here !== undefined ? here : entered ? hand.putBy() : earlier.hand;
			const first = !entered;
			entered = true;
			if (isClosed()) return;
			const address = Object.fromEntries(to?.url.searchParams ?? []);
			// Newer than the forms, which took what was in the hand along; and than what the journal has.
			const isEmpty = (putBy === null && !isHeld(address)) || forms.some((form) => keepsHand(form, state.typed));
			if (putBy && goesOn(address, putBy)) take(putBy, address);
			else if (isEmpty && isHeld(state.typed)) state.clear();
			else if (first && !isHeld(address) && isHeld(state.typed)) hand.has(withoutKept(state.typed));
			hand.again();
		});
		function take(typed: Typed, address: Typed) {
			if (sameTyped(typed, withoutKept(state.typed))) return;
			state.takeUp(typed);
			// As long as nothing is drawn here the fields show what was sent: where the address says it already, this is it.
			if (state.live || sameTyped(typed, withoutKept(address))) return;
			void goto(place + addressOf(typed), { replaceState: true, noScroll: true, keepFocus: true });
		}
		$effect(() => {
			const { typed } = state;
			// Not when the page was read again: what is shown until it is drawn anew may be kept, or let go.
			if (entered && !untrack(isClosed)) hand.hold(isHeld(typed) ? withoutKept(typed) : null);
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
		sent: () => drawnFrom,
		waiting: () => drawn().waiting,
		/** Whether what is typed is on its way, or waits: nothing is to be typed of it. */
		isBeingKept: (typed: Typed) => beingKept.includes(nameOfHand(typed)),
		/** Puts down what is in the hand as long as the server draws it: told first, or it would be in the hand of the next page. */
		async letGo(next: Typed) {
			hand.hold(null);
			await hand.settled();
			await goto(place + addressOf(next), { noScroll: true });
		},
		/** The alteration that was being changed here was undone on another device. */
		get gone() {
			return gone;
		}
	};
}

export type NothingLost = ReturnType<typeof nothingLost>;

const withoutKept = ({ kept: _, ...typed }: Typed): Typed => typed;
