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
		}
	}
}
