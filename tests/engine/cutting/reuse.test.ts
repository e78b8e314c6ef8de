import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { cuttingLines } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { reuse } from '../../../src/lib/engine/cutting/reuse.ts';
import { plainBodice } from '../../support/plain-bodice.ts';
import { pieceOf } from './simple-piece.ts';

const altered = (...alterations: object[]) => carryAlterations(plainBodice(), alterations.map(parseAlteration)).draft;
const sideBy = (amount: number, on = 'both') =>
	altered({ id: 'one', kind: 'seam', seam: 'side', on, pins: [{ at: { end: 'start' }, a: amount }] });
const cloth = cuttingLines(plainBodice(), { default: 25.4 });
const laid = (draft: ReturnType<typeof plainBodice>, allowance: number) =>
	reuse(cloth, cuttingLines(draft, { default: allowance }));

describe('a toile laid under the lining', () => {
	it('is restitched where the new cutting line lies within its own', () => {
		const [front, back] = laid(sideBy(-10), 19.05);
		expect(front).toMatchObject({ piece: 'front', verdict: 'restitch', shortBy: 0 });
		expect(back.verdict).toBe('restitch');
		// Everything but the side has kept its 25.4 mm, as near as curves are drawn.
		expect(Math.abs(front.left - 25.4)).toBeLessThan(0.01);
	});

	// 25.4 mm were cut; let out by 19.4 mm, 6 mm are left, and 25.4 mm are wanted: 19.4 mm short.
	it('is narrow where the stitching line still has 6 mm of cloth, and says how narrow and where', () => {
		const [front] = laid(sideBy(19.4), 25.4);
		expect(front).toMatchObject({ verdict: 'narrow', where: 'front/side' });
		expect(front.shortBy).toBeCloseTo(19.4, 6);
		expect(front.left).toBeCloseTo(6, 6);
	});

	it('says along which stretch it is short, by the places that the seam has names for', () => {
		const flared = altered({
			id: 'one',
			kind: 'seam',
			seam: 'side',
			pins: [
				{ at: { end: 'start' }, a: 0 },
				{ at: { level: 'waist' }, a: 0 },
				{ at: { end: 'finish' }, a: 9 }
			]
		});
		expect(laid(flared, 25.4)[0]).toMatchObject({ where: 'front/side', stretch: { from: 'waist', to: 'finish' } });
		expect(laid(sideBy(9), 25.4)[0].stretch).toEqual({ from: 'start', to: 'finish' });
		expect(laid(sideBy(-9), 25.4)[0].stretch).toBeUndefined();
	});

	it('is cut again where less is left, or none', () => {
		expect(laid(sideBy(19.5), 25.4)[0].verdict).toBe('recut');
		const [front] = laid(sideBy(30), 25.4);
		expect(front.verdict).toBe('recut');
		expect(front.left).toBeCloseTo(-4.6, 6);
		expect(reuse(cloth, cuttingLines(sideBy(12), { default: 25.4 }), { keep: 25.4 / 2 })[0].verdict).toBe('narrow');
		expect(reuse(cloth, cuttingLines(sideBy(14), { default: 25.4 }), { keep: 25.4 / 2 })[0].verdict).toBe('recut');
	});

	it('loses what was clipped', () => {
		const [front] = reuse(cloth, cuttingLines(sideBy(15), { default: 25.4 }), { clipped: 5 });
		expect(front).toMatchObject({ verdict: 'recut' });
		expect(front.left).toBeCloseTo(5.4, 6);
	});

	it('holds the two halves of a divided piece against the whole one', () => {
		const found = laid(sideBy(10, 'left'), 25.4).filter(({ piece }) => piece.startsWith('front'));
		expect(found.map(({ piece, verdict }) => [piece, verdict])).toEqual([
			['front@right', 'restitch'],
			['front@left', 'narrow']
		]);
	});

	it('says so where there is no such piece of cloth', () => {
		const [only] = reuse([], cuttingLines(plainBodice(), { default: 10 }));
		expect(only).toMatchObject({ piece: 'front', verdict: 'recut', shortBy: Infinity });
	});

	// The fold line itself is no cut edge, and a wider half laid fold on fold is wider at its other edge.
	it('lays fold on fold', () => {
		const half = (fold: number) =>
			pieceOf(
				[`M ${fold} 0 L 100 0`, 'M 100 0 L 100 200', `M 100 200 L ${fold} 200`, `M ${fold} 200 L ${fold} 0`],
				{ cut: 'fold' },
				[{}, { kind: 'seam' }, {}, { kind: 'fold' }]
			);
		const [same] = reuse(cuttingLines(half(0), { default: 20 }), cuttingLines(half(0), { default: 20 }));
		expect(same).toMatchObject({ verdict: 'restitch', shortBy: 0 });
		expect(same.left).toBeCloseTo(20, 3);
		const [wider] = reuse(cuttingLines(half(0), { default: 20 }), cuttingLines(half(-12), { default: 20 }));
		expect(wider).toMatchObject({ verdict: 'narrow', where: 'piece/edge-2' });
		expect(wider.shortBy).toBeCloseTo(12, 3);
		expect(wider.left).toBeCloseTo(8, 3);
	});
});
