import { and, desc, eq, inArray } from 'drizzle-orm';
import { hands } from '../database/schema/steps.ts';
import { alterationsOf } from './alterations.ts';
import { closed, kept, unknown } from './answers.ts';
import { findFitting, fittingIsClosed } from './fittings.ts';
import type { Journal } from './journal.ts';
import type { HeldHand } from './step-records.ts';
import type { Store } from './store.ts';

/** As many devices as are ever in one fitting room; the one not heard of longest gives way. */
const mostHands = 8;

/** What is in the hand: kept apart from the record, so that saving it makes nobody’s form or preview old. */
export function handActs(store: Store): Pick<Journal, 'hands' | 'holdHand' | 'letGoOfHand'> {
	const { db, now, writing } = store;
	return {
		hands: (fittingId) => store.reading(() => handsOf(store, fittingId)),

		holdHand: (fittingId, device, typed) =>
			writing(() => {
				const fitting = findFitting(store, fittingId);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				const savedAt = now();
				db.insert(hands)
					.values({ fitting: fittingId, device, typed, savedAt })
					.onConflictDoUpdate({ target: [hands.fitting, hands.device], set: { typed, savedAt } })
					.run();
				const [held, ...others] = handsOf(store, fittingId);
				const tooMany = others.slice(mostHands - 1).map((other) => other.device);
				db.delete(hands)
					.where(and(eq(hands.fitting, fittingId), inArray(hands.device, tooMany)))
					.run();
				return kept(held!);
			}),

		letGoOfHand: (fittingId, device) =>
			writing(() => {
				const fitting = findFitting(store, fittingId);
				if (!fitting) return unknown('fitting');
				db.delete(hands)
					.where(and(eq(hands.fitting, fittingId), eq(hands.device, device)))
					.run();
				return kept(fitting);
			})
	};
}

/** Latest first. */
export function handsOf(store: Store, fittingId: string): readonly HeldHand[] {
	const rows = store.db
		.select()
		.from(hands)
		.where(eq(hands.fitting, fittingId))
		.orderBy(desc(hands.savedAt), hands.device)
		.all();
	if (rows.length === 0) return [];
	const numbers = new Map(alterationsOf(store, fittingId).map(({ id, number }) => [id, number]));
	const next = Math.max(0, ...numbers.values()) + 1;
	return rows.map((row) => ({ ...row, number: numbers.get(row.typed.alteration ?? '') ?? next }));
}
