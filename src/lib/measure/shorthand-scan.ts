/** One thing in a shorthand line, with where it stands in the line as typed. */
export type Token =
	| { readonly kind: 'amount'; readonly text: string; readonly at: number; readonly marked: boolean }
	| { readonly kind: 'word'; readonly text: string; readonly at: number }
	| { readonly kind: 'comma'; readonly text: string; readonly at: number }
	| { readonly kind: 'other'; readonly text: string; readonly at: number };

const vulgar = '¼-¾⅐-⅞↉';
const amount = new RegExp(
	`^[+\\-−–]?(?:\\d+(?:[\\s]+|[-–])\\d+\\s?[/⁄∕]\\s?\\d+|\\d+\\s?[/⁄∕]\\s?\\d+|\\d*[.,]?\\d+[-–\\s]?[${vulgar}]|[${vulgar}]|\\d*[.,]?\\d+)`,
	'u'
);
const mark = /^\s?(?:″|"|”|''|′′|(?:mm|cm|inch(?:es)?)(?!\p{L}))/u;
const word = /^[\p{L}_@][\p{L}\p{N}_@]*/u;

/**
 * Cuts a line into amounts, words and commas. A hyphen parts two words (`side-back` is two); a comma between two figures
 * is a decimal comma. `in` stays a word: whether it is the act or the inch depends on what stands before it.
 */
export function scanShorthand(line: string): readonly Token[] {
	const tokens: Token[] = [];
	let at = 0;
	while (at < line.length) {
		const rest = line.slice(at);
		const skipped = /^[\s\-–:.]+(?![\d¼-¾⅐-⅞.,])|^\s+/u.exec(rest)?.[0];
		const token = skipped === undefined ? next(rest, at) : undefined;
		if (token !== undefined) tokens.push(token);
		at += skipped?.length ?? token?.text.length ?? 1;
	}
	return tokens;
}

function next(rest: string, at: number): Token {
	if (/^[,;&]/.test(rest)) return { kind: 'comma', text: rest[0], at };
	const figures = amount.exec(rest)?.[0];
	if (figures !== undefined) {
		const after = mark.exec(rest.slice(figures.length))?.[0] ?? '';
		return { kind: 'amount', text: figures + after, at, marked: after !== '' };
	}
	const letters = word.exec(rest)?.[0];
	if (letters !== undefined) return { kind: 'word', text: letters, at };
	return { kind: 'other', text: String.fromCodePoint(rest.codePointAt(0) ?? 0), at };
}
