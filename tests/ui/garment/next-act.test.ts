import { describe, expect, it } from 'vitest';
import { nextAct } from '../../../src/lib/ui/garment/next-act.ts';
import type { Waiting } from '../../../src/lib/ui/journal-shapes.ts';

const garment = { id: 'k3x', name: 'Governess jacket' };
const fitting = { id: 'f7', kind: 'fitting', number: 2, closedAt: null } as const;
const version = (number: number) => ({ number, unsettled: [] });

describe('the next thing to do with a garment', () => {
	it('is to finish a fitting that is open, with what is in it', () => {
		const waiting: Waiting = {
			...{ garment, what: 'fitting-open', fitting },
			...{ standing: 3, notRead: 1, openObservations: 1, inHand: [4] }
		};
		const next = nextAct('k3x', waiting, 1);
		expect(next.what).toBe('Finish fitting 2.');
		expect(next.about).toBe('3 alterations kept, alteration 4 in the hand, 1 not read yet, 1 observation open.');
		expect(next.href).toBe('/garments/k3x/fittings/f7');
		expect(next.then).toContain('version 2 is made. Version 1 stays as it is.');
	});

	it('speaks of table work as such', () => {
		const table: Waiting = {
			...{ garment, what: 'fitting-open', fitting: { ...fitting, kind: 'table' } },
			...{ standing: 0, notRead: 0, openObservations: 0, inHand: [] }
		};
		expect(nextAct('k3x', table, 0)).toMatchObject({
			what: 'Finish table work 2.',
			about: 'Nothing kept yet.',
			act: 'Back to the table work'
		});
	});

	it('leads to the version whose queries are open', () => {
		const next = nextAct('k3x', { garment, what: 'queries', version: version(2), count: 1 }, 2);
		expect(next).toMatchObject({ what: 'Settle 1 query of version 2.', href: '/garments/k3x/versions/2' });
	});

	it('counts the alterations that wait for a place', () => {
		const waiting = (numbers: readonly number[]): Waiting => ({
			...{ garment, what: 'unplaced', alterations: numbers.map((number) => ({ number })) }
		});
		expect(nextAct('k3x', waiting([3]), 1).what).toBe('Place alteration 3 again.');
		expect(nextAct('k3x', waiting([3, 5]), 1).what).toBe('Place alterations 3, 5 again.');
		expect(nextAct('k3x', waiting([3]), 0).about).toContain('It found no place on the draft.');
	});

	it('hands the toile, or the version, to the page where it is done', () => {
		const toile: Waiting = { garment, what: 'toile-to-fit', toile: { id: 't2', number: 2 } };
		expect(nextAct('k3x', toile, 1).href).toBe('/garments/k3x/fittings/new?toile=t2');
		const cut: Waiting = { garment, what: 'toile-to-cut', version: version(0) };
		expect(nextAct('k3x', cut, 0)).toMatchObject({
			what: 'Cut a toile from the draft.',
			href: '/garments/k3x/toiles/new?version=0'
		});
		const choose: Waiting = { garment, what: 'lining-to-choose', version: version(2) };
		expect(nextAct('k3x', choose, 2).href).toBe('/garments/k3x/lining');
	});

	it('is the lining when nothing waits', () => {
		expect(nextAct('k3x', undefined, 2)).toMatchObject({
			about: 'Version 2 is what it is cut from.',
			href: '/garments/k3x/lining'
		});
	});
});
