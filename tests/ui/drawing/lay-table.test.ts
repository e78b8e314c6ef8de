import { describe, expect, it } from 'vitest';
import { layTable } from '../../../src/lib/ui/drawing/lay-table.ts';
import { cuttingLines } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { cutPaths } from '../../../src/lib/ui/drawing/cut-paths.ts';
import { jacket } from '../jacket.ts';
import { rectangle } from './rectangle.ts';
import { boxOfText, cornersOf, isIn, partsOf } from './read-path.ts';

const cut = cutPaths(cuttingLines(jacket, { default: 19.05, edges: { 'front/hem': 38.1 } }));
const scene = layTable(jacket, { unit: 'in', cut, caption: 96 });
const body = scene.pieces.filter(({ id }) => id !== 'sleeve');

describe('a draft on the table', () => {
	it('has its waist, drawn 14.2 in down on every body piece, at one height right across', () => {
		const waist = scene.balance.find(({ level }) => level === 'waist')!;
		const heights = cornersOf(waist.path).map(([, y]) => y);
		for (const height of heights) expect(height).toBeCloseTo(heights[0], 1);
		for (const piece of body) {
			expect(cornersOf(piece.balance).some(([, y]) => Math.abs(y - heights[0]) < 0.02)).toBe(true);
		}
	});

	it('has its lines as far apart as they were drafted, by the measure on its own edge', () => {
		const at = (level: string) => scene.balance.find((line) => line.level === level)!.label[1];
		const labels = scene.measure!.ticks.filter(({ label }) => label !== undefined);
		const inch = (labels[1].x - labels[0].x) / (Number(labels[1].label) - 0);
		expect((at('waist') - at('bust')) / inch).toBeCloseTo(14.2 - 9.6, 2);
		expect((at('hip') - at('waist')) / inch).toBeCloseTo(17.6 - 14.2, 2);
	});

	it('has crosses an inch apart, one of them at the 0 of the measure', () => {
		expect(scene.crosses!.step).toBeCloseTo(25.4 * scene.scale, 9);
		const zero = scene.measure!.ticks.find(({ label }) => label === '0 in')!;
		expect(((zero.x - scene.crosses!.x) / scene.crosses!.step) % 1).toBeCloseTo(0, 6);
	});

	it('is measured in true centimetres when they are asked for', () => {
		const metric = layTable(jacket, { unit: 'cm' });
		const labels = metric.measure!.ticks.filter(({ label }) => label !== undefined);
		expect(labels[0].label).toBe('0 cm');
		expect((labels[1].x - labels[0].x) / Number(labels[1].label)).toBeCloseTo(10 * metric.scale, 6);
	});

	it('has no piece on another, allowances and all, and none off the table', () => {
		const boxes = scene.pieces.map(({ strip }) => boxOfText(strip!));
		boxes.forEach((box, i) => {
			expect(box.left).toBeGreaterThan(0);
			expect(box.right).toBeLessThan(scene.width);
			expect(box.bottom).toBeLessThan(scene.measure!.top);
			for (const other of boxes.slice(0, i)) {
				const apart =
					box.left > other.right || other.left > box.right || box.top > other.bottom || other.top > box.bottom;
				expect(apart).toBe(true);
			}
		});
	});

	it('has the sleeve below the body', () => {
		const sleeve = scene.pieces.find(({ id }) => id === 'sleeve')!;
		const lowest = Math.max(...body.map(({ strip }) => boxOfText(strip!).bottom));
		expect(boxOfText(sleeve.strip!).top).toBeGreaterThan(lowest);
	});

	it('names every piece on its own cloth', () => {
		for (const piece of scene.pieces) {
			const cloth = partsOf(piece.cloth[0])[0];
			const names = piece.words.filter(({ kind }) => kind === 'name');
			expect(names.length).toBeGreaterThan(0);
			for (const { at } of names) expect(isIn(at, cloth)).toBe(true);
		}
	});

	it('keeps a gap for the caption in which nothing is drawn', () => {
		const { at, wide } = scene.captionGap!;
		const [left, right] = [(at / 20) * scene.width, ((at + wide) / 20) * scene.width];
		for (const { strip } of scene.pieces) {
			for (const [x, y] of partsOf(strip!, 2)[0]) expect(x > left && x < right && y < 96).toBe(false);
		}
	});

	it('says how many are cut', () => {
		expect(scene.pieces[0].title).toBe('Back, cut 2');
	});

	it('can show some pieces alone', () => {
		const some = layTable(jacket, { unit: 'in', pieces: ['front'] });
		expect(some.pieces.map(({ id }) => id)).toEqual(['front']);
	});

	it('marks snips out of the cloth, no longer than the allowance, on either side of the wearer', () => {
		for (const side of ['right', 'left'] as const) {
			const laid = layTable(jacket, { unit: 'in', side, cut });
			for (const piece of laid.pieces.filter(({ notches }) => notches !== '')) {
				const [cloth, strip] = [partsOf(piece.cloth[0], 0.5)[0], partsOf(piece.strip!, 0.5)[0]];
				for (const stroke of partsOf(piece.notches, 1000)) {
					const ends = [stroke[0], stroke[stroke.length - 1]];
					expect(isIn(ends[0], cloth)).toBe(true);
					expect(isIn(ends[1], cloth)).toBe(false);
					const middle = [(ends[0][0] + 9 * ends[1][0]) / 10, (ends[0][1] + 9 * ends[1][1]) / 10] as const;
					expect(isIn(middle, strip)).toBe(true);
				}
			}
		}
	});
});

