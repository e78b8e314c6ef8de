/**
 * Remembers what was computed for a value that never changes, for as long as that value is alive. Invisible from outside: the answer is
 * the one that `compute` would give again.
 *
 * What is known is noted on the value itself, in a private field that nothing else can see, list or copy. A WeakMap would do the
 * same, but each look into one costs several times as much, and what it holds outlives its key until the next great clearing up.
 */
export function remembered<K extends object, V>(compute: (key: K) => V): (key: K) => V {
	class Noted extends Given {
		readonly #value: V;
		private constructor(key: K, value: V) {
			super(key);
			this.#value = value;
		}
		static of(this: void, key: K): V {
			if (#value in key) return key.#value;
			const value = compute(key);
			new Noted(key, value);
			return value;
		}
	}
	return Noted.of;
}

/** A class whose constructor gives back what it is given, so that a class built on it notes its fields on that. */
class Given {
	constructor(key: object) {
		return key;
	}
}

/** The same for something asked of a value by name. */
export function rememberedByName<K extends object, V>(
	compute: (key: K, name: string) => V
): (key: K, name: string) => V {
	const known = remembered<K, Map<string, { readonly value: V }>>(() => new Map());
	return (key, name) => {
		const names = known(key);
		let found = names.get(name);
		if (found === undefined) names.set(name, (found = { value: compute(key, name) }));
		return found.value;
	};
}

/** The same for something asked of a value and a part of it, which is kept as long as the whole. */
export function rememberedOfPart<K extends object, L extends object, V>(
	compute: (whole: K, part: L) => V
): (whole: K, part: L) => V {
	const known = remembered<K, Map<L, { readonly value: V }>>(() => new Map());
	return (whole, part) => {
		const values = known(whole);
		let found = values.get(part);
		if (found === undefined) values.set(part, (found = { value: compute(whole, part) }));
		return found.value;
	};
}
