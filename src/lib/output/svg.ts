import type { Path, Point } from '../engine/index.ts';
import { drawSheet } from './draw-sheet.ts';
import { documentTitle } from './document-title.ts';
import type { PatternSheetInput } from './pattern-input.ts';
import type { Pen, Primitive, Text } from './primitive.ts';
import { printedText } from './printed-text.ts';
import { layPatternSheet } from './sheet.ts';

/**
 * The pattern as an SVG file true to size: width and height in mm and one user unit to the mm, coordinates to a tenth of a
 * micrometre. Text is left as text, in Commissioner where the viewer has it. The same input gives the same file to the
 * byte.
 *
 * @throws SheetTooLarge as `layPatternSheet` does
 */
export function writeSvg(input: PatternSheetInput): string {
	const sheet = layPatternSheet(input);
	const [width, height] = [sheet.width, sheet.height].map(figure);
	return [
		'<?xml version="1.0" encoding="UTF-8"?>',
		`<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" fill="none" stroke-linecap="round" stroke-linejoin="round" font-family="Commissioner, 'DejaVu Sans', sans-serif">`,
		`<title>${escaped(documentTitle(input))}</title>`,
		`<rect width="${width}" height="${height}" fill="#fff"/>`,
		...drawSheet(sheet).flatMap((primitive) => elements(primitive, '')),
		'</svg>',
		''
	].join('\n');
}

function elements(primitive: Primitive, indent: string): string[] {
	switch (primitive.kind) {
		case 'group':
			return [
				`${indent}<g id="${escaped(primitive.id)}">`,
				...primitive.parts.flatMap((part) => elements(part, `${indent}\t`)),
				`${indent}</g>`
			];
		case 'line':
			return [
				`${indent}<path${idOf(primitive)} d="${pathText(primitive.path, primitive.closed)}" ${penText(primitive.pen)}/>`
			];
		case 'tone':
			return [`${indent}<path d="${pathText(primitive.path, true)}" fill="${grey(primitive.black)}"/>`];
		case 'dots': {
			const pen = { width: primitive.size, dash: [0, primitive.every] };
			return [
				`${indent}<path${idOf(primitive)} d="${pathText(primitive.path)}" ${penText(pen, primitive.white ? '#fff' : '#000')}/>`
			];
		}
		case 'text':
			return [`${indent}${textElement(primitive)}`];
	}
}

function idOf({ id }: { readonly id?: string }): string {
	return id === undefined ? '' : ` id="${escaped(id)}"`;
}

function penText({ width, dash }: Pen, colour = '#000'): string {
	const dashes = dash ? ` stroke-dasharray="${dash.map(figure).join(' ')}"` : '';
	return `stroke="${colour}" stroke-width="${figure(width)}"${dashes}`;
}

function textElement({ text, at, anchor, size, weight, turn }: Text): string {
	const [x, y] = at.map(figure);
	const turned = turn ? ` transform="rotate(${figure(turn)} ${x} ${y})"` : '';
	const heavy = weight === 'bold' ? ' font-weight="600"' : '';
	return `<text x="${x}" y="${y}" font-size="${figure(size)}"${heavy} text-anchor="${anchor}" fill="#000"${turned}>${escaped(printedText(text))}</text>`;
}

function pathText(path: Path, closed = false): string {
	const steps = path.map((segment) =>
		segment.kind === 'line'
			? `L${pointText(segment.to)}`
			: `C${pointText(segment.control1)} ${pointText(segment.control2)} ${pointText(segment.to)}`
	);
	return `M${pointText(path[0].from)}${steps.join('')}${closed ? 'Z' : ''}`;
}

function pointText([x, y]: Point): string {
	return `${figure(x)} ${figure(y)}`;
}

/** Four decimals at the most; never an exponent, never a negative zero. */
function figure(value: number): string {
	return String(Number(value.toFixed(4)) + 0);
}

function grey(black: number): string {
	const part = Math.round(255 * (1 - black))
		.toString(16)
		.padStart(2, '0');
	return `#${part.repeat(3)}`;
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

function escaped(text: string): string {
	return text.replace(/[&<>"]/g, (character) => entities[character]);
}
