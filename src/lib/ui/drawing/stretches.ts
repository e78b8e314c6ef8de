/** A run of numbered samples that belong together, first and last included. */
export interface Stretch<Kind> {
	readonly kind: Kind;
	readonly first: number;
	readonly last: number;
}

/** Neighbouring samples of one kind taken together; samples of no kind (`undefined`) end a stretch. */
export function stretchesOf<Kind>(kinds: readonly (Kind | undefined)[]): readonly Stretch<Kind>[] {
	const stretches: Stretch<Kind>[] = [];
	let first = 0;
	for (let i = 1; i <= kinds.length; i++) {
		const kind = kinds[first];
		if (i < kinds.length && kinds[i] === kind) continue;
		if (kind !== undefined) stretches.push({ kind, first, last: i - 1 });
		first = i;
	}
	return stretches;
}
