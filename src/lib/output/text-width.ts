import { printedText } from './printed-text.ts';
import type { Weight } from './primitive.ts';

/** Advance widths of Commissioner, regular, in thousandths of the em, from the space (U+0020) to the tilde (U+007E). */
const advances = [
	192, 236, 372, 683, 562, 881, 734, 202, 385, 385, 473, 588, 230, 423, 236, 445, 653, 428, 555, 571, 600, 575, 607,
	528, 607, 607, 236, 236, 568, 568, 568, 428, 883, 690, 646, 685, 737, 594, 574, 733, 750, 280, 291, 671, 573, 958,
	754, 817, 628, 817, 670, 587, 641, 731, 687, 1020, 679, 652, 672, 373, 445, 373, 609, 402, 600, 523, 592, 495, 578,
	528, 395, 542, 573, 257, 255, 542, 254, 873, 573, 598, 592, 585, 400, 455, 410, 559, 513, 801, 532, 518, 497, 405,
	264, 405, 568
] as const;

/** Of the other characters that a sheet says itself; figures beside a fraction slash are set small. */
const special: Readonly<Record<string, number>> = { '″': 420, '·': 236, '’': 202, '⁄': 289, '\u2009': 128 };
const smallFigure = 450;

/** What any other character is taken to need. Wide enough for the Latin, Greek and Cyrillic letters of the family but a few. */
const otherwise = 760;

/** The bold cut is so much wider, at the most, on whole words. */
const boldShare = 1.06;

/**
 * How wide a line of text is, in mm, for keeping clear of other marks before a font is at hand. A little more than the
 * family itself takes; a viewer that puts another font in its place may differ.
 */
export function textWidth(text: string, size: number, weight: Weight): number {
	let thousandths = 0;
	for (const part of printedText(text).split(/(\d+⁄\d+)/)) {
		const figure = part.includes('⁄') ? smallFigure : undefined;
		for (const character of part) {
			const own = special[character] ?? figure ?? advances[(character.codePointAt(0) as number) - 32];
			thousandths += own ?? otherwise;
		}
	}
	return (thousandths / 1000) * size * (weight === 'bold' ? boldShare : 1);
}

/** The words of a text in lines no wider than `width` mm; a longer word has a line of its own. */
export function wrappedText(text: string, width: number, size: number, weight: Weight): string[] {
	const lines: string[] = [];
	let line = '';
	for (const word of printedText(text)
		.split(' ')
		.filter((word) => word !== '')) {
		const longer = line === '' ? word : `${line} ${word}`;
		if (line !== '' && textWidth(longer, size, weight) > width) {
			lines.push(line);
			line = word;
		} else line = longer;
	}
	return line === '' ? lines : [...lines, line];
}
