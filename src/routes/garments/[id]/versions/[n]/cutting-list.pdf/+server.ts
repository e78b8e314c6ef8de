import { writeCuttingList } from '$lib/output/cutting-list/cutting-list-pdf.ts';
import { printedFonts } from '$lib/server/pattern/fonts.ts';
import { askedPaper, fileOf, printedVersion } from '../printed.ts';
import type { RequestHandler } from './$types';

/** What is cut, piece by piece, to stand beside the cloth. */
export const GET: RequestHandler = async (event) => {
	const input = printedVersion(event);
	const bytes = await writeCuttingList(input, askedPaper(event) ?? 'A4', printedFonts());
	return fileOf(Uint8Array.from(bytes), input, {
		extension: 'pdf',
		what: 'cutting-list',
		type: 'application/pdf',
		shown: true
	});
};
