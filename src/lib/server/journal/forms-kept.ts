import { eq, lt } from 'drizzle-orm';
import { formsKept } from '../database/schema/steps.ts';
import { kept, refusedFor } from './answers.ts';
import type { Journal } from './journal.ts';
import type { Store } from './store.ts';

/** How long a form’s key is remembered: longer than a device lies in a drawer with something that was not sent. */
const days = 60;

/** Letters of a key, at most. */
const longest = 64;

/** Doing what a form asks once, however often it is sent. */
export function formActs(store: Store): Pick<Journal, 'once' | 'cameTo'> {
	const { db, writing } = store;
	const cameTo = (key: string) => db.select().from(formsKept).where(eq(formsKept.once, key)).get()?.came;
	return {
		cameTo,
		once: (key, act) =>
			writing(() => {
				const before = cameTo(key);
				if (before !== undefined) return kept({ id: before });
				if (key.length > longest) return refusedFor('This form has lost its place. Load the page again.');
				const answer = act();
				if (!answer.ok) return answer;
				const at = store.now();
				const old = new Date(Date.parse(at) - days * 24 * 60 * 60 * 1000).toISOString();
				db.delete(formsKept).where(lt(formsKept.at, old)).run();
				const { id } = answer.value;
				db.insert(formsKept).values({ once: key, at, came: id }).run();
				return kept({ id });
			})
	};
}
