import { putBy, type Shelf } from './unsent.ts';
import type { Sent } from './send.ts';

type Typed = Readonly<Record<string, string>>;

/** What is in the hand as this browser keeps it until the journal has it; no fields: the hand was emptied. */
interface PutBy {
	readonly typed: Typed | null;
}

interface Hands {
	readonly shelf: Shelf;
	/** The page that it is of, from the root. */
	readonly place: string;
	/** Sends it; `leaving`: the page may be gone before it is answered. */
	readonly send: (typed: Typed | null, leaving: boolean) => Promise<Sent<{ readonly status: number }>>;
	/** Told whenever the journal has kept it. */
	readonly saved: () => void;
}

/** How long the hand rests before it is saved, in ms: not at each letter. */
const rest = 250;

/** How long a form waits for a hand that is on its way before it, in ms: on a network that is lost that may hang for much longer. */
const patience = 3000;

/**
 * Saves what is in the hand at each step: in the browser at once, in the journal when the hand rests or the page is left. What the
 * journal has not answered yet stays in the browser. It reaches the journal in the order in which it was typed, one after another;
 * and while it is being kept nothing of it is sent, or it would be in the hand again after.
 */
export function holdHand(hands: Hands) {
	const { shelf, send, saved } = hands;
	const name = () => `hand ${hands.place}`;
	let now: string | undefined;
	/** What this browser could not put by, and the journal has not answered. */
	let unkept: string | undefined;
	let timer: ReturnType<typeof setTimeout> | undefined;
	/** Ends when everything is answered that was sent. */
	let going: Promise<void> = Promise.resolve();
	let keeping = false;

	function stop() {
		clearTimeout(timer);
		timer = undefined;
	}

	function put(text: string) {
		unkept = putBy(shelf, name(), text) ? undefined : text;
		stop();
		if (!keeping) timer = setTimeout(save, rest);
	}

	/** Forgets it here: the journal has it, or has let it go. */
	function takeAway() {
		unkept = undefined;
		shelf.removeItem(name());
	}

	const notSaved = () => shelf.getItem(name()) ?? unkept;

	function save() {
		stop();
		going = going.then(() => (keeping ? undefined : sendIt(false)));
	}

	async function sendIt(leaving: boolean): Promise<void> {
		const text = notSaved();
		if (text === undefined) return;
		const sent = await send((JSON.parse(text) as PutBy).typed, leaving);
		if (sent.away || sent.answer.status === 401) return;
		// What was typed meanwhile is on its way by itself.
		if (notSaved() === text) takeAway();
		if (sent.answer.status < 300) saved();
	}

	return {
		/** The fields now; null where nothing is in the hand. */
		hold(typed: Typed | null): void {
			const text = JSON.stringify({ typed } satisfies PutBy);
			if (text === now || (now === undefined && typed === null)) return;
			now = text;
			put(text);
		},
		/** What is in the hand is sent as a form, and put by as one: that is all that is sent of it now. */
		keep(): void {
			stop();
			keeping = true;
			takeAway();
		},
		/** The hand is empty because what was in it is kept: nothing is to be sent of it, the journal has let it go. */
		emptied(): void {
			stop();
			keeping = false;
			now = undefined;
			takeAway();
		},
		/** It was not kept, and is in the hand as it was. */
		notKept(): void {
			keeping = false;
			if (now !== undefined) put(now);
		},
		/** What an earlier page put by and the journal never got: fields, or null where the hand was emptied. */
		putBy(): Typed | null | undefined {
			const text = shelf.getItem(name());
			return text === null ? undefined : (JSON.parse(text) as PutBy).typed;
		},
		/** Sends what still rests, and ends when the journal has it: what is sent then comes after it there. */
		async settled(): Promise<void> {
			if (timer !== undefined) save();
			let late: ReturnType<typeof setTimeout> | undefined;
			await Promise.race([going, new Promise((resolve) => (late = setTimeout(resolve, patience)))]);
			clearTimeout(late);
		},
		/** The page is left, or hidden: what still rests is sent now. */
		leave(): void {
			if (timer === undefined) return;
			stop();
			void sendIt(true);
		},
		/** The journal is there again. */
		again(): void {
			if (timer === undefined && !keeping && notSaved() !== undefined) save();
		}
	};
}

export type HeldHand = ReturnType<typeof holdHand>;
