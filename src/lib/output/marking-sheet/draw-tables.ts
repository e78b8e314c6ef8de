import { ruleAcross, sizes, tickBox, words } from '../page/page-parts.ts';
import { pens } from '../pens.ts';
import { ring } from '../plane.ts';
import type { Primitive } from '../primitive.ts';
import { textWidth, wrappedText } from '../text-width.ts';
import { centredText } from '../words.ts';
import type { MarkingTable } from './marking-tables.ts';

/** mm on the page. */
const head = 2.8;
const leading = 4.8;
const rowHeight = 7;
const boxColumn = 13.5;

/** A table as it is drawn from an upper left corner down. */
export interface DrawnTable {
	readonly height: number;
	readonly at: (x: number, y: number) => Primitive[];
}

export function drawTable(table: MarkingTable, width: number): DrawnTable {
	const { numbers, boxes, columns, rows } = table;
	const indent = numbers.length * (2 * head + 1.2) + (numbers.length > 0 ? 1.5 : 0);
	const headingWidth = textWidth(`${table.heading} `, sizes.body, 'bold');
	const said = wrappedText(table.said, width - indent - headingWidth, sizes.body, 'regular');
	const boxHeads = boxes.map((text) => text.split(/(?<=-)| /));
	const headLines = Math.max(1, ...boxHeads.map(({ length }) => length));
	const boxesAt = width - boxes.length * boxColumn;
	const shares = columns.length === 3 ? [0, 0.37, 0.72] : [0, 0.68];
	const columnsAt = shares.map((share) => share * boxesAt);
	const cells = rows.map((row) =>
		row.cells.map((text, i) => {
			const lettered = i === 0 && row.letter ? `${row.letter} ${text}` : text;
			return wrappedText(lettered, (columnsAt[i + 1] ?? boxesAt) - columnsAt[i] - 1.5, sizes.body, 'regular');
		})
	);
	const heights = cells.map((row) => Math.max(rowHeight, Math.max(...row.map(({ length }) => length)) * leading + 2.6));
	const headBottom = Math.max(1, said.length) * leading + 3.2;
	const labelsBottom = headBottom + headLines * 3.8 + 3;
	const height = labelsBottom + heights.reduce((sum, one) => sum + one, 0) + 5;
	const at = (x: number, y: number): Primitive[] => {
		const parts: Primitive[] = [
			...numbers.flatMap((number, i): Primitive[] => {
				const middle = [x + head + i * (2 * head + 1.2), y + 3] as const;
				const rim = ring(middle, head);
				return [
					{ kind: 'line', path: rim, closed: true, pen: pens.awl },
					centredText(String(number), sizes.body, 'bold', middle)
				];
			}),
			words(table.heading, [x + indent, y + 4.2], sizes.body, 'bold'),
			...said.map((text, i) => words(text, [x + indent + headingWidth, y + 4.2 + i * leading], sizes.body)),
			ruleAcross(x, x + width, y + headBottom, pens.mark.width),
			...columns.map((text, i) => words(text, [x + columnsAt[i], y + labelsBottom - 2.2], sizes.note)),
			...boxHeads.flatMap((lines, i) =>
				lines.map((text, k) =>
					words(
						text,
						[x + boxesAt + (i + 0.5) * boxColumn, y + labelsBottom - 2.2 - (lines.length - 1 - k) * 3.8],
						sizes.note,
						'regular',
						'middle'
					)
				)
			),
			ruleAcross(x, x + width, y + labelsBottom)
		];
		let top = y + labelsBottom;
		rows.forEach((row, r) => {
			const baseline = top + 5.1;
			cells[r].forEach((lines, i) =>
				lines.forEach((text, k) =>
					parts.push(
						words(
							text,
							[x + columnsAt[i], baseline + k * leading],
							sizes.body,
							row.most && i === row.cells.length - 1 ? 'bold' : 'regular'
						)
					)
				)
			);
			boxes.forEach((_, i) => parts.push(tickBox([x + boxesAt + (i + 0.5) * boxColumn - 1.6, baseline])));
			top += heights[r];
			if (r < rows.length - 1) parts.push(ruleAcross(x, x + width, top));
		});
		return parts;
	};
	return { height, at };
}
