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

/** The same for something asked of a frozen value and a part of it, which is kept as long as the whole. */
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
