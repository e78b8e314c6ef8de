/** Characters that an XML file may not hold, or that have no place in one line of text. */
const unprintable = /[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/**
 * A line of text as it is printed: what cannot be printed becomes a space, spaces become one, letters are composed, and a typed fraction gets
 * the fraction slash, which every shaping engine sets as a fraction (Unicode Standard, chapter 6, “Fraction Slash”), with a
 * thin space before it so that the whole number is not drawn into it.
 */
export function printedText(text: string): string {
	return text
		.replace(unprintable, ' ')
		.replace(/ +/g, ' ')
		.trim()
		.normalize('NFC')
		.replace(
			/(?:(\d) )?\b(\d{1,2})\/(\d{1,2})\b(?![/\d])/g,
			(_, whole: string | undefined, top: string, bottom: string) =>
				whole === undefined ? `${top}⁄${bottom}` : `${whole}\u2009${top}⁄${bottom}`
		);
}
