import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { check } from '../../../src/lib/engine/review/check.ts';
import type { CheckOptions } from '../../../src/lib/engine/review/inquiry.ts';
import type { Query } from '../../../src/lib/engine/review/types.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';

/** The draft with alterations carried, in their JSON form; thrown: one that is not carried. */
export function altered(draft: Draft, ...alterations: object[]): Draft {
	const { draft: result, unplaced } = carryAlterations(draft, alterations.map(parseAlteration));
	if (unplaced.length > 0) throw new Error(unplaced.map(({ sentence }) => sentence).join(' '));
	return result;
}

/** The queries of one code. */
export function asked(code: string, draft: Draft, options?: CheckOptions): Query[] {
	return check(draft, options).filter((query) => query.code === code);
}

/** The draft with a query settled by one of its own suggestions, carried as it would come from a file. */
export function settled(draft: Draft, query: Query, which = 0): Draft {
	return altered(draft, JSON.parse(JSON.stringify(query.settle[which])) as object);
}
