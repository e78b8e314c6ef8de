import { JournalRefused } from '../database/refused.ts';
import type { Access } from './access.ts';
import { hashPassphrase, isPassphrase, passphraseProblem } from './passphrase.ts';

/**
 * Keeps the passphrase of the environment, where one is given; the one that is kept already leaves everybody signed in.
 * Thrown: a JournalRefused with a sentence where it is too short, so that nobody believes in one that does not hold.
 */
export async function keepGivenPassphrase(access: Access, given: string | undefined): Promise<void> {
	if (given === undefined || given === '') return;
	const problem = passphraseProblem(given);
	if (problem) throw new JournalRefused(`PIN_TO_PAPER_PASSPHRASE will not do. ${problem}`);
	const kept = access.passphrase();
	if (kept && (await isPassphrase(given, kept))) return;
	access.setPassphrase(await hashPassphrase(given));
}
