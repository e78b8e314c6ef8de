import { findAlteration } from './alterations.ts';
import type { Alteration, VersionSummary } from './records.ts';
import type { Store } from './store.ts';

/** Every alteration that stands in a version, in order, from the base draft on. */
export function standingAlterations(store: Store, { alterations }: VersionSummary): readonly Alteration[] {
	return alterations.map((id) => findAlteration(store, id)!);
}
