import { documentTitle } from './document-title.ts';
import { drawSheet } from './draw-sheet.ts';
import type { PatternSheetInput } from './pattern-input.ts';
import { bytesOf, newDocument, newPage } from './pdf-document.ts';
import { drawPrimitives } from './pdf-draw.ts';
import { registerFonts } from './pdf-text.ts';
import type { Fonts } from './pdf-text.ts';
import { layPatternSheet } from './sheet.ts';

/**
 * The pattern as a PDF of one page true to size, fonts embedded. The same input gives the same file to the byte.
 *
 * @throws SheetTooLarge as `layPatternSheet` does
 */
export async function writePdf(input: PatternSheetInput, fonts: Fonts): Promise<Uint8Array> {
	const sheet = layPatternSheet(input);
	const document = newDocument(documentTitle(input), input.title.date);
	const bytes = bytesOf(document);
	const faces = registerFonts(document, fonts);
	newPage(document, sheet.width, sheet.height);
	drawPrimitives(document, faces, drawSheet(sheet));
	document.end();
	return bytes;
}