describe('the left half', () => {
	const left = layTable(jacket, { unit: 'in', side: 'left', cut });

	it('runs from the front round to the back', () => {
		const order = (laid: typeof left) =>
			laid.pieces.filter(({ id }) => id !== 'sleeve').map(({ id, strip }) => ({ id, x: boxOfText(strip!).left }));
		const sorted = (laid: typeof left) =>
			order(laid)
				.sort((a, b) => a.x - b.x)
				.map(({ id }) => id);
		expect(sorted(left)).toEqual(sorted(scene).reverse());
	});

	it('is the mirror image: a piece is as wide and as high, and its outline turned over', () => {
		const [right, mirrored] = [scene, left].map((laid) => laid.pieces.find(({ id }) => id === 'front')!);
		const [a, b] = [boxOfText(right.cloth[0]), boxOfText(mirrored.cloth[0])];
		expect((b.right - b.left) / left.scale).toBeCloseTo((a.right - a.left) / scene.scale, 0);
		const turned = cornersOf(right.cloth[0]).map(([x, y]) => [(a.right - x) / scene.scale, (y - a.top) / scene.scale]);
		cornersOf(mirrored.cloth[0]).forEach(([x, y], i) => {
			expect((x - b.left) / left.scale).toBeCloseTo(turned[i][0], 0);
			expect((y - b.top) / left.scale).toBeCloseTo(turned[i][1], 0);
		});
	});
});

describe('a piece that was divided', () => {
	it('is shown on its own side only', () => {
		const whole = rectangle();
		const divided = { ...whole, pieces: ['front@left', 'front@right'].map((id) => ({ ...whole.pieces[0], id })) };
		expect(layTable(divided, { unit: 'in', side: 'left' }).pieces.map(({ id }) => id)).toEqual(['front@left']);
		expect(layTable(divided, { unit: 'in', side: 'right' }).pieces.map(({ id }) => id)).toEqual(['front@right']);
	});
});

describe('a table with nothing to lay on it', () => {
	it('is an empty table with its measure', () => {
		const empty = layTable(jacket, { unit: 'in', pieces: [], before: jacket });
		expect(empty.pieces).toEqual([]);
		expect(empty.measure!.ticks.length).toBeGreaterThan(10);
		for (const number of [empty.width, empty.height, empty.scale, empty.crosses!.step])
			expect(number).toBeGreaterThan(0);
	});
});

describe('a piece cut on the fold', () => {
	const fold = {
		...jacket,
		pieces: jacket.pieces
			.filter(({ id }) => id === 'back')
			.map((piece) => ({
				...piece,
				cut: 'fold' as const,
				edges: piece.edges.map((edge) => (edge.id === 'centre-back' ? { ...edge, kind: 'fold' as const } : edge))
			})),
		seams: []
	};

	it('has long dashes instead of a firm line there, and a hook at each end toward the cloth', () => {
		const [piece] = layTable(fold, { unit: 'in' }).pieces;
		expect(partsOf(piece.folds)).toHaveLength(1);
		const cloth = partsOf(piece.cloth[0], 0.5)[0];
		const hooks = partsOf(piece.hooks, 1000);
		expect(hooks).toHaveLength(2);
		for (const hook of hooks) expect(isIn(hook[hook.length - 1], cloth)).toBe(true);
	});

	it('says so', () => {
		expect(layTable(fold, { unit: 'in' }).pieces[0].title).toBe('Back, cut 1 on the fold');
	});
});
