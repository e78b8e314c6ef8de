/** A name inside a sentence: `Side back` is `side back`. */
export function inSentence(name: string): string {
	return name.charAt(0).toLowerCase() + name.slice(1);
}

/** A sentence's first letter. */
export function atStart(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
