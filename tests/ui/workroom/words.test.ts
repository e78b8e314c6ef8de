import { describe, expect, it } from 'vitest';
import { measureAgain } from '../../../src/lib/ui/workroom/measure-again.ts';
import { waitingRow } from '../../../src/lib/ui/waiting-row.ts';
import { tableCaption } from '../../../src/lib/ui/workroom/table-caption.ts';

describe('what lies on the table', () => {
	it('is counted in words, with what all of it is made for', () => {
		const play = 'Snow at Nethermoor';
		expect(tableCaption([play])).toEqual({ count: 'One garment for', madeFor: play });
		expect(tableCaption([play, play])).toEqual({
			...{ count: 'Two garments for', madeFor: play, scale: 'all drawn to one scale' }
		});
	});

	it('names no play where the garments are for several things, or for none', () => {
		expect(tableCaption(['Snow at Nethermoor', ''])).toEqual({
			...{ count: 'Two garments', scale: 'all drawn to one scale' }
		});
		expect(tableCaption(['', '', '']).madeFor).toBeUndefined();
		expect(tableCaption(Array.from({ length: 13 }, () => '')).count).toBe('13 garments');
	});
});

describe('an open fitting', () => {
	const open = {
		what: 'fitting-open',
		garment: { id: 'g1', name: 'Governess jacket' },
		fitting: { id: 'f1', kind: 'fitting', number: 2, closedAt: null },
		...{ standing: 3, notRead: 1, openObservations: 0, inHand: [] }
	} as const;

	it('says what is kept, what is not read, and first what was left in the hand', () => {
		expect(waitingRow(open)).toMatchObject({
			what: 'Governess jacket: finish fitting 2',
			note: '3 alterations kept, 1 not read yet'
		});
		expect(waitingRow({ ...open, inHand: [4] }).note).toBe(
			'alteration 4 in the hand, 3 alterations kept, 1 not read yet'
		);
	});
});

describe('measuring again', () => {
	const wearer = { id: 'w1', name: 'Ines Varrow', garments: 1 };

	it('is asked for when the last sheet is more than six months old', () => {
		expect(measureAgain({ ...wearer, lastMeasured: '2026-03-02' }, '2026-09-02')).toBeUndefined();
		expect(measureAgain({ ...wearer, lastMeasured: '2026-03-02' }, '2026-09-03')).toMatchObject({
			what: 'Ines Varrow: measure again',
			note: 'last sheet 2 March 2026, more than 6 months ago',
			href: '/wearers/w1/sheets/new'
		});
	});

	it('is asked for when there is no sheet, and only for whom something is made', () => {
		expect(measureAgain({ ...wearer, lastMeasured: null }, '2026-09-03')?.what).toBe('Ines Varrow: measure');
		expect(measureAgain({ ...wearer, garments: 0, lastMeasured: null }, '2026-09-03')).toBeUndefined();
	});
});
