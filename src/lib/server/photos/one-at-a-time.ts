/**
 * Runs tasks one after another in the order in which they came: pictures are decoded singly, since each takes hundreds of
 * megabytes while it is open. One that fails keeps nobody waiting.
 */
export function oneAtATime(): <T>(task: () => Promise<T>) => Promise<T> {
	let last: Promise<unknown> = Promise.resolve();
	return (task) => {
		const next = last.then(task, task);
		last = next;
		return next;
	};
}
