import PDFDocument from 'pdfkit';
import type { Path } from '../engine/index.ts';
import { documentTitle } from './document-title.ts';
import { drawSheet } from './draw-sheet.ts';
import { inch } from '../measure/units.ts';
import type { PatternSheetInput } from './pattern-input.ts';
import { registerFonts, setText } from './pdf-text.ts';
import type { Faces, Fonts } from './pdf-text.ts';
import type { Pen, Primitive } from './primitive.ts';
import { startOfDay } from './printed-date.ts';
import { layPatternSheet } from './sheet.ts';

type Document = InstanceType<typeof PDFDocument>;

/** PDF units in one mm: a unit is 1/72 in (ISO 32000-1, 8.3.2.3). */
const unitsPerMm = 72 / inch;

/** A dash of this length with round ends is a dot, mm; the writer takes no dash of nothing. */
const dotLength = 0.001;

/**
 * The pattern as a PDF of one page true to size, fonts embedded. Every group is marked content under its id, so that a
 * reader can tell the pieces apart, and every line with an id under its own. The same input gives the same file to the byte.
 *
 * @throws SheetTooLarge as `layPatternSheet` does
 */
export async function writePdf(input: PatternSheetInput, fonts: Fonts): Promise<Uint8Array> {
	const sheet = layPatternSheet(input);
	const day = startOfDay(input.title.date);
	const document = new PDFDocument({
		size: [sheet.width * unitsPerMm, sheet.height * unitsPerMm],
		margin: 0,
		pdfVersion: '1.7',
		lang: 'en',
		displayTitle: true,
		font: null as unknown as string,
		info: { Title: documentTitle(input), Creator: 'Pin to Paper', CreationDate: day, ModDate: day }
	});
	const bytes = collected(document);
	const faces = registerFonts(document, fonts);
	document.scale(unitsPerMm);
	document.lineCap('round').lineJoin('round').strokeColor('#000').fillColor('#000');
	for (const primitive of drawSheet(sheet)) draw(document, faces, primitive);
	document.end();
	return bytes;
}

function draw(document: Document, faces: Faces, primitive: Primitive): void {
	switch (primitive.kind) {
		case 'group':
			marked(document, primitive.id, () => primitive.parts.forEach((part) => draw(document, faces, part)));
			break;
		case 'line':
			marked(document, primitive.id, () => stroke(document, primitive.path, primitive.pen, primitive.closed));
			break;
		case 'tone':
			trace(document, primitive.path, true);
			document.fill(grey(primitive.black)).fillColor('#000');
			break;
		case 'dots': {
			const pen = { width: primitive.size, dash: [dotLength, primitive.every - dotLength] };
			marked(document, primitive.id, () => stroke(document, primitive.path, pen));
			break;
		}
		case 'text':
			setText(document, faces, primitive);
			break;
	}
}

function marked(document: Document, id: string | undefined, draw: () => void): void {
	if (id !== undefined) document.markContent(id);
	draw();
	if (id !== undefined) document.endMarkedContent();
}

function stroke(document: Document, path: Path, { width, dash }: Pen, closed = false): void {
	document.lineWidth(width);
	if (dash) document.dash(dash as unknown as number, {});
	else document.undash();
	trace(document, path, closed);
	document.stroke();
}

function trace(document: Document, path: Path, closed: boolean): void {
	document.moveTo(...path[0].from);
	for (const segment of path) {
		if (segment.kind === 'line') document.lineTo(...segment.to);
		else document.bezierCurveTo(...segment.control1, ...segment.control2, ...segment.to);
	}
	if (closed) document.closePath();
}

function grey(black: number): [number, number, number] {
	const part = Math.round(255 * (1 - black));
	return [part, part, part];
}

function collected(document: Document): Promise<Uint8Array> {
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
