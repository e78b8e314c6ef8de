/**
 * Runs tasks one after another in the order in which they came, for what takes much of the machine at once: pictures while
 * they are decoded, passphrases while they are tried. One that fails keeps nobody waiting.
 */
export function oneAtATime(): <T>(task: () => Promise<T>) => Promise<T> {
	let last: Promise<unknown> = Promise.resolve();
	return (task) => {
		const next = last.then(task, task);
		last = next;
		return next;
	};
}
