import { describe, expect, it } from 'vitest';
import { dayNear } from '../../../src/lib/ui/garment/day-near.ts';
import {
	stationName,
	stationNotes,
	stationsToCome,
	type StationSaid
} from '../../../src/lib/ui/garment/station-words.ts';

const version = (number: number, open: readonly ('warning' | 'note' | 'error')[] = []): StationSaid => ({
	kind: 'version',
	version: {
		number,
		reason: number === 0 ? 'base' : 'carried',
		source: number === 0 ? 'file' : null,
		sourceName: '',
		unsettled: open.map((severity) => ({ severity }))
	}
});
const toile = (number: number, cloth = 'calico'): StationSaid => ({
	kind: 'toile',
	toile: { number, cloth, allowance: 25.4 }
});
const fitting = (number: number, closed: boolean, kind: 'fitting' | 'table' = 'fitting'): StationSaid => ({
	kind: 'fitting',
	fitting: { kind, number, closedAt: closed ? '2026-03-11T09:40:00.000Z' : null, carriedInto: closed ? number : null },
	alterations: 3
});
const lining: StationSaid = { kind: 'lining', lining: { version: 2, cloth: 'cotton' } };
const names = (life: readonly StationSaid[]) => stationsToCome(life).map(({ name }) => name);

describe('a station of a garment’s life', () => {
	it('has a name and a few words', () => {
		expect(stationName(version(0))).toBe('Draft');
		expect(stationNotes(version(0), 'in')).toEqual(['from a draft file']);
		expect(stationName(fitting(1, true, 'table'))).toBe('Table work 1');
		expect(stationNotes(toile(1), 'in')).toEqual(['calico, 1″ at the seams']);
		expect(stationNotes(toile(1), 'cm')).toEqual(['calico, 2.5 cm at the seams']);
		expect(stationNotes(toile(1, ''), 'in')).toEqual(['1″ at the seams']);
		expect(stationNotes(lining, 'in')).toEqual(['from version 2', 'cotton']);
	});

	it('says of a version how many queries are to be settled; notes are none', () => {
		expect(stationNotes(version(1, ['warning', 'note', 'error']), 'in')).toEqual(['2 queries to settle']);
		expect(stationNotes(version(1, ['note']), 'in')).toEqual(['nothing left to settle']);
	});

	it('says of a fitting whether it is still open', () => {
		expect(stationNotes(fitting(2, false), 'in')).toEqual(['3 alterations kept, still open']);
		expect(stationNotes(fitting(2, true), 'in')).toEqual(['3 alterations']);
	});
});

describe('what is still to come', () => {
	it('is everything after the draft alone', () => {
		expect(names([version(0)])).toEqual(['Toile 1', 'Fitting 1', 'Version 1', 'Lining']);
	});

	it('goes on from where the garment has come to, in its own numbers', () => {
		const begun = [version(0), toile(1), fitting(1, true), version(1), toile(2)];
		expect(names(begun)).toEqual(['Fitting 2', 'Version 2', 'Lining']);
		expect(names([...begun, fitting(2, false)])).toEqual(['Version 2', 'Lining']);
		expect(names([...begun, fitting(2, true)])).toEqual(['Lining']);
		expect(names([...begun, fitting(2, true), version(2)])).toEqual(['Lining']);
	});

	it('is nothing once the lining is chosen', () => {
		expect(names([version(0), lining])).toEqual([]);
	});
});

describe('a day', () => {
	it('is today, or this year’s without its year, or another year’s with it', () => {
		expect(dayNear('2026-03-10', '2026-03-10')).toBe('today');
		expect(dayNear('2026-03-10', '2026-11-25')).toBe('10 Mar');
		expect(dayNear('2026-03-10', '2026-11-25', 'plain')).toBe('10 March');
		expect(dayNear('2025-03-10', '2026-03-10')).toBe('10 March 2025');
	});
});
