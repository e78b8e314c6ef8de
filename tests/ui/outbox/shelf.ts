import type { Shelf } from '../../../src/lib/ui/outbox/unsent.ts';

/** A storage as browsers have it, that takes so many letters. */
export function shelf(room = Infinity): Shelf & { readonly names: () => readonly string[] } {
	const kept = new Map<string, string>();
	return {
		get length() {
			return kept.size;
		},
		key: (index) => [...kept.keys()][index] ?? null,
		getItem: (name) => kept.get(name) ?? null,
		setItem: (name, text) => {
			if (text.length > room) throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
			kept.set(name, text);
		},
		removeItem: (name) => void kept.delete(name),
		names: () => [...kept.keys()]
	};
}
