import type { Document } from './pdf-document.ts';
import { printedText } from './printed-text.ts';
import type { Text, Weight } from './primitive.ts';

/**
 * The bytes of the font files that are embedded, TrueType, OpenType or WOFF, each one static weight. A character is set in
 * the first that holds it, so that a family split by script (Latin, Greek, Cyrillic …) can be handed in file by file.
 */
export type Fonts = Readonly<Record<Weight, readonly Uint8Array[]>>;

/** A weight's font files as a document knows them. */
export interface Face {
	readonly name: string;
	readonly holds: (codePoint: number) => boolean;
}

export type Faces = Readonly<Record<Weight, readonly Face[]>>;

/** What stands for a character that no font holds. */
const missing = '?';

/**
 * Makes the fonts known to a document. A file is read only when a character is looked for in it, and embedded only if
 * something is set in it, with the glyphs that are used.
 */
export function registerFonts(document: Document, fonts: Fonts): Faces {
	const register = (weight: Weight) =>
		fonts[weight].map((bytes, i): Face => {
			const name = `${weight}-${i + 1}`;
			document.registerFont(name, bytes as Buffer);
			let read: CharacterMap | undefined;
			return { name, holds: (codePoint) => (read ??= characterMap(document, name)).hasGlyphForCodePoint(codePoint) };
		});
	const faces = { regular: register('regular'), bold: register('bold') };
	if (faces.regular.length === 0 || faces.bold.length === 0) throw new Error('a PDF wants a font file of each weight');
	return faces;
}

interface CharacterMap {
	hasGlyphForCodePoint(codePoint: number): boolean;
}

/** The font program behind a registered name; the writer has it, but its types do not say so. */
function characterMap(document: Document, name: string): CharacterMap {
	document.font(name);
	return (document as unknown as { _font: { font: CharacterMap } })._font.font;
}

/** Sets one line of text in a document whose user unit is the mm. */
export function setText(document: Document, faces: Faces, { text, at, anchor, size, weight, turn }: Text): void {
	const runs = runsOf(printedText(text), faces[weight]);
	document.fontSize(size);
	const widths = runs.map((run) => document.font(run.face).widthOfString(run.text));
	const whole = widths.reduce((sum, width) => sum + width, 0);
	document.save();
	document.translate(...at);
	if (turn) document.rotate(turn);
	let x = anchor === 'start' ? 0 : anchor === 'end' ? -whole : -whole / 2;
	runs.forEach((run, i) => {
		document.font(run.face).text(run.text, x, 0, { lineBreak: false, baseline: 'alphabetic' });
		x += widths[i];
	});
	document.restore();
}

interface Run {
	readonly face: string;
	readonly text: string;
}

function runsOf(text: string, faces: readonly Face[]): Run[] {
	const runs: Run[] = [];
	for (const character of text) {
		const last = runs.at(-1);
		const held = faces.find(({ holds }) => holds(character.codePointAt(0) as number));
		const face = held?.name ?? faces[0].name;
		const set = held ? character : missing;
		if (last?.face === face) runs[runs.length - 1] = { face, text: last.text + set };
		else runs.push({ face, text: set });
	}
	return runs;
}
