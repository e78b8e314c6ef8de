import { desc, eq } from 'drizzle-orm';
import { notes } from '../database/schema/log.ts';
import { kept, refused, refusedFor, stale, unknown } from './answers.ts';
import { findGarment } from './garments.ts';
import type { Journal } from './journal.ts';
import type { Note } from './records.ts';
import { checkName, checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { findWearer, wearerIsForgotten } from './wearers.ts';

/** Newest first. */
export function notesAbout({ db }: Store, about: { garment: string } | { wearer: string }): readonly Note[] {
	const which = 'garment' in about ? eq(notes.garment, about.garment) : eq(notes.wearer, about.wearer);
	return db.select().from(notes).where(which).orderBy(desc(notes.at)).all();
}

/** The last one written about any garment or wearer. */
export function latestNote({ db }: Store): Note | null {
	return db.select().from(notes).orderBy(desc(notes.at)).limit(1).get() ?? null;
}

export function noteActs(store: Store): Pick<Journal, 'addNote' | 'reviseNote'> {
	const { db, newId, now, writing } = store;
	const find = (id: string) => db.select().from(notes).where(eq(notes.id, id)).get();
	return {
		addNote: ({ garment, wearer, feature, text }) =>
			writing(() => {
				if (garment === undefined && wearer === undefined) return unknown('garment or wearer');
				if (garment !== undefined && !findGarment(store, garment)) return unknown('garment');
				const about = wearer === undefined ? undefined : findWearer(store, wearer);
				if (wearer !== undefined && !about) return unknown('wearer');
				if (about?.forgottenAt) return refusedFor(wearerIsForgotten);
				const problems = textProblems(text, feature);
				if (problems.length > 0) return refused(problems);
				const id = newId();
				db.insert(notes).values({ id, garment, wearer, feature, text, at: now() }).run();
				return kept(find(id)!);
			}),

		reviseNote: (id, revision, text) =>
			writing(() => {
				const note = find(id);
				if (!note) return unknown('note');
				if (note.revision !== revision) return stale(note);
				const problems = textProblems(text);
				if (problems.length > 0) return refused(problems);
				db.update(notes)
					.set({ text, revision: revision + 1 })
					.where(eq(notes.id, id))
					.run();
				return kept(find(id)!);
			})
	};
}

const textProblems = (text: string, feature?: string) =>
	problemsOf(
		text.trim() === '' ? { field: 'text', sentence: 'Write the note, or leave it.' } : checkWords('text', text),
		checkName('feature', feature, 'Say which piece or seam the note is about.')
	);
