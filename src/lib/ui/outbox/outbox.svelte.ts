import { answeredOf, asksToSignIn, wasKept, type FormResult } from './answered.ts';
import { randomKey } from './random-key.ts';
import type { Sent } from './send.ts';
import { putUnsent, takeUnsent, unsentOf, type Answered, type Shelf, type Unsent } from './unsent.ts';

type Fields = Readonly<Record<string, string>>;

/** A form that is sent, and what it is called while it is not received. */
export interface Posted {
	readonly action: string;
	readonly fields: Fields;
	readonly words: string;
}

/** What became of a form that was just sent: it is answered, or it waits in this browser, or it could be put by nowhere. */
export type Came = { readonly result: FormResult } | 'waits' | 'not put by';

interface Hands {
	/** Where forms are put by. */
	readonly shelf: Shelf;
	/** The page that they are of, from the root. */
	readonly place: string;
	/** Told when forms that had waited were received, or answered. */
	readonly received: () => Promise<void>;
	/** What is to be in the journal before a form is sent: ends when it is, or is not waited for any longer. */
	readonly first?: () => Promise<void>;
	readonly send: (action: string, fields: Fields) => Promise<Sent<FormResult>>;
	readonly now?: () => number;
}

/** A form that is put by nowhere: it is sent in its turn, or not at all. */
interface OnlyNow {
	readonly unsent: Unsent;
	readonly tell: (came: Came) => void;
}

/** A page that waits for an answer. */
interface Asked {
	readonly tell: (came: Came) => void;
	readonly shows: () => boolean;
}

/** Said with a form that its page still shows: nothing was taken in the hand since. */
const inHand = { inHand: 'yes' };

/** ms until what waits is tried again: soon at first, then every half minute. */
const pauses = [1000, 2000, 4000, 8000, 15_000, 30_000];

/**
 * The forms of a page on their way to the journal, in order. Each is put by in the browser before it is sent and taken away when
 * it is answered: whatever happens in between, it is sent again, with its own key, until it has been answered once.
 */
export class Outbox {
	/** Those that wait, and those that were answered otherwise than wished, in order. */
	unsent = $state.raw<readonly Unsent[]>([]);
	/** Nothing was reached when it was last tried. */
	away = $state(false);
	/** This browser has kept nothing when it should have. */
	full = $state(false);
	/** A form that is not put by was not received. */
	notDone = $state(false);

	readonly #hands: Hands;
	readonly #send: Hands['send'];
	readonly #now: () => number;
	#sending = false;
	#sent: Promise<void> = Promise.resolve();
	#stopped = false;
	#tries = 0;
	#timer: ReturnType<typeof setTimeout> | undefined;
	#lastAt = 0;
	/** Forms whose page waits for the answer. */
	#asked = $state.raw<Readonly<Record<string, Asked>>>({});
	#onlyNow: readonly OnlyNow[] = [];
	/** What was answered, where this browser could not put it by. */
	readonly #told: Record<string, Answered> = {};

	constructor(hands: Hands) {
		this.#hands = hands;
		this.#send = hands.send;
		this.#now = hands.now ?? Date.now;
	}

	/** Looks what an earlier page put by, and sends it. */
	async open(): Promise<void> {
		this.#look();
		await this.flush();
	}

	get waiting(): readonly Unsent[] {
		return this.unsent.filter(({ answer }) => answer === undefined);
	}

