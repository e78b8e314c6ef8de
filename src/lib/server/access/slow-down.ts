/** Tries that an address has at once, and how long it takes until it has another, in ms. */
const bucket = { holds: 6, refills: 20_000 };

/** Wrong tries in a row before the waiting begins; it then doubles with each, from two seconds to a quarter of an hour. */
const free = 3;
const wait = { first: 2_000, longest: 15 * 60_000 };

/** Wrong tries are forgotten after an hour without one. */
const forgotten = 60 * 60_000;

/** The most addresses that are remembered; the one that was heard of longest ago goes first. */
const mostAddresses = 5_000;

interface Tries {
	/** Tries it had at the instant `at`. */
	left: number;
	at: number;
	/** Wrong ones in a row, and the instant of the last. */
	wrong: number;
	lastWrong: number;
}

export interface SlowDown {
	/** Takes a try; gives the milliseconds to wait first, 0 when it may be made now. */
	ask(address: string): number;
	wrong(address: string): void;
	right(address: string): void;
}

/**
 * Slows down guessing, address by address: a bucket that holds six tries and gets one back every twenty seconds, and after
 * the third wrong one in a row a wait that doubles. While an address has to wait, nothing that it sends is tried, so that
 * the right word does not get through either. `now` in milliseconds.
 */
export function slowDown(now: () => number): SlowDown {
	const known = new Map<string, Tries>();

	const triesOf = (address: string): Tries => {
		const instant = now();
		const tries = known.get(address) ?? { left: bucket.holds, at: instant, wrong: 0, lastWrong: instant };
		tries.left = Math.min(bucket.holds, tries.left + (instant - tries.at) / bucket.refills);
		tries.at = instant;
		if (instant - tries.lastWrong > forgotten) tries.wrong = 0;
		known.delete(address);
		known.set(address, tries);
		if (known.size > mostAddresses) known.delete(known.keys().next().value!);
		return tries;
	};

	return {
		ask(address) {
			const tries = triesOf(address);
			const doubled = tries.wrong < free ? 0 : Math.min(wait.longest, wait.first * 2 ** (tries.wrong - free));
			const until = Math.max(tries.lastWrong + doubled - tries.at, (1 - tries.left) * bucket.refills);
			if (until > 0) return until;
			tries.left -= 1;
			return 0;
		},
		wrong(address) {
			const tries = triesOf(address);
			tries.wrong += 1;
			tries.lastWrong = tries.at;
		},
		right(address) {
			known.delete(address);
		}
	};
}
