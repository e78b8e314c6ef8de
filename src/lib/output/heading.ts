import { formatLength } from '../measure/format-length.ts';
import { inch } from '../measure/units.ts';
import type { Point } from '../engine/index.ts';
import type { CutPiece } from './cut-piece.ts';
import { initials } from './initials.ts';
import type { PatternSheetInput } from './pattern-input.ts';
import { pens } from './pens.ts';
import { closedThrough, through } from './plane.ts';
import type { Group, Primitive, Text, Weight } from './primitive.ts';
import { printedDate } from './printed-date.ts';
import { wrappedText } from './text-width.ts';
import { centredText, lineBox } from './words.ts';

/** What stands at the top of a sheet: two squares and two lines to measure after printing, and the title block. */
export interface Heading {
	readonly at: Point;
	readonly height: number;
	/** Upper left corners of the squares of 100 mm and of 4 in. */
	readonly centimetreSquare: Point;
	readonly inchSquare: Point;
	/** Left ends of the lines of 2 cm and of 1 in. */
	readonly centimetreLine: Point;
	readonly inchLine: Point;
	readonly title: readonly Text[];
}

/** Sides of the squares, mm. */
const centimetreSide = 100;
const inchSide = 4 * inch;
const gap = 12;
/** Left edge of the title, and the least room it is given, mm. */
const titleAt = centimetreSide + inchSide + 2 * gap;
const titleWidth = 230;

/** The least width that the heading takes, mm. */
export const headingWidth = titleAt + titleWidth;

export function layHeading(input: PatternSheetInput, cut: readonly CutPiece[], at: Point, width: number): Heading {
	const [x, y] = at;
	const { texts, height } = titleBlock(input, cut, [x + titleAt, y], Math.max(titleWidth, width - titleAt));
	const second = x + centimetreSide + gap;
	return {
		at,
		height: Math.max(inchSide, height),
		centimetreSquare: [x, y],
		inchSquare: [second, y],
		centimetreLine: [x + 40, y + 72],
		inchLine: [second + (inchSide - inch) / 2, y + 72],
		title: texts
	};
}

/** How a version is called on paper. */
export function versionWords(version: number): string {
	return version === 0 ? 'base draft' : `version ${version}`;
}

interface TitleLine {
	readonly text: string;
	readonly size: number;
	readonly weight: Weight;
}

/** Garment, version and what goes with it, in lines no wider than `width` mm, from an upper left corner down. */
export function titleBlock(
	input: PatternSheetInput,
	cut: readonly CutPiece[],
	[x, y]: Point,
	width: number
): { readonly texts: readonly Text[]; readonly height: number } {
	const texts: Text[] = [];
	let top = y - 2;
	for (const { text, size, weight } of titleLines(input, cut)) {
		for (const part of wrappedText(text, width, size, weight)) {
			const box = size * 1.3;
			const baseline = top + box / 2 + lineBox.baseline * size;
			texts.push({ kind: 'text', text: part, at: [x, baseline], anchor: 'start', size, weight });
			top += box;
		}
		top += size * 0.15;
	}
	return { texts, height: top - y };
}

function titleLines(input: PatternSheetInput, cut: readonly CutPiece[]): TitleLine[] {
	const { title, lines } = input;
	const wearer = initials(title.wearer);
	const version = versionWords(title.version);
	const subtitle = [title.lining ? `Lining, ${version}` : `${version[0].toUpperCase()}${version.slice(1)}`, wearer];
	const plain = (text: string): TitleLine => ({ text, size: 5.5, weight: 'regular' });
	const bold = (text: string): TitleLine => ({ text, size: 5.5, weight: 'bold' });
	return [
		{ text: title.garment, size: 12, weight: 'bold' },
		{ text: subtitle.filter((part) => part !== '').join(' · '), size: 8, weight: 'bold' },
		...(title.wornUnder ? [plain(`Worn under it: ${title.wornUnder}`)] : []),
		plain(printedDate(title.date)),
		...(title.lining
			? [plain('Lining: the structural layer that the fashion fabric is mounted on, not a loose lining.')]
			: []),
		...(lines === 'with allowances'
			? allowanceSentences(input, cut).map(plain)
			: [bold('Stitching lines only: add the allowances when cutting.')]),
		...(title.version > 0 ? [bold(`Replaces ${replaced(title.version - 1)}: do not cut that one.`)] : [])
	];
}

function replaced(version: number): string {
	return version === 0 ? 'the base draft' : versionWords(version);
}

/** The allowance of most edges, and after it what others have: amount by amount, the largest first, piece by piece. */
function allowanceSentences({ allowances, unit }: PatternSheetInput, cut: readonly CutPiece[]): string[] {
	const said = (mm: number) => formatLength(mm, unit, { denominator: 16 }).text;
	const others = new Map<number, string[]>();
	for (const { name, edges } of cut) {
		for (const { kind, allowance, name: edge } of edges) {
			if (kind === 'fold' || allowance === allowances.default) continue;
			others.set(allowance, [...(others.get(allowance) ?? []), `${name}, ${edge}`]);
		}
	}
	return [
		`Thick line: stitch. Fine line: cut. Allowance ${said(allowances.default)}${others.size > 0 ? ', but' : ''}`,
		...[...others].sort(([a], [b]) => b - a).map(([mm, names]) => `${said(mm)} at ${names.join('; ')}`)
	];
}

/** The heading as it is drawn. */
export function drawHeading(heading: Heading): Group[] {
	const { centimetreSquare, inchSquare, centimetreLine, inchLine, title } = heading;
	return [
		{
			kind: 'group',
			id: 'test.100-mm',
			parts: [
				...testSquare('square.100-mm', centimetreSquare, centimetreSide, '100 mm'),
				...testLine('line.2-cm', centimetreLine, 20, 2, '2 cm')
			]
		},
		{
			kind: 'group',
			id: 'test.4-in',
			parts: [
				...testSquare('square.4-in', inchSquare, inchSide, '4″'),
				...testLine('line.1-in', inchLine, inch, 4, '1″')
			]
		},
		{ kind: 'group', id: 'title', parts: title }
	];
}

function testSquare(id: string, [x, y]: Point, side: number, size: string): Primitive[] {
	const corners: Point[] = [
		[x, y],
		[x + side, y],
		[x + side, y + side],
		[x, y + side]
	];
	return [
		{ kind: 'line', id, path: closedThrough(...corners), closed: true, pen: pens.scale },
		centredText(`${size} each way`, 7, 'bold', [x + side / 2, y + 22]),
		centredText('Measure after printing;', 4.5, 'regular', [x + side / 2, y + 34]),
		centredText('if it differs, print again at 100 %.', 4.5, 'regular', [x + side / 2, y + 40])
	];
}

/** A line to lay a tape against, with a tick at each of its parts. */
export function testLine(id: string, [x, y]: Point, length: number, parts: number, said: string): Primitive[] {
	const ticks = Array.from({ length: parts + 1 }, (_, i) => x + (length * i) / parts);
	return [
		{ kind: 'line', id, path: through([x, y], [x + length, y]), pen: pens.rule },
		...ticks.map((tick, i): Primitive => {
			const reach = i === 0 || i === parts ? 2 : 1.2;
			return { kind: 'line', path: through([tick, y - reach], [tick, y + reach]), pen: pens.rule };
		}),
		centredText(said, 4.5, 'regular', [x + length / 2, y + 6])
	];
}
