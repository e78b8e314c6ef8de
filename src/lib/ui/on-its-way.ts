/** What was sent of each form and is not answered yet. */
const sent = new WeakMap<HTMLFormElement, Set<string>>();

/**
 * That a form is on its way, until what is answered here is called; undefined where it is already and says the same: a button that
 * is pressed twice, before the first is answered, asks once. `said`: what it says, as far as one can be told from another by it.
 */
export function onItsWay(form: HTMLFormElement, said: unknown): (() => void) | undefined {
	const text = JSON.stringify(said);
	const those = sent.get(form) ?? new Set();
	if (those.has(text)) return undefined;
	sent.set(form, those.add(text));
	return () => void those.delete(text);
}
