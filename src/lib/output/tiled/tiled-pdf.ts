import { documentTitle } from '../document-title.ts';
import type { PatternSheetInput } from '../pattern-input.ts';
import { bytesOf, newDocument, newPage } from '../pdf-document.ts';
import { drawPrimitives } from '../pdf-draw.ts';
import { registerFonts } from '../pdf-text.ts';
import type { Fonts } from '../pdf-text.ts';
import { drawCoverPage } from './cover-page.ts';
import { papers } from '../page/paper.ts';
import { margins } from './tile-size.ts';
import type { PaperName } from '../page/paper.ts';
import { drawnOnce } from './pdf-form.ts';
import { planTiles } from './plan-tiles.ts';
import { drawTilePage, pageShift } from './tile-page.ts';

/**
 * The pattern as a PDF true to size on sheets for a home printer: a page that says how they go together, and then the sheets,
 * each a window on one and the same drawing. The same input gives the same file to the byte.
 */
export async function writeTiledPdf(input: PatternSheetInput, paper: PaperName, fonts: Fonts): Promise<Uint8Array> {
	const plan = planTiles(input, paper);
	const { width, height } = papers[paper];
	const document = newDocument(documentTitle(input), input.title.date);
	const bytes = bytesOf(document);
	const faces = registerFonts(document, fonts);
	newPage(document, width, height);
	drawPrimitives(document, faces, drawCoverPage(plan, input));
	const drawing = drawnOnce(document, plan.width, plan.height, () => drawPrimitives(document, faces, plan.groups));
	for (const tile of plan.tiles) {
		newPage(document, width, height);
		document.save();
		document
			.rect(margins.left, margins.top, width - margins.left - margins.right, height - margins.top - margins.bottom)
			.clip();
		document.translate(...pageShift(tile));
		drawing();
		document.restore();
		drawPrimitives(document, faces, drawTilePage(tile, plan, input));
	}
	document.end();
	return bytes;
}
