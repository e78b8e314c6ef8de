import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../src/lib/engine/index.ts';
import { papers } from '../../src/lib/output/page/paper.ts';
import { planTiles } from '../../src/lib/output/tiled/plan-tiles.ts';
import { pageShift } from '../../src/lib/output/tiled/tile-page.ts';
import { writeTiledPdf } from '../../src/lib/output/tiled/tiled-pdf.ts';
import { asLine } from '../../src/lib/output/words.ts';
import { printedDraft } from './support/printed-draft.ts';
import { fonts, printedInput } from './support/printed-input.ts';
import { lengthInPoints, readPdf } from './support/read-pdf.ts';
import type { ReadPage } from './support/read-pdf.ts';

const mm = 25.4 / 72;

describe.each([
	// ISO 216, and Letter 8½ by 11 in.
	['A4', 210, 297],
	['Letter', 215.9, 279.4]
] as const)('tiled on %s', async (paper, width, height) => {
	const plan = planTiles(printedInput, paper);
	const bytes = await writeTiledPdf(printedInput, paper, fonts);
	const [cover, ...pages] = (await readPdf(bytes)).pages;

	/** Where a line stands on a page, mm from its upper left corner. */
	const placeOf = (page: ReadPage, id: string) => {
		const found = page.paths.filter(({ marks, paint }) => paint === 'stroke' && marks.at(-1) === id);
		return found.flatMap(({ steps }) =>
			steps.flatMap(({ points }) => points.map(([x, y]) => [x * mm, (page.height - y) * mm] as const))
		);
	};

	test('every page has the size of the paper, and there is one for each sheet and one before them', () => {
		expect(pages).toHaveLength(plan.tiles.length);
		for (const page of [cover, ...pages]) {
			expect(page.width * mm).toBeCloseTo(width, 3);
			expect(page.height * mm).toBeCloseTo(height, 3);
		}
	});

	test('every point of every cutting line is on a sheet, and no sheet is without one', () => {
		const used = new Set<number>();
		for (const { outline } of plan.pieces) {
			for (const [x, y] of asLine(outline)) {
				const on = plan.tiles.filter(({ own }) => x >= own.left && x <= own.right && y >= own.top && y <= own.bottom);
				expect(on.length).toBeGreaterThan(0);
				for (const { number } of on) used.add(number);
			}
		}
		expect(used.size).toBe(plan.tiles.length);
	});

	test('the pattern is true to size on every sheet, and stands where the sheets join up', () => {
		pages.forEach((page, i) => {
			const [dx, dy] = pageShift(plan.tiles[i]);
			const side = page.paths.find(({ marks }) => marks.at(-1) === 'edge.front.side');
			expect(side).toBeDefined();
			if (side) expect(lengthInPoints(side) * mm).toBeCloseTo(edgeLength(printedDraft, 'front/side'), 1);
			const [x, y] = placeOf(page, 'edge.front.side')[0];
			const [x0, y0] = placeOf(pages[0], 'edge.front.side')[0];
			const [dx0, dy0] = pageShift(plan.tiles[0]);
			expect(x - dx).toBeCloseTo(x0 - dx0, 2);
			expect(y - dy).toBeCloseTo(y0 - dy0, 2);
		});
	});

	test('the crossed tacks of two sheets that join come to lie on one another, within what both show', () => {
		let joints = 0;
		for (const { number, joins, window } of plan.tiles) {
			for (const [side, other] of [
				['right', 'left'],
				['below', 'above']
			] as const) {
				const neighbour = joins[side];
				if (neighbour === undefined) continue;
				joints++;
				const next = plan.tiles[neighbour - 1];
				expect(next.joins[other]).toBe(number);
				for (const order of [1, 2]) {
					const here = placeOf(pages[number - 1], `tack.${side}.${order}`);
					const there = placeOf(pages[neighbour - 1], `tack.${other}.${order}`);
					const [from, to] = [pageShift(plan.tiles[number - 1]), pageShift(next)];
					here.forEach(([x, y], k) => {
						expect(x - from[0]).toBeCloseTo(there[k][0] - to[0], 2);
						expect(y - from[1]).toBeCloseTo(there[k][1] - to[1], 2);
						for (const box of [window, next.window]) {
							expect(x - from[0]).toBeGreaterThan(box.left);
							expect(x - from[0]).toBeLessThan(box.right);
							expect(y - from[1]).toBeGreaterThan(box.top);
							expect(y - from[1]).toBeLessThan(box.bottom);
						}
					});
				}
			}
		}
		expect(joints).toBeGreaterThan(1);
	});

	test('every sheet says its number, of how many, whose it is, and which sheets it joins', () => {
		pages.forEach((page, i) => {
			const { number, joins } = plan.tiles[i];
			const said = page.texts.map((text) => text.trim());
			expect(said).toContain(String(number));
			expect(said).toContain(`of ${pages.length} · Governess jacket, lining, version 2, I. V. · 11 March 2026`);
			const joined = said.filter((text) => text.startsWith('joins '));
			expect(joined.sort()).toEqual(
				Object.values(joins)
					.filter((joint) => joint !== undefined)
					.map((joint) => `joins ${joint}`)
					.sort()
			);
		});
	});

	test('every sheet has a line of 1 in and one of 2 cm, and the first page the squares', () => {
		for (const page of pages) {
			const [from, to] = placeOf(page, 'line.1-in');
			expect(to[0] - from[0]).toBeCloseTo(25.4, 3);
			const [left, right] = placeOf(page, 'line.2-cm');
			expect(right[0] - left[0]).toBeCloseTo(20, 3);
		}
		for (const [id, side] of [
			['square.100-mm', 283.4646],
			['square.4-in', 288]
		] as const) {
			const [square] = cover.paths.filter(({ marks }) => marks.at(-1) === id);
			expect(lengthInPoints(square)).toBeCloseTo(4 * side, 2);
		}
	});

	test('nothing of the sheet’s own stands off the paper', () => {
		for (const page of [cover, ...pages]) {
			const own = page.paths.filter(({ marks }) => !marks.some((mark) => mark.startsWith('piece.')));
			for (const { steps } of own) {
				for (const [x, y] of steps.flatMap(({ points }) => points)) {
					expect(Math.min(x, y)).toBeGreaterThan(0);
					expect(x * mm).toBeLessThan(papers[paper].width);
					expect(y * mm).toBeLessThan(papers[paper].height);
				}
			}
		}
	});

	test('the drawing is in the file once, however many sheets show it', () => {
		const file = new TextDecoder('latin1').decode(bytes);
		expect(file.match(/\/Subtype \/Form/g)).toHaveLength(1);
	});

	test('the same input gives the same file to the byte', async () => {
		expect(Buffer.compare(await writeTiledPdf(structuredClone(printedInput), paper, fonts), bytes)).toBe(0);
	});
});
