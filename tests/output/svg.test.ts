import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../src/lib/engine/index.ts';
import { writeSvg } from '../../src/lib/output/svg.ts';
import { dividedDraft, printedDraft } from './support/printed-draft.ts';
import { printedInput } from './support/printed-input.ts';
import { byId, readSvg } from './support/read-svg.ts';

const file = writeSvg(printedInput);
const elements = readSvg(file);

const lengthOf = (id: string, of = elements) => new svgPathProperties(byId(of, id).attributes.d).getTotalLength();
const boxOf = (d: string) => {
	const path = new svgPathProperties(d);
	const length = path.getTotalLength();
	const points = Array.from({ length: 2001 }, (_, i) => path.getPointAtLength((length * i) / 2000));
	const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
	return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
};

describe('the SVG is true to size', () => {
	test('its width and height are in mm, and one user unit is one mm', () => {
		const { width, height, viewBox } = elements[0].attributes;
		expect(width).toMatch(/^\d+mm$/);
		expect(height).toMatch(/^\d+mm$/);
		expect(viewBox).toBe(`0 0 ${parseFloat(width)} ${parseFloat(height)}`);
	});

	test.each(printedDraft.pieces.flatMap((piece) => piece.edges.map((edge) => [piece.id, edge.id] as const)))(
		'the edge %s/%s measured in the file by another reader is as long as the engine says, to 0.01 mm',
		(piece, edge) => {
			expect(Math.abs(lengthOf(`edge.${piece}.${edge}`) - edgeLength(printedDraft, `${piece}/${edge}`))).toBeLessThan(
				0.01
			);
		}
	);

	// The inch is 25.4 mm exactly (agreement in force 1 July 1959).
	test.each([
		['square.100-mm', 100],
		['square.4-in', 101.6]
	])('the %s has sides of %d mm', (id, side) => {
		const corners = [...byId(elements, id).attributes.d.matchAll(/[ML](\S+) ([\d.]+)/g)].map(([, x, y]) => [+x, +y]);
		expect(corners).toHaveLength(5);
		for (let i = 0; i < 4; i++) {
			const [[x0, y0], [x1, y1]] = [corners[i], corners[i + 1]];
			expect(Math.hypot(x1 - x0, y1 - y0)).toBeCloseTo(side, 6);
			expect(Math.min(Math.abs(x1 - x0), Math.abs(y1 - y0))).toBe(0);
		}
	});

	test.each([
		['line.2-cm', 20],
		['line.1-in', 25.4]
	])('the %s is %d mm long', (id, length) => {
		expect(lengthOf(id)).toBeCloseTo(length, 6);
	});
});

