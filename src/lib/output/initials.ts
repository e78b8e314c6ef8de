/** The initials of a name, `I. V.`: all of a wearer's name that a print or a file may carry. Initials stay as they are. */
export function initials(name: string): string {
	return name
		.split(/[\s.]+/)
		.map((word) => word.match(/\p{L}/u)?.[0] ?? '')
		.filter((letter) => letter !== '')
		.map((letter) => `${letter.toLocaleUpperCase('en')}.`)
		.join(' ');
}
