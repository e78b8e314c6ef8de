import { inch } from '../../measure/units.ts';
import type { Point } from '../../engine/index.ts';
import { testLine } from '../heading.ts';
import { pens } from '../pens.ts';
import { closedThrough, through } from '../plane.ts';
import type { Anchor, Line, Primitive, Text, Weight } from '../primitive.ts';
import { wrappedText } from '../text-width.ts';
import type { Paper } from './paper.ts';

/** What stays free round a page that is read, mm. */
export const pageMargin = 13;

/** Height of the em of the words on a page, mm: 11 pt, and 9 pt, the least there is but for drawings. */
export const sizes = { title: 7.4, lead: 4.2, body: 3.9, note: 3.2 } as const;

export interface PageHead {
	/** What the page is. */
	readonly title: string;
	/** Garment and wearer's initials. */
	readonly under: string;
	/** At the right: what it leads from and to, and what goes with that. */
	readonly right: string;
	readonly rightUnder: string;
}

export function words(
	text: string,
	at: Point,
	size: number,
	weight: Weight = 'regular',
	anchor: Anchor = 'start'
): Text {
	return { kind: 'text', text, at, anchor, size, weight };
}

/** The head of a page, and where the page goes on below it. */
export function drawPageHead(
	head: PageHead,
	{ width }: Paper
): { readonly parts: readonly Primitive[]; readonly below: number } {
	const right = width - pageMargin;
	const first = pageMargin + sizes.title;
	const lines = wrappedText(head.rightUnder, (width - 2 * pageMargin) * 0.6, sizes.body, 'regular');
	const second = first + 6.2;
	const rule = second + Math.max(0, lines.length - 1) * 5 + 4.5;
	return {
		parts: [
			words(head.title, [pageMargin, first], sizes.title, 'bold'),
			words(head.right, [right, first], sizes.lead, 'bold', 'end'),
			words(head.under, [pageMargin, second], sizes.body),
			...lines.map((line, i) => words(line, [right, second + i * 5], sizes.body, 'regular', 'end')),
			ruleAcross(pageMargin, right, rule, pens.stitching.width)
		],
		below: rule
	};
}

/** A level rule from one x to another. */
export function ruleAcross(from: number, to: number, y: number, width: number = pens.scale.width): Line {
	return { kind: 'line', path: through([from, y], [to, y]), pen: { width } };
}

/** A box to tick, standing on a baseline. */
export function tickBox([x, y]: Point): Line {
	const side = 3.2;
	const path = closedThrough([x, y - side + 0.3], [x + side, y - side + 0.3], [x + side, y + 0.3], [x, y + 0.3]);
	return { kind: 'line', path, closed: true, pen: pens.rule };
}

/** The lines to measure at the foot of a page: 2 cm, and 1 in at its right edge. */
export function drawPageTestLines({ width, height }: Paper): Primitive[] {
	const y = height - pageMargin - 4;
	const right = width - pageMargin;
	return [
		...testLine('line.2-cm', [right - inch - 12 - 20, y], 20, 2, '2 cm'),
		...testLine('line.1-in', [right - inch, y], inch, 4, '1″')
	];
}
