import PDFDocument from 'pdfkit';
import { inch } from '../measure/units.ts';
import { startOfDay } from './printed-date.ts';

export type Document = InstanceType<typeof PDFDocument>;

/** PDF units in one mm: a unit is 1/72 in (ISO 32000-1, 8.3.2.3). */
export const unitsPerMm = 72 / inch;

/** A new PDF without pages, dated with a calendar day (`2026-03-11`) and nothing else, so that it can be made again to the byte. */
export function newDocument(title: string, day: string): Document {
	const date = startOfDay(day);
	return new PDFDocument({
		autoFirstPage: false,
		pdfVersion: '1.7',
		lang: 'en',
		displayTitle: true,
		font: null as unknown as string,
		info: { Title: title, Creator: 'Pin to Paper', CreationDate: date, ModDate: date }
	});
}

/** A new page of a size in mm. From here on the user unit is the mm, from the upper left corner, y down. */
export function newPage(document: Document, width: number, height: number): void {
	document.addPage({ size: [width * unitsPerMm, height * unitsPerMm], margin: 0 });
	document.scale(unitsPerMm);
}

/** The bytes of a document, once it is ended. Ask before anything is written. */
export function bytesOf(document: Document): Promise<Uint8Array> {
	const chunks: Uint8Array[] = [];
	return new Promise((resolve, reject) => {
		document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
		document.on('error', reject);
		document.on('end', () => {
			const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
			chunks.reduce((at, chunk) => (whole.set(chunk, at), at + chunk.length), 0);
			resolve(whole);
		});
	});
}
