import type { Path } from '../engine/index.ts';
import type { Document } from './pdf-document.ts';
import { setText } from './pdf-text.ts';
import type { Faces } from './pdf-text.ts';
import type { Pen, Primitive } from './primitive.ts';

/** A dash of this length with round ends is a dot, mm; the writer takes no dash of nothing. */
const dotLength = 0.001;

/**
 * Draws in a document whose user unit is the mm. Every group and every line with an id is marked content under it, so that a
 * reader can tell them apart.
 */
export function drawPrimitives(document: Document, faces: Faces, primitives: readonly Primitive[]): void {
	document.lineCap('round').lineJoin('round').strokeColor('#000').fillColor('#000');
	for (const primitive of primitives) draw(document, faces, primitive);
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
			if (primitive.white) document.strokeColor('#fff');
			marked(document, primitive.id, () => stroke(document, primitive.path, pen));
			if (primitive.white) document.strokeColor('#000');
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
