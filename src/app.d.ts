import type { Visitor } from '$lib/server/access/door.ts';
import type { Journal } from '$lib/server/journal/journal.ts';

declare global {
	namespace App {
		interface Error {
			message: string;
			/** The line of the log that tells more, for our own mistakes. */
			id?: string;
		}
		/** What a page shows that it computed itself since it was sent. */
		interface PageState {
			/** The fields that it stands for, and the question part of its address. */
			typed?: Readonly<Record<string, string>>;
			address?: string;
			/** The wearer's side that is shown. */
			side?: string;
		}
		interface Locals {
			journal: Journal;
			/** Who asks; this machine itself unless the journal is open to the local network. */
			visitor: Visitor;
		}
	}
}
