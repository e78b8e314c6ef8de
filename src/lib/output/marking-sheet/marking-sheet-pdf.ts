import { initials } from '../initials.ts';
import { papers } from '../page/paper.ts';
import type { PaperName } from '../page/paper.ts';
import { bytesOf, newDocument, newPage } from '../pdf-document.ts';
import { drawPrimitives } from '../pdf-draw.ts';
import { registerFonts } from '../pdf-text.ts';
import type { Fonts } from '../pdf-text.ts';
import { drawMarkingSheet } from './draw-marking-sheet.ts';
import type { MarkingSheetInput } from './marking-input.ts';

/** The marking sheet of a toile as a PDF. The same input gives the same file to the byte. */
export async function writeMarkingSheet(input: MarkingSheetInput, paper: PaperName, fonts: Fonts): Promise<Uint8Array> {
	const { garment, wearer, toile, version, date } = input.title;
	const named = [garment, `${toile} to ${version}`, initials(wearer)].filter((part) => part !== '');
	const document = newDocument(`Marking sheet: ${named.join(', ')}`, date);
	const bytes = bytesOf(document);
	const faces = registerFonts(document, fonts);
	for (const page of drawMarkingSheet(input, paper)) {
		newPage(document, papers[paper].width, papers[paper].height);
		drawPrimitives(document, faces, page);
	}
	document.end();
	return bytes;
}
