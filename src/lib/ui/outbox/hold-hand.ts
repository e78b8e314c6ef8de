import type { Typed } from '../fitting/typed.ts';
import type { HandSaved } from './ask-fitting.ts';
import { nameOfHand } from './same-hand.ts';
import type { Sent } from './send.ts';
import { putBy, type Shelf } from './unsent.ts';

/** What is in the hand as this browser keeps it until the journal has it; no fields: the hand was emptied. */
interface PutBy {
	readonly typed: Typed | null;
}

interface Hands {
	readonly shelf: Shelf;
	/** The page that it is of, from the root. */
	readonly place: string;
	/** Sends it; `leaving`: the page may be gone before it is answered. */
	readonly send: (typed: Typed | null, leaving: boolean) => Promise<Sent<HandSaved>>;
	/** Told whenever the journal has kept it. */
	readonly saved: () => void;
}

/** A hand that is on its way as a form. */
export interface Keeping {
	/** What it is, as `nameOfHand` says it. */
	readonly name: string;
	/** Whether the same is in the hand still, however much more was typed of it. */
	readonly same: () => boolean;
	/** It is answered, or waits: the hand is empty if it was kept, else it is held as before. */
	readonly done: (kept: boolean) => void;
}

/** How long the hand rests before it is saved, in ms: not at each letter. */
const rest = 250;

/** How long a form waits for a hand that is on its way before it, in ms: on a network that is lost that may hang for much longer. */
const patience = 3000;

/**
 * Saves what is in the hand at each step: in the browser at once, in the journal when the hand rests or the page is left. What the
 * journal has not answered yet stays in the browser. The saves of a page are sent one after another, but for one that is sent as it
 * is left: an older one never comes last for good. While a hand is being kept nothing more of it is sent, or it would be in the hand
 * again after.
 */
export function holdHand({ shelf, place, send, saved }: Hands) {
	const name = `hand ${place}`;
	let now: string | undefined;
	/** What of it was kept: it stands on the page until that is drawn anew, and is not in the hand any more. */
	let keptText: string | undefined;
	/** What was typed here and the journal has not answered; the shelf has it as well, unless that is full. */
	let unsaved: string | undefined;
	let timer: ReturnType<typeof setTimeout> | undefined;
	/** Ends when the saves are answered, or not received. */
	let going: Promise<void> = Promise.resolve();
	let onTheWay = 0;
	let keeping = 0;
	/** A form did not wait any longer for what was on its way before it. */
	let overtaken = false;

	const isEmpty = () => now === undefined || now === keptText;
	const notSaved = () => unsaved ?? shelf.getItem(name) ?? undefined;

	function stop() {
		clearTimeout(timer);
		timer = undefined;
	}

	function put(text: string) {
		unsaved = text;
		// An older one must not stand there for it.
		if (!putBy(shelf, name, text)) shelf.removeItem(name);
		stop();
		if (keeping === 0) timer = setTimeout(save, rest);
	}

	/** Its own, not what another page of this browser has put by since. */
	function takeAway() {
		const text = unsaved;
		if (text !== undefined) forget(text);
	}

	function next(work: () => Promise<void>) {
		const worked = going.then(work);
		going = new Promise((resolve) => void worked.finally(resolve));
	}

	function save() {
		stop();
		next(async () => {
			const text = notSaved();
			if (keeping > 0 || text === undefined) return;
			if (await isSaved(text, false)) forget(text);
		});
	}

	/** The journal has this text: nothing is to be sent of it any more. What was typed meanwhile is on its way by itself. */
	function forget(text: string) {
		if (unsaved === text) unsaved = undefined;
		if (shelf.getItem(name) === text) shelf.removeItem(name);
	}

	async function isSaved(text: string, leaving: boolean): Promise<boolean> {
		onTheWay++;
		const sent = await send((JSON.parse(text) as PutBy).typed, leaving).finally(() => onTheWay--);
		if (sent.away || sent.answer === 'not now') return false;
		if (sent.answer === 'saved') saved();
		return true;
	}

	return {
		/** The fields now; null where nothing is in the hand. */
		hold(typed: Typed | null): void {
			if (typed === null && isEmpty()) {
				now = keptText = undefined;
				return;
			}
			const text = JSON.stringify({ typed } satisfies PutBy);
			if (text === now) return;
			now = text;
			keptText = undefined;
			put(text);
		},
		/** The fields as the journal has them: nothing is to be sent of them as long as nothing is typed. */
		has(typed: Typed): void {
			now = JSON.stringify({ typed } satisfies PutBy);
		},
		/** The fields as they were held last; null where nothing was, undefined where it was kept. */
		held(): Typed | null | undefined {
			return now === undefined || isEmpty() ? undefined : (JSON.parse(now) as PutBy).typed;
		},
		/** What is in the hand is sent as a form, and put by as one: that is all that is sent of it now. */
		keep(): Keeping {
			const sent = now;
			const same = () => nameOf(sent) === nameOf(now);
			stop();
			keeping++;
			overtaken = false;
			takeAway();
			return {
				name: nameOf(sent),
				same,
				done(kept) {
					keeping--;
					if (!same() || !kept) {
						if (keeping === 0 && now !== undefined) put(now);
						return;
					}
					keptText = now;
					takeAway();
					// A save that comes after the keeping puts it into the hand once more: it is let go again.
					if (onTheWay > 0 || overtaken) put(JSON.stringify({ typed: null } satisfies PutBy));
				}
			};
		},
		/** What was put by and the journal has not answered: fields, or null where the hand was emptied. */
		putBy(): Typed | null | undefined {
			const text = notSaved();
			return text === undefined ? undefined : (JSON.parse(text) as PutBy).typed;
		},
		/** Sends what still rests, and ends when that is answered, or after three seconds: what is sent then comes after it. */
		async settled(): Promise<void> {
			if (timer !== undefined) save();
			let late: ReturnType<typeof setTimeout> | undefined;
			const waited = new Promise<boolean>((resolve) => (late = setTimeout(() => resolve(true), patience)));
			const isLate = await Promise.race([going.then(() => false), waited]);
			clearTimeout(late);
			if (isLate) overtaken = true;
		},
		/** The page is left, or hidden: what is not answered is sent now, beside what is on its way. */
		leave(): void {
			const text = notSaved();
			if (keeping > 0 || text === undefined) return;
			stop();
			// Which of two comes last is not known: it stays put by, and is sent once more when the journal is next heard of.
			const alone = onTheWay === 0;
			const last = isSaved(text, true);
			next(async () => {
				if ((await last) && alone) forget(text);
			});
		},
		/** The journal is there again. */
		again(): void {
			if (timer === undefined && keeping === 0 && onTheWay === 0 && notSaved() !== undefined) save();
		}
	};
}

function nameOf(text: string | undefined): string {
	const typed = text === undefined ? null : (JSON.parse(text) as PutBy).typed;
	return typed === null ? '' : nameOfHand(typed);
}
