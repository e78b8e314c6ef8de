/** “Draft”, “Version 2”. */
export function versionName(number: number): string {
	return number === 0 ? 'Draft' : `Version ${number}`;
}

/** “the draft”, “version 2”. */
export function versionInSentence(number: number): string {
	return number === 0 ? 'the draft' : `version ${number}`;
}
