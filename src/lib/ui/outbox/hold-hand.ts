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

/**
 * Saves what is in the hand at each step: in the browser at once, in the journal when the hand rests or the page is left. What the
 * journal has not answered yet stays in the browser.
 */
export function holdHand(hands: Hands) {
	const { shelf, send, saved } = hands;
	const name = () => `hand ${hands.place}`;
	let now: string | undefined;
	let timer: ReturnType<typeof setTimeout> | undefined;

	async function save(leaving = false): Promise<void> {
		clearTimeout(timer);
		timer = undefined;
		const text = shelf.getItem(name()) ?? now;
		if (text === undefined) return;
		const sent = await send((JSON.parse(text) as PutBy).typed, leaving);
		if (sent.away || sent.answer.status === 401) return;
		// What was typed meanwhile is on its way by itself.
		if (shelf.getItem(name()) === text) shelf.removeItem(name());
		if (sent.answer.status < 300) saved();
	}

	return {
		/** The fields now; null where nothing is in the hand. */
		hold(typed: Typed | null): void {
			const text = JSON.stringify({ typed } satisfies PutBy);
			if (text === now || (now === undefined && typed === null)) return;
			now = text;
			putBy(shelf, name(), text);
			clearTimeout(timer);
			timer = setTimeout(() => void save(), rest);
		},
		/** The hand is empty because what was in it is kept: nothing is to be sent of it, the journal has let it go. */
		emptied(): void {
			clearTimeout(timer);
			timer = undefined;
			now = undefined;
			shelf.removeItem(name());
		},
		/** What an earlier page put by and the journal never got: fields, or null where the hand was emptied. */
		putBy(): Typed | null | undefined {
			const text = shelf.getItem(name());
			return text === null ? undefined : (JSON.parse(text) as PutBy).typed;
		},
		/** The hand is being kept: nothing is to be sent of it after that. What was not kept is sent when the journal is next heard of. */
		pause(): void {
			clearTimeout(timer);
			timer = undefined;
		},
		/** The page is left, or hidden: what still rests is sent now. */
		leave(): void {
			if (timer !== undefined) void save(true);
		},
		/** The journal is there again. */
		again(): void {
			if (timer === undefined && shelf.getItem(name()) !== null) void save();
		}
	};
}
