import { documentTitle } from '../document-title.ts';
import { papers } from '../page/paper.ts';
import type { PaperName } from '../page/paper.ts';
import type { PatternSheetInput } from '../pattern-input.ts';
import { bytesOf, newDocument, newPage } from '../pdf-document.ts';
import { drawPrimitives } from '../pdf-draw.ts';
import { registerFonts } from '../pdf-text.ts';
import type { Fonts } from '../pdf-text.ts';
import { drawCuttingList } from './draw-cutting-list.ts';

/** The cutting list of a version as a PDF. The same input gives the same file to the byte. */
export async function writeCuttingList(input: PatternSheetInput, paper: PaperName, fonts: Fonts): Promise<Uint8Array> {
	const document = newDocument(`Cutting list: ${documentTitle(input)}`, input.title.date);
	const bytes = bytesOf(document);
	const faces = registerFonts(document, fonts);
	for (const page of drawCuttingList(input, paper)) {
		newPage(document, papers[paper].width, papers[paper].height);
		drawPrimitives(document, faces, page);
	}
	document.end();
	return bytes;
}
