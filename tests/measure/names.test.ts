import { describe, expect, it } from 'vitest';
import { easePresets, findEasePreset } from '../../src/lib/measure/ease-ranges.ts';
import { measurementAgeReminder, measurementsOlderThan } from '../../src/lib/measure/measurement-age.ts';
import { bodyMeasures, findBodyMeasure, measuresByLevel } from '../../src/lib/measure/names.ts';
import { askAbout } from '../../src/lib/measure/plausibility.ts';
import type { MeasurementSheet } from '../../src/lib/measure/names.ts';

// Upper-body items of ISO 8559:1989, as listed in Anthropometry, Apparel Sizing and Design, table 4.1.
const isoItems = [
	'shoulder length',
	'shoulder width',
	'back width',
	'scye depth',
	'underarm length',
	'neck-shoulder point to breast point',
	'cervicale to breast point',
	'neck-shoulder point to waist',
	'cervicale to waist (front)',
	'cervicale to waist (back)',
	'neck girth',
	'neck-base girth',
	'chest girth',
	'bust girth',
	'upper-arm girth',
	'armscye girth',
	'waist girth',
	'hip girth'
];

function inches(sheet: Record<string, number>): MeasurementSheet {
	return Object.fromEntries(Object.entries(sheet).map(([key, value]) => [key, value * 25.4]));
}

describe('body measures', () => {
	it('hold every upper-body item of the standard once, and mark the rest as our own', () => {
		const references = bodyMeasures.map(({ isoReference }) => isoReference).filter((reference) => reference !== 'own');
		expect([...references].sort()).toEqual([...isoItems].sort());
	});

	it('have keys of their own and say how each is taken', () => {
		expect(new Set(bodyMeasures.map(({ key }) => key)).size).toBe(bodyMeasures.length);
		for (const { key, how } of bodyMeasures) expect(how, key).toMatch(/^[A-Z].{20,}\.$/);
		expect(findBodyMeasure('elbow-grease')).toBeUndefined();
	});

	it('are handed on by balance line, without those that were not taken', () => {
		expect(measuresByLevel({ bust: 965.2, waist: 635, neck: 330, hip: undefined })).toEqual({
			bust: 965.2,
			waist: 635
		});
	});
});

describe('what is worth asking about a sheet', () => {
	// ASTM D5585-11e1, size 2: upper chest 33 1/4, bust 33.
	it('does not ask about an upper chest that exceeds the bust', () => {
		expect(askAbout(inches({ 'upper-chest': 33.25, bust: 33 }), 'in')).toEqual([]);
	});

	// ASTM D5585-11e1, size 8.
	it('asks nothing about a standard figure', () => {
		const size8 = inches({ bust: 36.25, 'upper-chest': 35.875, 'under-bust': 30, waist: 28, 'shoulder-girth': 40.5 });
		expect(askAbout(size8, 'in')).toEqual([]);
	});

	it('asks when a waist or an under-bust is not below the bust', () => {
		expect(askAbout(inches({ waist: 38, bust: 36 }), 'in')).toEqual([
			{
				keys: ['waist', 'bust'],
				sentence: 'Waist 38″, bust 36″: is that how they were measured, or were the two changed about?'
			}
		]);
		expect(askAbout(inches({ 'under-bust': 36, bust: 36 }), 'in')).toHaveLength(1);
	});

	it('asks when a figure seems to be in the other unit', () => {
		const [doubt] = askAbout(inches({ bust: 96 }), 'in');
		expect(doubt.sentence).toBe('Bust 96″: is that right, or was it read in centimetres?');
	});
});

describe('the age of a sheet', () => {
	// Remeasure at least every 6 months: Principles of Pattern Alteration, E-372 (rev. 2006), p. 1.
	it('is told from six months on, by the calendar', () => {
		expect(measurementsOlderThan('1898-01-10', '1898-07-10')).toBe(false);
		expect(measurementsOlderThan('1898-01-10', '1898-07-11')).toBe(true);
		expect(measurementsOlderThan('1897-08-31', '1898-02-28')).toBe(false);
		expect(measurementsOlderThan('1897-08-31', '1898-03-01')).toBe(true);
		expect(measurementsOlderThan('2023-08-31', '2024-02-29')).toBe(false);
		expect(measurementsOlderThan('1898-01-10', '1898-03-11', 2)).toBe(true);
	});

	it('comes with a reminder, or nothing', () => {
		expect(measurementAgeReminder('1898-01-10', '1898-03-10')).toBeUndefined();
		expect(measurementAgeReminder('1898-01-10', '1899-03-10')).toContain('Measure again');
	});

	it('refuses what is no day', () => {
		expect(() => measurementsOlderThan('1898-02-30', '1898-07-10')).toThrow('YYYY-MM-DD');
		expect(() => measurementsOlderThan('1898-02-20', 'today')).toThrow('YYYY-MM-DD');
	});
});

describe('ease presets', () => {
	it('span the published figures for a bodice', () => {
		// Central Washington University, ch. 16: 1½–2 in at the bust; New Mexico State University, C-228: 3–4 in.
		const bust = findEasePreset('everyday-bodice')?.bands.bust;
		expect(bust).toEqual({ low: 1.5 * 25.4, high: 4 * 25.4 });
		// Threads, Set-in sleeve solutions (2021): at least 2 in over the biceps.
		for (const preset of easePresets) expect(preset.bands['upper-arm'].low).toBe(50.8);
	});

	it('have bounds in order, on known balance lines', () => {
		const levels = bodyMeasures.map(({ level }) => level);
		for (const { id, bands } of easePresets)
			for (const [level, { low, high = Infinity }] of Object.entries(bands)) {
				expect(levels, id).toContain(level);
				expect(low, `${id} ${level}`).toBeLessThan(high);
			}
	});
});
