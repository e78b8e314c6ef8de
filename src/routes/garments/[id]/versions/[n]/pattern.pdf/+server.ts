import { writePdf } from '$lib/output/pdf.ts';
import { writeTiledPdf } from '$lib/output/tiled/tiled-pdf.ts';
import { printedFonts } from '$lib/server/pattern/fonts.ts';
import { askedPaper, fileOf, printedVersion, written } from '../printed.ts';
import type { RequestHandler } from './$types';

/** The pattern true to size, on one large sheet or on sheets for a home printer. */
export const GET: RequestHandler = async (event) => {
	const input = printedVersion(event);
	const paper = askedPaper(event);
	const bytes = await written(() =>
		paper ? writeTiledPdf(input, paper, printedFonts()) : writePdf(input, printedFonts())
	);
	return fileOf(Uint8Array.from(bytes), input, { extension: 'pdf', type: 'application/pdf', shown: true });
};
