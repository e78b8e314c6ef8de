import { describe, expect, it } from 'vitest';
import { garmentsOnTable } from '../../../src/lib/ui/drawing/garments-on-table.ts';
import { layClose } from '../../../src/lib/ui/drawing/lay-close.ts';
import { layThin } from '../../../src/lib/ui/drawing/lay-thin.ts';
import { cuttingLines } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { cutPaths } from '../../../src/lib/ui/drawing/cut-paths.ts';
import { jacket } from '../jacket.ts';
import { rectangle } from './rectangle.ts';
import { boxOfText, cornersOf, partsOf } from './read-path.ts';

describe('a thin drawing', () => {
	it('stays within the room it was given, and fills it one way or the other', () => {
		for (const [width, height] of [
			[150, 122],
			[150, 400],
			[600, 60]
		]) {
			const scene = layThin(jacket, { width, height });
			const boxes = scene.pieces.map(({ cloth }) => boxOfText(cloth[0]));
			const right = Math.max(...boxes.map((box) => box.right));
			const foot = Math.max(...boxes.map((box) => box.bottom));
			const top = Math.min(...boxes.map((box) => box.top));
			expect(right).toBeLessThanOrEqual(width);
			expect(foot).toBeLessThanOrEqual(height);
			expect(right > width - 6 || foot - top > height - 22).toBe(true);
		}
	});

	it('is true: the body as wide in proportion to its height as it was drafted', () => {
		const scene = layThin(rectangle(), { width: 150, height: 120 });
		const box = boxOfText(scene.pieces[0].cloth[0]);
		expect((box.bottom - box.top) / (box.right - box.left)).toBeCloseTo(2, 2);
	});

	it('leaves the sleeve out unless it is asked for', () => {
		const ids = (limbs: boolean) => layThin(jacket, { width: 150, height: 120, limbs }).pieces.map(({ id }) => id);
		expect(ids(false)).toEqual(['back', 'side-back', 'under-arm', 'front']);
		expect(ids(true)).toEqual(['back', 'side-back', 'under-arm', 'front', 'sleeve']);
	});

	it('shows changed lines and numbered heads, and no words', () => {
		const scene = layThin(rectangle({ right: 6 }), {
			width: 150,
			height: 120,
			before: rectangle(),
			pins: [{ number: 4, feature: 'front/right', way: 'out', word: 'out', amount: 6 }]
		});
		expect(scene.pieces[0].after).not.toBe('');
		expect(scene.pieces[0].words).toEqual([]);
		expect(scene.pins.map(({ number, label }) => [number, label])).toEqual([[4, '']]);
	});
});

describe('garments on the workroom table', () => {
	it('are all at one scale, so that a larger one is larger', () => {
		const small = rectangle();
		const { scale, scenes } = garmentsOnTable(
			[
				{ draft: jacket, material: 'white' },
				{ draft: small, material: 'calico' }
			],
			'in'
		);
		for (const scene of scenes) expect(scene.scale).toBe(scale);
		const box = boxOfText(scenes[1].pieces[0].cloth[0]);
		expect((box.right - box.left) / scale).toBeCloseTo(100, 0);
	});

	it('are larger when there are few, and each keeps to its place', () => {
		const lay = (count: number) =>
			garmentsOnTable(
				Array.from({ length: count }, () => ({ draft: jacket, material: 'white' })),
				'in'
			);
		const widest = (count: number) => Math.max(...lay(count).scenes.map(({ width }) => width));
		expect(lay(1).scale).toBeGreaterThan(lay(2).scale);
		expect(lay(2).scale).toBeGreaterThan(lay(3).scale);
		expect(lay(9).scale).toBe(lay(3).scale);
		expect(widest(1)).toBeLessThanOrEqual(621);
		expect(widest(2)).toBeLessThanOrEqual(371);
		expect(widest(3)).toBeLessThanOrEqual(269);
	});
});

describe('a close look at a seam', () => {
	const cut = cutPaths(cuttingLines(jacket, { default: 19.05 }));
	const close = (edges: readonly string[], side?: 'left' | 'right') =>
		layClose(jacket, { unit: 'in', edges, cut, ...(side && { side }) });
	const at = (scene: ReturnType<typeof close>, id: string) => {
		const piece = scene.pieces.find((one) => one.id === id)!;
		const waist = cornersOf(piece.balance).filter(([, y]) => Math.abs(y - scene.height * 0.56) < 0.1);
		return { piece, waist };
	};

	it('has both edges, waist level with waist', () => {
		const scene = close(['under-arm/side', 'front/side']);
		expect(scene.pieces.map(({ id }) => id).sort()).toEqual(['front', 'under-arm']);
		for (const id of ['front', 'under-arm']) expect(at(scene, id).waist).toHaveLength(2);
	});

	it('has them facing each other, on either side of the wearer', () => {
		for (const side of ['right', 'left'] as const) {
			const scene = close(['under-arm/side', 'front/side'], side);
			const [first, second] = side === 'right' ? ['under-arm', 'front'] : ['front', 'under-arm'];
			const [left, right] = [at(scene, first), at(scene, second)].map(({ waist }) => waist.map(([x]) => x));
			// The nearer ends of the two waist lines lie within the picture, with table between them.
			expect(Math.max(...left)).toBeGreaterThan(0);
			expect(Math.max(...left)).toBeLessThan(Math.min(...right));
			expect(Math.min(...right)).toBeLessThan(scene.width);
		}
	});

	it('is at one scale, 46 px to the inch', () => {
		const scene = close(['under-arm/side', 'front/side']);
		const levels = scene.balance.map(({ label }) => label[1]).sort((a, b) => a - b);
		// Bust 9.6, waist 14.2 and hip 17.6 in down, as drafted.
		expect((levels[1] - levels[0]) / 46).toBeCloseTo(14.2 - 9.6, 1);
		expect((levels[2] - levels[1]) / 46).toBeCloseTo(17.6 - 14.2, 1);
	});

	it('rubs chalk along both', () => {
		for (const piece of close(['under-arm/side', 'front/side']).pieces) expect(partsOf(piece.halo).length).toBe(1);
	});
});