describe('the lines are known by their form', () => {
	test('the stitching line is 0.5 mm and firm, the cutting line 0.2 mm and outside it by the allowance', () => {
		const side = byId(elements, 'edge.front.side').attributes;
		expect([side['stroke-width'], side['stroke-dasharray']]).toEqual(['0.5', undefined]);
		const cutting = byId(elements, 'cutting.front').attributes;
		expect([cutting['stroke-width'], cutting['stroke-dasharray']]).toEqual(['0.2', undefined]);
		const [inner, outer] = ['edge.band.top', 'cutting.band'].map((id) => boxOf(byId(elements, id).attributes.d));
		expect(inner.top - outer.top).toBeCloseTo(12.7, 3);
		expect(inner.left - outer.left).toBeCloseTo(12.7, 3);
	});

	test('balance lines are dots of 0.5 mm every 1.4 mm', () => {
		const waist = byId(elements, 'level.front.waist.2').attributes;
		expect([waist['stroke-width'], waist['stroke-dasharray']]).toEqual(['0.5', '0 1.4']);
		expect(elements[0].attributes['stroke-linecap']).toBe('round');
	});

	test('a fold is dashed and is not cut', () => {
		const fold = byId(elements, 'edge.back.centre').attributes;
		expect(fold['stroke-dasharray']).toBe('4 1.4');
		const [x] = [...fold.d.matchAll(/[ML](\S+)/g)].map(([, x]) => Number(x));
		const cut = new svgPathProperties(byId(elements, 'cutting.back').attributes.d);
		const length = cut.getTotalLength();
		const onFold = Array.from({ length: 999 }, (_, i) => cut.getPointAtLength((length * (i + 1)) / 1000)).filter(
			(point) => Math.abs(point.x - x) < 1e-3
		);
		expect(onFold).toEqual([]);
	});

	test('a notch is never longer outward than the allowance, and mates have the same number of snips', () => {
		const narrow = readSvg(writeSvg({ ...printedInput, allowances: { default: 3 } }));
		const snips = narrow.filter(({ attributes }) => attributes.id?.startsWith('notch.'));
		expect(snips.length).toBeGreaterThan(0);
		for (const { attributes } of snips) {
			expect(new svgPathProperties(attributes.d).getTotalLength()).toBeLessThanOrEqual(3 + 1.2 + 1e-3);
		}
		const count = (id: string) => snips.filter(({ attributes }) => `${attributes.id}.`.startsWith(`${id}.`)).length;
		for (const [order, notch] of ['n1', 'n2', 'n3'].entries()) {
			expect(count(`notch.back.${notch}`)).toBe(order + 1);
			expect(count(`notch.front.${notch}`)).toBe(order + 1);
		}
	});

	test('stitching lines alone have no cutting line and no tone', () => {
		const alone = readSvg(writeSvg({ ...printedInput, lines: 'stitching only' }));
		expect(alone.filter(({ attributes }) => attributes.id?.startsWith('cutting.'))).toEqual([]);
		expect(alone.filter(({ attributes }) => /^#(?!000|fff)/.test(attributes.fill ?? ''))).toEqual([]);
		expect(alone.map(({ text }) => text)).toContain('Stitching lines only: add the allowances when cutting.');
	});
});

describe('the pieces', () => {
	test('a left half is printed as the mirror image of the right', () => {
		const divided = readSvg(writeSvg({ ...printedInput, draft: dividedDraft }));
		const pointsOf = (side: string) =>
			dividedDraft.pieces[1].edges.flatMap(({ id }) => {
				const path = new svgPathProperties(byId(divided, `edge.front.${side}.${id}`).attributes.d);
				return Array.from({ length: 21 }, (_, i) => path.getPointAtLength((path.getTotalLength() * i) / 20));
			});
		const [right, left] = [pointsOf('right'), pointsOf('left')];
		const axis = (right[0].x + left[0].x) / 2;
		right.forEach((point, i) => {
			expect(left[i].x).toBeCloseTo(2 * axis - point.x, 2);
			expect(left[i].y - left[0].y).toBeCloseTo(point.y - right[0].y, 2);
		});
		const texts = divided.map(({ text }) => text);
		expect(texts).toContain('cut 1, the wearer’s left');
		expect(texts).toContain('cut 1, the wearer’s right');
	});

	test('lie apart and on the sheet', () => {
		const boxes = printedDraft.pieces.map(({ id }) => boxOf(byId(elements, `cutting.${id}`).attributes.d));
		const [width, height] = [elements[0].attributes.width, elements[0].attributes.height].map(parseFloat);
		boxes.forEach((one, i) => {
			expect(one.left).toBeGreaterThanOrEqual(14.9);
			expect(one.right).toBeLessThanOrEqual(width - 14.9);
			expect(one.top).toBeGreaterThan(15 + 101.6);
			expect(one.bottom).toBeLessThanOrEqual(height - 14.9);
			for (const other of boxes.slice(i + 1)) {
				const apart = Math.max(
					other.left - one.right,
					one.left - other.right,
					other.top - one.bottom,
					one.top - other.bottom
				);
				expect(apart).toBeGreaterThan(10);
			}
		});
	});

	test('say their names, how often they are cut and of which version they are', () => {
		const saidIn = (id: string) =>
			elements.filter(({ name, within }) => name === 'text' && within.includes(id)).map(({ text }) => text);
		expect(saidIn('piece.back')).toEqual(
			expect.arrayContaining(['Back', 'cut 1 on the fold', 'cut on the fold', 'version 2'])
		);
		expect(saidIn('piece.front')).toEqual(
			expect.arrayContaining(['Front', 'cut 2', 'grain', 'waist line', 'bust point'])
		);
	});
});

describe('the words', () => {
	const texts = elements.filter(({ name }) => name === 'text').map(({ text }) => text);

	test('name garment, version and what it replaces; the lining says what it is', () => {
		expect(texts).toEqual(
			expect.arrayContaining([
				'Governess jacket',
				'Lining, version 2 · I. V.',
				'11 March 2026',
				'Replaces version 1: do not cut that one.',
				'Lining: the structural layer that the fashion fabric is mounted on, not a loose lining.'
			])
		);
	});

	test('name the wearer by initials only, in the title too', () => {
		expect(file).not.toMatch(/Ines|Varrow/);
		expect(elements.find(({ name }) => name === 'title')?.text).toBe('Governess jacket, lining, version 2, I. V.');
	});

	test('set fractions with the fraction slash, apart from the whole number', () => {
		expect(texts).toContain('Worn under it: chemise, corset at 25\u20093⁄4″');
	});

	test('whatever is in a name, the file stays well-formed and says it', () => {
		const garment = `Zoë’s <"Act II"> & 'Ⅲ' \u0000\u0007\ud800 ß`;
		const read = readSvg(writeSvg({ ...printedInput, title: { ...printedInput.title, garment } }));
		expect(read.map(({ text }) => text)).toContain(`Zoë’s <"Act II"> & 'Ⅲ' ß`);
	});
});

test('no two elements have the same id, and no number is anything but plain figures', () => {
	const ids = elements.flatMap(({ attributes }) => attributes.id ?? []);
	expect(new Set(ids).size).toBe(ids.length);
	for (const { attributes } of elements) if (attributes.d) expect(attributes.d).toMatch(/^[MLCZ\d. -]+$/);
});

test('the same input gives the same file', () => {
	expect(writeSvg(structuredClone(printedInput))).toBe(file);
});
