/** A form that was not received yet, as this browser keeps it. */
export interface Unsent {
	/** Its own key: the journal does what it asks once, however often it is sent. */
	readonly once: string;
	/** The address that it is sent to, from the root. */
	readonly action: string;
	readonly fields: Readonly<Record<string, string>>;
	/** What it says, for the list: “took in the side seam”. */
	readonly words: string;
	/** ms since 1970. */
	readonly at: number;
	/** What was answered, where it was not kept; it is then not sent again by itself. */
	readonly answer?: Answered;
}

export interface Answered {
	readonly status: number;
	readonly sentence: string;
	/** How the record stands now, in words, where it was changed elsewhere meanwhile. */
	readonly stands?: string;
	/** Its revision now. */
	readonly revision?: number;
}

/** Of the browser’s storage, what is used of it. */
export type Shelf = Pick<Storage, 'length' | 'key' | 'getItem' | 'setItem' | 'removeItem'>;

const before = (place: string) => `unsent ${place} `;

/** Each by itself, so that two pages of one browser do not write over each other; named so that they sort as they were sent. */
const nameOf = (place: string, { at, once }: Unsent) => `${before(place)}${String(at).padStart(15, '0')} ${once}`;

/** The forms of a page that were not received yet, in the order in which they were sent. */
export function unsentOf(shelf: Shelf, place: string): readonly Unsent[] {
	const names = Array.from({ length: shelf.length }, (_, index) => shelf.key(index) ?? '');
	return names
		.filter((name) => name.startsWith(before(place)))
		.sort()
		.flatMap((name) => {
			const text = shelf.getItem(name);
			return text === null ? [] : [JSON.parse(text) as Unsent];
		});
}

/** Puts a form by, or what was answered to it. False where this browser keeps nothing: its storage is full, or closed to pages. */
export function putUnsent(shelf: Shelf, place: string, unsent: Unsent): boolean {
	return putBy(shelf, nameOf(place, unsent), JSON.stringify(unsent));
}

export function takeUnsent(shelf: Shelf, place: string, unsent: Unsent): void {
	shelf.removeItem(nameOf(place, unsent));
}

/** Puts a text by. False where the storage is full or closed; any other fault is thrown on. */
export function putBy(shelf: Shelf, name: string, text: string): boolean {
	try {
		shelf.setItem(name, text);
		return true;
	} catch (fault) {
		if (fault instanceof DOMException && ['QuotaExceededError', 'SecurityError'].includes(fault.name)) return false;
		throw fault;
	}
}

/**
 * Whether one that was answered otherwise than wished can still be kept: over what stands now, as a new one where what it changes
 * is gone, or by sending it once more where the server had failed.
 */
export function canStillBeKept({ action, answer }: Unsent): boolean {
	if (!answer) return false;
	const { status, revision } = answer;
	return revision !== undefined || status >= 500 || (status === 404 && /\?\/(keep|observe)\b/.test(action));
}

/** Whether it is a hand that was wrong, which can be put right where it was typed. */
export const canBePutRight = ({ action, answer }: Unsent): boolean =>
	answer?.status === 400 && /\?\/keep\b/.test(action);
