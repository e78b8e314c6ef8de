import { writePdf } from '$lib/output/pdf.ts';
import { writeTiledPdf } from '$lib/output/tiled/tiled-pdf.ts';
import { printedFonts } from '$lib/server/pattern/fonts.ts';
import { askedPaper, fileOf, written } from '../../../versions/[n]/printed.ts';
import { printedToile } from '../printed-toile.ts';
import type { RequestHandler } from './$types';

/** The toile's pattern true to size, with its allowances; on one large sheet or on sheets for a home printer. */
export const GET: RequestHandler = async (event) => {
	const input = printedToile(event);
	const paper = askedPaper(event);
	const bytes = await written(() =>
		paper ? writeTiledPdf(input, paper, printedFonts()) : writePdf(input, printedFonts())
	);
	return fileOf(Uint8Array.from(bytes), input, { extension: 'pdf', type: 'application/pdf', shown: true });
};