	/** Whether a form of this page is on its way. */
	get asking(): boolean {
		return Object.keys(this.#asked).length + this.#onlyNow.length > 0;
	}

	/** Those that are told as not sent: not one that is just on its way. */
	get late(): readonly Unsent[] {
		return this.unsent.filter(({ once }) => !(once in this.#asked));
	}

	/**
	 * Puts a form by and sends it after those that wait; `later: false`: it is sent now, or not at all. `shows`: whether its page still
	 * shows the form when it is answered; one that is refused is else kept in the list.
	 */
	async post(posted: Posted, { later = true, shows = (): boolean => true } = {}): Promise<Came> {
		const { shelf, place } = this.#hands;
		this.#lastAt = Math.max(this.#now(), this.#lastAt + 1);
		const unsent: Unsent = { ...posted, once: randomKey(), at: this.#lastAt };
		this.notDone = false;
		if (later) this.full = !putUnsent(shelf, place, unsent);
		if (!later || this.full) return this.#sendOnlyNow(unsent);
		const came = new Promise<Came>((tell) => (this.#asked = { ...this.#asked, [unsent.once]: { tell, shows } }));
		this.#look();
		void this.flush();
		return came;
	}

	/** Sends everything that waits, one after another, until something is not received. */
	async flush(): Promise<void> {
		if (!this.#sending) this.#sent = this.#sendAll();
		await this.#sent;
	}

	async #sendAll(): Promise<void> {
		this.#sending = true;
		clearTimeout(this.#timer);
		let others = false;
		try {
			this.#look();
			for (let next = this.#next(); next && !this.#stopped; next = this.#next()) {
				if (this.#hands.first) await this.#hands.first();
				const { once } = next;
				const onlyNow = this.#onlyNow.find(({ unsent }) => unsent.once === once);
				const shown = onlyNow !== undefined || (this.#asked[once]?.shows() ?? false);
				const sent = await this.#send(next.action, { ...next.fields, once, ...(shown && inHand) });
				this.away = sent.away;
				if (sent.away) break;
				const signIn = asksToSignIn(sent.answer);
				if (!signIn) this.#tries = 0;
				if (onlyNow) {
					this.#onlyNow = this.#onlyNow.filter((one) => one !== onlyNow);
					this.notDone = sent.answer.type === 'error';
					onlyNow.tell({ result: sent.answer });
				} else {
					const told = signIn ? this.#tell(next, { result: sent.answer }) : this.#answered(next, sent.answer);
					// The page is read again; where it is asked who this is, that leads there.
					if (!told) others = true;
				}
				if (signIn) break;
			}
		} finally {
			this.#sending = false;
			// Those as well that another page of this browser has sent meanwhile: here they are told of by what the journal has.
			for (const once of Object.keys(this.#asked)) this.#tell({ once }, 'waits');
			this.notDone ||= this.#onlyNow.length > 0;
			for (const { tell } of this.#onlyNow) tell('not put by');
			this.#onlyNow = [];
			if (this.waiting.length > 0) this.#tryAgain();
		}
		if (others) await this.#hands.received();
	}

	/** In the order in which they were kept: what a form asks is meant of what those before it come to. */
	#next(): Unsent | undefined {
		return [...this.waiting, ...this.#onlyNow.map(({ unsent }) => unsent)].sort((a, b) => a.at - b.at)[0];
	}

	/** Sends one that was answered otherwise than wished once more: over what stands now, or as a new one where that is gone. */
	async keepMine(unsent: Unsent): Promise<void> {
		const { answer, ...mine } = unsent;
		const { alteration: _, observation: __, revision: ___, ...anew } = mine.fields;
		const fields =
			answer?.status === 404
				? anew
				: { ...mine.fields, ...(answer?.revision !== undefined && { revision: String(answer.revision) }) };
		delete this.#told[mine.once];
		putUnsent(this.#hands.shelf, this.#hands.place, { ...mine, fields });
		await this.flush();
	}

	/** Lets a form go that is not wanted any more. */
	letGo(unsent: Unsent): void {
		takeUnsent(this.#hands.shelf, this.#hands.place, unsent);
		this.#look();
	}

	/** Stops trying: the page is left. What waits is sent when it is opened again. */
	stop(): void {
		this.#stopped = true;
		clearTimeout(this.#timer);
	}

	/** Whether the form's own page has been told the answer; else it stays to be looked at where it was not kept. */
	#answered(unsent: Unsent, result: FormResult): boolean {
		const { shelf, place } = this.#hands;
		const shown = this.#asked[unsent.once]?.shows() ?? false;
		const told = this.#tell(unsent, { result });
		if (wasKept(result) || (shown && result.type === 'failure')) takeUnsent(shelf, place, unsent);
		else {
			const answer = answeredOf(result);
			// Another page of this browser may have been told the same, and have taken it away.
			const isThere = unsentOf(shelf, place).some(({ once }) => once === unsent.once);
			if (isThere && !putUnsent(shelf, place, { ...unsent, answer })) this.#told[unsent.once] = answer;
		}
		this.#look();
		return told;
	}

	#tell({ once }: { readonly once: string }, came: Came): boolean {
		const { [once]: asked, ...others } = this.#asked;
		this.#asked = others;
		asked?.tell(came);
		return asked !== undefined;
	}

	#sendOnlyNow(unsent: Unsent): Promise<Came> {
		const came = new Promise<Came>((tell) => (this.#onlyNow = [...this.#onlyNow, { unsent, tell }]));
		void this.flush();
		return came;
	}

	#tryAgain(): void {
		if (this.#stopped) return;
		const pause = pauses[Math.min(this.#tries++, pauses.length - 1)];
		clearTimeout(this.#timer);
		this.#timer = setTimeout(() => void this.flush(), pause);
	}

	#look(): void {
		const all = unsentOf(this.#hands.shelf, this.#hands.place);
		this.unsent = all.map((one) => {
			const answer = one.answer ?? this.#told[one.once];
			return answer === undefined ? one : { ...one, answer };
		});
	}
}
