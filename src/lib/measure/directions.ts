/** What an alteration moved, as far as its words go. */
export type Moved = 'seam' | 'neck' | 'armhole' | 'hem' | 'open-edge' | 'dart' | 'length';

interface Words {
	readonly direction: string;
	readonly done: string;
}

/** Cloth taken away first, cloth added second. */
const wordsFor: Readonly<Record<Moved, readonly [Words, Words]>> = {
	seam: [
		{ direction: 'in', done: 'took in' },
		{ direction: 'out', done: 'let out' }
	],
	neck: [
		{ direction: 'lower', done: 'chalked lower' },
		{ direction: 'higher', done: 'chalked higher' }
	],
	armhole: [
		{ direction: 'lower', done: 'chalked lower' },
		{ direction: 'higher', done: 'chalked higher' }
	],
	hem: [
		{ direction: 'shorter', done: 'made shorter' },
		{ direction: 'longer', done: 'made longer' }
	],
	'open-edge': [
		{ direction: 'taken off', done: 'took off' },
		{ direction: 'added', done: 'added' }
	],
	dart: [
		{ direction: 'narrower', done: 'made narrower' },
		{ direction: 'wider', done: 'made wider' }
	],
	length: [
		{ direction: 'shorter', done: 'made shorter' },
		{ direction: 'longer', done: 'made longer' }
	]
};

/**
 * The word for which way it went, present for the drawing and past for the list, from an amount in mm: positive is cloth
 * added (for a dart, a wider one).
 */
export function directionOf(moved: Moved, mm: number): string {
	return mm === 0 ? 'not moved' : wordsFor[moved][mm < 0 ? 0 : 1].direction;
}

export function actDone(moved: Moved, mm: number): string {
	return mm === 0 ? 'left as it is' : wordsFor[moved][mm < 0 ? 0 : 1].done;
}
