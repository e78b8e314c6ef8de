import type { Shelf } from './unsent.ts';

/** Keeps nothing: each thing that is put by is refused, as by a full one. */
const none: Shelf = {
	length: 0,
	key: () => null,
	getItem: () => null,
	setItem: () => {
		throw new DOMException('This browser keeps nothing for pages.', 'SecurityError');
	},
	removeItem: () => {}
};

/** The browser’s storage; where it is closed to pages, or `here` is no browser, one that keeps nothing. */
export function browserShelf(here: boolean): Shelf {
	if (!here) return none;
	try {
		return localStorage;
	} catch (fault) {
		if (fault instanceof DOMException && fault.name === 'SecurityError') return none;
		throw fault;
	}
}
