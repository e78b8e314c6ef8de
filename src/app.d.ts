import type { Visitor } from '$lib/server/access/door.ts';
import type { Journal } from '$lib/server/journal/journal.ts';

declare global {
	namespace App {
		interface Error {
			message: string;
			/** The line of the log that tells more, for our own mistakes. */
			id?: string;
		}
		interface Locals {
			journal: Journal;
			/** Who asks; this machine itself unless the journal is open to the local network. */
			visitor: Visitor;
		}
	}
}
