/**
 * Remembers what was computed for a frozen value, for as long as that value is alive. Invisible from outside: the answer is
 * the one that `compute` would give again.
 */
export function remembered<K extends object, V>(compute: (key: K) => V): (key: K) => V {
	const known = new WeakMap<K, { readonly value: V }>();
	return (key) => {
		let found = known.get(key);
		if (found === undefined) known.set(key, (found = { value: compute(key) }));
		return found.value;
	};
}

/** The same for something asked of a frozen value by name. */
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

/** The same for something asked of two frozen values. */
export function rememberedForBoth<K extends object, L extends object, V>(
	compute: (first: K, second: L) => V
): (first: K, second: L) => V {
	const known = remembered<K, WeakMap<L, { readonly value: V }>>(() => new WeakMap());
	return (first, second) => {
		const values = known(first);
		let found = values.get(second);
		if (found === undefined) values.set(second, (found = { value: compute(first, second) }));
		return found.value;
	};
}
