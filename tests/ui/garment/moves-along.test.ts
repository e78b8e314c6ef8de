import { describe, expect, it } from 'vitest';
import { parseAlteration } from '../../../src/lib/engine/index.ts';
import { movesAlong } from '../../../src/lib/ui/garment/moves-along.ts';
import { plainBodice as drafted } from '../../support/plain-bodice.ts';

const plainBodice = drafted();

const along = (intent: object) => movesAlong(plainBodice, parseAlteration({ id: 'x', ...intent }));

describe('the moves of an alteration along its line', () => {
	it('stand where the places lie: the waist two thirds down a side seam of 300 mm, 200 mm from its top', () => {
		const moves = along({
			...{ kind: 'seam', seam: 'side' },
			pins: [
				{ at: { end: 'start' }, a: 0, b: 0 },
				{ at: { level: 'waist' }, a: -6, b: -6 },
				{ at: { end: 'finish' }, a: 0, b: 0 }
			]
		})!;
		expect(moves.map(({ at }) => at)[1]).toBeCloseTo(2 / 3, 6);
		expect(moves.map(({ move }) => move)).toEqual([0, -6, 0]);
	});

	it('are the mean of two layers, and of a seam that was only moved its first layer’s', () => {
		const at = { fraction: 0.5 };
		expect(along({ kind: 'seam', seam: 'side', pins: [{ at, a: -4, b: -8 }] })).toEqual([{ at: 0.5, move: -6 }]);
		expect(along({ kind: 'seam', seam: 'side', pins: [{ at, a: 5, b: -5 }] })).toEqual([{ at: 0.5, move: 5 }]);
	});

	it('are those of both mirror images at a centre seam', () => {
		const pins = [{ at: { end: 'finish' }, a: -3 }];
		expect(along({ kind: 'seam', seam: 'centre-back', pins })).toEqual([{ at: 1, move: -3 }]);
	});

	it('run along one edge that was chalked', () => {
		const pins = [
			{ at: { end: 'start' }, move: 0 },
			{ at: { end: 'finish' }, move: -9 }
		];
		expect(along({ kind: 'edge', edge: 'front/hem', pins })).toEqual([
			{ at: 0, move: 0 },
			{ at: 1, move: -9 }
		]);
	});

	it('are none for what is not read, moves no line, or has lost its place', () => {
		const at = { level: 'waist' };
		expect(along({ kind: 'seam', seam: 'side', pins: [{ at }] })).toBeUndefined();
		expect(along({ kind: 'seam', seam: 'side', pins: [{ at: { level: 'knee' }, a: 1, b: 1 }] })).toBeUndefined();
		expect(along({ kind: 'seam', seam: 'gone', pins: [{ at, a: 1, b: 1 }] })).toBeUndefined();
		expect(along({ kind: 'edge', edge: 'front/gone', pins: [{ at, move: 1 }] })).toBeUndefined();
		const point = [100, 300];
		expect(along({ kind: 'dart', edge: 'front/hem', at: { fraction: 0.5 }, intake: 10, point })).toBeUndefined();
	});
});
