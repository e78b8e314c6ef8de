import { undividedName } from '../../engine/index.ts';

/** A version, as far as it tells which alterations it was made with and what each was done to. */
export interface CarriedVersion {
	readonly number: number;
	readonly reason: 'base' | 'carried' | 'withdrawn';
	/** Every alteration that stands in it, in order. */
	readonly alterations: readonly string[];
	readonly steps: readonly {
		readonly alteration: string;
		readonly touched: readonly { readonly feature: string }[];
	}[];
}

/** An alteration that was done to a line, and the first version that has it. */
export interface Touch {
	readonly alteration: string;
	readonly version: number;
}

/**
 * Which alterations were done to any of these edges and darts (whole names), as the versions that first carried them tell, in
 * the order of carrying. A line that was only trimmed by its neighbour was not what was altered.
 */
export function touchedBy(versions: readonly CarriedVersion[], features: readonly string[]): readonly Touch[] {
	const wanted = new Set(features.map(undividedName));
	const met = new Set<string>();
	return versions.flatMap(({ number, steps }) =>
		steps.flatMap(({ alteration, touched }) => {
			if (met.has(alteration)) return [];
			met.add(alteration);
			return touched.some(({ feature }) => wanted.has(undividedName(feature))) ? [{ alteration, version: number }] : [];
		})
	);
}

/** The alterations that stand in just one of two versions: what was done between them, or taken back. */
export function betweenVersions(one: CarriedVersion, other: CarriedVersion): ReadonlySet<string> {
	const [a, b] = [new Set(one.alterations), new Set(other.alterations)];
	return new Set([...one.alterations.filter((id) => !b.has(id)), ...other.alterations.filter((id) => !a.has(id))]);
}
