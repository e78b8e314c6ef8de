import { createHash, randomBytes } from 'node:crypto';
import { and, desc, eq, isNotNull, isNull, lt, or } from 'drizzle-orm';
import { passphrase, signIns } from '../database/schema/access.ts';
import type { Store } from '../journal/store.ts';
import type { Access, SignIn } from './access.ts';

/** A device that is not used for so long is no longer signed in, in ms: twelve hours. */
const longestIdle = 12 * 60 * 60_000;

/** How long it is remembered that a device was signed out, in ms: thirty days. */
const remembered = 30 * 24 * 60 * 60_000;

/** That a device is used is written down once a minute at the most, in ms. */
const noted = 60_000;

const hashOf = (token: string): string => createHash('sha256').update(token).digest('hex');

export function accessOf({ db, newId, now }: Store): Access {
	const before = (ms: number) => new Date(Date.parse(now()) - ms).toISOString();

	/** Forgets those that have been idle, and those signed out long ago. */
	const sweep = () =>
		db
			.delete(signIns)
			.where(
				or(
					and(isNull(signIns.endedAt), lt(signIns.seenAt, before(longestIdle))),
					and(isNotNull(signIns.endedAt), lt(signIns.endedAt, before(remembered)))
				)
			)
			.run();
	const signOutAll = () => void db.update(signIns).set({ endedAt: now() }).where(isNull(signIns.endedAt)).run();

	return {
		passphrase() {
			const row = db.select().from(passphrase).get();
			return row && { salt: row.salt, hash: row.hash, cost: row.cost };
		},
		setPassphrase(kept) {
			db.transaction(() => {
				db.delete(passphrase).run();
				db.insert(passphrase)
					.values({ one: 1, ...kept, setAt: now() })
					.run();
				signOutAll();
			});
		},
		signIn(device, address) {
			sweep();
			const token = randomBytes(32).toString('base64url');
			const signIn = { id: newId(), device, address, beganAt: now(), seenAt: now() };
			db.insert(signIns)
				.values({ ...signIn, tokenHash: hashOf(token) })
				.run();
			return { token, signIn };
		},
		signedIn(token, address, byItself = false) {
			const row = db
				.select()
				.from(signIns)
				.where(eq(signIns.tokenHash, hashOf(token)))
				.get();
			if (!row) return undefined;
			if (row.endedAt !== null) return 'signed-out';
			if (row.seenAt < before(longestIdle)) return undefined;
			const instant = now();
			if (byItself || (row.seenAt > before(noted) && row.address === address)) return shown(row);
			db.update(signIns).set({ seenAt: instant, address }).where(eq(signIns.id, row.id)).run();
			return { ...shown(row), seenAt: instant, address };
		},
		signIns() {
			sweep();
			return db.select().from(signIns).where(isNull(signIns.endedAt)).orderBy(desc(signIns.seenAt)).all().map(shown);
		},
		signOut: (id) =>
			void db
				.update(signIns)
				.set({ endedAt: now() })
				.where(and(eq(signIns.id, id), isNull(signIns.endedAt)))
				.run(),
		signOutAll
	};
}

const shown = ({ tokenHash: _, endedAt: __, ...signIn }: typeof signIns.$inferSelect): SignIn => signIn;
