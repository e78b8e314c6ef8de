/** The database cannot be used as it is; the message is a sentence for the person at the machine, saying what would be right. */
export class JournalRefused extends Error {
	override readonly name = 'JournalRefused';
}
