import { accessOf } from './access/sign-ins.ts';
import { migrationsFolder } from './database/migrations.ts';
import { openDatabase, openToRead } from './database/open.ts';
import { thisEngine, type Engine } from './engine.ts';
import { alterationActs } from './journal/alteration-acts.ts';
import { carryActs } from './journal/carry-to-paper.ts';
import { fittingActs } from './journal/fitting-acts.ts';
import { forgettingActs } from './journal/forget.ts';
import { formActs } from './journal/forms-kept.ts';
import { garmentActs } from './journal/garment-acts.ts';
import { handActs } from './journal/hands.ts';
import type { Journal } from './journal/journal.ts';
import { liningActs } from './journal/lining.ts';
import { log } from './journal/log.ts';
import { noteActs } from './journal/notes.ts';
import { photoActs } from './journal/photo-acts.ts';
import { photoPinActs } from './journal/photo-pin-acts.ts';
import { eraseLoosePictures } from './journal/photos.ts';
import { observationActs } from './journal/observation-acts.ts';
import { readingActs } from './journal/reading.ts';
import { stepActs } from './journal/step-acts.ts';
import { makeStore } from './journal/store.ts';
import { toileActs } from './journal/toile-acts.ts';
import { versionActs } from './journal/versions.ts';
import { wearerActs } from './journal/wearer-acts.ts';
import { withdrawalActs } from './journal/withdraw.ts';
import { photoFolder } from './journal-file.ts';
import { photoShelf } from './photos/shelf.ts';

export { JournalRefused } from './database/refused.ts';

export interface JournalOptions {
	/** Path of the database file; it is made if there is none, in a folder that is there. */
	readonly file: string;
	readonly now: () => Date;
	/** Short random text, never the same twice. */
	readonly newId: () => string;
	/** Folder of SQL migrations; the project's own unless another is given. */
	readonly migrations?: string;
	readonly engine?: Engine;
	/** For a look at a journal that another process may have open: nothing is written, and an older database is not brought up to date. */
	readonly readOnly?: boolean;
}

/**
 * Opens the journal, making or bringing up to date its database first; an older one is copied before that.
 * Thrown: JournalRefused with a sentence, for a database of a newer release or of another program, with nothing written.
 */
export function openJournal(options: JournalOptions): Journal {
	const { file, now, newId, migrations = migrationsFolder(), engine = thisEngine, readOnly = false } = options;
	const sqlite = readOnly ? openToRead(file, migrations) : openDatabase(file, migrations, now().toISOString());
	const store = makeStore(sqlite, { now, newId, engine, shelf: photoShelf(photoFolder(file)) });
	if (!readOnly) {
		store.shelf.clearIncoming();
		eraseLoosePictures(store);
	}
	return {
		...readingActs(store),
		...log(store),
		...wearerActs(store),
		...forgettingActs(store),
		...garmentActs(store),
		...toileActs(store),
		...fittingActs(store),
		...observationActs(store),
		...alterationActs(store),
		...stepActs(store),
		...handActs(store),
		...formActs(store),
		...carryActs(store),
		...withdrawalActs(store),
		...versionActs(store),
		...liningActs(store),
		...noteActs(store),
		...photoActs(store),
		...photoPinActs(store),
		access: accessOf(store),
		asOf: (instant, act) => store.asOf(instant, act),
		together: (act) => store.writing(act),
		close: () => sqlite.close()
	};
}
