import { describe, expect, it } from 'vitest';
import type { CheckOptions, CutCloth } from '../../../../src/lib/engine/review/inquiry.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';
import { altered, asked, settled } from '../altered.ts';

const toile = (more: Partial<CutCloth> = {}): CheckOptions => ({
	toile: { draft: plainBodice(), allowances: { default: 25.4 }, ...more }
});
const letOut = (a: number, b = a, on = 'both') =>
	altered(plainBodice(), { id: 'one', kind: 'seam', seam: 'side', on, pins: [{ at: { end: 'start' }, a, b }] });
const ask = (draft: ReturnType<typeof letOut>, options = toile()) => asked('let-out-no-cloth', draft, options);

describe('a let-out held against the cloth that was cut', () => {
	// 1 in allowed and 1/4 in kept for the seam leave 3/4 in an edge (Construction of Clothing, University of Wisconsin digital
	// collection): 19.05 mm go, 19.06 do not.
	it('of 19.05 mm is held by an allowance of 25.4, one of 19.06 is not', () => {
		expect(ask(letOut(19.05))).toEqual([]);
		const found = ask(letOut(19.06));
		expect(found.map(({ where }) => where)).toEqual(['front/side', 'back/side']);
		expect(found[0].figure).toBeCloseTo(0.01, 6);
	});

	it('goes by the allowance of each edge, by what is kept and by what was clipped', () => {
		const edges = { 'front/side': 12.7 };
		expect(ask(letOut(10), toile({ allowances: { default: 25.4, edges } })).map(({ where }) => where)).toEqual([
			'front/side'
		]);
		expect(ask(letOut(13), toile({ keep: 12.7 }))).toHaveLength(2);
		expect(ask(letOut(12), toile({ clipped: 8 }))).toHaveLength(2);
		expect(ask(letOut(11), toile({ clipped: 8 }))).toEqual([]);
	});

	// Once cloth is cut, fitting is limited to the allowances that are there: Principles of Pattern Alteration, extension
	// publication E-372, p. 1.
	it('is a question on a toile and an error on cut cloth', () => {
		const [onToile] = ask(letOut(22.225));
		expect(onToile).toMatchObject({
			severity: 'warning',
			sentence: 'The front’s side is let out 7/8″, and its allowance holds 3/4″. Patched with a strip?'
		});
		const [onCloth] = ask(letOut(22.225), toile({ cut: 'cloth' }));
		expect(onCloth.severity).toBe('error');
		expect(onCloth.sentence).toContain('it cannot be let out so far');
	});

	it('counts from the version that the toile was cut from, not from the one before', () => {
		const first = letOut(12);
		const second = altered(first, {
			id: 'two',
			kind: 'seam',
			seam: 'side',
			pins: [{ at: { end: 'start' }, a: 12, b: 12 }]
		});
		expect(ask(second)[0].figure).toBeCloseTo(24 - 19.05, 6);
		expect(ask(second, toile({ draft: first }))).toEqual([]);
	});

	it('asks of the side that was let out only, by the allowance of the undivided edge', () => {
		const found = ask(letOut(22, 0, 'left'), toile({ allowances: { default: 50, edges: { 'front/side': 25.4 } } }));
		expect(found.map(({ where }) => where)).toEqual(['front@left/side']);
	});

	it('is settled by moving the seam over to the side that has cloth, the round kept', () => {
		const draft = letOut(22, 10);
		const [query] = ask(draft);
		expect(query.where).toBe('front/side');
		expect(query.settle.map(({ id }) => id)).toEqual([
			'settle-let-out-no-cloth-front-side-over',
			'settle-let-out-no-cloth-front-side-less'
		]);
		expect(ask(settled(draft, query, 0))).toEqual([]);
		expect(ask(settled(draft, query, 1))).toEqual([]);
	});

	it('is settled by letting out less where neither side has any', () => {
		const draft = letOut(22);
		const [query] = ask(draft);
		expect(query.settle).toHaveLength(1);
		expect(ask(settled(draft, query))).toEqual([]);
	});

	it('at a centre seam and at an open edge as well', () => {
		const centre = altered(plainBodice(), {
			id: 'one',
			kind: 'seam',
			seam: 'centre-back',
			pins: [{ at: { end: 'start' }, a: 20 }]
		});
		const hem = altered(plainBodice(), {
			id: 'one',
			kind: 'edge',
			edge: 'front/hem',
			pins: [{ at: { end: 'start' }, move: 20 }]
		});
		for (const draft of [centre, hem]) {
			const [query] = ask(draft);
			expect(query.figure).toBeCloseTo(0.95, 6);
			expect(ask(settled(draft, query))).toEqual([]);
		}
	});
});

describe('a let-out that leaves little to sew', () => {
	const narrow = (draft: ReturnType<typeof letOut>, more: Partial<CutCloth>) => asked('narrow', draft, toile(more));

	it('is asked about at boned seams and in cloth that frays, not in plain lining', () => {
		const draft = letOut(16);
		expect(narrow(draft, {})).toEqual([]);
		const boned = narrow(draft, { boned: ['side'] });
		expect(boned.map(({ where }) => where)).toEqual(['front/side', 'back/side']);
		expect(boned[0].figure).toBeCloseTo(9.4, 6);
		expect(boned[0].sentence).toBe('The front’s side has 3/8″ left to sew; 1/2″ is wanted there.');
		expect(narrow(draft, { frays: true })).toHaveLength(2);
		expect(narrow(letOut(12.7), { boned: ['side'] })).toEqual([]);
	});

	it('wants an inch at a closing', () => {
		const out = altered(plainBodice(), {
			id: 'one',
			kind: 'edge',
			edge: 'front/centre',
			pins: [{ at: { end: 'start' }, move: 3 }]
		});
		expect(narrow(out, {})).toMatchObject([{ where: 'front/centre' }]);
		expect(narrow(out, { allowances: { default: 30 } })).toEqual([]);
	});

	it('is settled by its own suggestion', () => {
		const draft = letOut(16, 4);
		const options = { boned: ['side'] };
		const [query] = narrow(draft, options);
		expect(query.settle).toHaveLength(2);
		for (const which of [0, 1]) expect(narrow(settled(draft, query, which), options)).toEqual([]);
	});
});
