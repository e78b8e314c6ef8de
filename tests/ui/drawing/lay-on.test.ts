import { describe, expect, it } from 'vitest';
import { layTable } from '../../../src/lib/ui/drawing/lay-table.ts';
import { shiftToLieOn } from '../../../src/lib/ui/drawing/lay-on.ts';
import { movePiece } from '../../../src/lib/engine/draft/turn-piece.ts';
import type { Piece } from '../../../src/lib/engine/draft/types.ts';
import { jacket } from '../jacket.ts';
import { rectangle } from './rectangle.ts';

const front = jacket.pieces.find(({ id }) => id === 'front')!;
const shifted = (piece: Piece, x: number, y: number) => movePiece(piece, [1, 0, 0, 1, x, y]);

describe('a piece laid over itself', () => {
	it('is shifted back by as much as it was moved', () => {
		const [x, y] = shiftToLieOn(shifted(front, 12, -7), front, 'waist');
		expect(x).toBeCloseTo(-12, 6);
		expect(y).toBeCloseTo(7, 6);
	});

	it('stays where it lies at a line that it has not', () => {
		expect(shiftToLieOn(shifted(front, 12, -7), front, 'knee')).toEqual([0, 0]);
	});

	it('without a grain line is laid middle on middle', () => {
		const [before, after] = [rectangle(), rectangle({ right: 10 })].map(({ pieces }) => pieces[0]);
		expect(shiftToLieOn(before, after, 'waist')[0]).toBeCloseTo(5, 6);
	});

	it('shows no change when it was only shifted', () => {
		const before = { ...jacket, pieces: jacket.pieces.map((piece) => shifted(piece, 5, 3)) };
		const changed = (layOn?: string) =>
			layTable(jacket, { unit: 'in', before, ...(layOn && { layOn }) }).pieces.filter(
				({ after, before: old, id }) => id !== 'sleeve' && (after !== '' || old !== '')
			);
		expect(changed('waist')).toEqual([]);
		expect(changed().length).toBe(4);
	});
});
