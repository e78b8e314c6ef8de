/**
 * What a person typed, in the plain characters that the readers of this folder know.
 *
 * NFKC alone would misread lengths: it writes `3⅜` as `33⁄8`, `½5` as `1⁄25`, `1³⁄₈` as `13⁄8` and `″` as two primes.
 * So the marks are replaced, and fractions and raised figures set apart, before it is asked.
 */
export function plainText(typed: string): string {
	return typed
		.replace(/[\u200b-\u200f\u2060\ufeff\u00ad]/g, '')
		.replace(/["″“”„‟〃ˮ＂]|['′’‘ʹ＇`´]{2}/g, '"')
		.replace(/[′’‘ʹ＇`´]/g, "'")
		.replace(/[‐‑‒–—―−﹣－]/g, '-')
		.replace(/(?<=\p{N})(?=[¼-¾⅐-⅟↉])/gu, ' ')
		.replace(/(?<=[¼-¾⅐-⅞↉])(?=\p{N})/gu, ' ')
		.replace(/(?<=\p{Nd})(?=[²³¹⁰⁴-⁹₀-₉])/gu, ' ')
		.normalize('NFKC')
		.replace(/[⁄∕]/g, '/')
		.replace(/\s+/g, ' ')
		.replace(/ ?\/ ?/g, '/')
		.trim();
}

/** What was typed, short enough to say back in a sentence. */
export function said(typed: string): string {
	const text = typed.replace(/\s+/g, ' ').trim();
	return text.length <= 24 ? text : `${text.slice(0, 23)}…`;
}
