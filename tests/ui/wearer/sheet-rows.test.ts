import { describe, expect, it } from 'vitest';
import { sheetRows } from '../../../src/lib/ui/wearer/sheet-rows.ts';

const inch = 25.4;

describe('measurement sheets side by side', () => {
	it('have the measures that any of them has, in the order in which they are taken', () => {
		const rows = sheetRows([{ measures: { waist: 635 } }, { measures: { hip: 940, neck: 330 } }]);
		expect(rows.map(({ key }) => key)).toEqual(['neck', 'waist', 'hip']);
		expect(rows[1]!.cells).toEqual([{ mm: 635 }, undefined]);
	});

	it('say what changed since the last sheet that has the measure', () => {
		const [row] = sheetRows([
			{ measures: { waist: 25.5 * inch } },
			{ measures: {} },
			{ measures: { waist: 25 * inch } },
			{ measures: { waist: 25 * inch } }
		]);
		const [latest, ...before] = row!.cells;
		expect(latest!.change).toBeCloseTo(0.5 * inch, 9);
		expect(before.map((cell) => cell?.change)).toEqual([undefined, undefined, undefined]);
	});

	it('call nothing a change that a tape cannot tell', () => {
		const [row] = sheetRows([{ measures: { waist: 635.5 } }, { measures: { waist: 635 } }]);
		expect(row!.cells[0]).toEqual({ mm: 635.5 });
	});
});
