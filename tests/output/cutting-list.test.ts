import { describe, expect, test } from 'vitest';
import { parseDraft } from '../../src/lib/engine/index.ts';
import { writeCuttingList } from '../../src/lib/output/cutting-list/cutting-list-pdf.ts';
import { grainSize } from '../../src/lib/output/cutting-list/grain-size.ts';
import { outlineOf } from '../../src/lib/engine/index.ts';
import { dividedDraft, printedDraft } from './support/printed-draft.ts';
import { fonts, printedInput } from './support/printed-input.ts';
import { readPdf } from './support/read-pdf.ts';

const textsOf = async (input: typeof printedInput) =>
	(await readPdf(await writeCuttingList(input, 'A4', fonts))).pages.map(({ texts }) =>
		texts.map((text) => text.trim())
	);

describe('the cutting list', async () => {
	const [texts] = await textsOf(printedInput);

	test('names each piece once and says how often it is cut, with a box for each', async () => {
		for (const { name } of printedDraft.pieces) expect(texts.filter((text) => text === name)).toHaveLength(1);
		expect(texts).toEqual(expect.arrayContaining(['cut 1 on the fold', 'cut 2', 'cut 1', '4 pieces of cloth in all']));
		const [page] = (await readPdf(await writeCuttingList(printedInput, 'A4', fonts))).pages;
		const boxes = page.paths.filter(
			({ closed, steps }) => closed && steps.length === 5 && steps.every(({ kind }) => kind !== 'curve')
		);
		expect(boxes.filter(({ paint }) => paint === 'stroke').length).toBeGreaterThanOrEqual(4);
	});

	test('says how much cloth a piece takes along its grain and across it', () => {
		// The band is 320 by 24 mm with its grain lengthwise, and ½ in all round: 345.4 by 49.4 mm, 13 5/8 by 1 15/16 in.
		expect(texts.map((text) => text.replace(/\s/g, ' '))).toContain('13 5⁄8″ × 1 15⁄16″');
	});

	test('says the allowance of most edges and where there is another', () => {
		expect(texts.map((text) => text.replace(/\s/g, ' ')).join(' ')).toContain('1⁄2″; 1 1⁄2″ at Hem; 1″ at Front edge');
	});

	test('names the wearer by initials only', () => {
		expect(texts).toContain('Governess jacket · I. V.');
		expect(texts.join(' ')).not.toMatch(/Ines|Varrow/);
	});

	test('has a box for each half where they are cut apart', async () => {
		const [divided] = await textsOf({ ...printedInput, draft: dividedDraft });
		const said = divided.filter((text) => text !== '').join(' ');
		expect(said).toMatch(/Front cut 1, the wearer’s right .* Front cut 1, the wearer’s left /);
		expect(said).toContain('4 pieces of cloth in all');
	});

	test('goes on over more pages when it must, each with its head and number', async () => {
		const strip = (i: number) => ({
			id: `strip-${i}`,
			name: `Strip ${i}`,
			cut: 'single',
			edges: [
				{ id: 'top', name: 'Top', kind: 'open', path: 'M 0 0 L 300 0' },
				{ id: 'right', name: 'Right', kind: 'open', path: 'M 300 0 L 300 200' },
				{ id: 'foot', name: 'Foot', kind: 'open', path: 'M 300 200 L 0 200' },
				{ id: 'left', name: 'Left', kind: 'open', path: 'M 0 200 L 0 0' }
			]
		});
		const pieces = Array.from({ length: 30 }, (_, i) => strip(i + 1));
		const draft = parseDraft({ format: 'pin-to-paper/draft@1', name: 'Strips', pieces, seams: [] });
		const pages = await textsOf({ ...printedInput, draft });
		expect(pages.length).toBeGreaterThan(1);
		pages.forEach((page, i) => {
			expect(page).toContain('Cutting list');
			expect(page).toContain(`30 pieces of cloth in all · page ${i + 1} of ${pages.length}`);
		});
		for (const { name } of pieces) expect(pages.flat().filter((text) => text === name)).toHaveLength(1);
	});
});

test('a square laid on the slant takes its diagonal along a slanting grain (√2 of its side)', () => {
	const square = {
		...printedDraft.pieces[2],
		edges: printedDraft.pieces[2].edges.map((edge) => ({
			...edge,
			path: edge.path.map((segment) => ({
				...segment,
				to: [Math.min(100, segment.to[0]), segment.to[1] > 0 ? 100 : 0] as const,
				from: [Math.min(100, segment.from[0]), segment.from[1] > 0 ? 100 : 0] as const
			}))
		})),
		grain: [
			[0, 0],
			[50, 50]
		] as const
	};
	const { along, across } = grainSize(square, outlineOf(square));
	expect(along).toBeCloseTo(100 * Math.SQRT2, 6);
	expect(across).toBeCloseTo(100 * Math.SQRT2, 6);
});
