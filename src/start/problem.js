/**
 * Something that the person at the keyboard can mend: its message is a sentence that says how.
 * Anything else that is thrown is our own mistake, and Node.js shows it with its stack.
 */
export class Problem extends Error {}

/**
 * Runs a command of src/start and ends the process with 1 if it meets a `Problem`, after printing the sentence.
 * @param {() => void | Promise<void>} command
 */
export async function orSentence(command) {
	try {
		await command();
	} catch (error) {
		if (!(error instanceof Problem)) throw error;
		console.error(`\n${error.message}\n`);
		process.exit(1);
	}
}
