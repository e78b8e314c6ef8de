import { draftDifferences, type DraftDifference } from './draft-differences.ts';
import { thisEngine, type Engine } from './engine.ts';
import type { Journal } from './journal/journal.ts';
import type { Garment, Version } from './journal/records.ts';

/** What came of replaying one version. */
export interface Replay {
	readonly garment: Garment;
	readonly version: number;
	/** The engine that wrote the snapshot. */
	readonly engineVersion: string;
	/** How many alterations were carried from the base draft. */
	readonly alterations: number;
	/** Empty when the replay is the snapshot. */
	readonly differences: readonly DraftDifference[];
}

/**
 * Replays every version of every garment from its base draft through all alterations that stand in it, and holds the result
 * against the frozen draft. Writes nothing. Garments in the order of their numbers, versions in theirs.
 */
export function verifyJournal(journal: Journal, engine: Engine = thisEngine): readonly Replay[] {
	const byNumber = [...journal.garments()].sort((a, b) => a.number - b.number);
	return byNumber.flatMap((garment) => {
		const base = journal.version(garment.id, 0)!;
		return journal
			.garment(garment.id)!
			.versions.map(({ number }) => replay(journal, engine, garment, base, journal.version(garment.id, number)!));
	});
}

function replay(journal: Journal, engine: Engine, garment: Garment, base: Version, version: Version): Replay {
	const standing = version.alterations.map((id) => journal.alteration(id)!);
	const { draft, unplaced } = engine.carry(
		base.draft,
		standing.map(({ intent }) => intent),
		{ queries: false }
	);
	return {
		garment,
		version: version.number,
		engineVersion: version.engineVersion,
		alterations: standing.length,
		differences: [
			...unplaced.map(({ alteration, sentence }) => ({
				where: `alteration ${alteration}`,
				sentence: `An alteration that was carried finds no place now. ${sentence}`
			})),
			...draftDifferences(draft, version.draft)
		]
	};
}
