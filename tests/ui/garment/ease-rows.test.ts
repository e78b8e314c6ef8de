import { describe, expect, it } from 'vitest';
import { findEasePreset } from '../../../src/lib/measure/ease-ranges.ts';
import { easeRows } from '../../../src/lib/ui/garment/ease-rows.ts';

const inch = 25.4;
const row = (level: string, garment: number, body?: number) =>
	body === undefined
		? { level, garment: garment * inch }
		: { level, garment: garment * inch, body: body * inch, ease: (garment - body) * inch };

describe('ease at the balance lines', () => {
	it('has what it was before, and the band that is wanted', () => {
		const preset = findEasePreset('close-over-stays');
		const { rows } = easeRows([row('waist', 26, 25)], [row('waist', 27, 25)], preset);
		expect(rows).toEqual([{ name: 'Waist', body: 25 * inch, ease: inch, before: 2 * inch, wanted: [0, inch] }]);
	});

	it('draws a band without an upper bound an inch wide', () => {
		const { rows } = easeRows([row('upper-arm', 14, 11)], undefined, findEasePreset('close-over-stays'));
		expect(rows[0]).toMatchObject({ name: 'Upper arm', wanted: [2 * inch, 3 * inch] });
	});

	it('leaves out lines where the body was not measured, and names them', () => {
		const { rows, notMeasured } = easeRows([row('bust', 40, 38), row('elbow', 12)], undefined, undefined);
		expect(rows.map(({ name }) => name)).toEqual(['Bust']);
		expect(notMeasured).toEqual(['Elbow']);
	});

	it('holds each of two unlike sleeves against the alike ones before', () => {
		const before = [{ ...row('wrist', 9, 6), limb: 'both' as const }];
		const now = (['right', 'left'] as const).map((limb) => ({ ...row('wrist', 8, 6), limb }));
		const { rows } = easeRows(now, before, undefined);
		expect(rows.map(({ name, before: was }) => [name, was])).toEqual([
			['Wrist, right', 3 * inch],
			['Wrist, left', 3 * inch]
		]);
	});
});
