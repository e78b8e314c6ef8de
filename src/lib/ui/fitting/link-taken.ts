import type { Typed } from './typed.ts';

/** A link to another state of the page that it stands on. */
export interface LinkTaken {
	readonly typed: Typed;
	/** The part of the page that it leads to: `#in-hand`. */
	readonly hash: string;
	/** It changes this field alone, whatever else is typed by now. */
	readonly only?: string;
}

/** The link that a plain click follows, if it leads to a state of the page at `here`; undefined for every other click. */
export function linkTaken(event: MouseEvent, here: string): LinkTaken | undefined {
	const plain = event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;
	const link = plain && !event.defaultPrevented && event.target instanceof Element && event.target.closest('a');
	const href = link && link.getAttribute('href');
	if (!href || href.startsWith('#')) return undefined;
	const url = new URL(href, location.href);
	if (url.origin !== location.origin || url.pathname !== here || url.search === '') return undefined;
	const only = link.getAttribute('data-only');
	return { typed: Object.fromEntries(url.searchParams), hash: url.hash, ...(only && { only }) };
}
